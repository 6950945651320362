//! The course of verdicts against what was said at the time.

use crate::{
    Event, History, Policy, Setup, SimulatedArcher, Step, Verdict, World, advise,
    advise_with_course,
};

/// What was said after each end of a dozen that was shot as advised.
fn said_then(shafts: usize, seed: u64) -> (History, Vec<Vec<Verdict>>) {
    let setup = Setup::beside_one_reference(shafts);
    let mut archer = SimulatedArcher::new(&setup, World::ORDINARY, seed);
    let mut history = History { setup, events: Vec::new() };
    let mut said = Vec::new();
    let mut advice = advise(&history, &Policy::default());
    while let Step::Shoot(end) = &advice.step
        && said.len() < 25
    {
        history.events.push(Event::End(archer.shoot(end, "one evening")));
        advice = advise(&history, &Policy::default());
        said.push(advice.shafts.iter().map(|report| report.verdict).collect());
    }
    (history, said)
}

/// A keep, a retirement or neither.
fn kind(verdict: Verdict) -> u8 {
    match verdict {
        Verdict::Keep => 0,
        Verdict::Retire(_) => 1,
        Verdict::Open(_) => 2,
    }
}

#[test]
fn what_is_known_now_of_the_sizes_seldom_changes_a_verdict() {
    let (mut other, mut all) = (0, 0);
    for seed in 1..=4 {
        let (history, said) = said_then(6, seed);
        let after: Vec<usize> = (1..=history.events.len()).collect();
        let (advice, stood) = advise_with_course(&history, &Policy::default(), &after);
        assert_eq!(advice, advise(&history, &Policy::default()));
        for (then, now) in said.iter().flatten().zip(stood.iter().flatten()) {
            all += 1;
            other += usize::from(kind(*then) != kind(*now));
        }
    }
    assert!(all > 200 && other * 12 < all, "{other} of {all}");
}

#[test]
fn before_the_first_shot_nothing_is_settled() {
    let (history, _) = said_then(3, 1);
    let (_, stood) = advise_with_course(&history, &Policy::default(), &[0]);
    assert_eq!(stood.len(), 1);
    assert!(stood[0].iter().all(|verdict| kind(*verdict) == 2));
}

/// What comes later tells of the sizes, and of nothing else: a shaft that breaks at last was whole before.
#[test]
fn what_happened_later_is_not_told_earlier() {
    let (mut history, _) = said_then(3, 1);
    let broken = crate::ShaftChange::Broken;
    let name = history.setup.shafts[0].0.clone();
    let ends = history.events.len();
    let before = advise_with_course(&history, &Policy::default(), &[ends]).1;
    history.events.push(Event::Shaft(name, broken));
    let (_, stood) = advise_with_course(&history, &Policy::default(), &[ends, ends + 1]);
    assert_eq!(stood[0], before[0]);
    assert_eq!(kind(stood[1][0]), 1);
}
