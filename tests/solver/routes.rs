//! Routes: the widest disc, its mouths, the walk and the turning circle.

#[path = "routes/dilation_table.rs"]
mod dilation_table;
#[path = "routes/grid.rs"]
mod grid;
#[path = "routes/kept.rs"]
mod kept;
#[path = "routes/laws.rs"]
mod laws;
#[path = "routes/odd_rooms.rs"]
mod odd_rooms;
