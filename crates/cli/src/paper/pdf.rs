//! Sheets as one PDF file, in true size.

use pdf_writer::{Content, Finish, Name, Pdf, Rect, Ref, Str, TextStr};

use super::helvetica::{encoded, width_mm};
use super::pen::Pen;
use super::sheet::Sheet;
use crate::plot::{Anchor, PaperBox, PaperPoint, Segment, Shape};

/// Points in a millimetre: 72 to the inch.
const POINTS: f64 = 72.0 / 25.4;
/// How far the control points of a quarter circle lie along its tangents, as a share of the radius: 4/3 (√2 − 1).
const QUARTER: f64 = 0.552_284_749_830_793_4;
const FONT: Name<'static> = Name(b"F");

/// The file: a page for each sheet. Readers are asked not to fit it to their margins.
pub fn pdf(sheets: &[Sheet]) -> Vec<u8> {
    let mut pdf = Pdf::new();
    let mut numbers = 1..;
    let mut next = || Ref::new(numbers.next().unwrap_or(i32::MAX));
    let (catalog, tree, font, info) = (next(), next(), next(), next());
    let pages: Vec<(Ref, Ref)> = sheets.iter().map(|_| (next(), next())).collect();
    let mut root = pdf.catalog(catalog);
    root.pages(tree);
    root.viewer_preferences().pair(Name(b"PrintScaling"), Name(b"None"));
    root.finish();
    let kids: Vec<Ref> = pages.iter().map(|&(page, _)| page).collect();
    pdf.pages(tree).kids(kids).count(i32::try_from(sheets.len()).unwrap_or(i32::MAX));
    pdf.type1_font(font)
        .base_font(Name(b"Helvetica"))
        .encoding_predefined(Name(b"WinAnsiEncoding"));
    if let Some(first) = sheets.first() {
        pdf.document_info(info).title(TextStr(&first.title));
    }
    for (sheet, (page, content)) in sheets.iter().zip(pages) {
        let stretch = sheet.correction.stretch();
        let mut one = pdf.page(page);
        let wide = points(sheet.canvas.width_mm * stretch.x);
        let high = points(sheet.canvas.height_mm * stretch.y);
        one.media_box(Rect::new(0.0, 0.0, wide, high)).parent(tree).contents(content);
        one.resources().fonts().pair(FONT, font);
        one.finish();
        pdf.stream(content, &drawn(sheet));
    }
    pdf.finish()
}

/// What is drawn on a page: in true millimetres, which one matrix makes points of.
fn drawn(sheet: &Sheet) -> pdf_writer::Buf {
    let stretch = sheet.correction.stretch();
    let mut content = Content::new();
    let (across, up) = (points(stretch.x), points(stretch.y));
    content.transform([across, 0.0, 0.0, up, 0.0, 0.0]);
    draw_all(&mut content, &sheet.canvas.shapes);
    content.finish()
}

fn draw_all(content: &mut Content, shapes: &[Shape]) {
    for shape in shapes {
        draw(content, shape);
    }
}

fn draw(content: &mut Content, shape: &Shape) {
    match shape {
        Shape::Line { class, along: Segment { from, to } } => {
            path(content, class, |content| {
                content.move_to(unit(from.x_mm), unit(from.y_mm));
                content.line_to(unit(to.x_mm), unit(to.y_mm));
            });
        }
        Shape::Circle { class, centre, radius_mm } => {
            path(content, class, |content| circle(content, *centre, *radius_mm));
        }
        Shape::Polygon { class, corners } => {
            path(content, class, |content| polygon(content, corners));
        }
        Shape::Rectangle { class, area } => {
            path(content, class, |content| rectangle(content, *area));
        }
        Shape::Text { class, at, anchor, size_mm, text: said } => {
            text(content, class, *at, *anchor, *size_mm, said);
        }
        Shape::Group { shapes, .. } => draw_all(content, shapes),
        Shape::Clipped { area, shapes, .. } => {
            content.save_state();
            rectangle(content, *area);
            content.clip_nonzero().end_path();
            draw_all(content, shapes);
            content.restore_state();
        }
        // No sheet has one: they are of estimates, and those are looked at and not measured on.
        Shape::Ellipse { .. } | Shape::Photo { .. } => {}
    }
}

/// Strokes and fills what `build` outlines, with the pen of the class.
fn path(content: &mut Content, class: &str, build: impl FnOnce(&mut Content)) {
    let pen = Pen::of(class);
    content.save_state();
    content.set_stroke_gray(grey(pen.stroke_grey));
    content.set_line_width(unit(pen.stroke_mm.unwrap_or(0.0)));
    if let Some(dash_mm) = pen.dash_mm {
        content.set_dash_pattern([unit(dash_mm)], 0.0);
    }
    content.set_fill_gray(grey(pen.fill_grey.unwrap_or(u8::MAX)));
    build(content);
    match (pen.stroke_mm, pen.fill_grey) {
        (Some(_), Some(_)) => content.fill_nonzero_and_stroke(),
        (Some(_), None) => content.stroke(),
        (None, _) => content.fill_nonzero(),
    };
    content.restore_state();
}

fn rectangle(content: &mut Content, area: PaperBox) {
    let (wide, high) = (area.right_mm - area.left_mm, area.top_mm - area.bottom_mm);
    content.rect(unit(area.left_mm), unit(area.bottom_mm), unit(wide), unit(high));
}

fn polygon(content: &mut Content, corners: &[PaperPoint]) {
    for (at, corner) in corners.iter().enumerate() {
        let (x, y) = (unit(corner.x_mm), unit(corner.y_mm));
        if at == 0 {
            content.move_to(x, y)
        } else {
            content.line_to(x, y)
        };
    }
    content.close_path();
}

/// Four cubic curves, each a quarter: off the circle by less than 3 parts in ten thousand of the radius.
fn circle(content: &mut Content, PaperPoint { x_mm, y_mm }: PaperPoint, radius_mm: f64) {
    let at = |x: f64, y: f64| (unit(x_mm + x * radius_mm), unit(y_mm + y * radius_mm));
    let (x, y) = at(1.0, 0.0);
    content.move_to(x, y);
    for (cos, sin) in [(1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0)] {
        let ((x1, y1), (x2, y2)) = (
            at(cos - QUARTER * sin, sin + QUARTER * cos),
            at(QUARTER * cos - sin, QUARTER * sin + cos),
        );
        let (x3, y3) = at(-sin, cos);
        content.cubic_to(x1, y1, x2, y2, x3, y3);
    }
    content.close_path();
}

fn text(
    content: &mut Content,
    class: &str,
    at: PaperPoint,
    anchor: Anchor,
    size_mm: f64,
    said: &str,
) {
    let before = match anchor {
        Anchor::Start => 0.0,
        Anchor::Middle => 0.5,
        Anchor::End => 1.0,
    };
    let left_mm = at.x_mm - before * width_mm(said, size_mm);
    content.begin_text();
    content.set_fill_gray(grey(Pen::of(class).fill_grey.unwrap_or(0)));
    content.set_font(FONT, unit(size_mm));
    content.next_line(unit(left_mm), unit(at.y_mm));
    content.show(Str(&encoded(said)));
    content.end_text();
}

/// 0 is black and 1 is white.
fn grey(of_255: u8) -> f32 {
    f32::from(of_255) / f32::from(u8::MAX)
}

fn points(mm: f64) -> f32 {
    unit(mm * POINTS)
}

/// A PDF holds numbers of single precision: a hundred-thousandth of a page.
#[expect(clippy::cast_possible_truncation, reason = "a page is some hundred millimetres")]
fn unit(value: f64) -> f32 {
    value as f32
}
