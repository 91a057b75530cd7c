//! Why nothing fits, and the least change that helps.
