//! What moving the bow does is measured from the moves themselves.

use quarterturn_geometry::{Index, Offset};

use super::journal::{Journal, name};
use crate::tolerance::{COVERAGE_OF_FEW, ROUNDING, assert_within};
use crate::{
    Aim, BowChange, BowPart, Event, PlannedShot, Purpose, Response, SimulatedArcher, Step, World,
};

/// What the planted rest does: a millimetre to the right carries bare shafts 30 mm left and 4 up, one up 22 down.
fn planted(by: Offset) -> Offset {
    Offset::new(-30.0, 4.0) * by.x_mm + Offset::new(0.0, -22.0) * by.y_mm
}

/// One small move is measured by a dozen shots only where they hold together.
const GOOD_SHOT: World = World { spread_mm: [8.0, 14.0], ..World::ORDINARY };

/// A journal with the bow moved by each of `moves` in turn, four ends before and after each.
fn moved(moves: &[Offset], seed: u64) -> (Journal, SimulatedArcher) {
    let mut journal = Journal::of(12);
    let mut archer = journal.archer(GOOD_SHOT, seed);
    archer.move_bow(Offset::new(70.0, 0.0));
    shoot(&mut journal, &mut archer, 4);
    for &by in moves {
        journal = journal.then(change(BowPart::Rest, Some(by)));
        archer.move_bow(planted(by));
        shoot(&mut journal, &mut archer, 4);
    }
    (journal, archer)
}

/// Each end the reference and the next three shafts, their marks at 12 o'clock, whatever is said.
fn shoot(journal: &mut Journal, archer: &mut SimulatedArcher, ends: usize) {
    let count = journal.history.setup.shafts.len();
    for end in 0..ends {
        let index = Index::TWELVE;
        let bare = (0..3).map(|place| {
            let purpose = Purpose::Bare { index, from: index, aim: Aim::Try };
            PlannedShot { shaft: name(&((3 * end + place) % count + 1).to_string()), purpose }
        });
        let reference = PlannedShot { shaft: name("R"), purpose: Purpose::Reference };
        let planned: Vec<_> = std::iter::once(reference).chain(bare).collect();
        journal.history.events.push(Event::End(archer.shoot(&planned, "first")));
    }
}

fn change(part: BowPart, moved: Option<Offset>) -> Event {
    Event::Bow(BowChange { part, moved })
}

fn response(journal: &Journal) -> Option<Response> {
    journal.advice().bow.response
}

const TRIAL: Offset = Offset::new(0.8, 0.0);

#[test]
fn before_a_measured_move_nothing_is_known() {
    let (journal, _) = moved(&[], 1);
    assert_eq!(response(&journal), None);
    assert_eq!(response(&journal.clone().then(change(BowPart::Rest, None))), None);
    assert_eq!(response(&journal.clone().then(change(BowPart::Sight, Some(TRIAL)))), None);
    let unshot = journal.then(change(BowPart::Rest, Some(TRIAL)));
    assert_eq!(response(&unshot), None, "no shot tells of it yet");
}

#[test]
fn one_move_tells_of_its_own_line_only() {
    for (by, direction) in [(TRIAL, TRIAL), (-TRIAL, TRIAL)] {
        let (journal, _) = moved(&[by], 2);
        let known = response(&journal).unwrap();
        let [along] = &known.along[..] else { panic!("one line") };
        assert_within(along.direction.x_mm, direction.x_mm / 0.8, ROUNDING);
        assert_within(along.direction.y_mm, 0.0, ROUNDING);
        assert_eq!((known.part, known.moves), (BowPart::Rest, 1));
        assert_eq!((known.shots_before, known.shots_after), (12, 12));
    }
}

/// Fifteen sessions; standard error of the share covered 0.05.
#[test]
fn what_was_planted_is_covered_by_the_intervals() {
    let (mut covered, mut all) = (0_u32, 0_u32);
    for seed in 0..15 {
        let (journal, _) = moved(&[TRIAL, Offset::new(0.0, -0.8)], seed);
        for along in response(&journal).unwrap().along {
            let truth = planted(along.direction);
            for (interval, truth) in along.intervals().iter().zip([truth.x_mm, truth.y_mm]) {
                covered += u32::from((interval.lower..=interval.upper).contains(&truth));
                all += 1;
            }
        }
    }
    assert_eq!(all, 60);
    assert!(COVERAGE_OF_FEW.contains(&(f64::from(covered) / f64::from(all))), "{covered} of {all}");
}

/// Of 120 sessions 84 were told enough; of 24, half is two standard errors below that.
#[test]
fn after_a_telling_trial_the_rest_of_the_way_is_proposed_one_step_at_a_time() {
    let mut proposed = 0;
    for seed in 0..24 {
        let (journal, _) = moved(&[TRIAL], seed);
        let advice = journal.advice();
        let Some(by) = advice.bow.proposed_move else { continue };
        proposed += 1;
        assert_eq!(advice.step, Step::MoveBow);
        assert!(by.length().mm() <= 1.6 + ROUNDING, "{by:?}");
        let carried = planted(by);
        assert!(carried.x_mm < 0.0, "toward the middle: {by:?}");
        let left = advice.bow.offset.mean + carried;
        assert!(left.length().mm() < advice.bow.offset.mean.length().mm(), "{by:?}");
    }
    assert!(proposed >= 12, "{proposed} of 24");
}

#[test]
fn where_the_bow_is_to_stay_nothing_is_proposed() {
    let mut journal = Journal::of(6);
    let mut archer = journal.archer(World { common_mm: 0.0, ..World::ORDINARY }, 4);
    shoot(&mut journal, &mut archer, 3);
    journal = journal.then(change(BowPart::Rest, Some(Offset::new(0.1, 0.0))));
    shoot(&mut journal, &mut archer, 3);
    let bow = journal.advice().bow;
    assert!(bow.response.is_some());
    assert_eq!(bow.proposed_move, None);
}
