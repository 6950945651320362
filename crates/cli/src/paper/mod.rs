//! Sheets that are printed at true scale and taken outside: values in, drawings out; nothing here touches a file.

mod card;
mod cells;
mod correction;
mod dial;
mod dials;
mod face;
mod fletch_sheet;
mod grid;
mod helvetica;
mod labels;
mod log;
mod page;
mod paper_size;
mod pdf;
mod pen;
mod photo_mark;
mod quiver;
mod sheet;
mod strip;
#[cfg(test)]
mod tests;
mod tiles;

pub use card::{Card, card};
pub use correction::{Correction, CorrectionFault};
pub use dials::{Turn, dials};
pub use face::face;
pub use fletch_sheet::{FletchCell, FletchHead, fletch_sheet};
pub use grid::Grid;
pub use labels::{Label, labels};
pub use log::log;
pub use page::Page;
pub use paper_size::PaperSize;
pub use pdf::pdf;
pub use quiver::{CardArrow, QuiverCard, quiver};
pub use sheet::Sheet;
