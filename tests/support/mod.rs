//! What every test of the built program stands on: a fresh folder, and a strict run of the program in it.

mod folder;
mod run;

pub use folder::{Folder, JOURNAL};
pub use run::Run;
