//! One archer and the program, from `new` to `finished`.

use std::collections::{HashMap, HashSet};
use std::path::Path;
use std::{env, fs};

use serde_json::json;

use super::calibration::Calibration;
use super::fate::Fate;
use super::next::{Asked, Next, Step, Verdict};
use super::player::Player;
use super::vector::Vector;
use super::world::{Asked as AskedToMove, SHAFTS, SHIFT_PER_MM_OF_REST, World};
use crate::support::{Folder, JOURNAL};

/// An archer goes home after so many ends, finished or not.
const MOST_ENDS: usize = 120;
/// The calibration counts answers from this end on.
const FIRST_END_COUNTED: usize = 6;
/// What may be shot before walking up, the reference included.
const ARROWS_PER_END: usize = 4;
const REFERENCE: &str = "R";
/// How the reason of a `retire` begins, and no other.
const RETIRE_REASONS: [&str; 6] =
    ["circle too big", "centre off", "does not repeat", "set aside", "lost", "broken"];

/// What a session came to.
#[derive(Default)]
pub struct Session {
    pub seed: u64,
    pub finished: bool,
    pub ends: usize,
    /// All shots, those of the reference too.
    pub shots: usize,
    pub bare_shots: usize,
    pub turns: usize,
    pub first_bow: Option<BowStep>,
    pub fates: Vec<Fate>,
    /// What was said of each shaft in every answer after the sixth end, and in the last answer.
    pub said: Calibration,
    pub said_last: Calibration,
}

/// The first time that the program asked for the bow to be moved.
#[derive(Clone, Copy)]
pub struct BowStep {
    pub after_bare_shots: usize,
    /// Where bare shafts as a whole then landed in truth.
    pub true_offset: Vector,
}

/// A session as it goes.
struct Evening<'a> {
    world: &'a World,
    folder: Folder,
    player: Player<'a>,
    session: Session,
    /// Where each mark stands, degrees.
    marks: HashMap<String, f64>,
    /// The bare shafts shot since the archer said that the bow stays, once he did.
    shot_since_left: Option<HashSet<String>>,
}

/// Plays one session in a fresh folder; where `QUARTERTURN_KEEP` names a folder, its journal is kept there.
pub fn play(world: &World, seed: u64) -> Session {
    let mut evening = Evening::begin(world, seed);
    loop {
        let next = evening.ask();
        match next.step {
            Step::Shoot if evening.session.ends < MOST_ENDS => evening.shoot(&next.shots),
            Step::Bow => evening.answer_bow(next.bow.wanted_shift_mm.into()),
            Step::Shoot | Step::Finished => return evening.close(&next),
        }
    }
}

impl<'a> Evening<'a> {
    fn begin(world: &'a World, seed: u64) -> Self {
        Self {
            world,
            folder: Folder::begun(&format!("1-{SHAFTS}")),
            player: Player::new(world, seed),
            session: Session { seed, ..Session::default() },
            marks: HashMap::new(),
            shot_since_left: None,
        }
    }

    /// Asks what to do now, and holds the answer to what the interface promises.
    fn ask(&mut self) -> Next {
        let next: Next = serde_json::from_value(self.folder.next()).expect("an answer as pinned");
        assert_eq!(next.schema, "quarterturn.next/1");
        assert!(!next.why.is_empty(), "no reason given");
        assert_eq!(next.shots.is_empty(), next.step != Step::Shoot, "shots beside another step");
        let names: Vec<_> = next.shafts.iter().map(|judged| judged.shaft.clone()).collect();
        assert_eq!(names, (1..=SHAFTS).map(|n| n.to_string()).collect::<Vec<_>>());
        for judged in &next.shafts {
            assert!((0.0..=1.0).contains(&judged.within), "{} within", judged.within);
            let decided = judged.verdict != Verdict::Open;
            assert!(judged.shots_total > 0 || !decided, "a verdict on a shaft never shot");
            let known = RETIRE_REASONS.iter().any(|reason| judged.reason.starts_with(reason));
            assert_eq!(known, judged.verdict == Verdict::Retire, "{}", judged.reason);
        }
        if self.session.ends >= FIRST_END_COUNTED {
            self.session.said.count(&next.shafts, &self.player);
        }
        next
    }

    fn shoot(&mut self, asked: &[Asked]) {
        check_end(asked, self.session.ends);
        for shot in asked {
            let Some(index_deg) = shot.index_deg else { continue };
            self.session.bare_shots += 1;
            let before = self.marks.insert(shot.shaft.clone(), index_deg).unwrap_or(0.0);
            self.session.turns += usize::from((before - index_deg).abs() > 1e-9);
            if let Some(shot_since) = &mut self.shot_since_left {
                shot_since.insert(shot.shaft.clone());
            }
        }
        let minute = 2 * self.session.ends;
        let end = json!({
            "shots": self.player.shoot(asked),
            "at": format!("2027-03-02T{}:{:02}:00Z", 15 + minute / 60, minute % 60),
            "evening": "2027-03-02",
        });
        self.folder.enter(&end);
        self.session.ends += 1;
        self.session.shots += asked.len();
    }

    fn answer_bow(&mut self, wanted: Vector) {
        let after_bare_shots = self.session.bare_shots;
        let true_offset = self.player.common_offset();
        let first_time = self.session.first_bow.is_none();
        self.session.first_bow.get_or_insert(BowStep { after_bare_shots, true_offset });
        if let Some(shot_since) = &self.shot_since_left {
            assert!(shot_since.len() >= 3, "asked again after only {shot_since:?}");
        }
        let bow = self.folder.run(&format!("bow {JOURNAL}"));
        let bow = if first_time && self.world.asked_to_move == AskedToMove::Moves {
            self.player.move_bow(wanted);
            let part = wanted * (1.0 / SHIFT_PER_MM_OF_REST);
            let moved = format!("--move-mm={:.2},{:.2}", part.x, part.y);
            bow.args("--part rest --note").arg("moved as asked").args(&moved)
        } else {
            self.shot_since_left = Some(HashSet::new());
            bow.arg("--leave").arg("it stays as it is")
        };
        bow.any_stdout().check();
    }

    fn close(mut self, last: &Next) -> Session {
        self.session.finished = last.step == Step::Finished;
        self.session.said_last.count(&last.shafts, &self.player);
        let fate = |judged| Fate::of(judged, &self.player);
        self.session.fates = last.shafts.iter().map(fate).collect();
        if let Some(kept) = env::var_os("QUARTERTURN_KEEP") {
            let name = format!("{}-{}.journal", self.world.name, self.session.seed);
            let kept = Path::new(&kept).join(name.replace(' ', "-"));
            fs::copy(self.folder.file(JOURNAL), kept).expect("QUARTERTURN_KEEP is a folder");
        }
        self.session
    }
}

/// An end has at most the archer's number of arrows, each once, and bare shafts at one of the hours; the first
/// one has the reference among them.
fn check_end(asked: &[Asked], ends_before: usize) {
    let names: HashSet<_> = asked.iter().map(|shot| &shot.shaft).collect();
    assert!(names.len() == asked.len() && names.len() <= ARROWS_PER_END, "{names:?}");
    let referred = asked.iter().any(|shot| shot.shaft == REFERENCE);
    assert!(referred || ends_before > 0, "nothing to measure {names:?} from");
    for shot in asked {
        assert_eq!(shot.index_deg.is_none(), shot.shaft == REFERENCE, "{}", shot.shaft);
        let hour = shot.index_deg.unwrap_or(0.0) / 30.0;
        assert!((hour - hour.round()).abs() < 1e-9 && (0.0..12.0).contains(&hour), "{hour}");
    }
}
