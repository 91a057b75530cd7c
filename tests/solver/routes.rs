//! Routes: the widest disc, its mouths, the walk and the turning circle.

#[path = "routes/dilation_table.rs"]
mod dilation_table;
