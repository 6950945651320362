//! Harrow Fen: an invented archer and an invented dozen.

use quarterturn_geometry::Index;
use quarterturn_journal::{NewEntry, NewShaft, ShotEntry};
use quarterturn_tuning::{End, PlannedShot, Purpose, Shot, World};

/// The name of the journal and, with another ending, of the picture.
pub const JOURNAL: &str = "harrow-fen.journal";

/// What the archer, his bow and his shafts are drawn from.
pub const SEED: u64 = 6;

/// A steady hunter with a light compound bow.
pub const WORLD: World = World { spread_mm: [13.0, 13.0], ..World::ORDINARY };

/// What he types to begin his journal.
pub const BEGINNING_TYPED: &str = "--shafts 1-12 \\\n>   --reference R --distance 18.3m \
    --tolerance 25mm --bow \"compound, 60 lb\"";

/// How his journal is begun.
pub fn beginning() -> NewEntry {
    let shaft = |number: u8| NewShaft { name: number.to_string(), index_deg: 0.0 };
    NewEntry {
        shafts: (1..=12).map(shaft).collect(),
        references: vec!["R".to_owned()],
        distance_m: 18.3,
        tolerance_mm: 25.0,
        units: "mm".to_owned(),
        arrows_per_end: 4,
        positions: 12,
        bow: Some("compound, 60 lb".to_owned()),
        ..NewEntry::default()
    }
}

/// The shots as a person reads and types them: hits to a millimetre, tails to half a degree, a mark where it
/// was turned.
pub fn as_typed(planned: &[PlannedShot], end: &End) -> Vec<ShotEntry> {
    let typed = |(planned, shot): (&PlannedShot, &Shot)| {
        let lean = shot.hit.and_then(|hit| hit.lean);
        ShotEntry {
            shaft: shot.shaft.to_string(),
            index_deg: turned(planned.purpose).map(Index::degrees),
            x_mm: shot.hit.map(|hit| hit.at.x_mm.round()),
            y_mm: shot.hit.map(|hit| hit.at.y_mm.round()),
            lean_x_deg: lean.map(|lean| halves(lean.x.degrees())),
            lean_y_deg: lean.map(|lean| halves(lean.y.degrees())),
            ..ShotEntry::default()
        }
    };
    planned.iter().zip(&end.shots).map(typed).collect()
}

/// Where the mark of a shot goes, if it has to be turned.
pub fn turned(purpose: Purpose) -> Option<Index> {
    match purpose {
        Purpose::Bare { index, from, .. } if index != from => Some(index),
        _ => None,
    }
}

fn halves(deg: f64) -> f64 {
    (deg * 2.0).round() / 2.0
}
