//! What every test of the built program stands on: a fresh folder, and a strict run of the program in it.

mod folder;
pub mod repository;
mod run;
pub mod schema;
pub mod shell;

pub use folder::{Folder, JOURNAL};
pub use run::{PROGRAM, Run};
