//! What is older than the last shots that are read.

use quarterturn_geometry::Offset;

use super::journal::{Journal, shot};
use crate::observation::MOST_READ;
use crate::{Advice, BowPart, Event, History, Policy, ShaftChange, advise};

/// Ends of a reference and one bare shaft, each a little elsewhere.
fn ends(mut journal: Journal, count: usize, right_mm: f64) -> Journal {
    for end in 0..count {
        let aside = Offset::new(right_mm + (end % 5) as f64, (end % 3) as f64);
        journal = journal.end([shot(["1", "2"][end % 2], 0.0, aside)]);
    }
    journal
}

/// A dozen ends of another bow and of shafts that were mended since, then as many as are read, and `more`.
fn old(more: usize) -> Journal {
    let journal = ends(Journal::of(2), 12, 80.0).bow(BowPart::Rest);
    let journal = journal.shaft("1", ShaftChange::Repaired).evening("second");
    ends(journal, MOST_READ / 2 + more, 5.0)
}

fn read(history: &History) -> Advice {
    advise(history, &Policy::default())
}

#[test]
fn nothing_is_left_out_up_to_the_most_that_are_read() {
    assert_eq!(read(&ends(Journal::of(2), MOST_READ / 2, 5.0).history).older_shots, 0);
}

#[test]
fn older_shots_are_counted_and_say_nothing() {
    let journal = old(1).history;
    let first_read = journal.events.len() - MOST_READ / 2;
    let recent =
        History { setup: journal.setup.clone(), events: journal.events[first_read..].to_vec() };
    let (all, recent) = (read(&journal), read(&recent));
    assert_eq!((all.older_shots, recent.older_shots), (26, 0));
    assert_eq!(all.shafts[1].shots_total, recent.shafts[1].shots_total + 6);
    for (one, other) in all.shafts.iter().zip(&recent.shafts) {
        assert_eq!((one.miss, one.positions.clone()), (other.miss, other.positions.clone()));
    }
    assert_eq!(all.bow, recent.bow);
}

#[test]
fn an_end_is_read_whole_or_not_at_all() {
    let Journal { mut history, .. } = old(0);
    let Some(Event::End(last)) = history.events.last_mut() else { panic!("no end") };
    last.shots.push(shot("2", 0.0, Offset::ZERO));
    // One shot too many: the oldest end goes with both of its own, to those of the dozen ends before.
    assert_eq!(read(&history).older_shots, 24 + 2);
}
