//! Parts a picture into regions and tells which lies in which.

use crate::oval::Oval;
use crate::region::{Of, Region};

/// Pixels of one kind side by side in a row. A noisy picture has millions of these, so they are kept small.
struct Run {
    start: u32,
    end: u32,
    y: u32,
    of: Of,
}

/// The regions of a picture of this width; ink hangs together at corners as well, paper only along edges.
///
/// A region's highest row begins with a pixel whose left neighbour is of the region round about it.
pub(crate) fn regions(ink: &[bool], width: usize) -> Vec<Region> {
    let runs: Vec<Run> =
        (0..).zip(ink.chunks_exact(width)).flat_map(|(y, row)| runs_of(row, y)).collect();
    // No picture that is looked at has more runs than a number of 32 bits can tell.
    let mut joined: Vec<u32> = (0..).take(runs.len()).collect();
    let (mut above, mut here) = (0, 0);
    for (at, run) in runs.iter().enumerate() {
        if run.start == 0 {
            (above, here) = (here, at);
        }
        if run.y == 0 {
            continue;
        }
        let reach = u32::from(run.of == Of::Ink);
        while runs[above].end + reach <= run.start {
            above += 1;
        }
        let row = runs[above..here].iter().zip(above..);
        for (_, other) in row
            .take_while(|(other, _)| other.start < run.end + reach)
            .filter(|(other, _)| other.of == run.of)
        {
            join(&mut joined, at, other);
        }
    }
    gathered(&runs, &mut joined)
}

fn runs_of(row: &[bool], y: u32) -> impl Iterator<Item = Run> {
    let mut start: u32 = 0;
    row.chunk_by(|one, next| one == next).map(move |chunk| {
        let end = start.saturating_add(u32::try_from(chunk.len()).unwrap_or(u32::MAX));
        let of = if chunk[0] { Of::Ink } else { Of::Paper };
        Run { start: std::mem::replace(&mut start, end), end, y, of }
    })
}

/// Joins two runs under the earlier of their roots, which is the first of its region.
fn join(joined: &mut [u32], one: usize, other: usize) {
    let (one, other) = (root(joined, one), root(joined, other));
    joined[at(one.max(other))] = one.min(other);
}

fn root(joined: &mut [u32], of: usize) -> u32 {
    let mut run = joined[of];
    while joined[at(run)] != run {
        joined[at(run)] = joined[at(joined[at(run)])];
        run = joined[at(run)];
    }
    joined[of] = run;
    run
}

/// A number of 32 bits as an index.
fn at(run: u32) -> usize {
    usize::try_from(run).unwrap_or(usize::MAX)
}

fn gathered(runs: &[Run], joined: &mut [u32]) -> Vec<Region> {
    let mut regions: Vec<Region> = Vec::new();
    let mut places = vec![u32::MAX; runs.len()];
    for (number, run) in runs.iter().enumerate() {
        let first = at(root(joined, number));
        let oval = Oval::run(run.start, run.end, run.y);
        if first == number {
            places[number] = u32::try_from(regions.len()).unwrap_or(u32::MAX);
            let left = (run.start > 0).then(|| at(root(joined, number - 1)));
            let around = left.map(|left| at(places[left]));
            regions.push(Region { of: run.of, oval, around, within: Oval::default() });
        } else {
            let region = &mut regions[at(places[first])];
            region.oval = region.oval.and(oval);
        }
    }
    for inner in 0..regions.len() {
        if let Some(around) = regions[inner].around {
            let oval = regions[inner].oval;
            regions[around].within = regions[around].within.and(oval);
        }
    }
    regions
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_dot_in_a_ring_in_a_ring() {
        let picture = [
            ".........",
            ".#######.",
            ".#.....#.",
            ".#.##..#.",
            ".#..#..#.",
            ".#.....#.",
            ".######..",
            ".......#.",
        ];
        let ink: Vec<bool> =
            picture.iter().flat_map(|row| row.bytes().map(|b| b == b'#')).collect();
        let regions = regions(&ink, 9);
        let dot = regions.iter().find(|region| region.oval.area.to_bits() == 3.0_f64.to_bits());
        let white = &regions[dot.unwrap().around.unwrap()];
        assert_eq!((white.of, white.oval.area, white.within.area), (Of::Paper, 17.0, 3.0));
        let ring = &regions[white.around.unwrap()];
        assert_eq!((ring.of, ring.oval.area), (Of::Ink, 22.0), "it hangs together at a corner");
        let all: f64 = regions.iter().map(|region| region.oval.area).sum();
        assert_eq!(all.to_bits(), 72.0_f64.to_bits());
    }
}
