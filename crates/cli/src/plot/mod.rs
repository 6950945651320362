//! Pictures: values in, SVG text out; nothing here touches a file.

mod block;
mod canvas;
#[cfg(test)]
mod contrast;
mod escape;
mod heading;
mod labels;
mod paper_box;
mod paper_ellipse;
mod paper_point;
mod scale;
mod segment;
mod shape;
mod svg;
mod target_plot;
mod text_width;
mod ticks;
mod window;

pub use target_plot::target;
