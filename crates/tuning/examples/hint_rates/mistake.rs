//! One mistake in an end, and how large it is.

use quarterturn_geometry::Index;
use quarterturn_tuning::{End, PlannedShot, Purpose, ShaftName, SimulatedArcher};

/// What goes wrong.
#[derive(Clone, Copy, PartialEq)]
pub enum Mistake {
    /// Two shots are entered under each other's numbers.
    Exchange,
    /// A nock is put on upside down for one shot.
    UpsideDown,
    /// A nock slips, and stays so.
    Slip,
}

/// What was spoilt.
pub struct Spoilt {
    /// Whose shots.
    pub shafts: Vec<ShaftName>,
    /// How far they land from where they would have.
    pub by_mm: f64,
}

/// A shaft whose mark truly stands elsewhere.
pub struct Turned {
    /// The shaft.
    pub shaft: ShaftName,
    /// How far from where it is said to stand, degrees clockwise.
    pub by_deg: f64,
}

impl Turned {
    /// The first bare shaft of an end, as a mistake turns it.
    pub fn first(planned: &[PlannedShot], mistake: Mistake) -> Option<Self> {
        let by_deg = match mistake {
            Mistake::Exchange => return None,
            Mistake::UpsideDown => 180.0,
            Mistake::Slip => 60.0,
        };
        Some(Self { shaft: bare(planned).into_iter().next()?, by_deg })
    }

    /// What it spoils.
    pub fn spoils(&self, planned: &[PlannedShot], archer: &SimulatedArcher) -> Option<Spoilt> {
        let index = index_of(planned, &self.shaft);
        let truly = archer.true_miss(&self.shaft, self.truly(index))?;
        let moved = truly - archer.true_miss(&self.shaft, index)?;
        Some(Spoilt { shafts: vec![self.shaft.clone()], by_mm: moved.length().mm() })
    }

    fn truly(&self, index: Index) -> Index {
        Index::from_degrees(index.degrees() + self.by_deg)
    }
}

/// Shoots as planned, but for a shaft whose mark truly stands elsewhere.
pub fn shoot(
    archer: &mut SimulatedArcher,
    planned: &[PlannedShot],
    turned: Option<&Turned>,
    evening: usize,
) -> End {
    let truly = planned.iter().map(|shot| match (shot.purpose, turned) {
        (Purpose::Bare { index, from, aim }, Some(turned)) if turned.shaft == shot.shaft => {
            let purpose = Purpose::Bare { index: turned.truly(index), from, aim };
            PlannedShot { shaft: shot.shaft.clone(), purpose }
        }
        _ => shot.clone(),
    });
    let mut end = archer.shoot(&truly.collect::<Vec<_>>(), &evening.to_string());
    for shot in &mut end.shots {
        shot.index = index_of(planned, &shot.shaft);
    }
    end
}

/// Exchanges the hits of the two bare shafts of an end that lie farthest apart: the others nobody could tell.
pub fn exchange(
    end: &mut End,
    planned: &[PlannedShot],
    archer: &SimulatedArcher,
) -> Option<Spoilt> {
    let shafts = bare(planned);
    let miss = |name: &ShaftName| archer.true_miss(name, index_of(planned, name));
    let apart = |[one, other]: [&ShaftName; 2]| Some((miss(one)? - miss(other)?).length().mm());
    let pairs = shafts.iter().flat_map(|one| shafts.iter().map(move |other| [one, other]));
    let (by_mm, pair) = pairs
        .filter_map(|pair| Some((apart(pair)?, pair)))
        .max_by(|one, other| one.0.total_cmp(&other.0))?;
    let place = |name: &ShaftName| end.shots.iter().position(|shot| shot.shaft == *name);
    let (first, second) = (place(pair[0])?, place(pair[1])?);
    let hit = end.shots[first].hit;
    end.shots[first].hit = end.shots[second].hit;
    end.shots[second].hit = hit;
    Some(Spoilt { shafts: pair.map(ShaftName::clone).into(), by_mm })
}

fn bare(planned: &[PlannedShot]) -> Vec<ShaftName> {
    let bare = |one: &&PlannedShot| one.purpose != Purpose::Reference;
    planned.iter().filter(bare).map(|one| one.shaft.clone()).collect()
}

fn index_of(planned: &[PlannedShot], shaft: &ShaftName) -> Index {
    let purpose = planned.iter().find(|one| one.shaft == *shaft).map(|one| one.purpose);
    match purpose {
        Some(Purpose::Bare { index, .. }) => index,
        _ => Index::TWELVE,
    }
}
