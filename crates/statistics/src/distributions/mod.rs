//! The distributions that this crate needs, one file each.

pub mod normal;
