//! Sentences made from what the solver decided. Temporary: what stands here moves to the words of `cli` once results are
//! typed throughout, so it uses what is public of solver and model alone.

pub mod arrangement;
pub mod breach;
pub mod cause;
pub mod caution;
pub mod criteria;
pub mod left_out;
pub mod notice;
pub mod refusal;
pub mod remedy;
