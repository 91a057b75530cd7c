//! What is written as JSON: the structs of each format, field for field, made from what the solver decided and from words.

pub(crate) mod carried;
pub(crate) mod costs;
pub(crate) mod judge;
pub(crate) mod rank;
mod sets_asked;
pub(crate) mod shop;
pub(crate) mod short;
pub(crate) mod stock;
pub(crate) mod way;
