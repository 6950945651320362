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
    Entry::Shaft(ShaftEntry { shaft: name.to_owned(), change: change.to_owned(), note: None })
}
