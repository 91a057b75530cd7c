//! One file per rule: what it forbids, the alternatives that mend it, the reason it gives.
