//! What each command puts on a person's screen: at most 80 columns, the next step last.

mod begun;
mod bench;
mod checked;
mod fletch;
mod imported;
mod log;
mod next;
mod recorded;
mod recorded_end;
mod rehearsed;
mod show;
mod sketch;

pub use begun::begun;
pub use bench::{bench, out_of_use, recorded_bench};
pub use checked::{damaged, repaired, whole};
pub use fletch::fletch;
pub use imported::{Imported, imported};
pub use log::log;
pub use next::next;
pub use recorded::{
    recorded_bow, recorded_join, recorded_leave, recorded_note, recorded_shaft, redone, undone,
    what_else,
};
pub use recorded_end::{corrected_end, recorded_end};
pub use rehearsed::rehearsed;
pub use show::{archer, bow, columns, heading, miss_and_error, show, why};
pub use sketch::{Sketched, sketch};
