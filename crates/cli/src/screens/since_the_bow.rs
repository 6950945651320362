//! Which groups of finished arrows are not looked at.

use crate::opened::Opened;
use crate::wording::count;

/// What is said where the bow was changed since some groups were shot.
pub fn since_the_bow(opened: &Opened) -> Option<String> {
    let state = opened.journal.state();
    let before = state.groups().count() - state.groups_beside_this_bow().count();
    (before > 0).then(|| {
        let groups = count(before, "group");
        format!("Left out: {groups} shot before the bow or its sight was changed last.")
    })
}
