//! How the unknowns of the flight model make a hit and a lean.
//!
//! ```text
//! hit   h = m + C + c + T(φ)                                     bare shaft, index φ
//! lean  l = λ + D + s (C + c + T(φ)) + d + Rot(−φ) u + Rot(−2φ) v
//! T(φ) = Rot(−φ) (ā + a) + Rot(φ) a′ + Rot(−2φ) (b̄ + b) + Rot(2φ) b′
//! hit   h = m + r,   lean  l = λ + q                             reference
//! ```
//! `Rot(α)` turns counter-clockwise, so that turning the mark clockwise turns `a` clockwise. m and λ are the end's,
//! C and D the bow's, ā and b̄ what all shafts share, s the lean that goes with a miss, (d, u, v) what a shaft's
//! lean differs from that relation.

use nalgebra::Vector2;

use crate::layout::{Layout, shaft};

/// A linear combination of unknowns: places and coefficients.
#[derive(Clone, Debug, Default)]
pub struct Combination(pub Vec<(usize, f64)>);

/// The horizontal and the vertical component of something in the plane.
pub type Planar = [Combination; 2];

impl Combination {
    /// Its value.
    pub fn of(&self, value_at: impl Fn(usize) -> f64) -> f64 {
        self.0.iter().map(|&(at, factor)| factor * value_at(at)).sum()
    }

    /// `factor` times the combination.
    pub fn scaled(mut self, factor: f64) -> Self {
        self.0.iter_mut().for_each(|(_, by)| *by *= factor);
        self
    }

    /// The same combination with each place named once, in order.
    pub fn merged(mut self) -> Self {
        self.0.sort_unstable_by_key(|&(at, _)| at);
        self.0.dedup_by(|next, kept| {
            let same = next.0 == kept.0;
            if same {
                kept.1 += next.1;
            }
            same
        });
        self
    }
}

/// Adds `factor` times the planar unknown at `at`, turned counter-clockwise by `turn_rad`.
fn add(to: &mut Planar, at: usize, factor: f64, turn_rad: f64) {
    let (sin, cos) = turn_rad.sin_cos();
    let [x, y] = to;
    x.0.extend([(at, factor * cos), (at + 1, -factor * sin)]);
    y.0.extend([(at, factor * sin), (at + 1, factor * cos)]);
}

/// A shaft's centre and turning parts, `factor` times, with its mark at `mark_rad`.
fn add_shaft(to: &mut Planar, layout: &Layout, life: usize, factor: f64, mark_rad: f64) {
    let own = layout.life(life);
    add(to, own + shaft::CENTRE, factor, 0.0);
    add(to, own + shaft::TURNING, factor, -mark_rad);
    add(to, own + shaft::TURNING_AGAINST, factor, mark_rad);
    add(to, own + shaft::STIFF, factor, -2.0 * mark_rad);
    add(to, own + shaft::STIFF_AGAINST, factor, 2.0 * mark_rad);
    add(to, layout.set(), factor, -mark_rad);
    add(to, layout.set() + 2, factor, -2.0 * mark_rad);
}

/// What a bare shaft itself adds to where it lands.
pub fn own_miss(layout: &Layout, life: usize, mark_rad: f64) -> Planar {
    let mut miss = Planar::default();
    add_shaft(&mut miss, layout, life, 1.0, mark_rad);
    miss
}

/// Where a bare shaft lands, from where references land.
pub fn bare_hit(layout: &Layout, life: usize, bow: usize, mark_rad: f64) -> Planar {
    let mut hit = Planar::default();
    add(&mut hit, layout.bow(bow), 1.0, 0.0);
    add_shaft(&mut hit, layout, life, 1.0, mark_rad);
    hit
}

/// How a bare shaft leans, from how references lean.
pub fn bare_lean(
    layout: &Layout,
    life: usize,
    bow: usize,
    mark_rad: f64,
    lean_per_miss_deg_per_mm: f64,
) -> Planar {
    let mut lean = lean_discrepancy(layout, life, mark_rad);
    add(&mut lean, layout.bow(bow) + 2, 1.0, 0.0);
    add(&mut lean, layout.bow(bow), lean_per_miss_deg_per_mm, 0.0);
    add_shaft(&mut lean, layout, life, lean_per_miss_deg_per_mm, mark_rad);
    lean
}

/// What the lean of a bare shaft differs from the relation to its hits.
pub fn lean_discrepancy(layout: &Layout, life: usize, mark_rad: f64) -> Planar {
    let mut lean = Planar::default();
    let own = layout.life(life);
    add(&mut lean, own + shaft::CENTRE_LEAN, 1.0, 0.0);
    add(&mut lean, own + shaft::TURNING_LEAN, 1.0, -mark_rad);
    add(&mut lean, own + shaft::STIFF_LEAN, 1.0, -2.0 * mark_rad);
    lean
}

/// What one reference differs from the others, in its hit.
pub fn reference_hit(layout: &Layout, life: usize) -> Planar {
    single(layout.life(life))
}

/// What one reference differs from the others, in its lean.
pub fn reference_lean(layout: &Layout, life: usize) -> Planar {
    single(layout.life(life) + 2)
}

/// The planar unknown at `at` by itself.
pub fn single(at: usize) -> Planar {
    [Combination(vec![(at, 1.0)]), Combination(vec![(at + 1, 1.0)])]
}

/// The same, measured from the mean of the references in use.
pub fn from_references(mut of: Planar, layout: &Layout, references: &[usize]) -> Planar {
    for &reference in references {
        add(&mut of, layout.life(reference), -1.0 / references.len() as f64, 0.0);
    }
    of
}

/// The value of a planar combination.
pub fn value(of: &Planar, value_at: impl Fn(usize) -> f64 + Copy) -> Vector2<f64> {
    Vector2::new(of[0].of(value_at), of[1].of(value_at))
}
