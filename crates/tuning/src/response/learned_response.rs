//! The response of one part of the bow, from all its measured moves.

use nalgebra::{DMatrix, DVector, Matrix2, Matrix2x4, Matrix4, Vector2, Vector4};
use quarterturn_geometry::Offset;

use super::bow_move::BowMove;
use super::measured::{Along, Response};
use crate::design::{Combination, Planar};
use crate::observation::RESPONSE_MM_PER_MM;
use crate::posterior::Posterior;

/// Moves whose directions differ by less than about this angle, radians, tell of one line only.
const ONE_LINE: f64 = 0.2;

/// One step moves the bow no farther than this (common practice).
const LONGEST_STEP_MM: f64 = 1.6;

/// A move is read off a ruler to one in so many of a millimetre.
const PARTS_OF_A_MM: f64 = 10.0;

/// A proposed move goes the right way with at least this many standard deviations: nineteen times in twenty.
const SURELY: f64 = 1.644_853_626_951_473;

/// The columns of G, in mm at the target for each mm of the part: what a mm to the right does, then what a mm up does.
///
/// # Formula
/// A move Δₖ carries the common offset by dₖ = G Δₖ. The posterior gives all dₖ with their covariance V; with A the
/// matrix for which d = A g, g the entries of G, normal before with standard deviation ρ,
/// ```text
/// g | shots ~ N(K Aᵀ V⁻¹ d, K),   K = (Aᵀ V⁻¹ A + ρ⁻²)⁻¹
/// ```
/// # Source
/// Generalised least squares with a weak prior: A. C. Aitken, 1935, Proceedings of the Royal Society of Edinburgh 55,
/// 42. That ρ is 50 and has no sign is common practice.
pub struct LearnedResponse<'a> {
    moves: Vec<&'a BowMove>,
    mean: Vector4<f64>,
    covariance: Matrix4<f64>,
}

impl<'a> LearnedResponse<'a> {
    /// The response of the part that was moved last, where shots tell of it.
    pub fn of(moves: &'a [BowMove], posterior: &Posterior) -> Option<Self> {
        let part = moves.last()?.part;
        let told = |one: &&BowMove| one.part == part && one.shots_before > 0 && one.shots_after > 0;
        let moves: Vec<_> = moves.iter().filter(told).collect();
        if moves.is_empty() {
            return None;
        }
        let carried: Vec<_> = moves.iter().map(|one| carried(one, posterior)).collect();
        let known = posterior.joint_covariance(&carried).try_inverse()?;
        let off: Vec<f64> = carried.iter().flatten().map(|one| posterior.mean_of(one)).collect();
        let mut design = DMatrix::zeros(off.len(), 4);
        for (row, one) in moves.iter().enumerate() {
            design.fixed_view_mut::<2, 4>(2 * row, 0).copy_from(&of_move(one.by));
        }
        let weak = Matrix4::identity() * RESPONSE_MM_PER_MM.powi(-2);
        let told = design.transpose() * known;
        let precision: Matrix4<f64> = (&told * &design).fixed_view::<4, 4>(0, 0) + weak;
        let covariance = precision.try_inverse()?;
        let told = told * DVector::from_vec(off);
        Some(Self { moves, mean: covariance * told.fixed_rows::<4>(0), covariance })
    }

    /// What is reported of it.
    pub fn report(&self) -> Option<Response> {
        let part = self.moves.first()?.part;
        let shots = |of: fn(&BowMove) -> usize| self.moves.iter().map(|one| of(one)).sum();
        Some(Response {
            part,
            moves: self.moves.len(),
            along: self.directions().into_iter().map(|one| self.along(one)).collect(),
            shots_before: shots(|one| one.shots_before),
            shots_after: shots(|one| one.shots_after),
        })
    }

    /// The move of the part that should carry bare shafts by `wanted`, at most one step; nothing where it is not known
    /// which way that is, or no move that can be read off a ruler is needed.
    ///
    /// # Formula
    /// The Δ for which E|wanted − G Δ|² is least:
    /// ```text
    /// Δ = (E[GᵀG])⁻¹ E[G]ᵀ wanted
    /// ```
    pub fn proposed(&self, wanted: Offset) -> Option<Offset> {
        let wanted = Vector2::new(wanted.x_mm, wanted.y_mm);
        let [right, up] = [0, 2].map(|at| self.mean.fixed_rows::<2>(at).into_owned());
        let spread = |one: usize, other: usize| {
            self.covariance.fixed_view::<2, 2>(2 * one, 2 * other).trace()
        };
        let across = right.dot(&up) + spread(0, 1);
        let squares = Matrix2::new(
            right.norm_squared() + spread(0, 0),
            across,
            across,
            up.norm_squared() + spread(1, 1),
        );
        let by = squares.try_inverse()? * Vector2::new(right.dot(&wanted), up.dot(&wanted));
        let by = by * (LONGEST_STEP_MM / by.norm()).min(1.0);
        // No minus before a zero.
        let read = by.map(|mm| (mm * PARTS_OF_A_MM).round() / PARTS_OF_A_MM + 0.0);
        (read != Vector2::zeros() && self.surely_helps(read, wanted))
            .then(|| Offset::new(read.x, read.y))
    }

    /// Whether a move carries bare shafts toward `wanted`, and not away, with enough probability.
    fn surely_helps(&self, by: Vector2<f64>, wanted: Vector2<f64>) -> bool {
        let toward = of_move(Offset::new(by.x, by.y)).transpose() * wanted;
        let mean = toward.dot(&self.mean);
        mean >= SURELY * toward.dot(&(self.covariance * toward)).sqrt()
    }

    fn along(&self, direction: Offset) -> Along {
        let of = of_move(direction);
        let mean = of * self.mean;
        let covariance = of * self.covariance * of.transpose();
        Along { direction, mm_per_mm: Offset::new(mean.x, mean.y), covariance }
    }

    /// The directions that the moves tell of.
    fn directions(&self) -> Vec<Offset> {
        let longest = self
            .moves
            .iter()
            .map(|one| one.by)
            .max_by(|one, other| one.length().mm().total_cmp(&other.length().mm()));
        let Some(longest) = longest else { return Vec::new() };
        let beside = |one: &&BowMove| {
            let across = longest.x_mm * one.by.y_mm - longest.y_mm * one.by.x_mm;
            across.abs() > ONE_LINE * longest.length().mm() * one.by.length().mm()
        };
        if self.moves.iter().any(beside) {
            return vec![Offset::new(1.0, 0.0), Offset::new(0.0, 1.0)];
        }
        let one = longest * longest.length().mm().recip();
        let to_the_right = (one.x_mm, one.y_mm) > (0.0, 0.0);
        vec![if to_the_right { one } else { -one }]
    }
}

/// What a move carries bare shafts by, as a combination of the entries of G.
fn of_move(Offset { x_mm, y_mm }: Offset) -> Matrix2x4<f64> {
    Matrix2x4::new(x_mm, 0.0, y_mm, 0.0, 0.0, x_mm, 0.0, y_mm)
}

/// The common offset after a move less the one before.
fn carried(one: &BowMove, posterior: &Posterior) -> Planar {
    let layout = &posterior.layout;
    let (before, after) = (layout.bow(one.bow_before), layout.bow(one.bow_before + 1));
    [0, 1].map(|axis| Combination(vec![(before + axis, -1.0), (after + axis, 1.0)]))
}
