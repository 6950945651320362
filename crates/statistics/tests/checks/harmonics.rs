//! Harmonic fits against the discrete Fourier transform, planted truth and aliasing.

use std::f64::consts::TAU;

use quarterturn_statistics::{HarmonicError, HarmonicFit, Level, Sample};
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::fixture::Fixture;
use crate::tolerance::{ALGEBRA, STANDARD_ERRORS, SUM_OF_TENS, TEN_DECIMALS, assert_close};

fn sample(values: impl IntoIterator<Item = f64>) -> Sample {
    Sample::new(values.into_iter().collect()).unwrap()
}

/// `count` even positions, each `times` over.
fn positions(count: usize, times: usize) -> Sample {
    sample((0..count * times).map(|i| TAU * (i % count) as f64 / count as f64))
}

/// 2/n Σ y e^(−ikθ), halved for the constant: (cosine, sine) by definition.
fn transform(rows: &[Vec<f64>], k: u32) -> [f64; 2] {
    let n = rows.len() as f64;
    let scale = if k == 0 { 1.0 / n } else { 2.0 / n };
    let sum = |part: fn(f64) -> f64| {
        rows.iter().map(|row| row[1] * part(f64::from(k) * row[0].to_radians())).sum::<f64>()
    };
    [scale * sum(f64::cos), scale * sum(f64::sin)]
}

// Source: discrete Fourier transform of eight values; coefficients also printed by numpy's fft to ten decimals.
#[test]
fn eight_angles_are_a_fourier_transform() {
    let rows = Fixture::read("eight_angles.csv").numbers();
    let angles = sample(rows.iter().map(|row| row[0].to_radians()));
    let fit = HarmonicFit::new(&angles, &sample(rows.iter().map(|row| row[1])), 3).unwrap();
    let expected = [transform(&rows, 1), transform(&rows, 2), transform(&rows, 3)].concat();
    let printed = [3.055_634_918_6, 2.252_081_528_0, 0.0, 0.0, -0.055_634_918_6, 0.152_081_528_0];
    assert_close(fit.coefficients()[0], transform(&rows, 0)[0], ALGEBRA);
    assert_close(fit.coefficients()[0], 0.1, ALGEBRA);
    for ((actual, transformed), printed) in
        fit.coefficients()[1..].iter().zip(expected).zip(printed)
    {
        assert_close(*actual, transformed, ALGEBRA);
        assert_close(*actual, printed, TEN_DECIMALS);
    }
    assert_eq!(fit.degrees_of_freedom(), 1);
    // Nothing is left for the fourth harmonic, so that the fit goes through the values.
    assert_close(fit.value_at(0.0), 3.1, ALGEBRA);
}

// Source: numpy 2.4.6 fft, fixtures/statistics/make_fourier.py.
#[test]
fn evenly_spaced_angles_are_a_fourier_transform() {
    let lines = Fixture::read("fourier.csv").rows;
    let mut checked = 0;
    for series in lines.chunk_by(|a, b| a[0] == b[0]) {
        let column = |line: &str, column: usize| -> Vec<f64> {
            let lines = series.iter().filter(|row| row[1] == line);
            lines.map(|row| row[column].parse().unwrap()).collect()
        };
        let angles = sample(column("value", 3).into_iter().map(f64::to_radians));
        let [cosines, sines] = [3, 4].map(|part| column("harmonic", part));
        let fit = HarmonicFit::new(&angles, &sample(column("value", 4)), cosines.len() - 1);
        let fit = fit.unwrap();
        assert_close(fit.coefficients()[0], cosines[0], SUM_OF_TENS);
        for (pair, (cosine, sine)) in
            fit.coefficients()[1..].chunks(2).zip(cosines.iter().zip(&sines).skip(1))
        {
            assert_close(pair[0], *cosine, SUM_OF_TENS);
            assert_close(pair[1], *sine, SUM_OF_TENS);
            checked += 1;
        }
    }
    assert_eq!(checked, 1 + 2 + 3 + 5 + 17);
}

#[test]
fn few_positions_are_named_as_aliased() {
    let values = |n: usize| sample((0..n).map(|i| (i * i % 7) as f64));
    let fit = |count: usize, harmonics| {
        HarmonicFit::new(&positions(count, 5), &values(5 * count), harmonics).map(drop)
    };
    // Four quarter turns see the sine of the second harmonic nowhere; three thirds take the second for the first.
    assert_eq!(fit(4, 2), Err(HarmonicError::Aliased { harmonic: 2, positions: 4 }));
    assert_eq!(fit(3, 2), Err(HarmonicError::Aliased { harmonic: 2, positions: 3 }));
    assert_eq!(fit(2, 1), Err(HarmonicError::Aliased { harmonic: 1, positions: 2 }));
    assert_eq!(fit(1, 1), Err(HarmonicError::Aliased { harmonic: 1, positions: 1 }));
    assert_eq!(fit(8, 4), Err(HarmonicError::Aliased { harmonic: 4, positions: 8 }));
    for (count, harmonics) in [(1, 0), (3, 1), (4, 1), (5, 2), (8, 3)] {
        assert_eq!(fit(count, harmonics), Ok(()));
    }
}

#[test]
fn an_exact_fit_knows_no_error() {
    let fit = HarmonicFit::new(&positions(3, 1), &sample([1.0, 5.0, -2.0]), 1).unwrap();
    assert_eq!((fit.covariance(), fit.estimates(Level::P95)), (None, None));
    for (i, value) in [1.0, 5.0, -2.0].into_iter().enumerate() {
        assert_close(fit.value_at(TAU * i as f64 / 3.0), value, ALGEBRA * 10.0);
    }
}

/// Planted truth at uneven angles: each interval covers as often as it says.
#[test]
fn intervals_cover() {
    const FITS: usize = 5000;
    let truth = [4.0, -3.0, 2.0, 1.0, 0.5];
    let angles = sample([0.1, 0.9, 1.2, 2.0, 2.9, 3.3, 4.0, 4.2, 5.0, 5.9]);
    let series = |a: f64| {
        let basis = [1.0, a.cos(), a.sin(), (2.0 * a).cos(), (2.0 * a).sin()];
        truth.iter().zip(basis).map(|(t, b)| t * b).sum::<f64>()
    };
    let mut random = Pcg64::seed_from_u64(7);
    let mut covered = [0_usize; 5];
    for _ in 0..FITS {
        let noise = |a: &f64| -> f64 {
            series(*a) + 1.5 * Distribution::<f64>::sample(&StandardNormal, &mut random)
        };
        let values = sample(angles.values().iter().map(noise).collect::<Vec<_>>());
        let fit = HarmonicFit::new(&angles, &values, 2).unwrap();
        let estimates = fit.estimates(Level::P90).unwrap();
        for ((count, estimate), truth) in covered.iter_mut().zip(estimates).zip(truth) {
            let interval = estimate.interval;
            *count += usize::from(interval.lower <= truth && truth <= interval.upper);
        }
    }
    let n = FITS as f64;
    for count in covered {
        assert_close(count as f64 / n, 0.90, STANDARD_ERRORS * (0.9 * 0.1 / n).sqrt());
    }
}
