//! Moves of the bow, and what they did.

use quarterturn_geometry::{Index, Millimetres, Offset};
use quarterturn_journal::Word;
use quarterturn_tuning::{Along, BowPart, BowReport, Response};

use super::{Ruler, all, count, mark};

/// How a first move is made, where none tells yet which way it goes.
const TRIAL: &str = "no measured move tells yet what would do it: make one small trial move of 0.8 mm (1/32 in) of one \
    part, either way (which way is not preached here, because teachers disagree), and record it with \
    `bow --move-mm`";

/// "rest", "nocking point"; "bow" where the part has no name.
pub fn part(part: BowPart) -> String {
    match part {
        BowPart::Other => "bow".to_owned(),
        named => named.word().replace('-', " "),
    }
}

/// What to do about a bow that is to be moved: a clause.
pub fn what_to_move(bow: &BowReport, ruler: Ruler) -> String {
    match (&bow.response, bow.proposed_move) {
        (Some(response), Some(by)) => format!(
            "{}, so move the {} {}, no more than 1.6 mm at once",
            response_seen(response, ruler),
            part(response.part),
            bow_shift(by)
        ),
        (Some(response), None) => {
            format!("{}, but {TRIAL}", response_seen(response, ruler))
        }
        (None, _) => TRIAL.to_owned(),
    }
}

/// "each mm of the rest to the right carried them 31 ± 5 mm right and 2 ± 5 mm down (1 move, 9 shots before, 12 after)".
pub fn response_seen(response: &Response, ruler: Ruler) -> String {
    let along = response
        .along
        .iter()
        .map(|one| format!("{} carried them {}", direction(one.direction), carried(one, ruler)));
    format!(
        "each mm of the {} {} ({}, {} before and {} after)",
        part(response.part),
        all(along),
        count(response.moves, "move"),
        count(response.shots_before, "shot"),
        response.shots_after
    )
}

/// "0.6 mm left and 0.2 mm up": a move is read off a ruler in millimetres whatever the face is read in.
fn bow_shift(by: Offset) -> String {
    let side = |mm: f64, positive, negative| {
        let side = if mm > 0.0 { positive } else { negative };
        // Less than half a tenth is said as nothing.
        (mm.abs() >= 0.05).then(|| format!("{:.1} mm {side}", mm.abs()))
    };
    let sides = [side(by.x_mm, "right", "left"), side(by.y_mm, "up", "down")];
    all(sides.into_iter().flatten())
}

/// "to the right", "up", "toward 2 o'clock".
fn direction(direction: Offset) -> String {
    let clock = Index::from_degrees(direction.clock_angle().degrees().round());
    match (direction.x_mm, direction.y_mm) {
        (x, y) if x > 0.999 && y.abs() < 0.05 => "to the right".to_owned(),
        (x, y) if y > 0.999 && x.abs() < 0.05 => "up".to_owned(),
        _ => format!("toward {} on the clock", mark(clock)),
    }
}

fn carried(along: &Along, ruler: Ruler) -> String {
    let side = |mm: f64, variance: f64, positive, negative| {
        let say = |mm| ruler.estimate_bare(Millimetres::new(mm));
        let side = if mm < 0.0 { negative } else { positive };
        format!("{} ± {} {} {side}", say(mm.abs()), say(variance.sqrt()), ruler.unit().symbol)
    };
    let Along { mm_per_mm, covariance, .. } = along;
    all([
        side(mm_per_mm.x_mm, covariance.m11, "right", "left"),
        side(mm_per_mm.y_mm, covariance.m22, "up", "down"),
    ])
}

#[cfg(test)]
mod tests {
    use nalgebra::Matrix2;
    use quarterturn_tuning::Miss;

    use super::*;
    use quarterturn_entry::quantity::Unit;

    const MM: Ruler = Ruler::new(Unit::MILLIMETRE);

    fn bow(response: Option<Response>, proposed_move: Option<Offset>) -> BowReport {
        BowReport {
            offset: Miss { mean: Offset::ZERO, covariance_mm2: Matrix2::identity() },
            wanted_shift: Offset::ZERO,
            expected_within_now: 3.0,
            expected_within_if_moved: 9.0,
            shafts: 12,
            response,
            proposed_move,
        }
    }

    fn response(part: BowPart, along: &[(f64, f64)]) -> Response {
        let along = along.iter().map(|&(x_mm, y_mm)| Along {
            direction: Offset::new(x_mm, y_mm),
            mm_per_mm: Offset::new(-30.6, 2.2),
            covariance: Matrix2::new(25.0, 0.0, 0.0, 36.0),
        });
        let along = along.collect();
        Response { part, moves: 1, along, shots_before: 9, shots_after: 12 }
    }

    #[test]
    fn before_any_move_a_small_trial_is_asked_for_and_no_way_is_preached() {
        assert_eq!(
            what_to_move(&bow(None, None), MM),
            "no measured move tells yet what would do it: make one small trial move of 0.8 mm (1/32 in) of one \
             part, either way (which way is not preached here, because teachers disagree), and record it with \
             `bow --move-mm`"
        );
    }

    #[test]
    fn a_measured_move_says_what_it_did_and_what_is_left_to_do() {
        let known =
            bow(Some(response(BowPart::Rest, &[(1.0, 0.0)])), Some(Offset::new(-0.62, 0.0)));
        assert_eq!(
            what_to_move(&known, MM),
            "each mm of the rest to the right carried them 31 ± 5 mm left and 2 ± 6 mm up (1 move, 9 shots \
             before and 12 after), so move the rest 0.6 mm left, no more than 1.6 mm at once"
        );
    }

    #[test]
    fn a_move_that_tells_nothing_of_what_is_wanted_asks_for_another_trial() {
        let beside = bow(Some(response(BowPart::NockingPoint, &[(0.6, 0.8)])), None);
        let said = what_to_move(&beside, MM);
        assert!(
            said.starts_with("each mm of the nocking point toward 37 deg on the clock carried")
        );
        assert!(said.contains(" after), but no measured move tells yet"), "{said}");
    }

    #[test]
    fn two_directions_are_said_one_after_the_other() {
        let both = response(BowPart::Other, &[(1.0, 0.0), (0.0, 1.0)]);
        let said = response_seen(&both, MM);
        assert!(said.starts_with("each mm of the bow to the right carried them 31"), "{said}");
        assert!(said.contains(" mm up and up carried them 31 ± 5 mm left"), "{said}");
        assert_eq!(bow_shift(Offset::new(0.3, -1.25)), "0.3 mm right and 1.2 mm down");
    }
}
