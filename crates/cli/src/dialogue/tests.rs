//! The dialogue: lines in, screens out.

use quarterturn_journal::{
    EndEntry, Entry, Fault, Journal, NewEntry, NewShaft, ShaftEntry, ShotEntry, Stamp, State,
};

use super::{Dialogue, Heard};
use crate::clock;
use crate::opened::Opened;

/// A dialogue about the first end of a dozen.
struct Talk {
    opened: Opened,
    dialogue: Dialogue,
    stamp: Stamp,
    _folder: tempfile::TempDir,
}

impl Talk {
    fn begin(shafts: &[&str]) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("dozen.journal");
        let shaft = |name: &&str| NewShaft { name: (*name).to_owned(), index_deg: 0.0 };
        let beginning = NewEntry {
            shafts: shafts.iter().map(shaft).collect(),
            references: vec!["R".to_owned()],
            distance_m: 18.3,
            tolerance_mm: 25.0,
            units: "mm".to_owned(),
            arrows_per_end: 4,
            positions: 12,
            ..NewEntry::default()
        };
        let stamp = clock::stamp().unwrap();
        let journal = Journal::create(&path, beginning, &stamp).unwrap();
        let opened = Opened { journal, path };
        let dialogue = Dialogue::begin(&opened);
        Self { opened, dialogue, stamp, _folder: folder }
    }

    /// Records an entry, and begins anew.
    fn append(&mut self, entry: Entry) {
        self.opened.journal.append(entry, &self.stamp).unwrap();
        self.stamp = clock::stamp().unwrap();
        self.dialogue = Dialogue::begin(&self.opened);
    }

    /// Records an end of shots so far to the right.
    fn enter(&mut self, shots: &[(&str, f64)]) {
        let shot = |(name, x_mm): &(&str, f64)| ShotEntry {
            shaft: (*name).to_owned(),
            x_mm: Some(*x_mm),
            y_mm: Some(0.0),
            ..ShotEntry::default()
        };
        let shots = shots.iter().map(shot).collect();
        self.append(Entry::End(EndEntry { shots, ..EndEntry::default() }));
    }

    fn hear(&mut self, line: Option<&str>) -> Heard {
        let state = self.opened.journal.state();
        let check = |end: &EndEntry| -> Result<State, Vec<Fault>> {
            state.with(Entry::End(end.clone()), &self.stamp)
        };
        self.dialogue.hear(line, check)
    }

    /// The screen that follows on a line, which must fit a terminal.
    #[track_caller]
    fn say(&mut self, line: &str) -> String {
        let Heard::Asking(screen) = self.hear(Some(line)) else { panic!("{line} ended it") };
        assert!(screen.lines().count() <= 24, "{} lines:\n{screen}", screen.lines().count());
        assert!(screen.lines().all(|line| line.chars().count() <= 80), "{screen}");
        screen
    }

    #[track_caller]
    fn done(&mut self) -> EndEntry {
        match self.hear(Some("")) {
            Heard::Done(end) => end,
            Heard::Asking(screen) => panic!("it is not done:\n{screen}"),
            Heard::Stopped => panic!("it stopped"),
        }
    }
}

/// The names of the end that is asked for, in shooting order.
fn planned(talk: &Talk) -> Vec<String> {
    talk.dialogue.arrows.iter().map(|arrow| arrow.shot.shaft.clone()).collect()
}

const DOZEN: [&str; 12] = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"];

/// A dialogue as a person sees it is kept in `golden.txt`; with `QUARTERTURN_REWRITE` in the environment it is written anew.
#[test]
fn every_screen_is_as_it_was_read() {
    let mut seen = heard(
        &mut Talk::begin(&DOZEN),
        &[
            "r31",
            "no",
            "?",
            "",
            "",
            "r4 d6",
            "",
            "stop it",
            "r3 u8 zz",
            "5",
            "7 i4",
            "13",
            "tl2",
            "r3100",
            "7 r31u8",
            "r5",
            "-",
            "note light breeze",
            "r30",
            "-",
            "7 r32",
        ],
    );
    seen += &two_ways();
    seen += &bow_first();
    seen += &nothing_left();
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src/dialogue/golden.txt");
    if std::env::var_os("QUARTERTURN_REWRITE").is_some() {
        std::fs::write(&path, &seen).unwrap();
    }
    assert_eq!(seen, std::fs::read_to_string(path).unwrap());
}

/// Arrows whose names are words.
fn two_ways() -> String {
    let mut taken = Talk::begin(&["x", "r3"]);
    taken.say("");
    taken.say("0");
    heard(&mut taken, &["r3 u8", "x r3", "x"])
}

/// The bow is far off.
fn bow_first() -> String {
    let mut off = Talk::begin(&["1", "2", "3"]);
    for _ in 0..4 {
        off.enter(&[("R", 0.0), ("1", 150.0), ("2", 155.0), ("3", 145.0)]);
    }
    heard(&mut off, &["", "huh 3", "1", "1 r150", "2 r155", ""])
}

/// The only shaft is lost.
fn nothing_left() -> String {
    let mut gone = Talk::begin(&["1"]);
    gone.append(Entry::Shaft(ShaftEntry {
        shaft: "1".into(),
        change: "lost".into(),
        index_deg: None,
        on: None,
        note: None,
    }));
    heard(&mut gone, &["1 r3"])
}

/// The screens of a dialogue that hears these lines, each behind its question.
fn heard(talk: &mut Talk, lines: &[&str]) -> String {
    let mut seen = talk.dialogue.opening();
    for line in lines {
        seen.extend([*line, "\n", &"-".repeat(80), "\n", &talk.say(line)]);
    }
    seen + "\n" + &"=".repeat(80) + "\n"
}

#[test]
fn only_hits_are_typed_and_every_index_is_written_out() {
    let mut talk = Talk::begin(&DOZEN);
    assert!(talk.dialogue.opening().contains("Marks set as on the card?"));
    let names = planned(&talk);
    let keys = ["", "r4d6t0", "l9u4tr.5", "r22u14tl2", "r37u22tl3"];
    assert!(talk.say("").contains(&format!("1 of 4: {}> ", names[0])));
    for (line, next) in keys[1..4].iter().zip(&names[1..]) {
        let screen = talk.say(line);
        assert!(screen.contains(&format!("of 4: {next}, mark at 12 o'clock> ")), "{screen}");
    }
    let screen = talk.say(keys[4]);
    assert!(screen.contains("37 mm right, 22 mm high") && screen.contains("Enter records 4 shots"));
    let end = talk.done();
    let shots: Vec<_> = end.shots.iter().map(|shot| (shot.shaft.clone(), shot.index_deg)).collect();
    assert_eq!(shots, names.into_iter().map(|name| (name, Some(0.0))).collect::<Vec<_>>());
    assert_eq!((end.shots[1].x_mm, end.shots[1].lean_x_deg), (Some(-9.0), Some(0.5)));
    // Each line and its Enter, the marks' and the last one: docs/entry.md counts them.
    let strokes: usize = keys.iter().map(|line| line.len() + 1).sum::<usize>() + 1;
    assert_eq!(strokes, 38);
}

#[test]
fn a_mistake_is_put_right_by_the_arrows_name() {
    let mut talk = Talk::begin(&["1", "2", "3"]);
    talk.say("");
    let names = planned(&talk);
    talk.say("r4 d6");
    talk.say("x");
    assert!(talk.say(&format!("{} r5 tl2", names[0])).contains("5 mm right"));
    talk.say("r22");
    talk.say("-");
    let screen = talk.say(&format!("{} i11", names[2]));
    assert!(screen.contains("11 o'clock"), "{screen}");
    talk.say("note light breeze");
    let end = talk.done();
    assert_eq!(end.shots.len(), 3, "the one that was not shot is left out");
    assert_eq!((end.shots[0].x_mm, end.shots[0].y_mm), (Some(5.0), Some(0.0)));
    assert_eq!(end.shots[1].flags, ["lost"]);
    assert_eq!(end.shots[2].index_deg, Some(330.0));
    assert_eq!(end.note.as_deref(), Some("light breeze"));
}

#[test]
fn marks_that_differ_are_said_first() {
    let mut talk = Talk::begin(&["1", "2", "3"]);
    let name = planned(&talk)[1].clone();
    assert!(talk.say(&format!("{name} i4")).contains("4 o'clock"));
    assert!(talk.say("no").contains("as they last stood"));
    assert!(talk.say("r3").contains("first the marks"));
    talk.say("");
    talk.say("0");
    talk.say("0");
    talk.say("0");
    talk.say("0");
    assert_eq!(talk.done().shots[1].index_deg, Some(0.0));
}

#[test]
fn what_is_not_understood_is_shown_and_nothing_is_lost() {
    let mut talk = Talk::begin(&DOZEN);
    talk.say("");
    talk.say("r4");
    for (line, said) in [
        ("r31 z8", "\"z8\" is not a word of the line"),
        ("r3100", "3100 mm is too much"),
        ("r3,5", "a decimal comma"),
        ("tl2", "where did "),
        ("", "R"),
        ("?", "toward 2 o'clock"),
        ("77 r3", "\"77\" is not a word"),
        ("\u{1b}[31m", "\\u{1b}[31m"),
    ] {
        let screen = talk.say(line);
        assert!(screen.contains(said), "{line}: {screen}");
        assert!(screen.contains("2 of 4: ") && !screen.contains('\u{1b}'), "{line}: {screen}");
    }
}

#[test]
fn an_arrow_whose_name_is_a_word_is_asked_about() {
    let mut talk = Talk::begin(&["x", "r3", "0"]);
    talk.say("");
    assert!(talk.say("r3 u8").contains("this can be read two ways"));
    assert!(talk.say("R r3 u8").contains("3 mm right, 8 mm high"));
}

#[test]
fn another_arrow_joins_by_its_name() {
    let mut talk = Talk::begin(&DOZEN);
    talk.say("");
    let other = DOZEN.iter().find(|name| !planned(&talk).contains(&(**name).to_owned())).unwrap();
    for _ in 0..4 {
        talk.say("-");
    }
    assert!(talk.say(&format!("{other} r3")).contains("Enter records 1 shot"));
    assert_eq!(talk.done().shots[0].shaft, *other);
}

#[test]
fn who_goes_leaves_nothing() {
    let mut talk = Talk::begin(&["1"]);
    assert!(matches!(talk.hear(Some("stop")), Heard::Stopped));
    assert!(matches!(talk.hear(None), Heard::Stopped));
}

#[test]
fn an_end_of_any_length_fits_the_screen() {
    let names: Vec<String> = (1..=60).map(|n| format!("shaft-of-oak-{n:02}")).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let mut talk = Talk::begin(&names);
    talk.say("");
    for (at, name) in names.iter().enumerate() {
        talk.say(&format!("{name} r{at} u2999 tl2.5cm s61.5cm p w k n q"));
    }
}
