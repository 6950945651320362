//! What cannot be computed with is refused with a typed error, or has a stated answer.

use nalgebra::{DMatrix, Matrix2, Vector2};
use quarterturn_statistics::distributions::{
    ChiSquared, DistributionError, NoncentralChiSquared, StudentT,
};
use quarterturn_statistics::{
    HarmonicError, HarmonicFit, Level, MeanDirection, MixedDesign, MixedError, MixedModel,
    PlanarSample, PooledSpread, Sample, SampleError, SpreadError, probability_within_circle,
};

#[test]
fn samples() {
    assert_eq!(Sample::new(vec![]), Err(SampleError::Empty));
    assert_eq!(PlanarSample::new(vec![]), Err(SampleError::Empty));
    let infinite = Sample::new(vec![1.0, f64::INFINITY]);
    assert_eq!(infinite, Err(SampleError::NotFinite { position: 1, value: f64::INFINITY }));
    let nan = PlanarSample::new(vec![Vector2::zeros(), Vector2::new(0.0, f64::NAN)]);
    assert!(matches!(nan, Err(SampleError::NotFinite { position: 1, .. })));
    let huge = Sample::new(vec![1e300]);
    assert_eq!(huge, Err(SampleError::TooLarge { position: 0, value: 1e300 }));
    assert_eq!(
        huge.unwrap_err().to_string(),
        "observation 1 is 1e300; at most 1e70 can be computed with"
    );
}

#[test]
fn the_largest_values_stay_finite() {
    let points = [(1e70, -1e70), (-1e70, 1e70), (1e70, 1e70)].map(|(x, y)| Vector2::new(x, y));
    let sample = PlanarSample::new(points.to_vec()).unwrap();
    assert!(sample.covariance().unwrap().determinant().is_finite());
    let spread = PooledSpread::of([&sample]).estimate(Level::P95).unwrap();
    assert!(spread.interval.upper.is_finite());
}

#[test]
fn one_value_and_equal_values() {
    let one = Sample::new(vec![0.1]).unwrap();
    assert_eq!((one.variance(), one.mean_estimate(Level::P95)), (None, None));
    let equal = Sample::new(vec![0.1; 7]).unwrap();
    assert_eq!(equal.variance(), Some(0.0));
    assert_eq!(equal.mean_estimate(Level::P95).map(|e| e.interval.upper), Some(0.1));
    let point = PlanarSample::new(vec![Vector2::new(0.1, 0.7)]).unwrap();
    assert_eq!(point.covariance(), None);
}

#[test]
fn spreads() {
    let estimate = |points: Vec<Vector2<f64>>| {
        PooledSpread::of([&PlanarSample::new(points).unwrap()]).estimate(Level::P95)
    };
    let one = vec![Vector2::new(0.1, 0.7)];
    assert_eq!(estimate(one.clone()), Err(SpreadError::TooFewPoints { points: 1 }));
    let equal = vec![one[0]; 9];
    assert_eq!(estimate(equal), Err(SpreadError::NoScatter { sum_of_squares: 0.0 }));
    let nan = PooledSpread { sum_of_squares: f64::NAN, degrees_of_freedom: 4, points: 3 };
    assert!(matches!(nan.estimate(Level::P95), Err(SpreadError::NoScatter { .. })));
    let vast = PooledSpread { sum_of_squares: 1.0, degrees_of_freedom: usize::MAX, points: 3 };
    assert!(matches!(vast.estimate(Level::P95), Err(SpreadError::Distribution(_))));
}

#[test]
fn levels_and_distributions() {
    for p in [0.0, 1.0, -0.1, 1.5, f64::NAN, f64::INFINITY] {
        assert!(Level::new(p).is_err());
    }
    let tight = Level::new(1.0 - f64::EPSILON).unwrap();
    assert!(tight.upper_end().probability() < 1.0 && tight.lower_end().probability() > 0.0);
    for nu in [0.0, -1.0, 1e300, f64::NAN, f64::INFINITY] {
        let refused = |error| matches!(error, DistributionError::DegreesOfFreedom { .. });
        assert!(refused(ChiSquared::new(nu).unwrap_err()));
        assert!(refused(StudentT::new(nu).unwrap_err()));
        assert!(refused(NoncentralChiSquared::new(nu, 1.0).unwrap_err()));
    }
    for noncentrality in [-1.0, 1e300, f64::NAN, f64::INFINITY] {
        let error = NoncentralChiSquared::new(2.0, noncentrality).unwrap_err();
        assert!(matches!(error, DistributionError::Noncentrality { .. }));
    }
}

#[test]
fn harmonics() {
    let [two, three] = [2, 3].map(|n| Sample::new((0..n).map(f64::from).collect()).unwrap());
    let differ = HarmonicFit::new(&two, &three, 1).map(drop);
    assert_eq!(differ, Err(HarmonicError::CountsDiffer { angles: 2, values: 3 }));
    let few = HarmonicFit::new(&two, &two, 1).map(drop);
    assert_eq!(few, Err(HarmonicError::TooFewValues { values: 2, unknowns: 3 }));
    assert!(HarmonicFit::new(&two, &two, usize::MAX).is_err());
    let far = Sample::new(vec![1e70, -1e70, 3.0]).unwrap();
    assert!(MeanDirection::of(&far).resultant_length <= 1.0);
}

/// Twelve rows in four blocks and three levels, one of everything.
fn mixed_design() -> MixedDesign {
    MixedDesign {
        fixed: DMatrix::from_element(12, 1, 1.0),
        blocks: (0..12).map(|row| row / 3).collect(),
        levels: (0..12).map(|row| row % 3).collect(),
        random: DMatrix::from_fn(12, 1, |row, _| (row * row % 5) as f64),
    }
}

#[test]
fn designs_of_mixed_models() {
    let refusal = |change: &dyn Fn(&mut MixedDesign)| {
        let mut design = mixed_design();
        change(&mut design);
        MixedModel::new(&design).map(drop).unwrap_err()
    };
    let short = refusal(&|design| design.blocks.truncate(11));
    assert_eq!(short, MixedError::CountsDiffer { rows: 12, what: "blocks", found: 11 });
    assert_eq!(
        short.to_string(),
        "12 rows of fixed covariates, but 11 of blocks; each row needs one"
    );
    let none = refusal(&|design| design.fixed = DMatrix::zeros(12, 0));
    assert_eq!(none, MixedError::TooFewRows { rows: 12, effects: 0 });
    let nan = refusal(&|design| design.random[3] = f64::NAN);
    assert!(nan.to_string().starts_with("random covariates: observation 4 is NaN"), "{nan}");
    let twice = refusal(&|design| design.fixed = DMatrix::from_fn(12, 2, |_, c| 1.0 + c as f64));
    assert_eq!(twice, MixedError::Collinear { column: 1 });
    assert_eq!(
        twice.to_string(),
        "fixed covariate 2 follows from the ones before it; leave it out"
    );
    let zero = refusal(&|design| design.random.fill(0.0));
    assert_eq!(zero, MixedError::Absent { column: 0 });
    let many = refusal(&|design| {
        *design = MixedDesign {
            fixed: DMatrix::from_element(3000, 1, 1.0),
            blocks: vec![7; 3000],
            levels: (0..3000).collect(),
            random: DMatrix::from_element(3000, 1, 1.0),
        }
    });
    assert_eq!(many, MixedError::TooManyLevels { levels: 3000, coefficients: 1 });
    assert!(many.to_string().ends_with("make the larger factor the blocks"), "{many}");
}

#[test]
fn responses_of_mixed_models() {
    let refusal = |design: MixedDesign, response: &dyn Fn(usize) -> f64, rows: usize| {
        let response = Sample::new((0..rows).map(response).collect()).unwrap();
        MixedModel::new(&design).unwrap().fit(&response, Level::P90).map(drop).unwrap_err()
    };
    let wiggle = |row: usize| (row * 7 % 12) as f64;
    let short = refusal(mixed_design(), &wiggle, 11);
    assert_eq!(short, MixedError::CountsDiffer { rows: 12, what: "responses", found: 11 });
    for exact in [&(|_| 7.3) as &dyn Fn(usize) -> f64, &|row| (row / 3) as f64] {
        assert_eq!(refusal(mixed_design(), exact, 12), MixedError::NoScatter);
    }
    let alone = MixedDesign { blocks: (0..12).collect(), ..mixed_design() };
    assert_eq!(refusal(alone, &wiggle, 12), MixedError::Confounded);
    let random = DMatrix::from_fn(12, 2, |row, _| (row * row % 5) as f64);
    let twice = MixedDesign { random, ..mixed_design() };
    assert_eq!(refusal(twice, &wiggle, 12), MixedError::Confounded);
    let hint = "group more rows together or leave a random covariate out";
    assert!(MixedError::Confounded.to_string().ends_with(hint));
}

/// Outside its contract the probability of a circle may be anything but a hang or a panic.
#[test]
fn circles_always_answer() {
    let odd = [0.0, -1.0, 1e-300, 1e300, f64::NAN, f64::INFINITY, f64::NEG_INFINITY];
    let mut answers = 0;
    for (mean, variance) in odd.iter().flat_map(|&m| odd.iter().map(move |&v| (m, v))) {
        for (covariance, radius) in odd.iter().flat_map(|&c| odd.iter().map(move |&r| (c, r))) {
            let matrix = Matrix2::new(variance, covariance, covariance, 1.0);
            let p = probability_within_circle(Vector2::new(mean, 1.0), &matrix, radius);
            assert!(p.is_nan() || (0.0..=1.0).contains(&p));
            answers += 1;
        }
    }
    assert_eq!(answers, 7 * 7 * 7 * 7);
}
