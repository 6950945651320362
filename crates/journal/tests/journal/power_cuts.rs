//! The promise on a disk that loses power, fails, tears and reorders: crash at every step, by seed.
//!
//! `QUARTERTURN_SEEDS=1000000` plays more; a failure says its seed and its step.

use std::env;
use std::io::ErrorKind;
use std::ops::Range;
use std::panic::{RefUnwindSafe, catch_unwind};
use std::path::Path;

use quarterturn_journal::{Entry, Journal, JournalError};

use crate::scene::{beginning, end_of, stamp};
use crate::simulated::{Chance, Misfortune, SimulatedDisk};

const PATH: &str = "dozen.jsonl";

/// How many seeds are played with power cuts where nothing else is asked for.
const CUTS: u64 = 2000;

/// The same with errors, of which there are fewer kinds.
const ERRORS: u64 = 500;

/// What is written in one life of the program, and what was confirmed of it.
#[derive(Clone, Debug, Default, PartialEq)]
struct Said {
    /// The ids of the records that were confirmed.
    confirmed: Vec<u64>,
    /// The id of one that failed, and whether it may be there.
    failed: Option<(u64, bool)>,
}

fn seeds(usual: u64) -> Range<u64> {
    let asked = |name| env::var(name).ok().and_then(|text| text.parse().ok());
    let first = asked("QUARTERTURN_FIRST_SEED").unwrap_or(0);
    first..first + asked("QUARTERTURN_SEEDS").unwrap_or(usual)
}

/// Begins a journal where there is none, and adds ends or takes them back, until something fails.
fn live(disk: &SimulatedDisk, ids: Range<u64>, chance: &mut Chance) -> Said {
    let mut said = Said::default();
    for id in ids {
        match write(disk, id, chance) {
            Ok(()) => said.confirmed.push(id),
            Err(error) => {
                said.failed = Some((id, !matches!(error, JournalError::NotRecorded { .. })));
                break;
            }
        }
    }
    said
}

fn write(disk: &SimulatedDisk, id: u64, chance: &mut Chance) -> Result<(), JournalError> {
    let (path, stamp) = (Path::new(PATH), stamp(id));
    let mut journal = match Journal::open_on(disk.clone(), path) {
        Err(JournalError::Missing { .. }) => {
            return Journal::create_on(disk.clone(), path, beginning(), &stamp).map(drop);
        }
        journal => journal?,
    };
    if !journal.state().history().events.is_empty() && chance.one_in(4) {
        return journal.undo(&stamp).map(drop);
    }
    let mut end = end_of(&["R", "1", "2"]);
    // Some lines are longer than a sector or two.
    end.note = Some("windy ".repeat(chance.below(200)));
    journal.append(Entry::End(end), &stamp).map(drop)
}

/// The ids of the records that stand in the journal; none where there is no journal.
fn standing(disk: &SimulatedDisk) -> Vec<u64> {
    match Journal::open_on(disk.clone(), Path::new(PATH)) {
        Ok(journal) => {
            let bytes = disk.bytes(Path::new(PATH)).unwrap();
            let records = usize::try_from(journal.state().records()).unwrap();
            let id = |line: &[u8]| {
                let line: serde_json::Value = serde_json::from_slice(line).unwrap();
                u64::from_str_radix(line["id"].as_str().unwrap(), 16).unwrap()
            };
            bytes.split(|byte| *byte == b'\n').take(records).map(id).collect()
        }
        Err(JournalError::Missing { .. }) => Vec::new(),
        Err(error) => panic!("after a power cut: {error}"),
    }
}

/// What stands is what was confirmed, and perhaps, whole, what was not.
fn check(standing: &[u64], before: &[u64], said: &Said) {
    let confirmed = [before, &said.confirmed].concat();
    let perhaps = said.failed.filter(|(_, perhaps)| *perhaps).map(|(id, _)| id);
    let also = [&confirmed[..], perhaps.as_slice()].concat();
    assert!(standing == confirmed || standing == also, "{standing:?}, confirmed {confirmed:?}");
}

/// Two lives, the power cut in each of them at some step; then a third that must go well.
fn lives(seed: u64, cut: usize) {
    let mut chance = Chance::of(seed ^ cut as u64);
    let disk = SimulatedDisk::new(seed);
    disk.plan(cut, Misfortune::PowerCut);
    let said = live(&disk, 1..4, &mut chance);
    let disk = disk.after_power_cut(chance.bits());
    let first = standing(&disk);
    check(&first, &[], &said);

    disk.plan(chance.below(40), Misfortune::PowerCut);
    let said = live(&disk, 4..6, &mut chance);
    let disk = disk.after_power_cut(chance.bits());
    let second = standing(&disk);
    check(&second, &first, &said);

    let torn = Journal::open_on(disk.clone(), Path::new(PATH)).ok().and_then(|read| read.torn());
    let parts = disk.names().len();
    let said = live(&disk, 6..8, &mut chance);
    assert_eq!((said.confirmed.len(), said.failed), (2, None));
    check(&standing(&disk.after_power_cut(chance.bits())), &second, &said);
    if let Some(torn) = torn {
        let kept = disk.names().len();
        assert!(kept > parts || torn.bytes == 0, "the torn end was not kept");
    }
}

/// One life in which one step fails, or all from it on; then the disk is mended.
fn failing(seed: u64, step: usize) {
    let mut chance = Chance::of(seed ^ step as u64);
    let kinds =
        [ErrorKind::StorageFull, ErrorKind::PermissionDenied, ErrorKind::ReadOnlyFilesystem];
    let kind = kinds[chance.below(kinds.len())];
    let misfortunes = [Misfortune::Fails(kind), Misfortune::FailsFromThenOn(kind)];
    let disk = SimulatedDisk::new(seed);
    disk.plan(step, misfortunes[chance.below(2)]);
    let said = live(&disk, 1..4, &mut chance);
    disk.plan(usize::MAX / 2, Misfortune::PowerCut);
    let seen = standing(&disk);
    check(&seen, &[], &said);
    check(&standing(&disk.after_power_cut(chance.bits())), &[], &said);

    let more = live(&disk, 4..6, &mut chance);
    assert_eq!((more.confirmed.len(), more.failed), (2, None));
    check(&standing(&disk.after_power_cut(chance.bits())), &seen, &more);
}

/// Plays `play` for every seed and every step that such a life has.
fn at_every_step(usual: u64, play: impl Fn(u64, usize) + RefUnwindSafe) {
    for seed in seeds(usual) {
        let disk = SimulatedDisk::new(seed);
        live(&disk, 1..4, &mut Chance::of(seed));
        for step in 0..disk.steps() {
            let played = catch_unwind(|| play(seed, step));
            assert!(
                played.is_ok(),
                "QUARTERTURN_FIRST_SEED={seed} QUARTERTURN_SEEDS=1, step {step}"
            );
        }
    }
}

#[test]
fn a_power_cut_loses_nothing_that_was_confirmed() {
    at_every_step(CUTS, lives);
}

#[test]
fn an_error_of_the_disk_loses_nothing_that_was_confirmed() {
    at_every_step(ERRORS, failing);
}
