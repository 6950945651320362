//! The printed face, from the picture of it in the documents, in shades of grey.

use nalgebra::Vector2;
use rand::{RngExt, SeedableRng};
use rand_pcg::Pcg64;
use roxmltree::{Document, Node};

/// Where the spot is on the sheet, mm from its upper left corner.
const SPOT: [f64; 2] = [101.5, 142.0];
/// How finely it is drawn.
const PX_A_MM: f64 = 6.0;
/// What it says of itself.
pub const SPACING_MM: f64 = 166.0;

/// The face as drawn, and smaller and smaller.
pub struct Sheet(Vec<Level>);

struct Level {
    px_a_mm: f64,
    width: usize,
    height: usize,
    /// 0 for ink, 1 for paper.
    values: Vec<f32>,
}

impl Sheet {
    /// The face of the documents, which a test holds to what the program draws.
    pub fn printed() -> Self {
        let svg = include_str!("../../../../docs/pictures/face.svg");
        let document = Document::parse(svg).unwrap();
        let mut level = Level::blank(210.0, 297.0);
        for node in document.descendants() {
            level.draw(node);
        }
        Self::of(level)
    }

    /// A sheet with nothing on it.
    pub fn blank() -> Self {
        Self::of(Level::blank(210.0, 297.0))
    }

    /// The face with one mark or two pasted over and four others, or parts of the same, where none should be.
    pub fn meddled_with(seed: u64) -> Self {
        let mut random = Pcg64::seed_from_u64(seed);
        let Self(mut levels) = Self::printed();
        let mut level = levels.swap_remove(0);
        let own = |right: f64, up: f64| Vector2::new(SPOT[0] + right, SPOT[1] - up);
        for _ in 0..2 {
            let [right, up] = [0, 1].map(|_| if random.random() { 83.0 } else { -83.0 });
            level.stroke(own(right, up), own(right, up), 13.0, 1.0);
        }
        for _ in 0..4 {
            let at = own(random.random_range(-80.0..80.0), random.random_range(-80.0..80.0));
            let dot = [2.0, 3.6, 5.8][random.random_range(0..3)];
            for (across_mm, shade) in [(12.0, 0.0), (8.4, 1.0), (dot, 0.0)] {
                level.stroke(at, at, across_mm, shade);
            }
        }
        Self::of(level)
    }

    fn of(level: Level) -> Self {
        let mut levels = vec![level];
        for _ in 0..3 {
            levels.push(levels.last().unwrap().half());
        }
        Self(levels)
    }

    /// How light it is at a place of the face where the picture has so many pixels a millimetre; nothing beside the sheet.
    pub fn at(&self, place_mm: Vector2<f64>, px_a_mm: f64) -> Option<f64> {
        let fine = self.0.iter().rfind(|level| level.px_a_mm >= px_a_mm * 0.8);
        fine.unwrap_or(&self.0[0]).at(SPOT[0] + place_mm.x, SPOT[1] - place_mm.y)
    }
}

impl Level {
    fn blank(width_mm: f64, height_mm: f64) -> Self {
        let [width, height] = [width_mm, height_mm].map(|mm| (mm * PX_A_MM) as usize);
        Self { px_a_mm: PX_A_MM, width, height, values: vec![1.0; width * height] }
    }

    fn half(&self) -> Self {
        let (width, height) = (self.width / 2, self.height / 2);
        let value = |at: usize| {
            let corner = 2 * (at / width) * self.width + 2 * (at % width);
            let four = [corner, corner + 1, corner + self.width, corner + self.width + 1];
            four.map(|at| self.values[at]).iter().sum::<f32>() / 4.0
        };
        let values = (0..width * height).map(value).collect();
        Self { px_a_mm: self.px_a_mm / 2.0, width, height, values }
    }

    fn at(&self, x_mm: f64, y_mm: f64) -> Option<f64> {
        let (x, y) = (x_mm * self.px_a_mm - 0.5, y_mm * self.px_a_mm - 0.5);
        if x < 0.0 || y < 0.0 || x >= self.width as f64 - 1.0 || y >= self.height as f64 - 1.0 {
            return None;
        }
        let (left, top) = (x as usize, y as usize);
        let (over, under) = ((x - left as f64) as f32, (y - top as f64) as f32);
        let at = top * self.width + left;
        let row = |at: usize| self.values[at] * (1.0 - over) + self.values[at + 1] * over;
        Some(f64::from(row(at) * (1.0 - under) + row(at + self.width) * under))
    }

    fn draw(&mut self, node: Node) {
        // What a group says holds for all in it.
        let said = |name| node.ancestors().find_map(|node| node.attribute(name));
        let number = |name| said(name).and_then(|n| n.parse().ok()).unwrap_or(0.0);
        let class = said("class").unwrap_or_default();
        let shade = if matches!(class, "paper" | "blank") { 1.0 } else { 0.0 };
        match node.tag_name().name() {
            "path" => {
                let (width_mm, shade) = match class {
                    "faint" => (0.15, 0.7),
                    "line" => (0.3, 0.0),
                    _ => (0.6, 0.0),
                };
                for [from, to] in strokes(node.attribute("d").unwrap()) {
                    self.stroke(from, to, width_mm, shade);
                }
            }
            "circle" => {
                let middle = Vector2::new(number("cx"), number("cy"));
                let out = if class == "blank" { 0.15 } else { 0.0 };
                self.stroke(middle, middle, 2.0 * (number("r") + out), 0.0);
                self.stroke(middle, middle, 2.0 * (number("r") - out), shade);
            }
            "rect" if node.parent().is_some_and(|parent| !parent.has_tag_name("clipPath")) => {
                let (left, half) = (number("x"), number("height") / 2.0);
                let y = number("y") + half;
                let ends = [left + half, left + number("width") - half];
                let [from, to] = ends.map(|x| Vector2::new(x, y));
                self.stroke(from, to, 2.0 * half, shade);
            }
            // Letters are strokes side by side.
            "text" => {
                let (size, count) = (number("font-size"), node.text().unwrap_or_default().len());
                let wide = 0.55 * size;
                let ahead = match said("text-anchor") {
                    Some("middle") => wide * count as f64 / 2.0,
                    _ => 0.0,
                };
                for letter in 0..count {
                    let x = number("x") - ahead + wide * (letter as f64 + 0.4);
                    let [foot, head] =
                        [0.0, -0.7 * size].map(|up| Vector2::new(x, number("y") + up));
                    self.stroke(foot, head, 0.14 * size, 0.1);
                }
            }
            _ => {}
        }
    }

    /// All within half of `width_mm` of the way from one place to another, its edges a pixel soft.
    fn stroke(&mut self, from: Vector2<f64>, to: Vector2<f64>, width_mm: f64, shade: f32) {
        let reach = width_mm / 2.0 + 1.0 / self.px_a_mm;
        let pixels = |low: f64, high: f64, most: usize| {
            let [low, high] = [low - reach, high + reach].map(|mm| (mm * self.px_a_mm) as usize);
            low..(high + 1).min(most)
        };
        let (xs, ys) = (
            pixels(from.x.min(to.x), from.x.max(to.x), self.width),
            pixels(from.y.min(to.y), from.y.max(to.y), self.height),
        );
        let along = to - from;
        for (x, y) in ys.flat_map(|y| xs.clone().map(move |x| (x, y))) {
            let place = Vector2::new(x as f64 + 0.5, y as f64 + 0.5) / self.px_a_mm;
            let share =
                ((place - from).dot(&along) / along.norm_squared().max(1e-9)).clamp(0.0, 1.0);
            let off = (place - from - along * share).norm();
            let cover = ((width_mm / 2.0 - off) * self.px_a_mm + 0.5).clamp(0.0, 1.0) as f32;
            let cover = cover.min((width_mm * self.px_a_mm) as f32);
            let value = &mut self.values[y * self.width + x];
            *value += cover * (shade - *value);
        }
    }
}

/// The straight strokes of a path: `M` to a place, and from there by `h`, `v` and `l`.
fn strokes(path: &str) -> Vec<[Vector2<f64>; 2]> {
    let mut at = Vector2::zeros();
    let mut strokes = Vec::new();
    let begins: Vec<usize> = path.match_indices(char::is_alphabetic).map(|(at, _)| at).collect();
    let ends = begins.iter().skip(1).copied().chain([path.len()]);
    for (begin, end) in begins.iter().zip(ends) {
        let spaced = path[begin + 1..end].replace('-', " -");
        let numbers: Vec<f64> = spaced.split_whitespace().map(|n| n.parse().unwrap()).collect();
        let by = match (&path[*begin..=*begin], numbers.as_slice()) {
            ("M", &[x, y]) => {
                at = Vector2::new(x, y);
                continue;
            }
            ("h", &[x]) => Vector2::new(x, 0.0),
            ("v", &[y]) => Vector2::new(0.0, y),
            ("l", &[x, y]) => Vector2::new(x, y),
            other => panic!("{other:?} is not read here"),
        };
        strokes.push([at, at + by]);
        at += by;
    }
    strokes
}
