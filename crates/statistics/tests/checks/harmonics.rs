//! Harmonic fits against the discrete Fourier transform, planted truth and aliasing.

use std::f64::consts::TAU;

use proptest::prelude::{ProptestConfig, prop_assert, prop_assert_eq, proptest};
use quarterturn_statistics::{
    Alias, HarmonicError, HarmonicFit, Level, Sample, Wave, harmonic_aliases,
};
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
    let refusal = |count, harmonics| fit(count, harmonics).unwrap_err().to_string();
    let way_on = "take fewer harmonics or other positions";
    // Four quarter turns see the sine of the second harmonic nowhere; three thirds take the second for the first.
    assert_eq!(refusal(4, 2), format!("4 different positions: sin 2θ cannot be seen; {way_on}"));
    let thirds = format!("3 different positions: cos 2θ cannot be told from cos θ; {way_on}");
    assert_eq!(refusal(3, 2), thirds);
    assert!(refusal(2, 1).contains("sin θ cannot be seen"));
    assert!(refusal(1, 1).contains("cos θ cannot be told from the constant"));
    assert!(refusal(8, 4).contains("sin 4θ cannot be seen"));
    for (count, harmonics) in [(1, 0), (3, 1), (4, 1), (5, 2), (8, 3)] {
        assert_eq!(fit(count, harmonics), Ok(()));
    }
}

#[test]
fn every_alias_of_even_positions() {
    let aliases = |count, harmonics| harmonic_aliases(&positions(count, 2), harmonics).unwrap();
    // Of the second harmonic four quarter turns see one of the pair; eight see all up to the third.
    let quarters: Vec<_> = aliases(4, 2).into_iter().map(|alias| alias.wave).collect();
    assert_eq!(quarters, [Wave::Sine(2)]);
    assert!(aliases(8, 3).is_empty());
    // At n even positions harmonic k is seen as n − k, its sine reversed.
    for count in [3_usize, 5, 7, 12] {
        let found = aliases(count, count - 1);
        for k in count / 2 + 1..count {
            let seen_as = |wave| {
                let alias = found.iter().find(|alias| alias.wave == wave).unwrap();
                let [pair] = alias.seen_as[..] else { panic!("{count}: {alias}") };
                pair
            };
            let (cosine, sine) = (seen_as(Wave::Cosine(k)), seen_as(Wave::Sine(k)));
            assert_eq!((cosine.0, sine.0), (Wave::Cosine(count - k), Wave::Sine(count - k)));
            assert_close(cosine.1, 1.0, ALGEBRA * 10.0);
            assert_close(sine.1, -1.0, ALGEBRA * 10.0);
        }
    }
    let many = harmonic_aliases(&positions(3, 1), 1001);
    assert_eq!(many, Err(HarmonicError::TooMany { harmonics: 1001, most: 1000 }));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// What an alias is seen as adds up to it at every position; no position but those given is asked.
    #[test]
    fn aliases_are_what_they_say(
        hours in proptest::collection::vec(0_u8..24, 1..9), harmonics in 0_usize..8,
    ) {
        let angles = sample(hours.iter().map(|&hour| TAU * f64::from(hour) / 24.0));
        let aliases = harmonic_aliases(&angles, harmonics).unwrap();
        for Alias { wave, seen_as } in &aliases {
            for &angle in angles.values() {
                let sum: f64 = seen_as.iter().map(|(earlier, share)| share * earlier.at(angle)).sum();
                prop_assert!((sum - wave.at(angle)).abs() < 1e-6, "{wave} {sum}");
            }
        }
        let different = hours.iter().collect::<std::collections::BTreeSet<_>>().len();
        prop_assert!(2 * harmonics + 1 - aliases.len() <= different);
        prop_assert_eq!(HarmonicFit::new(&angles, &angles, harmonics).is_ok(), aliases.is_empty());
    }

    /// Shifted values shift the constant and no other coefficient; stretched ones stretch all.
    #[test]
    fn moving_and_stretching_carry_through(
        values in proptest::collection::vec(-10.0..10.0, 8), shift in -10.0_f64..10.0, factor in 0.1_f64..10.0,
    ) {
        let angles = positions(8, 1);
        let fit = HarmonicFit::new(&angles, &sample(values.clone()), 2).unwrap();
        let moved = HarmonicFit::new(&angles, &sample(values.iter().map(|y| shift + factor * y)), 2).unwrap();
        for (place, (a, b)) in fit.coefficients().iter().zip(moved.coefficients()).enumerate() {
            let expected = factor * a + if place == 0 { shift } else { 0.0 };
            prop_assert!((b - expected).abs() < 1e-11, "{place}: {b} {expected}");
        }
        let tests = [&fit, &moved].map(|fit| fit.harmonic_test(1).unwrap().p_value);
        prop_assert!((tests[0] - tests[1]).abs() < 1e-9);
    }
}

/// Level of the test of a harmonic that is not there, beside one that is.
#[test]
fn the_test_of_a_harmonic_keeps_its_level() {
    const FITS: usize = 5000;
    let mut random = Pcg64::seed_from_u64(8);
    for n in [6_usize, 10, 30] {
        let angles = sample((0..n).map(|i| TAU * (i as f64 + 0.3 * (i % 2) as f64) / n as f64));
        let (mut rejected, mut found) = (0, 0);
        for _ in 0..FITS {
            let noise =
                |a: &f64| 9.0 * a.cos() + Distribution::<f64>::sample(&StandardNormal, &mut random);
            let values = sample(angles.values().iter().map(noise).collect::<Vec<_>>());
            let fit = HarmonicFit::new(&angles, &values, 2).unwrap();
            let rejects = |k| fit.harmonic_test(k).unwrap().rejects_at(Level::P95);
            rejected += usize::from(rejects(2));
            found += usize::from(rejects(1));
        }
        let share = rejected as f64 / FITS as f64;
        assert_close(share, 0.05, STANDARD_ERRORS * (0.05 * 0.95 / FITS as f64).sqrt());
        assert!(n < 10 || found == FITS);
    }
}

/// Another road to the same F: what two fits leave, (RSS₁ − RSS₂)/2/(RSS₂/ν).
#[test]
fn the_test_of_a_harmonic_compares_two_fits() {
    let rows = Fixture::read("eight_angles.csv").numbers();
    let angles = sample(rows.iter().map(|row| row[0].to_radians()));
    let values = sample(rows.iter().map(|row| row[1]));
    let left = |fit: &HarmonicFit| -> f64 {
        rows.iter().map(|row| (row[1] - fit.value_at(row[0].to_radians())).powi(2)).sum()
    };
    let [one, two] = [1, 2].map(|k| HarmonicFit::new(&angles, &values, k).unwrap());
    let expected = (left(&one) - left(&two)) / 2.0 / (left(&two) / two.degrees_of_freedom() as f64);
    assert_close(two.harmonic_test(2).unwrap().statistic, expected, 1e-10);
    assert_eq!((two.harmonic_test(0), two.harmonic_test(3)), (None, None));
    let three = HarmonicFit::new(&angles, &values, 3).unwrap();
    assert!(three.harmonic_test(3).is_some() && three.harmonic_test(usize::MAX).is_none());
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
