//! The crate as its users see it, on small recordings made here.

mod filter;
mod hostile;
mod live;
mod made;
mod properties;
