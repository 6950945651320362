//! How far arrows protrude, said once for an end.

use quarterturn_journal::ShotEntry;

/// Lets a protruding length that was said of one arrow hold for every other that was read by tape.
///
/// Where no tail was read by tape it stays where it was said, and the journal asks for the tape.
pub fn share_protruding_length(shots: &mut [ShotEntry]) {
    if shots.iter().all(|shot| shot.tail_x_mm.is_none()) {
        return;
    }
    let said = shots.iter().find_map(|shot| shot.protruding_mm);
    for shot in shots {
        shot.protruding_mm = match shot.tail_x_mm {
            Some(_) => shot.protruding_mm.or(said),
            // Of an arrow whose tail was read otherwise it says nothing.
            None => None,
        };
    }
}
