//! The independent re-check of a finished layout.
