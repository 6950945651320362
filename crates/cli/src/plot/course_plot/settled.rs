//! Shots spent, and the verdicts that stood after them.

use quarterturn_tuning::{Event, History, Policy, ShaftReport, Verdict, advise};

use crate::plot::axis::Axis;
use crate::plot::chart::Chart;
use crate::plot::series::{Joined, Look, Series};

/// The history is read so often at most: each reading takes as long as `next` does.
const MOST_READINGS: usize = 40;

/// How many shafts were to keep, to retire and open, over all shots.
pub fn settled(history: &History, policy: &Policy) -> Chart {
    let mut read = vec![(0, [0, 0, history.setup.shafts.len()])];
    let ends: Vec<usize> = (1..=history.events.len())
        .filter(|&at| matches!(history.events[at - 1], Event::End(_)))
        .collect();
    let every = ends.len().div_ceil(MOST_READINGS).max(1);
    // The last is always among them.
    for &at in ends.iter().rev().step_by(every).rev() {
        let so_far =
            History { setup: history.setup.clone(), events: history.events[..at].to_vec() };
        let shots = so_far.events.iter().map(shots).sum();
        read.push((shots, tallied(&advise(&so_far, policy).shafts)));
    }
    let most = read.last().map_or(0, |(shots, _)| *shots);
    let named = [("keep", Look::Disc), ("retire", Look::Square), ("open", Look::Diamond)];
    let series = named.into_iter().enumerate().map(|(which, (name, look))| Series {
        name: name.to_owned(),
        class: name,
        look,
        joined: Joined::Line,
        points: read.iter().map(|(shots, tally)| [*shots as f64, tally[which] as f64]).collect(),
    });
    Chart {
        title: "What was settled, and what it took".to_owned(),
        across: Axis::counting("shots, of the reference too", most),
        up: Axis::counting("shafts", history.setup.shafts.len()),
        breaks: Vec::new(),
        series: series.collect(),
        area_mm: 42.0,
    }
}

/// The shots of an event.
pub fn shots(event: &Event) -> usize {
    match event {
        Event::End(end) => end.shots.len(),
        _ => 0,
    }
}

fn tallied(shafts: &[ShaftReport]) -> [usize; 3] {
    let of = |is: fn(Verdict) -> bool| shafts.iter().filter(|report| is(report.verdict)).count();
    [
        of(|verdict| verdict == Verdict::Keep),
        of(|verdict| matches!(verdict, Verdict::Retire(_))),
        of(|verdict| matches!(verdict, Verdict::Open(_))),
    ]
}
