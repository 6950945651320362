//! The best subset against every subset.

use proptest::prelude::*;

use crate::tolerance::{ROUNDING, assert_within};
use crate::{BenchError, Measure, Wanted, best_subset};

/// The largest standardised spread of a choice, by the words of the definition.
fn largest_spread(measures: &[Measure], chosen: &[usize]) -> f64 {
    let spread = |measure: &Measure| {
        let all = &measure.values;
        let mean = all.iter().sum::<f64>() / all.len() as f64;
        let sum: f64 = all.iter().map(|value| (value - mean).powi(2)).sum();
        let deviation = (sum / (all.len() - 1) as f64).sqrt();
        let most = chosen.iter().map(|at| all[*at]).fold(f64::NEG_INFINITY, f64::max);
        let least = match measure.wanted {
            Wanted::Alike => chosen.iter().map(|at| all[*at]).fold(f64::INFINITY, f64::min),
            Wanted::Small => all.iter().copied().fold(f64::INFINITY, f64::min),
        };
        (most - least) / deviation
    };
    measures.iter().map(spread).fold(0.0, f64::max)
}

/// The least of it over every choice of `size`.
fn by_brute_force(measures: &[Measure], size: usize) -> f64 {
    let n = measures[0].values.len();
    let chosen = |bits: u32| -> Vec<usize> { (0..n).filter(|at| bits >> at & 1 == 1).collect() };
    let choices = (0..1_u32 << n).map(chosen).filter(|chosen| chosen.len() == size);
    choices.map(|chosen| largest_spread(measures, &chosen)).fold(f64::INFINITY, f64::min)
}

fn measure(wanted: Wanted, values: &[f64]) -> Measure {
    Measure { wanted, values: values.to_vec() }
}

#[test]
fn the_matched_ones_are_found() {
    let mass = measure(Wanted::Alike, &[310.0, 330.0, 311.0, 290.0, 312.0]);
    let crooked = measure(Wanted::Small, &[0.1, 0.0, 0.1, 0.0, 0.9]);
    let by_mass = best_subset(std::slice::from_ref(&mass), 3).unwrap();
    assert_eq!(by_mass.members, [0, 2, 4]);
    assert_eq!(best_subset(&[mass, crooked], 2).unwrap().members, [0, 2]);
}

#[test]
fn a_measure_without_differences_decides_nothing() {
    let same = measure(Wanted::Alike, &[5.0; 3]);
    let mass = measure(Wanted::Alike, &[1.0, 9.0, 2.0]);
    assert_eq!(best_subset(&[same.clone(), mass], 2).unwrap().members, [0, 2]);
    assert_within(best_subset(&[same], 2).unwrap().largest_spread, 0.0, 0.0);
    let one = best_subset(&[measure(Wanted::Alike, &[5.0])], 1).unwrap();
    assert_eq!((one.members, one.largest_spread), (vec![0], 0.0));
}

#[test]
fn what_cannot_be_chosen_is_refused() {
    let mass = measure(Wanted::Alike, &[1.0, 2.0]);
    let few = |wanted| Err(BenchError::TooFew { wanted, available: 2 });
    assert_eq!(best_subset(std::slice::from_ref(&mass), 3), few(3));
    assert_eq!(best_subset(std::slice::from_ref(&mass), 0), few(0));
    assert_eq!(best_subset(&[], 1), Err(BenchError::NoMeasure));
    let short = measure(Wanted::Alike, &[1.0]);
    assert_eq!(best_subset(&[mass, short], 1), Err(BenchError::NotOneEach));
    let odd = measure(Wanted::Alike, &[1.0, f64::NAN]);
    assert_eq!(best_subset(&[odd], 1), Err(BenchError::NotOneEach));
}

/// One to three measures of the same two to ten shafts, in tenths so that ties happen, and how many to choose.
fn cases() -> impl Strategy<Value = (Vec<Measure>, usize)> {
    let wanted = prop_oneof![Just(Wanted::Alike), Just(Wanted::Small)];
    let tenths = |n| proptest::collection::vec((0_u8..40).prop_map(|v| f64::from(v) / 10.0), n);
    (2_usize..=10).prop_flat_map(move |n| {
        let measure =
            (wanted.clone(), tenths(n)).prop_map(|(wanted, values)| Measure { wanted, values });
        let differing = measure.prop_filter("differ", |m| {
            m.values.iter().any(|value| value.to_bits() != m.values[0].to_bits())
        });
        (proptest::collection::vec(differing, 1..=3), 1..=n)
    })
}

proptest! {
    #[test]
    fn no_other_choice_is_better((measures, size) in cases()) {
        let best = best_subset(&measures, size).unwrap();
        let least = by_brute_force(&measures, size);
        prop_assert_eq!(best.members.len(), size);
        let allowed = ROUNDING * (1.0 + least);
        assert_within(best.largest_spread, least, allowed);
        assert_within(largest_spread(&measures, &best.members), least, allowed);
    }
}
