//! Groups of finished arrows with a planted truth.

use std::collections::BTreeMap;

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::{Index, Millimetres, Point};
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::{Group, Head, Hit, Shot, Start};

/// A truth that groups are drawn from.
pub struct Archer(Pcg64);

impl Archer {
    pub fn new(seed: u64) -> Self {
        Self(Pcg64::seed_from_u64(seed))
    }

    /// `n` points about `centre`, `half` times a round normal draw.
    pub fn points(
        &mut self,
        n: usize,
        centre: Vector2<f64>,
        half: Matrix2<f64>,
    ) -> Vec<Vector2<f64>> {
        let mut point = || {
            let z = Vector2::from_fn(|_, _| StandardNormal.sample(&mut self.0));
            centre + half * z
        };
        (0..n).map(|_| point()).collect()
    }

    /// `n` shots about `centre` with `sd_mm` per axis.
    pub fn group(
        &mut self,
        at_m: f64,
        head: &str,
        n: usize,
        centre: [f64; 2],
        sd_mm: f64,
    ) -> Group {
        let points = self.points(n, centre.into(), Matrix2::identity() * sd_mm);
        group(at_m, head, &points)
    }
}

/// A group with these hits.
pub fn group(at_m: f64, head: &str, hits: &[Vector2<f64>]) -> Group {
    let shots = hits.iter().enumerate().map(|(n, hit)| shot(n, Some(*hit))).collect();
    Group {
        distance: Millimetres::from_metres(at_m),
        head: head.parse::<Head>().unwrap(),
        start: Start::Warm,
        mounted: BTreeMap::new(),
        shots,
    }
}

/// The shot of arrow `n`.
pub fn shot(n: usize, hit: Option<Vector2<f64>>) -> Shot {
    let hit = hit.map(|hit| Hit {
        at: Point::new(hit.x, hit.y),
        lean: None,
        read_sd: None,
        lean_sd: None,
    });
    let shaft = (n + 1).to_string().parse().unwrap();
    Shot { shaft, index: Index::TWELVE, hit, call: None, flags: Vec::new() }
}
