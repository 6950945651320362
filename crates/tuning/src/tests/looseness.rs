//! Shafts that do not repeat are told from those that do, as surely as is said.

use super::journal::{Journal, name};
use crate::learn::learn;
use crate::observation::Observations;
use crate::tolerance::SHARE_OF_LOOSE;
use crate::{Scales, World};

/// What is said of each shaft after so many ends, and whether it truly groups.
fn said(world: World, ends: usize) -> Vec<(f64, bool)> {
    let dozen = |seed| {
        let mut journal = Journal::of(12);
        let mut archer = journal.archer(world, seed);
        journal.shoot_in_turn(&mut archer, 0..ends, |end| (end / 4) as f64 * 3.0);
        let seen = Observations::of(&journal.history);
        let loose = learn(&seen, &Scales::at(journal.history.setup.distance)).loose;
        let bare = (1..=12).map(|number| name(&number.to_string()));
        let said = bare.map(|shaft| (loose[seen.life_of(&shaft).unwrap()], archer.groups(&shaft)));
        said.collect::<Vec<_>>()
    };
    (0..40).flat_map(dozen).collect()
}

fn mean(of: impl Iterator<Item = f64>) -> f64 {
    let (sum, n) = of.fold((0.0, 0.0), |(sum, n), one| (sum + one, n + 1.0));
    sum / n
}

/// In worlds where one shaft in ten scatters two and a half times as much.
#[test]
fn as_many_shafts_do_not_repeat_as_is_said_and_more_shots_tell_which() {
    let world = World { loose_share: 0.1, ..World::STEADY };
    let [mut before, mut apart] = [0.0, 0.0];
    for ends in [8, 16] {
        let said = said(world, ends);
        let true_share = mean(said.iter().map(|(_, groups)| f64::from(u8::from(!groups))));
        let said_share = mean(said.iter().map(|(loose, _)| *loose));
        assert!((said_share - true_share).abs() < SHARE_OF_LOOSE, "{said_share} {true_share}");
        let of = |groups: bool| mean(said.iter().filter(|one| one.1 == groups).map(|one| one.0));
        (before, apart) = (apart, of(false) - of(true));
        assert!(of(false) > 3.0 * of(true), "{ends} ends: {} {}", of(false), of(true));
    }
    assert!(apart > before, "{before} {apart}");
}
