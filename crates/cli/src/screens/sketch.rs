//! A face in characters: where each arrow hit, and toward where its tail points.

use quarterturn_geometry::{Angle, Millimetres, Offset};

use quarterturn_entry::quantity::Unit;

use crate::wording::Ruler;

/// Columns to either side of the spot, and rows above and below it: with its caption it fits beside a prompt on a
/// screen of 80 by 24.
const COLUMNS: i32 = 30;
const ROWS: i32 = 5;

/// A character is about twice as high as it is wide.
const ROW_IN_COLUMNS: f64 = 2.0;

/// What a column may stand for, mm; finer, the face would jump from arrow to arrow.
const SCALES_MM: [f64; 8] = [5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0];

/// The same where the face is read in inches.
const SCALES_IN: [f64; 8] = [0.25, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 40.0];

/// A tail that leans less is not drawn.
const LEAST_LEAN: Angle = Angle::from_degrees(1.0);

/// An arrow as it is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct Sketched<'a> {
    /// Its name; the first three letters are drawn.
    pub name: &'a str,
    /// Where it hit, from the spot.
    pub at: Offset,
    /// Toward where its tail points, on the clock, where it leans.
    pub tail: Option<Angle>,
}

impl<'a> Sketched<'a> {
    /// An arrow that was read.
    pub fn new(name: &'a str, hit: &quarterturn_tuning::Hit) -> Self {
        let leans = hit.lean.filter(|lean| lean.size() >= LEAST_LEAN);
        Self {
            name,
            at: hit.at.from_spot(),
            tail: leans.map(quarterturn_geometry::Lean::clock_angle),
        }
    }
}

/// The face with these arrows, a caption below; nothing where there is none.
pub fn sketch(arrows: &[Sketched<'_>], ruler: Ruler) -> Vec<String> {
    if arrows.is_empty() {
        return Vec::new();
    }
    let column_mm = scale_mm(arrows, ruler);
    let mut cells = vec![vec![' '; usize_of(2 * COLUMNS + 1)]; usize_of(2 * ROWS + 1)];
    for at in (-COLUMNS..=COLUMNS).step_by(5) {
        put(&mut cells, at, 0, '.');
    }
    (-ROWS..=ROWS).for_each(|row| put(&mut cells, 0, row, '.'));
    put(&mut cells, 0, 0, '+');
    for arrow in arrows {
        draw(&mut cells, arrow, column_mm);
    }
    let mut lines: Vec<String> =
        cells.iter().map(|row| row.iter().collect::<String>().trim_end().to_owned()).collect();
    let [column, row] = [column_mm, column_mm * ROW_IN_COLUMNS].map(Millimetres::new);
    lines.push(format!(
        "One column is {}, one row {}; + is the spot, / | \\ - a tail.",
        ruler.read(column),
        ruler.read(row)
    ));
    lines
}

/// The finest scale at which all arrows are on the face; the coarsest where there is none.
fn scale_mm(arrows: &[Sketched<'_>], ruler: Ruler) -> f64 {
    let fits = |mm: f64| {
        arrows.iter().all(|arrow| {
            let (column, row) = cell(arrow.at, mm);
            // A tail takes one more.
            column.abs() < COLUMNS && row.abs() < ROWS
        })
    };
    let scales = if ruler.unit() == Unit::INCH {
        SCALES_IN.map(|inches| Millimetres::from_inches(inches).mm())
    } else {
        SCALES_MM
    };
    let [.., coarsest] = scales;
    scales.into_iter().find(|mm| fits(*mm)).unwrap_or(coarsest)
}

/// The column to the right of the spot and the row above it.
#[expect(clippy::cast_possible_truncation, reason = "no hit is more than 3 m out")]
fn cell(at: Offset, column_mm: f64) -> (i32, i32) {
    let row_mm = column_mm * ROW_IN_COLUMNS;
    ((at.x_mm / column_mm).round() as i32, (at.y_mm / row_mm).round() as i32)
}

fn draw(cells: &mut [Vec<char>], arrow: &Sketched<'_>, column_mm: f64) {
    let (column, row) = cell(arrow.at, column_mm);
    let name: Vec<char> = arrow.name.chars().take(3).collect();
    let width = i32::try_from(name.len()).unwrap_or(1);
    let first = (column - (width - 1) / 2).clamp(-COLUMNS, COLUMNS + 1 - width);
    if let Some(toward) = arrow.tail {
        let ([right, up], glyph) = tick(toward);
        let column = match right {
            1 => first + width,
            -1 => first - 1,
            _ => first + (width - 1) / 2,
        };
        put_on_blank(cells, column, row + up, glyph);
    }
    for (c, at) in name.into_iter().zip(first..) {
        put(cells, at, row, c);
    }
}

/// One step toward a clock angle, right and up, and how it is drawn.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "it is from 0 to 8")]
fn tick(toward: Angle) -> ([i32; 2], char) {
    let eighth = (toward.positive().degrees() / 45.0).round() as usize % 8;
    [
        ([0, 1], '|'),
        ([1, 1], '/'),
        ([1, 0], '-'),
        ([1, -1], '\\'),
        ([0, -1], '|'),
        ([-1, -1], '/'),
        ([-1, 0], '-'),
        ([-1, 1], '\\'),
    ][eighth]
}

fn put(cells: &mut [Vec<char>], column: i32, row: i32, c: char) {
    if let Some(cell) = cell_of(cells, column, row) {
        *cell = c;
    }
}

/// A tail never hides an arrow.
fn put_on_blank(cells: &mut [Vec<char>], column: i32, row: i32, c: char) {
    if let Some(cell) = cell_of(cells, column, row)
        && matches!(cell, ' ' | '.' | '+')
    {
        *cell = c;
    }
}

fn cell_of(cells: &mut [Vec<char>], column: i32, row: i32) -> Option<&mut char> {
    let (line, at) = (usize::try_from(ROWS - row).ok()?, usize::try_from(COLUMNS + column).ok()?);
    cells.get_mut(line)?.get_mut(at)
}

fn usize_of(count: i32) -> usize {
    usize::try_from(count).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use quarterturn_entry::quantity::Unit;

    use super::*;

    fn drawn(arrows: &[(&str, f64, f64, Option<f64>)]) -> Vec<String> {
        let arrows: Vec<_> = arrows
            .iter()
            .map(|&(name, x_mm, y_mm, tail)| Sketched {
                name,
                at: Offset::new(x_mm, y_mm),
                tail: tail.map(Angle::from_degrees),
            })
            .collect();
        sketch(&arrows, Ruler::new(Unit::MILLIMETRE))
    }

    #[test]
    fn inches_have_scales_of_their_own() {
        let last = |x_mm| {
            let arrows = [Sketched { name: "R", at: Offset::new(x_mm, 0.0), tail: None }];
            sketch(&arrows, Ruler::new(Unit::INCH)).pop().unwrap()
        };
        assert!(last(3.0).starts_with("One column is 0.25 in, one row 0.5 in;"), "{}", last(3.0));
        assert!(last(300.0).starts_with("One column is 0.5 in, one row 1 in;"), "{}", last(300.0));
    }

    #[test]
    fn up_is_up_and_right_is_right() {
        let lines = drawn(&[("R", 3.0, -12.0, None), ("7", 31.0, 8.0, Some(315.0))]);
        assert_eq!(lines.len(), 12);
        let find = |c: char| {
            let row = lines.iter().position(|line| line.contains(c)).unwrap();
            (row, lines[row].find(c).unwrap())
        };
        assert_eq!((find('+').0, find('+').1), (5, 30));
        assert!(find('7').0 < 5 && find('7').1 > 30);
        assert!(find('R').0 > 5 && find('R').1 > 30 && find('R').1 < find('7').1);
        assert_eq!(find('\\'), (find('7').0 - 1, find('7').1 - 1));
        assert_eq!(lines[11], "One column is 5 mm, one row 10 mm; + is the spot, / | \\ - a tail.");
    }

    #[test]
    fn whatever_is_drawn_stays_on_the_face() {
        for (x_mm, y_mm) in [(0.0, 0.0), (3000.0, 3000.0), (-3000.0, 12.0), (0.4, -3000.0)] {
            for tail in (0..8).map(|eighth| Some(f64::from(eighth) * 45.0)) {
                let lines = drawn(&[("shaft-of-oak", x_mm, y_mm, tail)]);
                assert!(lines.iter().all(|line| line.chars().count() <= 80));
                assert!(lines.iter().any(|line| line.contains("sha")), "{lines:?}");
            }
        }
        assert!(drawn(&[]).is_empty());
    }
}
