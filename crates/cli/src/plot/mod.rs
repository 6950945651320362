//! Pictures: values in, SVG text out; nothing here touches a file.

mod axis;
mod backdrop;
mod base64;
mod before_after;
mod block;
mod canvas;
mod chart;
#[cfg(test)]
mod contrast;
mod course_plot;
mod end_plot;
mod escape;
mod finished_plot;
mod ground;
mod heading;
mod labels;
mod layout;
mod lean_plot;
mod named_mark;
#[cfg(test)]
mod on_page;
mod paper_box;
mod paper_ellipse;
mod paper_point;
mod photo_overlay;
mod scale;
mod segment;
mod series;
mod shaft_plot;
mod shape;
mod sheet_backend;
mod svg;
mod svg_number;
mod svg_path;
mod svg_writer;
mod target_plot;
mod text_width;
mod ticks;
mod window;

pub use backdrop::{Backdrop, FaceSize};
pub use before_after::{BeforeAfter, Landing, landings};
pub use block::{PICTURE_STYLE, StyledBy};
pub use canvas::Canvas;
pub use course_plot::{CoursePlot, places};
pub use end_plot::EndPlot;
pub use finished_plot::FinishedPlot;
pub use lean_plot::LeanPlot;
pub use paper_box::PaperBox;
pub use paper_point::PaperPoint;
pub use photo_overlay::PhotoOverlay;
pub use segment::Segment;
pub use shaft_plot::{ROUND_THE_CLOCK, ShaftPlot};
pub use shape::{Anchor, Shape};
pub use svg::{About, Stretch, svg};
pub use target_plot::TargetPlot;
pub use target_plot::hits::{HitKind, HitMark, Hits};
#[cfg(test)]
pub use target_plot::invented;
pub use text_width::{shortened, wrapped};
