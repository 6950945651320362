//! Invented dozens for the tests of the pictures: nobody shot them and no model judged them.

use nalgebra::Matrix2;
use quarterturn_geometry::{Index, Lean, Offset, Point};
use quarterturn_tuning::{
    Advice, ArcherReport, BowReport, Call, End, Ending, Event, Flag, History, Hit, MeasuredFrom,
    Miss, OpenReason, RetireReason, Setup, ShaftName, ShaftReport, ShaftState, Shot, Step, Verdict,
};
use rand::SeedableRng;
use rand_distr::{Distribution, Normal};
use rand_pcg::Pcg32;

/// The common offset of every invented dozen.
const COMMON: Offset = Offset::new(-9.0, 6.0);
const BARE_AN_END: usize = 3;

/// How an invented evening went.
#[derive(Clone, Copy, Debug)]
pub struct Evening {
    /// How many bare shafts.
    pub shafts: usize,
    /// How often each was shot.
    pub rounds: usize,
    /// The archer's spread per axis, mm.
    pub spread_mm: f64,
    /// How far the shafts differ per axis, mm.
    pub apart_mm: f64,
    /// The seed.
    pub seed: u64,
}

/// A history with the advice on it.
pub struct Dozen {
    /// What happened.
    pub history: History,
    /// What might be said of it.
    pub advice: Advice,
}

impl Evening {
    /// An ordinary evening with so many shafts.
    pub const fn with(shafts: usize) -> Self {
        Self { shafts, rounds: 4, spread_mm: 14.0, apart_mm: 11.0, seed: 7 }
    }

    /// An evening with shafts that hardly differ, by an archer who hardly spreads.
    pub const fn tight(shafts: usize) -> Self {
        Self { spread_mm: 4.0, apart_mm: 1.5, ..Self::with(shafts) }
    }

    /// Shoots it.
    pub fn shoot(self) -> Dozen {
        let mut chance = Chance::new(self.seed);
        let centres: Vec<Offset> =
            (0..self.shafts).map(|_| COMMON + chance.offset(self.apart_mm)).collect();
        let order: Vec<usize> = (0..self.shafts * self.rounds).map(|k| k % self.shafts).collect();
        let ends = order.chunks(BARE_AN_END).enumerate();
        let events = ends.map(|(n, shafts)| self.end(&mut chance, n, shafts, &centres)).collect();
        let reports = centres.iter().enumerate().map(|(k, &at)| self.report(&mut chance, k, at));
        Dozen {
            advice: advice(reports.collect()),
            history: History { setup: Setup::beside_one_reference(self.shafts), events },
        }
    }

    fn end(self, chance: &mut Chance, n: usize, shafts: &[usize], centres: &[Offset]) -> Event {
        let aim = Point::SPOT + chance.offset(8.0);
        let mut shots = vec![shot(reference(), Index::TWELVE, aim, Lean::default())];
        for &k in shafts {
            // The first round was shot at the index as built, the others at the one that is judged.
            let first_round = n * BARE_AN_END < self.shafts;
            let index = if first_round { Index::TWELVE } else { judged(k) };
            let elsewhere = if first_round { chance.offset(18.0) } else { Offset::ZERO };
            let at = aim + centres[k] + elsewhere + chance.offset(self.spread_mm);
            let miss = at - aim;
            let lean = Lean::from_degrees(0.08 * miss.x_mm, 0.08 * miss.y_mm);
            shots.push(shot(name(k), index, at, lean));
        }
        if n % 6 == 3
            && let Some(last) = shots.last_mut()
        {
            last.call = Some(Call::Poor);
            last.flags = vec![Flag::Wind];
        }
        Event::End(End { shots, evening: "2027-03-02".to_owned(), distance: None })
    }

    fn report(self, chance: &mut Chance, k: usize, centre: Offset) -> ShaftReport {
        let variance = self.spread_mm.powi(2) / self.rounds.max(1) as f64;
        let mean = centre + chance.offset(variance.sqrt() / 2.0);
        let verdict = match mean.length().mm() {
            _ if self.rounds == 0 => Verdict::Open(OpenReason::NotShot),
            far if far < 14.0 => Verdict::Keep,
            far if far < 27.0 => Verdict::Open(OpenReason::MoreShots(2)),
            _ => Verdict::Retire(RetireReason::CircleTooBig),
        };
        ShaftReport {
            shaft: name(k),
            state: ShaftState::InUse,
            verdict,
            index: judged(k),
            index_now: judged(k),
            within: (1.2 - mean.length().mm() / 40.0).clamp(0.0, 1.0),
            shots_here: self.rounds.saturating_sub(1),
            shots_total: self.rounds,
            shots_left_out: 0,
            turns: 0,
            turns_left: 8,
            miss: Miss {
                mean,
                covariance_mm2: Matrix2::new(
                    variance,
                    0.3 * variance,
                    0.3 * variance,
                    variance * 1.2,
                ),
            },
            positions: Vec::new(),
        }
    }
}

impl Dozen {
    /// Adds an end of the reference and one bare shot of the first shaft, `miss` from it.
    pub fn stray(mut self, miss: Offset) -> Self {
        let aim = Point::new(3.0, -2.0);
        let first = shot(name(0), judged(0), aim + miss, Lean::from_degrees(-4.0, 0.0));
        let shots = vec![shot(reference(), Index::TWELVE, aim, Lean::default()), first];
        let evening = "2027-03-02".to_owned();
        self.history.events.push(Event::End(End { shots, evening, distance: None }));
        self
    }

    /// The same with other names on the shafts.
    pub fn renamed(mut self, rename: impl Fn(usize) -> ShaftName) -> Self {
        let new = |old: &ShaftName| {
            let number = old.as_str().parse::<usize>();
            number.map_or(old.clone(), |number| rename(number - 1))
        };
        for (shaft, _) in &mut self.history.setup.shafts {
            *shaft = new(shaft);
        }
        for report in &mut self.advice.shafts {
            report.shaft = new(&report.shaft);
        }
        for event in &mut self.history.events {
            if let Event::End(end) = event {
                end.shots.iter_mut().for_each(|shot| shot.shaft = new(&shot.shaft));
            }
        }
        self
    }
}

fn advice(shafts: Vec<ShaftReport>) -> Advice {
    let offset = Miss { mean: COMMON, covariance_mm2: Matrix2::new(24.0, 2.0, 2.0, 22.0) };
    let within = shafts.iter().map(|report| report.within).sum();
    let bow = BowReport {
        offset,
        wanted_shift: -COMMON,
        expected_within_now: within,
        expected_within_if_moved: within,
        shafts: shafts.len(),
        response: None,
        proposed_move: None,
    };
    let step = Step::Finished(Ending::AllDecided);
    let archer = ArcherReport { spread: None };
    let measured_from = MeasuredFrom::Reference;
    Advice {
        step,
        shafts,
        measured_from,
        bow,
        archer,
        older_shots: 0,
        pause: None,
        hints: Vec::new(),
    }
}

fn shot(shaft: ShaftName, index: Index, at: Point, lean: Lean) -> Shot {
    let hit = Hit { at, lean: Some(lean), read_sd: None, lean_sd: None };
    Shot { shaft, index, hit: Some(hit), call: None, flags: Vec::new() }
}

fn name(k: usize) -> ShaftName {
    (k + 1).to_string().parse().unwrap()
}

fn reference() -> ShaftName {
    "R".parse().unwrap()
}

/// The index at which each shaft is judged.
fn judged(k: usize) -> Index {
    Index::from_hour(((5 * k + 3) % 12) as f64)
}

/// Normal scatter from a seed.
struct Chance(Pcg32);

impl Chance {
    fn new(seed: u64) -> Self {
        Self(Pcg32::seed_from_u64(seed))
    }

    fn offset(&mut self, sd_mm: f64) -> Offset {
        let normal = Normal::new(0.0, sd_mm).unwrap();
        Offset::new(normal.sample(&mut self.0), normal.sample(&mut self.0))
    }
}
