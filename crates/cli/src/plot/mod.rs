//! Pictures: values in, SVG text out; nothing here touches a file.

mod backdrop;
mod block;
mod canvas;
mod chart;
#[cfg(test)]
mod contrast;
mod course_plot;
mod escape;
mod finished_plot;
mod ground;
mod heading;
mod labels;
#[cfg(test)]
mod on_page;
mod paper_box;
mod paper_ellipse;
mod paper_point;
mod scale;
mod segment;
mod shaft_plot;
mod shape;
mod svg;
mod target_plot;
mod text_width;
mod ticks;
mod window;

pub use backdrop::{Backdrop, FaceSize};
pub use block::{PICTURE_STYLE, StyledBy};
pub use canvas::Canvas;
pub use course_plot::CoursePlot;
pub use finished_plot::FinishedPlot;
pub use paper_box::PaperBox;
pub use paper_point::PaperPoint;
pub use segment::Segment;
pub use shaft_plot::ShaftPlot;
pub use shape::{Anchor, Shape};
pub use svg::{About, Stretch, svg};
pub use target_plot::TargetPlot;
pub use target_plot::hits::{HitKind, HitMark, Hits};
pub use text_width::{shortened, wrapped};
