//! What each command puts on a person's screen: at most 80 columns, the next step last.

mod begun;
mod bench;
mod checked;
mod checklist;
mod config;
mod cut;
mod explained;
mod fletch;
mod glue;
mod heads;
mod imported;
mod log;
mod next;
mod photo;
mod quiver;
mod reach;
mod recorded;
mod recorded_end;
mod recorded_group;
mod recorded_measures;
mod rehearsed;
mod show;
mod since_the_bow;
mod sketch;
mod standing;
mod verify;

pub use begun::begun;
pub use bench::bench;
pub use checked::{damaged, repaired, whole};
pub use checklist::checklist;
pub use config::config;
pub use cut::cut;
pub use explained::{explained, words};
pub use fletch::fletch;
pub use glue::{glued, recorded_glue};
pub use heads::heads;
pub use imported::{Imported, imported};
pub use log::log;
pub use next::next;
pub use photo::{photo, photo_notices};
pub use quiver::{quiver, recorded_quiver};
pub use reach::reach;
pub use recorded::{
    recorded_bow, recorded_join, recorded_leave, recorded_note, recorded_shaft, redone, undone,
    what_else,
};
pub use recorded_end::{corrected_end, recorded_end};
pub use recorded_group::recorded_group;
pub use recorded_measures::{beside_the_measures, recorded_bench};
pub use rehearsed::rehearsed;
pub use show::{archer, bow, columns, heading, miss_and_error, show, why};
use since_the_bow::since_the_bow;
pub use sketch::{Sketched, sketch};
pub use standing::{journals, standing};
pub use verify::verify;
