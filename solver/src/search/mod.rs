//! Best-first branch and bound over disjunctions.
