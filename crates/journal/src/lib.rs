//! The log of ends and changes: one JSON record a line, appended and synced, never rewritten.
//!
//! - [`Journal`] begins, opens and appends. It touches files through a [`Storage`] only: the [`Disk`], or in tests
//!   one that fails.
//! - [`Checked`] is what a check of a journal proves, [`Repair`] mends a damaged one.
//! - [`journals_in`] finds those of a folder.
//! - [`write_whole`] writes any other file, whole or not at all.
//! - [`State`] is what a journal says with everything taken back left out: the model's
//!   [`History`](quarterturn_tuning::History) and what the answers need beside it.
//! - [`Entry`] and its kinds are what is written, in the words and units of the files. They are plain data:
//!   whether they can be is checked when they are appended, and a [`Fault`] says what is wrong and where.
//! - [`read_end`] reads an end from JSON text, and [`Fault::span`] finds a fault in that text.
//!
//! The format and the promise are in `docs/journal-format.md`. This crate has no clock and no chance of its own:
//! the [`Stamp`] of each record comes from the caller.
//!
//! # Example
//! ```
//! use quarterturn_journal::{
//!     EndEntry, Entry, Journal, NewEntry, NewShaft, RecordId, ShotEntry, Stamp, Timestamp,
//! };
//!
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! # let folder = tempfile::tempdir()?;
//! # let path = folder.path().join("dozen.journal");
//! let time: Timestamp = "2027-03-02T18:00:00+00:00".parse()?;
//! let stamp = |bits| Stamp { id: RecordId::from_bits(bits), time: time.clone() };
//! let shaft = |name: &str| NewShaft { name: name.into(), index_deg: 0.0 };
//! let beginning = NewEntry {
//!     shafts: vec![shaft("1"), shaft("2")],
//!     references: vec!["R".into()],
//!     distance_m: 18.3,
//!     tolerance_mm: 25.0,
//!     units: "mm".into(),
//!     arrows_per_end: 3,
//!     positions: 12,
//!     ..NewEntry::default()
//! };
//! let mut journal = Journal::create(&path, beginning, &stamp(1))?;
//!
//! let shot = |shaft: &str, x_mm, y_mm| ShotEntry {
//!     shaft: shaft.into(),
//!     x_mm: Some(x_mm),
//!     y_mm: Some(y_mm),
//!     ..ShotEntry::default()
//! };
//! let end = EndEntry { shots: vec![shot("R", 3.0, -12.0), shot("1", 31.0, 8.0)], ..EndEntry::default() };
//! // What is confirmed has reached the disk.
//! journal.append(Entry::End(end), &stamp(2))?;
//!
//! let read = Journal::open(&path)?;
//! assert_eq!((read.state().records(), read.state().ends().count()), (2, 1));
//! # Ok(())
//! # }
//! ```

#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

mod add_entry;
mod as_read;
mod bench_entry;
mod beside;
mod bow_entry;
mod chain;
mod checked;
mod confirmed;
mod damage;
mod deed;
mod disk;
mod effect;
mod end_entry;
mod entry;
mod error;
mod existing;
mod face_unit;
mod fault;
mod finding;
mod fix_entry;
mod found;
mod glue_entry;
mod glued_part;
mod group_entry;
mod journal;
mod journal_file;
mod json_piece;
mod json_reason;
mod limit;
mod lines;
mod lock;
mod log;
mod mending;
mod names;
mod new_entry;
mod note_entry;
mod number;
mod place;
mod quiver;
mod quiver_entry;
mod read_end;
mod reading;
mod recent;
mod record;
mod record_id;
mod redo_entry;
mod repair;
mod role;
mod sealed;
mod shaft_entry;
mod shape;
mod shot_entry;
mod stamp;
mod state;
mod storage;
mod tail_seen;
mod timestamp;
mod torn;
mod undo_entry;
mod unreadable_entry;
mod way_on;
mod what;
mod whole_file;
mod word;
mod write_error;

pub use add_entry::AddEntry;
pub use as_read::protruding;
pub use bench_entry::{BenchEntry, BenchMeasures, SpineEntry};
pub use bow_entry::BowEntry;
pub use chain::FORMAT;
pub use checked::Checked;
pub use confirmed::Confirmed;
pub use damage::Damage;
pub use deed::Deed;
pub use disk::Disk;
pub use end_entry::EndEntry;
pub use entry::Entry;
pub use error::JournalError;
pub use existing::Existing;
pub use face_unit::FaceUnit;
pub use fault::Fault;
pub use finding::Finding;
pub use fix_entry::FixEntry;
pub use found::journals_in;
pub use glue_entry::GlueEntry;
pub use glued_part::GluedPart;
pub use group_entry::GroupEntry;
pub use journal::Journal;
pub use log::{Fate, Log, LoggedEnd};
pub use new_entry::{MOST_SHAFTS, NewEntry, NewShaft};
pub use note_entry::NoteEntry;
pub use place::{Place, Step};
pub use quiver::{Happening, Quiver, QuiverArrow};
pub use quiver_entry::{Limits, MountedHead, QuiverEntry};
pub use read_end::{read_end, read_group};
pub use record::Record;
pub use record_id::RecordId;
pub use redo_entry::RedoEntry;
pub use repair::Repair;
pub use role::Role;
pub use shaft_entry::ShaftEntry;
pub use shot_entry::ShotEntry;
pub use stamp::Stamp;
pub use state::State;
pub use storage::{Storage, StoredFile};
pub use tail_seen::TailSeen;
pub use timestamp::Timestamp;
pub use torn::Torn;
pub use undo_entry::UndoEntry;
pub use unreadable_entry::UnreadableEntry;
pub use what::What;
pub use whole_file::write_whole;
pub use word::Word;
pub use write_error::WriteError;
