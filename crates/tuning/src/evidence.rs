//! What is known of every shot from all the others.

use std::cell::OnceCell;

use nalgebra::{DMatrix, DVector, Vector2};

use crate::Scales;
use crate::design::{self, Combination, Planar};
use crate::learn::{Foretold, Looseness};
use crate::observation::{Kind, Observation, Observations};
use crate::posterior::Posterior;
use crate::readings::{Coordinate, Reader, Reading};

/// So many shots of a shaft are taken out together: beyond, its other shots foretell one of them better than these do.
const TOGETHER: usize = 8;

/// The last so many shots of a shaft tell whether it repeats.
const LAST: usize = 3 * TOGETHER;

/// The posterior at stated scales, with everything that went into it.
pub struct Evidence<'a> {
    pub seen: &'a Observations,
    pub scales: &'a Scales,
    pub posterior: Posterior,
    pub coordinates: Vec<Coordinate>,
    /// Of each coordinate Σ w z, Σ w y and p + Σ w.
    sums: Vec<(Combination, f64, f64)>,
    /// For each shot, the place of the first of its end's four coordinates.
    end_of: Vec<usize>,
    foretold: OnceCell<Vec<Vec<Foretold>>>,
}

/// Whose a shot was, and where the mark stood.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Told {
    /// Whose shot it is.
    pub life: usize,
    /// Where the mark stood, radians clockwise from 12 o'clock.
    pub mark_rad: f64,
}

/// Coordinates of shots as equations in the unknowns, each less what its end's own mean is expected to be.
pub struct Rows {
    /// Two rows each.
    pub planar: Vec<Planar>,
    /// What was read less what the posterior expects.
    pub off: DVector<f64>,
    /// The coordinate that each row is of.
    coordinates: Vec<usize>,
}

/// A weighed sum of squares and the degrees of freedom it has.
#[derive(Clone, Copy, Debug, Default)]
pub struct Scatter {
    /// Σ w d², d what was read less what is expected.
    pub square: f64,
    /// Σ (1 − w S), S the variance of what is expected.
    pub degrees_of_freedom: f64,
}

/// Two rows, what each is off, and the place of the first of the two coordinates that they are of.
type OfPlane = (usize, (Planar, [f64; 2]));

impl Rows {
    fn of(rows: impl Iterator<Item = OfPlane>) -> Self {
        let rows: Vec<_> = rows.collect();
        Self {
            off: rows.iter().flat_map(|(_, (_, off))| *off).collect::<Vec<_>>().into(),
            coordinates: rows.iter().flat_map(|&(first, _)| [first, first + 1]).collect(),
            planar: rows.into_iter().map(|(_, (planar, _))| planar).collect(),
        }
    }
}

impl<'a> Evidence<'a> {
    /// Reads what was observed.
    pub fn of(reader: &Reader<'a>) -> Self {
        let Reader { seen, scales, .. } = *reader;
        let (coordinates, posterior) = reader.solve();
        let mut end_of = vec![0; seen.shots.len()];
        for (at, coordinate) in coordinates.iter().enumerate().step_by(4) {
            coordinate.readings.iter().for_each(|reading| end_of[reading.shot] = at);
        }
        let sums = coordinates.iter().map(Coordinate::sums).collect();
        Self { seen, scales, posterior, coordinates, sums, end_of, foretold: OnceCell::new() }
    }

    /// How a shot was entered.
    pub fn as_entered(&self, shot: usize) -> Told {
        let Observation { life, mark_rad, .. } = self.seen.shots[shot];
        Told { life, mark_rad }
    }

    /// The hits of each life as all other shots foretell them; none of references.
    pub fn foretold(&self) -> &[Vec<Foretold>] {
        let of_each = || (0..self.seen.lives.len()).map(|life| self.foretold_of(life)).collect();
        self.foretold.get_or_init(of_each)
    }

    /// The probability that a life does not repeat, from its other shots than these.
    pub fn loose_without(&self, life: usize, shots: &[usize]) -> f64 {
        Looseness::of(&self.foretold()[life], self.scales, shots).probability()
    }

    fn foretold_of(&self, life: usize) -> Vec<Foretold> {
        let shots = self.seen.shots.iter().enumerate();
        let bare =
            shots.filter(|(_, shot)| shot.life == life && self.seen.kind_of(shot) == Kind::Bare);
        let bare: Vec<usize> = bare.map(|(at, _)| at).collect();
        bare[bare.len().saturating_sub(LAST)..]
            .chunks(TOGETHER)
            .filter_map(|some| Foretold::of(self, some))
            .collect()
    }

    /// What was read of shots, hits before leans.
    pub fn readings(&self, shots: &[usize]) -> Vec<&Reading> {
        shots.iter().flat_map(|&shot| self.readings_of(shot)).collect()
    }

    /// What was read of the hits of shots.
    pub fn hit_readings(&self, shots: &[usize]) -> Vec<&Reading> {
        shots.iter().flat_map(|&shot| self.readings_of(shot).take(2)).collect()
    }

    fn readings_of(&self, shot: usize) -> impl Iterator<Item = &Reading> {
        let four = &self.coordinates[self.end_of[shot]..][..4];
        four.iter().filter_map(move |one| one.readings.iter().find(|one| one.shot == shot))
    }

    /// The scatter of a shot's hit: what was read less what is expected, for each axis squared and weighed by how finely
    /// it counts; and the degrees of freedom that are left of the two.
    pub fn scatter(&self, shot: usize) -> Scatter {
        let first = self.end_of[shot];
        let mut scatter = Scatter::default();
        for (coordinate, reading) in (first..).zip(self.readings_of(shot)).take(2) {
            let (row, off) = self.less_end(coordinate, reading.row.clone(), reading.value);
            let known = self.posterior.variance_of(&row) + 1.0 / self.sums[coordinate].2;
            scatter.square += off * off * reading.weight;
            scatter.degrees_of_freedom += 1.0 - known * reading.weight;
        }
        scatter
    }

    /// The equations of shots, were they as `told`.
    pub fn rows(&self, shots: &[usize], told: &[Told]) -> Rows {
        let of = |(&at, told): (&usize, &Told)| {
            let (shot, first) = (&self.seen.shots[at], self.end_of[at]);
            let lean = shot.lean_deg.map(|lean_deg| {
                (first + 2, self.less_ends(first + 2, self.lean(shot, *told), lean_deg))
            });
            std::iter::once(self.hit_rows(at, *told)).chain(lean)
        };
        Rows::of(shots.iter().zip(told).flat_map(of))
    }

    /// The equations of the hits alone, as they were entered.
    pub fn hits(&self, shots: &[usize]) -> Rows {
        Rows::of(shots.iter().map(|&at| self.hit_rows(at, self.as_entered(at))))
    }

    fn hit_rows(&self, at: usize, told: Told) -> OfPlane {
        let (shot, first) = (&self.seen.shots[at], self.end_of[at]);
        (first, self.less_ends(first, self.hit(shot, told), shot.hit_mm))
    }

    /// The covariance of the rows of several, their ends' own means included.
    pub fn covariance(&self, of: &[&Rows]) -> DMatrix<f64> {
        let planar: Vec<_> = of.iter().flat_map(|rows| rows.planar.clone()).collect();
        let places: Vec<_> = of.iter().flat_map(|rows| rows.coordinates.clone()).collect();
        let mut covariance = self.posterior.joint_covariance(&planar);
        for (row, &place) in places.iter().enumerate() {
            for column in (0..places.len()).filter(|&column| places[column] == place) {
                covariance[(row, column)] += 1.0 / self.sums[place].2;
            }
        }
        covariance
    }

    fn hit(&self, shot: &Observation, Told { life, mark_rad }: Told) -> Planar {
        let layout = &self.posterior.layout;
        let mut hit = match self.seen.lives[life].kind {
            Kind::Bare => design::bare_hit(layout, life, shot.bow, mark_rad),
            Kind::Reference => design::reference_hit(layout, life),
        };
        for (axis, one) in hit.iter_mut().enumerate() {
            one.0.push((layout.sitting(shot.sitting) + axis, 1.0));
        }
        hit
    }

    fn lean(&self, shot: &Observation, Told { life, mark_rad }: Told) -> Planar {
        let (layout, slope) = (&self.posterior.layout, self.scales.lean_per_miss_deg_per_mm);
        match self.seen.lives[life].kind {
            Kind::Bare => design::bare_lean(layout, life, shot.bow, mark_rad, slope),
            Kind::Reference => design::reference_lean(layout, life),
        }
    }

    /// Two rows of which the first is of the coordinate `first`, each with the mean of its end.
    fn less_ends(&self, first: usize, [x, y]: Planar, read: Vector2<f64>) -> (Planar, [f64; 2]) {
        let (x, off_x) = self.less_end(first, x, read.x);
        let (y, off_y) = self.less_end(first + 1, y, read.y);
        ([x, y], [off_x, off_y])
    }

    /// A row with the mean of its end, e = (Σ w y − Σ w z·θ) / (p + Σ w), and what was read less what is expected.
    fn less_end(&self, coordinate: usize, row: Combination, read: f64) -> (Combination, f64) {
        let (of_end, values, weights) = &self.sums[coordinate];
        let of_end = of_end.clone().scaled(-1.0 / weights);
        let row = Combination([row.0, of_end.0].concat()).merged();
        let off = read - values / weights - self.posterior.mean_of(&row);
        (row, off)
    }
}
