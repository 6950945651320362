//! How long a long journal takes to be opened and to be added to, and the memory it needs.
//!
//! ```sh
//! cargo run --release -p quarterturn-journal --example speed -- 1000000 /tmp/long.journal
//! ```
#![allow(clippy::print_stdout, reason = "an example tells what it found")]

use std::error::Error;
use std::fs::{self, File};
use std::io::{BufWriter, Write};
use std::path::Path;
use std::time::Instant;

use quarterturn_journal::{
    Checked, EndEntry, Entry, Journal, NewEntry, NewShaft, RecordId, ShotEntry, Stamp,
};

/// Shots of an end: a reference and three of twelve shafts.
const SHOTS: usize = 4;

/// How often a thing is done that is timed.
const TIMES: u64 = 20;

fn main() -> Result<(), Box<dyn Error>> {
    let mut args = std::env::args().skip(1);
    let shots: usize = args.next().ok_or("how many shots?")?.parse()?;
    let path = args.next().ok_or("in which file?")?;
    let path = Path::new(&path);
    if !path.exists() {
        make(path, shots / SHOTS)?;
    }
    println!("{} bytes", fs::metadata(path)?.len());
    let opened = timed("open to add", || Journal::open_to_add(path))?;
    drop(opened);
    for id in 0..TIMES {
        timed("open and append", || {
            Journal::open_to_add(path)?.append(Entry::End(end(id)), &stamp(id))
        })?;
    }
    println!("{} kB at most so far", most_memory_kb()?);
    timed("open", || Journal::open(path))?;
    println!("{} kB at most so far", most_memory_kb()?);
    timed("check", || Checked::of(path))?;
    Ok(())
}

fn timed<T, E>(what: &str, work: impl FnOnce() -> Result<T, E>) -> Result<T, E> {
    let begun = Instant::now();
    let done = work();
    println!("{what}: {:.2} ms", begun.elapsed().as_secs_f64() * 1e3);
    done
}

fn most_memory_kb() -> Result<String, Box<dyn Error>> {
    let status = fs::read_to_string("/proc/self/status")?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    Ok(line.ok_or("no peak")?.trim().trim_end_matches(" kB").to_owned())
}

fn stamp(id: u64) -> Stamp {
    let time = "2027-03-02T10:15:00+01:00".parse().unwrap_or_else(|_| unreachable!());
    Stamp { id: RecordId::from_bits(id), time }
}

fn end(n: u64) -> EndEntry {
    let bare = (0..3).map(|k| ((n + k * 5) % 12 + 1).to_string());
    let shot = |(k, shaft): (u64, String)| ShotEntry {
        shaft,
        x_mm: Some((n * 7 + k * 31) as f64 % 97.0 - 48.25),
        y_mm: Some((n * 13 + k * 17) as f64 % 89.0 - 44.5),
        lean_x_deg: Some((n % 9) as f64 / 2.0 - 2.0),
        lean_y_deg: Some((n % 7) as f64 / 2.0 - 1.5),
        ..ShotEntry::default()
    };
    let shots = (0..).zip(std::iter::once("R".to_owned()).chain(bare)).map(shot).collect();
    EndEntry { shots, ..EndEntry::default() }
}

/// Writes a journal of so many ends, without syncing each: the lines of one made in the ordinary way are linked anew.
fn make(path: &Path, ends: usize) -> Result<(), Box<dyn Error>> {
    let numbered = (1..=12).map(|n| NewShaft { name: n.to_string(), index_deg: 0.0 });
    let beginning = NewEntry {
        shafts: numbered.collect(),
        references: vec!["R".to_owned()],
        distance_m: 18.3,
        tolerance_mm: 25.0,
        units: "mm".to_owned(),
        arrows_per_end: SHOTS,
        positions: 12,
        ..NewEntry::default()
    };
    let folder = path.with_extension("pattern");
    let mut pattern = Journal::create(&folder, beginning, &stamp(0))?;
    for n in 0..240 {
        pattern.append(Entry::End(end(n)), &stamp(n))?;
    }
    let text = fs::read_to_string(&folder)?;
    fs::remove_file(&folder)?;
    fs::remove_file(folder.with_extension("pattern.lock"))?;
    let data: Vec<&str> =
        text.lines().filter_map(|line| between(line, "\"t\":", ",\"prev\"")).collect();
    let mut file = BufWriter::new(File::create_new(path)?);
    let (mut prev, first) = (0, data.first().ok_or("no record")?);
    let rest = data.iter().skip(1).cycle().take(ends);
    for (n, said) in (1_u64..).zip(std::iter::once(first).chain(rest)) {
        let body =
            format!("{{\"v\":1,\"seq\":{n},\"id\":\"{n:016x}\",{said},\"prev\":\"{prev:08x}\"");
        let line = format!("{body},\"crc\":\"{:08x}\"}}", crc32fast::hash(body.as_bytes()));
        writeln!(file, "{line}")?;
        prev = crc32fast::hash(line.as_bytes());
    }
    Ok(file.flush()?)
}

/// What stands from `from` to before `to`.
fn between<'t>(line: &'t str, from: &str, to: &str) -> Option<&'t str> {
    let start = line.find(from)?;
    let end = line.rfind(to)?;
    line.get(start..end)
}
