//! What can be worked out by hand, here and in docs/methods.md.

use nalgebra::Vector2;
use quarterturn_geometry::{Index, Millimetres, Offset};
use quarterturn_statistics::probability_within_circle;

use super::journal::{Journal, name, shot};
use crate::at_scales::AtScales;
use crate::tolerance::{ONE_DECIMAL, ROUNDING, assert_within};
use crate::{MissingMass, Scales, known_height};

const METHODS: &str = include_str!("../../../../docs/methods.md");

/// 18.3 m at 82 m/s take 0.22317 s, in which an arrow drops 9.80665 · 0.22317² / 2 = 0.24421 m; 20 gr of 400 gr are
/// a twentieth of it.
#[test]
fn twenty_grains_lift_a_bare_shaft_by_twelve_millimetres() {
    let lacks = MissingMass { lighter_gr: 20.0, arrow_gr: 400.0, speed_m_s: 82.0 };
    let lighter = Journal::of(1).with(|setup| setup.bare_lighter = Some(lacks)).history.setup;
    assert_within(known_height(&lighter).mm(), 12.2, ONE_DECIMAL);
    let twice = Millimetres::from_metres(2.0 * 18.3);
    let twice_as_far = Journal::of(1).with(|setup| {
        setup.bare_lighter = Some(lacks);
        setup.distance = twice;
    });
    let height_mm = known_height(&twice_as_far.history.setup).mm();
    assert_within(height_mm, 4.0 * known_height(&lighter).mm(), 48.8 * ROUNDING);
    assert_eq!(known_height(&Journal::of(1).history.setup), Millimetres::ZERO);
}

/// The sizes of the example in docs/methods.md.
fn scales() -> Scales {
    Scales {
        reference_mm: 16.0,
        bare_mm: 19.0,
        aim_mm: [8.0; 2],
        read_mm: 4.0,
        common_mm: 30.0,
        centre_mm: 4.0,
        turning_mm: 10.0,
        stiff_mm: 6.0,
        against_share: 0.1,
        set_share: 0.4,
        between_references_mm: 5.0,
        ..Scales::at(Millimetres::from_metres(18.3))
    }
}

fn two_shots() -> Journal {
    let end = |reference, bare| vec![shot("R", 0.0, reference), bare];
    Journal::of(1)
        .end_of(end(Offset::new(4.0, -6.0), shot("1", 12.0, Offset::new(30.0, 10.0))))
        .end_of(end(Offset::new(-2.0, 0.0), shot("1", 6.0, Offset::new(8.0, 14.0))))
}

/// Each row: hour, miss to the right and up, standard deviation, probability of being inside 25 mm.
#[test]
fn the_two_shots_of_the_methods_give_its_digits() {
    let read = AtScales::read(&two_shots().history, &scales(), |_| 1.0);
    for (hour, x_mm, y_mm, sd_mm, within) in
        [(12.0, 17.2, 10.8, 17.9, 0.42), (6.0, 9.9, 11.8, 17.9, 0.50)]
    {
        let miss = read.miss(&name("1"), Index::from_hour(hour)).unwrap();
        assert_within(miss.mean.x_mm, x_mm, ONE_DECIMAL);
        assert_within(miss.mean.y_mm, y_mm, ONE_DECIMAL);
        assert_within(miss.covariance_mm2[(0, 0)].sqrt(), sd_mm, ONE_DECIMAL);
        let mean = Vector2::new(miss.mean.x_mm, miss.mean.y_mm);
        let inside = probability_within_circle(mean, &miss.covariance_mm2, 25.0);
        assert_eq!(format!("{inside:.2}"), format!("{within:.2}"));
        let row = format!(
            "| {hour} o'clock | {x_mm:.1} mm right | {y_mm:.1} mm high | {sd_mm:.1} mm | {within:.2} |"
        );
        assert!(METHODS.contains(&row), "docs/methods.md lacks the row\n{row}");
    }
}
