//! P-values of many tests against a published example and another program.

use quarterturn_statistics::{PValueError, benjamini_hochberg, holm};

use crate::group_values::Values;
use crate::tolerance::{ALGEBRA, SEVEN_DECIMALS, assert_close, assert_relative};

// Source: Y. Benjamini, Y. Hochberg, 1995, section 4 (the list from memory); adjusted with statsmodels 0.15.0.
#[test]
fn fifteen_comparisons() {
    let p_values = [
        0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262,
        0.5719, 0.6528, 0.7590, 1.0,
    ];
    let [familywise, false_share] =
        [holm(&p_values), benjamini_hochberg(&p_values)].map(Result::unwrap);
    let rejected = |adjusted: &[f64]| adjusted.iter().filter(|p| **p <= 0.05).count();
    assert_eq!((rejected(&familywise), rejected(&false_share)), (3, 4));
    let expected = [0.0015, 0.0056, 0.0247, 0.1140, 0.2211, 0.2780, 0.2780, 0.2780, 0.3213, 1.0];
    for (p, expected) in familywise.iter().zip(expected) {
        assert_close(*p, expected, SEVEN_DECIMALS);
    }
    let expected = [
        0.0015,
        0.0030,
        0.0095,
        0.035_625,
        0.0603,
        0.063_857_1,
        0.063_857_1,
        0.0645,
        0.0765,
        0.4860,
        0.581_181_8,
    ];
    for (p, expected) in false_share.iter().zip(expected) {
        assert_close(*p, expected, SEVEN_DECIMALS);
    }
}

/// By hand; the trap is to forget the order or that a larger p-value never adjusts to a smaller one.
#[test]
fn the_order_comes_back() {
    let p_values = [0.01, 0.04, 0.03, 0.005];
    for (p, expected) in holm(&p_values).unwrap().into_iter().zip([0.03, 0.06, 0.06, 0.02]) {
        assert_relative(p, expected, ALGEBRA);
    }
    let adjusted = benjamini_hochberg(&p_values).unwrap();
    for (p, expected) in adjusted.into_iter().zip([0.02, 0.04, 0.04, 0.02]) {
        assert_relative(p, expected, ALGEBRA);
    }
}

#[test]
fn twenty_as_another_program_adjusts_them() {
    let values = Values::read();
    let column = |name: &str| -> Vec<f64> {
        (0..20).map(|at| values.of("p-values", &format!("{name}_{at}"))).collect()
    };
    let p_values = column("p");
    for (adjusted, name) in
        [(holm(&p_values), "holm"), (benjamini_hochberg(&p_values), "benjamini_hochberg")]
    {
        for (p, expected) in adjusted.unwrap().into_iter().zip(column(name)) {
            assert_relative(p, expected, ALGEBRA);
        }
    }
}

#[test]
fn no_p_values_and_numbers_that_are_none() {
    assert_eq!(holm(&[]), Ok(vec![]));
    assert_eq!(benjamini_hochberg(&[]), Ok(vec![]));
    for wrong in [-0.1, 1.1, f64::NAN, f64::INFINITY, 1e300] {
        let refused = holm(&[0.5, wrong]).unwrap_err();
        assert_eq!(refused.position, 1);
        assert!(benjamini_hochberg(&[wrong]).is_err());
    }
    let message = PValueError { position: 1, value: 1.5 }.to_string();
    assert_eq!(message, "p-value 2 is 1.5; a p-value lies between 0 and 1");
}
