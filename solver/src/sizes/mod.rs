//! Together, alone, least, and what holds a size.
