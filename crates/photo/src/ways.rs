//! All ways to take marks that were seen for those of a face.

use crate::Corner;
use crate::candidate::Candidate;
use crate::fourth::Three;
use crate::seen::Seen;
use crate::set::Set;

/// A mark for each corner, no mark for two.
pub(crate) fn sets(seen: &Seen) -> Vec<Set<'_>> {
    let marks: Vec<[&Candidate; 4]> = taken(seen, Corner::ALL);
    marks.into_iter().map(Set).collect()
}

/// A mark for each of three corners.
pub(crate) fn threes(seen: &Seen) -> Vec<Three<'_>> {
    let without = |missing: Corner| {
        let mut others = Corner::ALL.into_iter().filter(move |corner| *corner != missing);
        let corners: [Corner; 3] = std::array::from_fn(|_| others.next().unwrap_or(missing));
        taken(seen, corners).into_iter().map(move |marks| {
            let marks = std::array::from_fn(|at| (corners[at], marks[at]));
            Three { marks, missing }
        })
    };
    Corner::ALL.into_iter().flat_map(without).collect()
}

/// All ways to take a mark with the right dot for each of these corners, no mark for two.
fn taken<const COUNT: usize>(seen: &Seen, corners: [Corner; COUNT]) -> Vec<[&Candidate; COUNT]> {
    let mut ways: Vec<Vec<&Candidate>> = vec![Vec::new()];
    for corner in corners {
        let marks = seen.with(corner.dot());
        let longer = |way: &Vec<_>| {
            let way = way.clone();
            let free: Vec<_> = marks.iter().copied().filter(|mark| !way.contains(mark)).collect();
            free.into_iter().map(move |mark| [&way[..], &[mark]].concat())
        };
        ways = ways.iter().flat_map(longer).collect();
    }
    ways.into_iter().filter_map(|way| way.try_into().ok()).collect()
}
