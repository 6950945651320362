//! What is known of every shot from all the others.

use nalgebra::{DMatrix, DVector, Vector2};

use crate::Scales;
use crate::design::{self, Combination, Planar};
use crate::learn::{Learned, looseness_without};
use crate::observation::{Kind, Observation, Observations};
use crate::posterior::Posterior;
use crate::readings::{Coordinate, Reader, Reading};

/// The posterior at the scales as learned, with everything that went into it.
pub struct Evidence<'a> {
    pub seen: &'a Observations,
    pub scales: &'a Scales,
    pub posterior: Posterior,
    residuals_mm2: &'a [f64],
    coordinates: Vec<Coordinate>,
    /// Of each coordinate Σ w z, Σ w y and p + Σ w.
    sums: Vec<(Combination, f64, f64)>,
    /// For each shot, the place of the first of its end's four coordinates.
    end_of: Vec<usize>,
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

impl<'a> Evidence<'a> {
    /// Gathers what was learned.
    pub fn of(seen: &'a Observations, learned: &'a Learned) -> Self {
        let Learned { scales, weights, builds, residuals_mm2, .. } = learned;
        let layout = &learned.posterior.layout;
        let (coordinates, posterior) = Reader { seen, layout, scales, weights, builds }.solve();
        let mut end_of = vec![0; seen.shots.len()];
        for (at, coordinate) in coordinates.iter().enumerate().step_by(4) {
            coordinate.readings.iter().for_each(|reading| end_of[reading.shot] = at);
        }
        let sums = coordinates.iter().map(Coordinate::sums).collect();
        Self { seen, scales, posterior, residuals_mm2, coordinates, sums, end_of }
    }

    /// How a shot was entered.
    pub fn as_entered(&self, shot: usize) -> Told {
        let Observation { life, mark_rad, .. } = self.seen.shots[shot];
        Told { life, mark_rad }
    }

    /// The probability that a life does not repeat, from its other shots than these.
    pub fn loose_without(&self, life: usize, shots: &[usize]) -> f64 {
        looseness_without(self.seen, self.residuals_mm2, self.scales, life, shots).probability()
    }

    /// What was read of shots, hits before leans.
    pub fn readings(&self, shots: &[usize]) -> Vec<&Reading> {
        let of = |shot: usize| {
            let four = &self.coordinates[self.end_of[shot]..][..4];
            four.iter()
                .filter_map(move |one| one.readings.iter().find(|reading| reading.shot == shot))
        };
        shots.iter().flat_map(|&shot| of(shot)).collect()
    }

    /// The scatter of a shot's hit: what was read less what is expected, for each axis squared and weighed by how finely
    /// it counts; and the degrees of freedom that are left of the two.
    pub fn scatter(&self, shot: usize) -> Scatter {
        let first = self.end_of[shot];
        let mut scatter = Scatter::default();
        for (coordinate, reading) in (first..).zip(self.readings(&[shot])).take(2) {
            let (row, off) = self.less_end(coordinate, reading.row.clone(), reading.value);
            let known = self.posterior.variance_of(&row) + 1.0 / self.sums[coordinate].2;
            scatter.square += off * off * reading.weight;
            scatter.degrees_of_freedom += 1.0 - known * reading.weight;
        }
        scatter
    }

    /// The equations of shots, were they as `told`.
    pub fn rows(&self, shots: &[usize], told: &[Told]) -> Rows {
        let mut rows = Vec::new();
        for (&at, told) in shots.iter().zip(told) {
            let (shot, first) = (&self.seen.shots[at], self.end_of[at]);
            rows.push((first, self.less_ends(first, self.hit(shot, *told), shot.hit_mm)));
            if let Some(lean_deg) = shot.lean_deg {
                let first = first + 2;
                rows.push((first, self.less_ends(first, self.lean(shot, *told), lean_deg)));
            }
        }
        Rows {
            off: rows.iter().flat_map(|(_, (_, off))| *off).collect::<Vec<_>>().into(),
            coordinates: rows.iter().flat_map(|&(first, _)| [first, first + 1]).collect(),
            planar: rows.into_iter().map(|(_, (planar, _))| planar).collect(),
        }
    }

    /// The covariance of the rows of several, their ends' own means included.
    pub fn covariance(&self, of: [&Rows; 2]) -> DMatrix<f64> {
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
