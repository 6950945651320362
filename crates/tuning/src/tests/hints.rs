//! What a journal makes one suspect, and what it does not.

use quarterturn_geometry::{Index, Offset};

use super::journal::{Journal, leaning, name, shot};
use super::planted::Planted;
use crate::evidence::{Evidence, Told};
use crate::hints::LeftOut;
use crate::learn::{Learned, learn};
use crate::observation::Observations;
use crate::readings::ShotWeight;
use crate::tolerance::{TAKEN_OUT, assert_within};
use crate::{Event, Hint, Scales, Shot, World};

/// Seven shafts, four of them crooked, each shot at two or three hours with a little scatter.
struct Dozen(Vec<Planted>);

impl Dozen {
    fn new() -> Self {
        let turning = [(60.0, 0.0), (0.0, 50.0), (-50.0, 20.0), (10.0, -60.0)];
        let crooked = turning
            .map(|(x_mm, y_mm)| Planted { turning: Offset::new(x_mm, y_mm), ..Planted::default() });
        Self(crooked.into_iter().chain([Planted::default(); 3]).collect())
    }

    /// The shot `number`, counted over the journal, of shaft `shaft` with its mark truly at `hour`.
    fn shot(&self, shaft: usize, hour: f64, number: usize) -> Shot {
        let straight = self.0[shaft - 1].shot(&shaft.to_string(), hour);
        scattered(straight, number)
    }

    /// Every shaft at every fourth hour, three an end.
    fn all_round(&self) -> Journal {
        let hours = [0.0, 4.0, 8.0, 0.0, 4.0, 8.0];
        let all: Vec<_> = hours
            .into_iter()
            .flat_map(|hour| (1..=self.0.len()).map(move |shaft| (shaft, hour)))
            .enumerate()
            .map(|(number, (shaft, hour))| self.shot(shaft, hour, number))
            .collect();
        all.chunks(3).fold(Journal::of(self.0.len()), |journal, end| journal.end(end.to_vec()))
    }
}

/// A few millimetres and tenths of a degree off, this way and that.
fn scattered(mut shot: Shot, number: usize) -> Shot {
    let turn = 2.4 * number as f64;
    let hit = shot.hit.as_mut().unwrap();
    hit.at = hit.at + Offset::new(turn.cos(), turn.sin()) * 15.0;
    shot
}

fn hints(journal: &Journal) -> Vec<Hint> {
    journal.advice().hints
}

#[test]
fn a_journal_in_which_nothing_went_wrong_gives_no_hint() {
    assert_eq!(hints(&Journal::of(3)), []);
    assert_eq!(hints(&Dozen::new().all_round()), []);
}

#[test]
fn two_exchanged_numbers_are_named_with_their_end() {
    let dozen = Dozen::new();
    let [mut one, mut other] = [dozen.shot(1, 0.0, 50), dozen.shot(3, 0.0, 51)];
    std::mem::swap(&mut one.hit, &mut other.hit);
    let spoilt = dozen.all_round().end([one, dozen.shot(6, 0.0, 52), other]);
    let exchanged = || Hint::Exchanged { shafts: ["1", "3"].map(name), end: 15 };
    assert_eq!(hints(&spoilt), [exchanged()]);
    let later = spoilt.end([dozen.shot(2, 0.0, 53), dozen.shot(5, 0.0, 54)]);
    assert_eq!(hints(&later), [exchanged()]);
}

#[test]
fn a_nock_that_was_on_upside_down_is_named() {
    let dozen = Dozen::new();
    let truly = dozen.shot(2, 6.0, 50);
    let entered = Shot { index: Index::TWELVE, ..truly };
    let [hint] = &hints(&dozen.all_round().end([entered, dozen.shot(6, 0.0, 51)]))[..] else {
        panic!("one hint");
    };
    let (recorded, seems) = (Index::TWELVE, Index::from_hour(6.0));
    assert_eq!(*hint, Hint::UpsideDown { shaft: name("2"), end: 15, recorded, seems });
}

#[test]
fn an_index_that_slipped_is_named_from_where_it_did() {
    let dozen = Dozen::new();
    let slipped = (0..3).fold(dozen.all_round(), |journal, number| {
        let entered = Shot { index: Index::from_hour(4.0), ..dozen.shot(4, 7.0, 50 + number) };
        journal.end([entered, dozen.shot(6, 0.0, 60 + number)])
    });
    let Some(Hint::Slipped { shaft, end, recorded, seems, shots }) = hints(&slipped).pop() else {
        panic!("a slip: {:?}", hints(&slipped));
    };
    assert_eq!((shaft, end, shots), (name("4"), 15, 3));
    assert_eq!((recorded, seems), (Index::from_hour(4.0), Index::from_hour(7.0)));
}

#[test]
fn what_happened_long_ago_is_left_alone() {
    let dozen = Dozen::new();
    let [mut one, mut other] = [dozen.shot(1, 0.0, 50), dozen.shot(3, 0.0, 51)];
    std::mem::swap(&mut one.hit, &mut other.hit);
    let spoilt = dozen.all_round().end([one, other]);
    let later = (0..6).fold(spoilt, |journal, number| {
        journal.end([dozen.shot(2, 0.0, 60 + number), dozen.shot(6, 0.0, 70 + number)])
    });
    assert_eq!(hints(&later), []);
}

#[test]
fn a_tail_that_leans_otherwise_than_its_hits_ask_for_is_named() {
    let dozen = Dozen::new();
    let all = dozen.all_round().with(|setup| setup.shafts.push((name("8"), Index::TWELVE)));
    let kicked = (0..5).fold(all, |journal, number| {
        let straight = scattered(shot("8", 0.0, Offset::ZERO), number);
        journal.end([leaning(straight, 5.0, 0.0), dozen.shot(7, 0.0, number)])
    });
    let Some(Hint::LeanContradicts { shaft, differs, sd_deg, index, shots }) = hints(&kicked).pop()
    else {
        panic!("a lean: {:?}", hints(&kicked));
    };
    assert_eq!((shaft, index, shots), (name("8"), Index::TWELVE, 5));
    assert!(differs.x.degrees() > 2.0 && differs.y.degrees().abs() < 1.0, "{differs:?}");
    assert!(sd_deg > 0.0 && sd_deg < 1.0);
}

/// What is expected of a shot with it taken out of the posterior is what is expected where it never counted.
#[test]
fn a_shot_is_held_against_all_the_others_and_not_itself() {
    let mut journal = Journal::of(6);
    let mut archer = journal.archer(World::ORDINARY, 3);
    journal.follow(&mut archer, 6);
    let seen = Observations::of(&journal.history);
    let learned = learn(&seen, &Scales::at(journal.history.setup.distance));
    let evidence = Evidence::of(&learned.reader(&seen));
    for shots in [vec![seen.shots.len() - 1], vec![9, 10], vec![13, 17, 21]] {
        let told: Vec<_> =
            shots.iter().map(|&at| Told { mark_rad: 1.0, ..evidence.as_entered(at) }).collect();
        let (off, known) = LeftOut::of(&evidence, &shots).unwrap().expected(&told);
        let mut weights = learned.weights.clone();
        for &at in &shots {
            weights[at] = ShotWeight { hit: 1e-12, lean: 1e-12 };
        }
        let without = learn(&seen, &Scales::at(journal.history.setup.distance));
        let without = Learned { weights, ..without };
        let refitted = Evidence::of(&without.reader(&seen));
        let rows = refitted.rows(&shots, &told);
        let refitted_known = refitted.covariance(&[&rows]);
        for at in 0..off.len() {
            let sd = known[(at, at)].sqrt();
            assert_within(off[at], rows.off[at], TAKEN_OUT * sd);
            for other in 0..off.len() {
                let apart = TAKEN_OUT * known[(at, at)].sqrt() * known[(other, other)].sqrt();
                assert_within(known[(at, other)], refitted_known[(at, other)], apart);
            }
        }
    }
}

#[test]
fn sessions_without_a_mistake_give_no_hint() {
    for seed in 0..6 {
        let mut journal = Journal::of(6);
        let mut archer = journal.archer(World::ORDINARY, seed);
        for _ in 0..8 {
            let advice = journal.follow(&mut archer, 1);
            assert_eq!(advice.hints, [], "seed {seed}");
        }
        assert!(journal.history.events.iter().any(|event| matches!(event, Event::End(_))));
    }
}
