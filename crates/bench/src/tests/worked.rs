//! Worked examples from `fixtures/bench/worked.json`, whose register names the sources.

use quarterturn_geometry::Millimetres;
use serde_json::Value;

use crate::tolerance::{ROUNDING, assert_within};
use crate::{
    Grains, JOULES_PER_FOOT_POUND, NEWTON_SECONDS_PER_SLUG_FOOT, SpineStandard,
    front_of_centre_percent, grains_per_pound, kinetic_energy_j, momentum_n_s,
};

fn worked() -> Value {
    serde_json::from_str(include_str!("../../../../fixtures/bench/worked.json")).unwrap()
}

fn cases(name: &str) -> Vec<Value> {
    worked()[name].as_array().unwrap().clone()
}

fn number(case: &Value, name: &str) -> f64 {
    case[name].as_f64().unwrap()
}

/// A speed in feet a second, m/s.
fn speed_m_s(case: &Value) -> f64 {
    number(case, "speed_fps") * 0.3048
}

#[test]
fn energy_and_momentum_are_those_of_slugs_and_feet() {
    for case in cases("energy") {
        let mass = Grains::new(number(&case, "mass_gr")).unwrap();
        let energy_ftlbf = kinetic_energy_j(mass, speed_m_s(&case)) / JOULES_PER_FOOT_POUND;
        let expected = number(&case, "energy_ftlbf");
        assert_within(energy_ftlbf, expected, expected * ROUNDING);
        let momentum = momentum_n_s(mass, speed_m_s(&case)) / NEWTON_SECONDS_PER_SLUG_FOOT;
        let expected = number(&case, "momentum_slug_ft_s");
        assert_within(momentum, expected, expected * ROUNDING);
    }
}

#[test]
fn the_rounded_divisors_of_the_trade_are_within_a_thousandth() {
    for divisor in cases("rounded_divisors") {
        for case in cases("energy") {
            let mass = Grains::new(number(&case, "mass_gr")).unwrap();
            let exact = kinetic_energy_j(mass, speed_m_s(&case)) / JOULES_PER_FOOT_POUND;
            let rounded =
                mass.gr() * number(&case, "speed_fps").powi(2) / divisor.as_f64().unwrap();
            assert_within(exact / rounded, 1.0, 1e-3);
        }
    }
}

/// A printed value is rounded or, as one of these is, cut off: it may be a whole unit of its last digit away.
#[test]
fn front_of_centre_is_as_printed() {
    for case in cases("front_of_centre") {
        let length = Millimetres::from_inches(number(&case, "length_in"));
        let balance = Millimetres::from_inches(number(&case, "balance_in"));
        let percent = front_of_centre_percent(length, balance).unwrap();
        let unit = number(&case, "unit_of_last_digit");
        assert_within(percent, number(&case, "printed_percent"), unit);
    }
}

#[test]
fn grains_per_pound_are_as_printed() {
    for case in cases("grains_per_pound") {
        let arrow = Grains::new(number(&case, "arrow_gr")).unwrap();
        let per_pound = grains_per_pound(arrow, number(&case, "draw_lbf")).unwrap();
        assert_within(per_pound, number(&case, "expected"), ROUNDING * per_pound);
    }
}

#[test]
fn the_two_standards_of_spine_are_as_the_trade_has_them() {
    let convert = |thousandths: f64| {
        let sag = Millimetres::from_inches(thousandths / 1000.0);
        SpineStandard::Span28.convert(sag, SpineStandard::Span26).inches() * 1000.0
    };
    for case in cases("spine") {
        let older = convert(number(&case, "sag_28_thousandths"));
        assert_within(older, number(&case, "sag_26_thousandths"), 0.5);
    }
    assert_within(convert(1.0), worked()["spine_factor"].as_f64().unwrap(), 0.0005);
    // (26/28)³ · 2/1.94 in exact fractions: 2197 · 100 / (2744 · 97).
    assert_within(convert(1.0), 219_700.0 / 266_168.0, ROUNDING);
    let there = SpineStandard::Span26.convert(Millimetres::new(9.0), SpineStandard::Span28);
    let back = SpineStandard::Span28.convert(there, SpineStandard::Span26);
    assert_within(back.mm(), 9.0, 9.0 * ROUNDING);
}

/// NIST SP 811: the grain is 64.79891 mg.
#[test]
fn the_grain_is_exact() {
    assert_within(Grains::new(1.0).unwrap().kilograms(), 64.798_91e-6, 64.8e-6 * ROUNDING);
}
