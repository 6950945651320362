//! Whether the lines of the grid run where a view says: a proof of it that owes nothing to the marks.

use quarterturn_geometry::{Homography, Millimetres, Offset, Point};

use crate::Dot;
use crate::look::Look;

/// Bold lines stand so far apart, by the unit of the grid: every fifth centimetre, every second inch.
const STEPS_MM: [f64; 2] = [50.0, 50.8];
/// A line is looked at in pieces of this length.
const PIECE_MM: f64 = 12.0;
/// Places in a piece.
const PLACES: i32 = 12;
/// A line is looked for so many steps to each side of where it should be, each this long. The next fine line is farther.
const REACH: i32 = 14;
const STEP_MM: f64 = 0.25;
/// A line is seen where it is so much darker than what is beside it.
const CLEAR: f64 = 0.035;
/// And runs where it should within this.
const THERE_MM: f64 = 0.8;

/// Near a mark that is not seen at least so many pieces must be sharply there.
const LEAST_NEAR: usize = 4;
/// A lens that bends by 1 % moves lines by less, another unit of the grid by more.
const SHARP_MM: f64 = 0.5;
/// Of ten pieces that are seen, shadows and shafts may be taken for lines in the others.
const MOST_IN_TEN: usize = 5;

/// What is seen of the bold lines.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Lines(pub Vec<Piece>);

/// A piece of a line that is seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Piece {
    /// Its middle, where it should run.
    pub point: Point,
    /// Which way it runs.
    along: Along,
    /// How far beside that it does run, mm; up or to the right.
    pub off_mm: f64,
}

impl Piece {
    /// How much of an offset is across the line, up or to the right.
    pub fn across_mm(&self, offset: Offset) -> f64 {
        match self.along {
            Along::X => offset.y_mm,
            Along::Y => offset.x_mm,
        }
    }

    /// How far out its line is.
    fn place_mm(&self) -> f64 {
        self.across_mm(self.point.from_spot())
    }

    /// Whether it runs just where it should.
    fn is_sharp(&self) -> bool {
        self.off_mm.abs() <= SHARP_MM
    }

    fn is_there(&self) -> bool {
        self.off_mm.abs() <= THERE_MM
    }
}

impl Lines {
    /// The bold lines between marks that stand `spacing` apart, by the unit that agrees best.
    pub fn of(look: &Look, view: &Homography, spacing: Millimetres) -> Self {
        let [metric, imperial] =
            STEPS_MM.map(|step_mm| Self::of_step(look, view, spacing, step_mm));
        // In the wrong unit lines run 0.8 mm off and more.
        let sharp = |lines: &Self| lines.0.iter().filter(|piece| piece.is_sharp()).count();
        if sharp(&imperial) > sharp(&metric) { imperial } else { metric }
    }

    /// Those that run `step_mm` apart.
    pub fn of_step(look: &Look, view: &Homography, spacing: Millimetres, step_mm: f64) -> Self {
        let out_mm = spacing.mm() / 2.0 + Dot::MARK.mm();
        let count = up_to(out_mm / step_mm);
        let lines = count.flat_map(|n| if n > 0.0 { vec![n, -n] } else { vec![n] });
        let pieces = up_to(2.0 * out_mm / PIECE_MM - 1.0).map(|n| (n + 0.5) * PIECE_MM - out_mm);
        let middles: Vec<f64> = pieces.collect();
        let of_line = |n: f64| {
            let at_mm = n * step_mm;
            let both = middles.iter().flat_map(move |&on_mm| {
                [(Along::X, Point::new(on_mm, at_mm)), (Along::Y, Point::new(at_mm, on_mm))]
            });
            both.filter_map(|(along, point)| {
                let off_mm = off_mm(look, view, along, point)?;
                Some(Piece { point, along, off_mm })
            })
        };
        Self(lines.flat_map(of_line).collect())
    }

    fn there(&self) -> usize {
        self.0.iter().filter(|piece| piece.is_there()).count()
    }

    /// Those beside the middle lines, which run through the spot whatever the spacing.
    fn outer(&self) -> Self {
        Self(self.0.iter().copied().filter(|piece| piece.place_mm() != 0.0).collect())
    }

    /// Whether enough of them say that the view is right.
    pub fn prove(&self) -> bool {
        self.there() >= 10 && self.are_mostly_there() && self.outer().are_mostly_there()
    }

    /// Whether they say so of a view one of whose marks was not seen: sharply, and near that corner as well, where an
    /// error of it shows most.
    pub fn prove_near(&self, corner: Point) -> bool {
        let is_near = |piece: &&Piece| {
            let at = piece.point;
            at.x_mm * corner.x_mm > 0.0 && at.y_mm * corner.y_mm > 0.0 && piece.place_mm() != 0.0
        };
        let near: Vec<&Piece> = self.0.iter().filter(is_near).collect();
        let sharp = near.iter().filter(|piece| piece.is_sharp()).count();
        let is_sharp = self.error().is_some_and(|error| error.mm() <= SHARP_MM / 2.0);
        self.prove() && is_sharp && sharp >= LEAST_NEAR && sharp * 2 >= near.len()
    }

    /// Whether they say that it is wrong.
    pub fn disprove(&self) -> bool {
        [self, &self.outer()].iter().any(|lines| lines.0.len() >= 8 && !lines.are_mostly_there())
    }

    fn are_mostly_there(&self) -> bool {
        self.there() * 10 >= self.0.len() * MOST_IN_TEN
    }

    /// How far off those are that run where they should, as a root mean square; `None` where there is none.
    pub fn error(&self) -> Option<Millimetres> {
        let there = self.0.iter().filter(|piece| piece.is_there());
        let sum_mm2: f64 = there.map(|piece| piece.off_mm * piece.off_mm).sum();
        (self.there() > 0).then(|| Millimetres::new((sum_mm2 / self.there() as f64).sqrt()))
    }
}

/// 0, 1, 2 and so on as far as `most`.
fn up_to(most: f64) -> impl Iterator<Item = f64> {
    (0..1000).map(f64::from).take_while(move |n| *n <= most)
}

/// Which way a line runs.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Along {
    X,
    Y,
}

/// How far a line runs beside its place in the piece of it about `middle`, where it is seen.
fn off_mm(look: &Look, view: &Homography, along: Along, middle: Point) -> Option<f64> {
    let mean = |step: i32| {
        let aside_mm = f64::from(step) * STEP_MM;
        let light = |place: i32| {
            let on_mm = PIECE_MM * ((f64::from(place) + 0.5) / f64::from(PLACES) - 0.5);
            let offset = match along {
                Along::X => Offset::new(on_mm, aside_mm),
                Along::Y => Offset::new(aside_mm, on_mm),
            };
            look.at(view.pixel_of(middle + offset)?)
        };
        let sum: Option<f64> = (0..PLACES).map(light).sum();
        Some(sum? / f64::from(PLACES))
    };
    let profile: Vec<f64> = (-REACH..=REACH).map(mean).collect::<Option<_>>()?;
    let smooth = profile.windows(3).map(|w| (w[0] + 2.0 * w[1] + w[2]) / 4.0);
    let (at, darkest) = (1 - REACH..).zip(smooth).min_by(|one, other| one.1.total_cmp(&other.1))?;
    let mut sorted = profile.clone();
    sorted.sort_by(f64::total_cmp);
    let beside = sorted[profile.len() / 2];
    let is_line = at.abs() < REACH - 2 && darkest < beside * (1.0 - CLEAR);
    is_line.then(|| f64::from(at) * STEP_MM)
}
