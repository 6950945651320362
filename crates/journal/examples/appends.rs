//! How long each of many ends takes to be added and synced, and a journal to be opened; for `beside_sqlite.py`.
//!
//! ```sh
//! cargo run --release -p quarterturn-journal --example appends -- add /tmp/new.journal 1000
//! cargo run --release -p quarterturn-journal --example appends -- open /tmp/new.journal
//! ```
//! Microseconds, one number a line. After the last a line `done` follows, and the program waits to be killed.
#![allow(clippy::print_stdout, reason = "an example tells what it found")]

use std::error::Error;
use std::io::{self, Write};
use std::path::Path;
use std::thread::park;
use std::time::Instant;

use quarterturn_journal::{
    EndEntry, Entry, Journal, NewEntry, NewShaft, RecordId, ShotEntry, Stamp,
};

fn main() -> Result<(), Box<dyn Error>> {
    let args: Vec<String> = std::env::args().skip(1).collect();
    match args.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        ["add", path, count] => {
            let mut journal = Journal::create(Path::new(path), beginning(), &stamp(0)?)?;
            for id in 1..=count.parse()? {
                let (end, stamp) = (Entry::End(end(id)), stamp(id)?);
                let begun = Instant::now();
                journal.append(end, &stamp)?;
                println!("{}", begun.elapsed().as_micros());
            }
            println!("done");
            io::stdout().flush()?;
            loop {
                park();
            }
        }
        ["open", path] => {
            let begun = Instant::now();
            let journal = Journal::open(Path::new(path))?;
            let events = journal.state().history().events.len();
            println!("{} {events}", begun.elapsed().as_micros());
            Ok(())
        }
        _ => Err("add FILE COUNT, or open FILE".into()),
    }
}

fn stamp(id: u64) -> Result<Stamp, Box<dyn Error>> {
    let time = "2027-03-02T10:15:00+01:00".parse()?;
    Ok(Stamp { id: RecordId::from_bits(id), time })
}

fn beginning() -> NewEntry {
    let shafts = (1..=12).map(|n| NewShaft { name: n.to_string(), index_deg: 0.0 });
    NewEntry {
        shafts: shafts.collect(),
        references: vec!["R".to_owned()],
        distance_m: 18.3,
        tolerance_mm: 25.0,
        units: "mm".to_owned(),
        arrows_per_end: 4,
        positions: 12,
        ..NewEntry::default()
    }
}

fn end(n: u64) -> EndEntry {
    let shot = |k: u64| ShotEntry {
        shaft: if k == 0 { "R".to_owned() } else { ((n + k * 3) % 12 + 1).to_string() },
        x_mm: Some((n * 7 + k * 31) as f64 % 97.0 - 48.25),
        y_mm: Some((n * 13 + k * 17) as f64 % 89.0 - 44.5),
        lean_x_deg: Some(0.5),
        lean_y_deg: Some(-1.5),
        ..ShotEntry::default()
    };
    EndEntry { shots: (0..4).map(shot).collect(), ..EndEntry::default() }
}
