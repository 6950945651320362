//! A disk that fails as disks do, by a seed: the same seed, the same failures.

mod chance;
mod disk;
mod file;
mod inode;

pub use chance::Chance;
pub use disk::{Misfortune, SimulatedDisk};
