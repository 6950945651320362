//! A journal in a folder of its own, and short ways to write to it.

use std::fs;
use std::path::{Path, PathBuf};

use quarterturn_journal::{
    Confirmed, EndEntry, Entry, Journal, JournalError, NewEntry, NewShaft, RecordId, ShaftEntry,
    ShotEntry, Stamp,
};
use tempfile::TempDir;

pub struct Scene {
    pub folder: TempDir,
    pub path: PathBuf,
}

impl Scene {
    /// A folder without a journal yet.
    pub fn empty() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("dozen.jsonl");
        Self { folder, path }
    }

    /// A journal of shafts 1 to 3 beside the reference R.
    pub fn begun() -> Self {
        let scene = Self::empty();
        Journal::create(&scene.path, beginning(), &stamp(1)).unwrap();
        scene
    }

    /// The same with these bytes as its journal.
    pub fn of(bytes: &[u8]) -> Self {
        let scene = Self::empty();
        fs::write(&scene.path, bytes).unwrap();
        scene
    }

    /// A journal of five records: two ends, a lost shaft and an undo.
    pub fn with_five_records() -> Self {
        let scene = Self::begun();
        scene.append(Entry::End(end_of(&["R", "1", "2"]))).unwrap();
        scene.append(shaft("2", "lost")).unwrap();
        scene.open().undo(&stamp(2)).unwrap();
        scene.append(Entry::End(end_of(&["R", "3"]))).unwrap();
        scene
    }

    pub fn open(&self) -> Journal {
        Journal::open(&self.path).unwrap()
    }

    pub fn append(&self, entry: Entry) -> Result<Confirmed, JournalError> {
        self.open().append(entry, &stamp(7))
    }

    pub fn bytes(&self) -> Vec<u8> {
        fs::read(&self.path).unwrap()
    }

    pub fn lines(&self) -> Vec<String> {
        String::from_utf8(self.bytes()).unwrap().lines().map(str::to_owned).collect()
    }

    pub fn beside(&self, kind: &str) -> PathBuf {
        Path::new(&format!("{}.{kind}", self.path.display())).to_owned()
    }
}

pub fn stamp(id: u64) -> Stamp {
    let time = "2027-03-02T10:15:00+01:00".parse().unwrap();
    Stamp { id: RecordId::from_bits(id), time }
}

pub fn beginning() -> NewEntry {
    let shafts = ["1", "2", "3"].map(|name| NewShaft { name: name.to_owned(), index_deg: 0.0 });
    NewEntry {
        shafts: shafts.into(),
        references: vec!["R".to_owned()],
        distance_m: 18.3,
        tolerance_mm: 25.0,
        units: "mm".to_owned(),
        arrows_per_end: 4,
        positions: 12,
        ..NewEntry::default()
    }
}

pub fn shot(shaft: &str) -> ShotEntry {
    ShotEntry {
        shaft: shaft.to_owned(),
        x_mm: Some(31.0),
        y_mm: Some(-8.5),
        ..ShotEntry::default()
    }
}

pub fn end_of(shafts: &[&str]) -> EndEntry {
    EndEntry { shots: shafts.iter().map(|name| shot(name)).collect(), ..EndEntry::default() }
}

pub fn shaft(name: &str, change: &str) -> Entry {
    Entry::Shaft(ShaftEntry {
        shaft: name.to_owned(),
        change: change.to_owned(),
        index_deg: None,
        on: None,
        note: None,
    })
}

/// How often a test is played: so often in every run, and as often as the environment variable asks for.
pub fn times(asked: &str, usual: usize) -> usize {
    std::env::var(asked).ok().and_then(|text| text.parse().ok()).unwrap_or(usual)
}

/// The lines of a journal of `records` records, ends of four shots all but the first, made without the program.
pub fn long(records: u64) -> Vec<String> {
    let mut lines = vec![Scene::begun().lines().remove(0)];
    for seq in 2..=records {
        let prev = crc32fast::hash(lines[lines.len() - 1].as_bytes());
        let at = "2027-03-02T10:15:00+01:00";
        let shot = |name: &str, x_mm: u64| {
            format!(
                r#"{{"shaft":"{name}","index_deg":30.0,"x_mm":{x_mm}.5,"y_mm":-8.25,"lean_x_deg":0.5,"lean_y_deg":1.0}}"#
            )
        };
        let shots = [shot("R", 0), shot("1", seq % 50), shot("2", seq % 40), shot("3", seq % 30)];
        let body = format!(
            r#"{{"v":1,"seq":{seq},"id":"{seq:016x}","t":"{at}","kind":"end","data":{{"shots":[{}],"at":"{at}","evening":"2027-03-02"}},"prev":"{prev:08x}""#,
            shots.join(",")
        );
        lines.push(sealed(&body));
    }
    lines
}

/// A record without its closing brace, with its checksum.
pub fn sealed(body: &str) -> String {
    format!("{body},\"crc\":\"{:08x}\"}}", crc32fast::hash(body.as_bytes()))
}

/// Lines as a file has them.
pub fn text(lines: &[impl AsRef<str>]) -> Vec<u8> {
    lines.iter().flat_map(|line| [line.as_ref().as_bytes(), b"\n"].concat()).collect()
}
