//! Shots spent, and the verdicts that stood after them.

use quarterturn_tuning::{Advice, Event, History, Verdict};

use crate::plot::axis::Axis;
use crate::plot::chart::Chart;
use crate::plot::series::{Joined, Look, Series};

/// So many places are drawn at most between the first shot and the last: each takes a solution of the whole posterior.
const MOST_PLACES: usize = 9;

/// What is said of the verdicts: they are not what was said at the time.
pub const BY_NOW: &str = "Verdicts are by the shots up to there, and by what is known now of how widely you shoot and how \
    much shafts differ.";

/// After how many events verdicts are drawn, but for the last of all.
pub fn places(history: &History) -> Vec<usize> {
    let ends: Vec<usize> = (1..=history.events.len())
        .filter(|&at| matches!(history.events[at - 1], Event::End(_)))
        .collect();
    let every = ends.len().div_ceil(MOST_PLACES + 1).max(1);
    let mut places: Vec<usize> = ends.into_iter().rev().step_by(every).skip(1).collect();
    places.reverse();
    places
}

/// How many shafts were to keep, to retire and open, over all shots: `stood` at the places between, as advised now at the
/// end.
pub fn settled(history: &History, advice: &Advice, stood: &[Vec<Verdict>]) -> Chart {
    let shots_after = |events: usize| history.events.iter().take(events).map(shots).sum::<usize>();
    let mut read = vec![(0, [0, 0, history.setup.shafts.len()])];
    let between = places(history).into_iter().zip(stood);
    read.extend(between.map(|(at, verdicts)| (shots_after(at), tallied(verdicts))));
    let all = shots_after(history.events.len());
    if all > 0 {
        let now: Vec<Verdict> = advice.shafts.iter().map(|report| report.verdict).collect();
        read.push((all, tallied(&now)));
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

fn tallied(verdicts: &[Verdict]) -> [usize; 3] {
    let of = |is: fn(&&Verdict) -> bool| verdicts.iter().filter(is).count();
    [
        of(|verdict| **verdict == Verdict::Keep),
        of(|verdict| matches!(verdict, Verdict::Retire(_))),
        of(|verdict| matches!(verdict, Verdict::Open(_))),
    ]
}
