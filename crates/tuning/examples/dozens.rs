//! Plays many invented dozens through the whole job and counts what the verdicts were worth.
//!
//! `cargo run --release -p quarterturn-tuning --example dozens -- 200 ordinary`

use std::thread;

use quarterturn_geometry::{Index, Millimetres, Offset, Positions};
use quarterturn_tuning::{
    BowChange, BowPart, Event, History, Policy, Setup, SimulatedArcher, Step, Verdict, World, advise,
};

const TOLERANCE_MM: f64 = 25.0;

#[derive(Clone, Debug, Default)]
struct Tally {
    dozens: f64,
    shots: f64,
    wrong: f64,
    kept: f64,
    usable: f64,
    lost: f64,
    open: f64,
    bow: f64,
    false_bow: f64,
    ends: f64,
    stuck: f64,
    covered: f64,
    regions: f64,
    bins: [[f64; 3]; 10],
    kinds: [f64; 4],
}

fn world(name: &str) -> World {
    let ordinary = World::ORDINARY;
    match name {
        "steady" => World { spread_mm: [6.0, 12.0], ..ordinary },
        "shaky" => World { spread_mm: [25.0, 45.0], ..ordinary },
        "bends" => World { lean_bends_at_mm: 25.0, ..ordinary },
        "good" => World {
            turning_mm: ordinary.turning_mm / 3.0,
            stiff_mm: ordinary.stiff_mm / 3.0,
            centre_mm: ordinary.centre_mm / 3.0,
            ..ordinary
        },
        _ => ordinary,
    }
}

fn play(name: &str, seed: u64, tally: &mut Tally) {
    let setup = Setup {
        shafts: (1..=12).map(|k| (k.to_string().parse().unwrap(), Index::TWELVE)).collect(),
        references: vec!["R".parse().unwrap()],
        distance: Millimetres::from_metres(18.3),
        tolerance: Millimetres::new(TOLERANCE_MM),
        arrows_per_end: 4,
        positions: Positions::HOURS,
        bare_lighter: None,
    };
    let mut archer = SimulatedArcher::new(&setup, world(name), seed);
    if name == "bow" {
        archer.move_bow(Offset::new(60.0, 0.0).rotated(quarterturn_geometry::Angle::from_degrees(seed as f64 * 37.0)));
    }
    let lean = name != "nolean";
    let mut history = History { setup, events: Vec::new() };
    let policy = Policy::default();
    let (mut shots, mut ends, mut moved) = (0.0, 0.0, false);
    let advice = loop {
        let advice = advise(&history, &policy);
        if ends >= 6.0 {
            for shaft in &advice.shafts {
                let truth = archer.true_miss(&shaft.shaft, shaft.index).unwrap();
                let inside = f64::from(truth.length().mm() <= TOLERANCE_MM);
                let bin = &mut tally.bins[((shaft.within * 10.0) as usize).min(9)];
                bin[0] += 1.0;
                bin[1] += shaft.within;
                bin[2] += inside;
                let off = truth - shaft.miss.mean;
                let off = nalgebra::Vector2::new(off.x_mm, off.y_mm);
                let d2 = (off.transpose() * shaft.miss.covariance_mm2.try_inverse().unwrap() * off)[0];
                tally.regions += 1.0;
                tally.covered += f64::from(d2 <= 4.605);
            }
        }
        match &advice.step {
            Step::Finished(_) => break advice,
            _ if ends >= 150.0 => {
                tally.stuck += 1.0;
                break advice;
            }
            Step::MoveBow if moved => history.events.push(Event::BowLeft),
            Step::MoveBow => {
                moved = true;
                tally.bow += 1.0;
                if archer.true_common().length().mm() < TOLERANCE_MM / 2.0 {
                    tally.false_bow += 1.0;
                }
                archer.move_bow(advice.bow.wanted_shift * 0.8);
                history.events.push(Event::Bow(BowChange { part: BowPart::Rest, moved: None }));
            }
            Step::Shoot(planned) => {
                let mut end = archer.shoot(planned, "first");
                if !lean {
                    end.shots.iter_mut().for_each(|shot| shot.hit.as_mut().unwrap().lean = None);
                }
                shots += end.shots.len() as f64;
                ends += 1.0;
                history.events.push(Event::End(end));
            }
        }
    };
    tally.dozens += 1.0;
    tally.shots += shots;
    tally.ends += ends;
    for shaft in &advice.shafts {
        let groups = archer.groups(&shaft.shaft);
        let best = Positions::HOURS
            .iter()
            .map(|index| archer.true_miss(&shaft.shaft, index).unwrap().length().mm())
            .fold(f64::MAX, f64::min);
        let miss = archer.true_miss(&shaft.shaft, shaft.index).unwrap().length().mm();
        let usable = groups && best <= 0.75 * TOLERANCE_MM;
        tally.usable += f64::from(usable);
        match shaft.verdict {
            Verdict::Keep => {
                tally.kept += 1.0;
                tally.wrong += f64::from(!groups || miss > 1.25 * TOLERANCE_MM);
                tally.kinds[0] += f64::from(!groups);
                tally.kinds[1] += f64::from(groups && miss > 1.25 * TOLERANCE_MM);
            }
            Verdict::Retire(_) => tally.lost += f64::from(usable),
            Verdict::Open(_) => tally.open += 1.0,
        }
    }
}

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let dozens: u64 = args.get(1).map_or(40, |n| n.parse().unwrap());
    let names: Vec<String> = if args.len() > 2 { args[2..].to_vec() } else { vec!["ordinary".into()] };
    for name in &names {
        let half = |odd: u64| {
            let mut tally = Tally::default();
            (0..dozens).filter(|seed| seed % 2 == odd).for_each(|seed| play(name, seed, &mut tally));
            tally
        };
        let (one, two) = thread::scope(|scope| {
            let other = scope.spawn(|| half(1));
            (half(0), other.join().unwrap())
        });
        let sum = |of: fn(&Tally) -> f64| of(&one) + of(&two);
        let n = sum(|t| t.dozens);
        println!(
            "{name:9} shots/shaft {:.2}  wrong {:.1}% (loose {:.1} miss {:.1})  lost {:.1}%  open {:.1}%  kept/dozen {:.1}  bow {:.2} false {:.2}  ends {:.1} stuck {}",
            sum(|t| t.shots) / n / 12.0,
            100.0 * sum(|t| t.wrong) / sum(|t| t.kept),
            100.0 * sum(|t| t.kinds[0]) / sum(|t| t.kept),
            100.0 * sum(|t| t.kinds[1]) / sum(|t| t.kept),
            100.0 * sum(|t| t.lost) / sum(|t| t.usable),
            100.0 * sum(|t| t.open) / n / 12.0,
            sum(|t| t.kept) / n,
            sum(|t| t.bow) / n,
            sum(|t| t.false_bow) / n,
            sum(|t| t.ends) / n,
            sum(|t| t.stuck),
        );
        println!("          90% regions cover {:.1}%", 100.0 * sum(|t| t.covered) / sum(|t| t.regions));
        print!("         ");
        for bin in 0..10 {
            let count = one.bins[bin][0] + two.bins[bin][0];
            let said = (one.bins[bin][1] + two.bins[bin][1]) / count;
            let was = (one.bins[bin][2] + two.bins[bin][2]) / count;
            print!(" {said:.2}:{was:.2}({count})");
        }
        println!();
    }
}
