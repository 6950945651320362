//! The level of every test and the coverage of every interval by simulation, at 3, 5, 10 and 30 points where they are defined.

use nalgebra::{Matrix2, Vector2};
use quarterturn_statistics::{
    Family, Level, PlanarSample, PooledSpread, Sample, Side, TestResult, bartlett_test,
    brown_forsythe_test, generalized_esd, grubbs_test, planar_brown_forsythe_test, scatter_excess,
    spread_ratio,
};
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::tolerance::STANDARD_ERRORS;

const DRAWS: usize = 4000;
const SIZES: [usize; 4] = [3, 5, 10, 30];

/// Draws samples whose truth is known.
struct Nature(Pcg64);

impl Nature {
    fn normal(&mut self) -> f64 {
        StandardNormal.sample(&mut self.0)
    }

    /// Round, of σ = 1, about the origin.
    fn round(&mut self, n: usize) -> PlanarSample {
        self.shaped(n, Vector2::zeros(), Matrix2::identity())
    }

    /// Twice as long as wide, along a slant, about (3, −1).
    fn slanting(&mut self, n: usize) -> PlanarSample {
        self.shaped(n, CENTRE, Matrix2::new(2.0, 0.0, 1.0, 0.8))
    }

    fn shaped(&mut self, n: usize, centre: Vector2<f64>, root: Matrix2<f64>) -> PlanarSample {
        let points = (0..n).map(|_| centre + root * Vector2::new(self.normal(), self.normal()));
        PlanarSample::new(points.collect()).unwrap()
    }

    fn numbers(&mut self, n: usize) -> Sample {
        Sample::new((0..n).map(|_| self.normal()).collect()).unwrap()
    }
}

const CENTRE: Vector2<f64> = Vector2::new(3.0, -1.0);

/// What is known of how often something happens.
#[derive(Clone, Copy)]
enum Rate {
    Exactly(f64),
    AtMost(f64),
    AtLeast(f64),
    /// An approximation, measured.
    Between(f64, f64),
}

/// Fails unless `happens` at the rate that is known, for each size from `fewest` on.
#[track_caller]
fn assert_rate(rate: Rate, fewest: usize, happens: impl Fn(&mut Nature, usize) -> bool) {
    for n in SIZES.into_iter().filter(|n| *n >= fewest) {
        let mut nature = Nature(Pcg64::seed_from_u64(n as u64));
        let seen = (0..DRAWS).filter(|_| happens(&mut nature, n)).count() as f64 / DRAWS as f64;
        let (low, high) = match rate {
            Rate::Exactly(p) => (p, p),
            Rate::AtMost(p) => (0.0, p),
            Rate::AtLeast(p) => (p, 1.0),
            Rate::Between(low, high) => (low, high),
        };
        let error = |p: f64| STANDARD_ERRORS * (p * (1.0 - p) / DRAWS as f64).sqrt();
        let fits = (low - error(low)..=high + error(high)).contains(&seen);
        assert!(fits, "{seen} of samples of {n}, where {low} to {high} are expected");
    }
}

fn rejects(test: TestResult) -> bool {
    test.rejects_at(Level::P95)
}

#[test]
fn exact_tests() {
    let exactly = Rate::Exactly(0.05);
    assert_rate(exactly, 3, |nature, n| {
        rejects(nature.slanting(n).mean_estimate().unwrap().test(CENTRE))
    });
    assert_rate(exactly, 3, |nature, n| {
        let [one, two] = [nature.slanting(n), nature.round(n)];
        rejects(one.paired_difference(&two).unwrap().test(CENTRE))
    });
    assert_rate(exactly, 3, |nature, n| {
        let [one, two] = [nature.slanting(n), nature.slanting(n + 2)];
        rejects(one.pooled_difference(&two).unwrap().test(Vector2::zeros()))
    });
    assert_rate(exactly, 3, |nature, n| rejects(nature.round(n).sphericity_test().unwrap()));
    assert_rate(exactly, 4, |nature, n| {
        rejects(nature.slanting(n).drift().unwrap().test(Vector2::zeros()))
    });
    assert_rate(exactly, 3, |nature, n| {
        let groups = [nature.round(n), nature.round(n + 1)].map(|group| PooledSpread::of([&group]));
        rejects(spread_ratio(&groups[0], &groups[1], Level::P95).unwrap().test)
    });
    assert_rate(exactly, 3, |nature, n| {
        rejects(grubbs_test(&nature.numbers(n), Side::Either).unwrap().test)
    });
    assert_rate(exactly, 3, |nature, n| {
        rejects(grubbs_test(&nature.numbers(n), Side::Largest).unwrap().test)
    });
}

#[test]
fn approximate_tests() {
    assert_rate(Rate::Between(0.045, 0.055), 3, |nature, n| {
        let groups = [n, n, n, n + 3].map(|n| PooledSpread::from(&nature.numbers(n)));
        rejects(bartlett_test(&groups).unwrap())
    });
    assert_rate(Rate::AtMost(0.05), 3, |nature, n| {
        let groups = [n, n, n, n + 3].map(|n| nature.numbers(n));
        rejects(brown_forsythe_test(&groups).unwrap())
    });
    assert_rate(Rate::AtMost(0.055), 3, |nature, n| {
        let groups = [n, n, n, n + 3].map(|n| nature.round(n));
        rejects(planar_brown_forsythe_test(&groups).unwrap())
    });
    assert_rate(Rate::Between(0.035, 0.06), 5, |nature, n| {
        let [one, two] = [nature.slanting(n), nature.round(n + 2)];
        rejects(one.unequal_difference(&two).unwrap().test(CENTRE))
    });
    // Fewer than 25 values are more often flagged than said.
    assert_rate(Rate::Between(0.045, 0.06), 30, |nature, n| {
        generalized_esd(&nature.numbers(n), 5, Level::P95).unwrap().outliers > 0
    });
    assert_rate(Rate::Between(0.04, 0.05), 3, |nature, n| {
        let groups = [n, n, n + 1, n, n, n].map(|n| PooledSpread::of([&nature.round(n)]));
        let excess = scatter_excess(&groups).unwrap();
        excess.iter().flatten().any(|one| one.adjusted_p_value <= 0.05)
    });
}

#[test]
fn regions_and_intervals() {
    let exactly = Rate::Exactly(0.90);
    assert_rate(exactly, 3, |nature, n| {
        nature.slanting(n).mean_estimate().unwrap().region(Level::P90).contains(CENTRE)
    });
    assert_rate(exactly, 3, |nature, n| {
        let one_more = nature.slanting(1).points()[0];
        nature.slanting(n).prediction_ellipse(Level::P90).unwrap().contains(one_more)
    });
    assert_rate(exactly, 3, |nature, n| {
        let estimate = nature.slanting(n).mean_estimate().unwrap();
        let along = estimate.along(Vector2::new(1.0, 1.0), Family::Planned(1), Level::P90).unwrap();
        let truth = CENTRE.dot(&Vector2::new(1.0, 1.0)) / 2.0_f64.sqrt();
        (along.interval.lower..=along.interval.upper).contains(&truth)
    });
    assert_rate(Rate::AtLeast(0.90), 3, |nature, n| {
        let estimate = nature.slanting(n).mean_estimate().unwrap();
        [Vector2::x(), Vector2::y()].into_iter().all(|axis| {
            let along = estimate.along(axis, Family::Planned(2), Level::P90).unwrap();
            (along.interval.lower..=along.interval.upper).contains(&CENTRE.dot(&axis))
        })
    });
    assert_rate(exactly, 3, |nature, n| {
        let radius = PooledSpread::of([&nature.round(n)]).radius_holding(Level::P50, Level::P90);
        let interval = radius.unwrap().interval;
        (interval.lower..=interval.upper).contains(&(2.0 * 2.0_f64.ln()).sqrt())
    });
    assert_rate(exactly, 3, |nature, n| {
        // Along (1, 1)/√2 the slanting cloud has the variance (2² + 3 · 1 + 0.8²)/2 + …: computed from its root.
        let root: Matrix2<f64> = Matrix2::new(2.0, 0.0, 1.0, 0.8);
        let along = root.transpose() * Vector2::new(1.0, 1.0) / 2.0_f64.sqrt();
        let spread =
            PooledSpread::along(Vector2::new(1.0, 1.0), [&nature.slanting(n), &nature.slanting(2)]);
        let interval = spread.estimate(Level::P90).unwrap().interval;
        (interval.lower..=interval.upper).contains(&along.norm())
    });
    assert_rate(Rate::AtLeast(0.90), 5, |nature, n| {
        let radius = nature.round(n).radius_holding_estimate(Level::P50, Level::P90);
        let interval = radius.unwrap().interval;
        (interval.lower..=interval.upper).contains(&(2.0 * 2.0_f64.ln()).sqrt())
    });
    assert_rate(exactly, 3, |nature, n| {
        let groups = [nature.round(n), nature.round(n + 1)].map(|group| PooledSpread::of([&group]));
        let interval = spread_ratio(&groups[0], &groups[1], Level::P90).unwrap().interval;
        (interval.lower..=interval.upper).contains(&1.0)
    });
}

/// A truth exactly as far off as it may be is called within in one of twenty at most; a truth near the middle mostly, with many
/// points.
#[test]
fn equivalence() {
    let far = CENTRE.norm();
    let within = |nature: &mut Nature, n: usize, distance: f64| {
        let estimate = nature.slanting(n).mean_estimate().unwrap();
        estimate.distance(Level::P95).unwrap().is_within(distance)
    };
    assert_rate(Rate::AtMost(0.05), 3, |nature, n| within(nature, n, far));
    assert_rate(Rate::Between(0.04, 0.05), 30, |nature, n| within(nature, n, far));
    assert_rate(Rate::AtLeast(0.95), 30, |nature, n| within(nature, n, far + 1.5));
}
