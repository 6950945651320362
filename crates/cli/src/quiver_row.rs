//! One arrow of the quiver, as the screen, the JSON and the printed card show it.

use quarterturn_geometry::Index;
use quarterturn_journal::{Quiver, QuiverArrow};
use quarterturn_tuning::{ShaftName, ShaftState};

use crate::opened::Opened;
use crate::wording;

/// An arrow with all that is known of it.
pub struct QuiverRow<'a> {
    /// When it is shot: 1 is first; nothing for an arrow that is no hunting arrow.
    pub place: Option<usize>,
    pub name: String,
    pub state: ShaftState,
    /// Where its mark stands on the string.
    pub mark: Index,
    /// How often its nock was turned, and how much more it bears.
    pub turns: [usize; 2],
    /// What happened to it; nothing where nothing did.
    pub season: Option<&'a QuiverArrow>,
    pub finished_mass_gr: Option<f64>,
}

impl<'a> QuiverRow<'a> {
    /// Every finished arrow: those in the quiver in their order, then the others that are fletched, then references.
    pub fn all(opened: &Opened, quiver: &'a Quiver) -> Vec<Self> {
        let state = opened.journal.state();
        let roster = state.roster();
        let fletched = roster.shafts.iter().filter(|one| one.state == ShaftState::Fletched);
        let named: Vec<ShaftName> =
            quiver.order.iter().filter_map(|name| name.parse().ok()).collect();
        let others = fletched.chain(roster.references_in_use()).map(|one| one.name.clone());
        let others: Vec<_> = others.filter(|name| !named.contains(name)).collect();
        let placed = named.iter().enumerate().map(|(at, name)| (Some(at + 1), name));
        let unplaced = others.iter().map(|name| (None, name));
        let row = |(place, name): (Option<usize>, &ShaftName)| {
            let standing = roster.find(name)?;
            let bears = state.policy().nock_turns;
            Some(Self {
                place,
                name: name.to_string(),
                state: standing.state,
                mark: standing.index_now,
                turns: [standing.turns, bears.saturating_sub(standing.turns)],
                season: quiver.arrows.iter().find(|arrow| arrow.name == name.as_str()),
                finished_mass_gr: state.measures(name).finished_mass_gr,
            })
        };
        placed.chain(unplaced).filter_map(row).collect()
    }

    /// The head that is on it, in words.
    pub fn head(&self) -> Option<String> {
        Some(wording::head_on(self.season?.head.as_ref()?))
    }

    /// How often it was shot.
    pub fn shots(&self) -> usize {
        self.season.map_or(0, |season| season.shots_in_ends + season.shots_in_groups)
    }
}

/// How these arrows stand beside the limits that the archer has read, a heading first; empty where he entered none.
pub fn beside_limits(opened: &Opened, quiver: &Quiver, rows: &[QuiverRow<'_>]) -> Vec<String> {
    let Some(limits) = &quiver.limits else { return Vec::new() };
    let placed: Vec<_> = rows.iter().filter(|row| row.place.is_some()).collect();
    let rows = if placed.is_empty() { rows.iter().collect() } else { placed };
    let masses: Vec<_> = rows.iter().map(|row| (row.name.as_str(), row.finished_mass_gr)).collect();
    let seasons: Vec<&QuiverArrow> = rows.iter().filter_map(|row| row.season).collect();
    let heading =
        format!("Your limits, as you read them on {}:", wording::visible(&limits.read_on));
    let said = wording::compared(limits, &masses, &seasons, opened.ruler());
    std::iter::once(heading).chain(said).collect()
}
