//! One stock for many rooms, as the user names them: the store's list, who has booked which room for which days, and
//! what is told of the assignment. Who gets what is the solver's to say; how it looks is `render`'s.

mod booking_columns;
pub(crate) mod bookings;
pub(crate) mod carried;
pub(crate) mod days;
pub(crate) mod named;
pub(crate) mod solved;
pub(crate) mod store;
pub(crate) mod told;
