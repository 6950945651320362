//! How often hints come where nothing was wrong, and where something was:
//! `cargo run --release --example hint_rates [CLEAN SESSIONS] [SESSIONS OF EACH MISTAKE]`.

#![expect(clippy::print_stdout, reason = "it prints a table")]

use std::collections::BTreeMap;

use quarterturn_geometry::{Index, Millimetres, Positions};
use quarterturn_tuning::{
    End, Event, Hint, History, Pause, PlannedShot, Policy, Purpose, Setup, ShaftName,
    SimulatedArcher, Step, World, advise,
};

/// So many ends are shot, unless the tuning is finished earlier.
const MOST_ENDS: usize = 24;

/// The end in which something goes wrong.
const SPOILT: usize = 12;

#[derive(Clone, Copy, PartialEq)]
enum Plan {
    Clean,
    Exchange,
    UpsideDown,
    Slip,
}

/// What a session showed.
#[derive(Default)]
struct Shown {
    hints: BTreeMap<String, Hint>,
    pauses: Vec<String>,
    /// What was spoilt, and by how many millimetres.
    spoilt: Option<(Vec<ShaftName>, f64)>,
    evenings: usize,
}

fn main() {
    let [clean, spoilt] = [1, 2]
        .map(|at| std::env::args().nth(at).and_then(|text| text.parse::<u64>().ok()).unwrap_or(40));
    let crooked = World { turning_mm: 25.0, centre_mm: 10.0, ..World::ORDINARY };
    let steady = World { spread_mm: [8.0, 14.0], ..crooked };
    let worlds = [
        ("ordinary", World::ORDINARY),
        ("crooked shafts", crooked),
        ("crooked shafts and a good shot", steady),
    ];
    for (name, world) in worlds {
        println!("{name}: {clean} clean sessions, {spoilt} of each mistake");
        print_clean(&(0..clean).map(|seed| play(world, Plan::Clean, seed)).collect::<Vec<_>>());
        for (plan, what) in [
            (Plan::Exchange, "exchange"),
            (Plan::UpsideDown, "upside down"),
            (Plan::Slip, "slip by two hours"),
        ] {
            let played: Vec<_> = (0..spoilt).map(|seed| play(world, plan, seed)).collect();
            print_spoilt(what, plan, &played);
        }
    }
}

fn print_clean(clean: &[Shown]) {
    let with_any = clean.iter().filter(|one| !one.hints.is_empty()).count();
    println!("  clean: {with_any} of {} sessions with a hint at any time", clean.len());
    for (at, one) in clean.iter().enumerate() {
        one.hints.keys().for_each(|hint| println!("    {at}: {hint}"));
    }
    let evenings: usize = clean.iter().map(|one| one.evenings).sum();
    let pauses: Vec<_> = clean.iter().flat_map(|one| &one.pauses).collect();
    println!("  {} early pauses in {evenings} evenings: {pauses:?}", pauses.len());
}

fn print_spoilt(what: &str, plan: Plan, all: &[Shown]) {
    for (from, to) in [(0.0, 30.0), (30.0, 50.0), (50.0, 80.0), (80.0, 999.0)] {
        let size =
            |one: &&Shown| one.spoilt.as_ref().is_some_and(|(_, by_mm)| (from..to).contains(by_mm));
        let of_size: Vec<_> = all.iter().filter(size).collect();
        let found = of_size.iter().filter(|one| one.finds(plan)).count();
        let named = of_size.iter().filter(|one| one.names()).count();
        let other = of_size.iter().filter(|one| one.blames_another()).count();
        println!(
            "  {what} by {from} to {to} mm: {found} found, {named} named, {other} with another shaft, of {}",
            of_size.len()
        );
    }
}

impl Shown {
    fn shafts(&self) -> &[ShaftName] {
        self.spoilt.as_ref().map_or(&[], |(shafts, _)| shafts)
    }

    fn finds(&self, plan: Plan) -> bool {
        self.hints.values().any(|hint| {
            let kind = matches!(
                (plan, hint),
                (Plan::Exchange, Hint::Exchanged { .. })
                    | (Plan::UpsideDown, Hint::UpsideDown { .. })
                    | (Plan::Slip, Hint::Slipped { .. })
            );
            kind && hint.shafts().iter().all(|one| self.shafts().contains(one))
        })
    }

    fn names(&self) -> bool {
        self.hints.values().any(|hint| hint.shafts().iter().any(|one| self.shafts().contains(one)))
    }

    fn blames_another(&self) -> bool {
        let other = |hint: &Hint| !hint.shafts().iter().any(|one| self.shafts().contains(one));
        self.hints.values().any(other)
    }
}

fn setup() -> Setup {
    Setup {
        shafts: (1..=12)
            .filter_map(|number| Some((number.to_string().parse().ok()?, Index::TWELVE)))
            .collect(),
        references: "R".parse().into_iter().collect(),
        distance: Millimetres::from_metres(18.3),
        tolerance: Millimetres::new(25.0),
        arrows_per_end: 4,
        positions: Positions::HOURS,
        bare_lighter: None,
    }
}

fn play(world: World, plan: Plan, seed: u64) -> Shown {
    let mut history = History { setup: setup(), events: Vec::new() };
    let mut archer = SimulatedArcher::new(&history.setup, world, seed);
    let (mut shown, mut evening, mut slipped) = (Shown::default(), 1, None);
    for number in 1..=MOST_ENDS {
        let advice = advise(&history, &Policy::default());
        for hint in advice.hints {
            let key = format!("{:?} in end {:?}: {hint:?}", hint.shafts(), hint.end());
            shown.hints.entry(key.chars().take(60).collect()).or_insert(hint);
        }
        match advice.pause {
            None => {}
            Some(Pause::EnoughShots { .. }) => evening += 1,
            Some(other) => {
                shown.pauses.push(format!("{other:?}"));
                evening += 1;
            }
        }
        let planned = match advice.step {
            Step::Shoot(planned) => planned,
            Step::MoveBow => {
                archer.move_bow(advice.bow.wanted_shift);
                history.events.push(Event::Bow(quarterturn_tuning::BowChange {
                    part: quarterturn_tuning::BowPart::Rest,
                    moved: Some(advice.bow.wanted_shift * 0.025),
                }));
                continue;
            }
            Step::Finished(_) => break,
        };
        let spoils = number == SPOILT;
        let turned = match plan {
            Plan::UpsideDown if spoils => bare(&planned).first().cloned().map(|one| (one, 180.0)),
            Plan::Slip if spoils => {
                slipped = bare(&planned).first().cloned().map(|one| (one, 60.0));
                slipped.clone()
            }
            Plan::Slip => slipped.clone(),
            _ => None,
        };
        let mut end = shoot(&mut archer, &planned, turned.as_ref(), evening);
        if spoils {
            shown.spoilt = match (plan, &turned) {
                (Plan::Exchange, _) => exchange(&mut end, &planned, &archer),
                (_, Some(turn)) => spoilt_by(&planned, turn, &archer),
                _ => None,
            };
        }
        history.events.push(Event::End(end));
    }
    shown.evenings = evening;
    shown
}

fn bare(planned: &[PlannedShot]) -> Vec<ShaftName> {
    let bare = |one: &&PlannedShot| one.purpose != Purpose::Reference;
    planned.iter().filter(bare).map(|one| one.shaft.clone()).collect()
}

fn index_of(planned: &[PlannedShot], shaft: &ShaftName) -> Index {
    let index = planned.iter().find(|one| one.shaft == *shaft).map(|one| one.purpose);
    match index {
        Some(Purpose::Bare { index, .. }) => index,
        _ => Index::TWELVE,
    }
}

/// Shoots as planned, but for a shaft whose mark truly stands elsewhere.
fn shoot(
    archer: &mut SimulatedArcher,
    planned: &[PlannedShot],
    turned: Option<&(ShaftName, f64)>,
    evening: usize,
) -> End {
    let truly: Vec<_> = planned
        .iter()
        .map(|shot| match (shot.purpose, turned) {
            (Purpose::Bare { index, from, aim }, Some((shaft, by_deg))) if *shaft == shot.shaft => {
                let index = further(index, *by_deg);
                let purpose = Purpose::Bare { index, from, aim };
                PlannedShot { shaft: shot.shaft.clone(), purpose }
            }
            _ => shot.clone(),
        })
        .collect();
    let mut end = archer.shoot(&truly, &evening.to_string());
    for shot in &mut end.shots {
        shot.index = index_of(planned, &shot.shaft);
    }
    end
}

fn exchange(
    end: &mut End,
    planned: &[PlannedShot],
    archer: &SimulatedArcher,
) -> Option<(Vec<ShaftName>, f64)> {
    let shafts = bare(planned);
    let miss = |name: &ShaftName| archer.true_miss(name, index_of(planned, name));
    let apart = |[one, other]: [&ShaftName; 2]| Some((miss(one)? - miss(other)?).length().mm());
    // Those that lie farthest apart: the others nobody could tell.
    let pairs = shafts.iter().flat_map(|one| shafts.iter().map(move |other| [one, other]));
    let (apart_mm, pair) = pairs
        .filter_map(|pair| Some((apart(pair)?, pair)))
        .max_by(|one, other| one.0.total_cmp(&other.0))?;
    let [one, other] = pair.map(ShaftName::clone);
    let place = |name: &ShaftName| end.shots.iter().position(|shot| shot.shaft == *name);
    let (first, second) = (place(&one)?, place(&other)?);
    let hit = end.shots[first].hit;
    end.shots[first].hit = end.shots[second].hit;
    end.shots[second].hit = hit;
    Some((vec![one, other], apart_mm))
}

fn spoilt_by(
    planned: &[PlannedShot],
    (shaft, by_deg): &(ShaftName, f64),
    archer: &SimulatedArcher,
) -> Option<(Vec<ShaftName>, f64)> {
    let index = index_of(planned, shaft);
    let truly = archer.true_miss(shaft, further(index, *by_deg))?;
    let moved = truly - archer.true_miss(shaft, index)?;
    Some((vec![shaft.clone()], moved.length().mm()))
}

fn further(index: Index, by_deg: f64) -> Index {
    Index::from_degrees(index.degrees() + by_deg)
}
