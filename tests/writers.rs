//! Many programs at one journal: writers take turns, readers see whole records and wait for nobody.
//! `QUARTERTURN_WRITES` lets each of them write more often.

use std::env;
use std::process::Command;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;

use crate::support::{Folder, JOURNAL, PROGRAM};

const WRITERS: u64 = 8;
const READERS: usize = 4;

#[test]
fn eight_writers_and_four_readers_share_a_journal() {
    let asked = env::var("QUARTERTURN_WRITES").ok().and_then(|text| text.parse().ok());
    let each: u64 = asked.unwrap_or(6);
    let folder = Folder::begun("1-3");
    let run = |arguments: &[&str]| {
        let output = Command::new(PROGRAM).args(arguments).current_dir(folder.path()).output();
        output.expect("the program runs").status.code().expect("it ends by itself")
    };
    let done = AtomicBool::new(false);
    let written: u64 = thread::scope(|scope| {
        let write = || (0..each).map(|_| run(&["end", JOURNAL, "R 0, 1 r31 u8"]));
        // One that has waited two seconds gives up, and says so by its code.
        let counted = move || write().map(|code| [0, 4].iter().position(|c| *c == code).unwrap());
        let writers: Vec<_> = (0..WRITERS)
            .map(|_| scope.spawn(move || counted().filter(|gave_up| *gave_up == 0).count() as u64))
            .collect();
        for _ in 0..READERS {
            scope.spawn(|| {
                while !done.load(Ordering::Relaxed) {
                    assert_eq!(run(&["check", JOURNAL]), 0, "a reader");
                }
            });
        }
        let written = writers.into_iter().map(|writer| writer.join().expect("a writer")).sum();
        done.store(true, Ordering::Relaxed);
        written
    });
    let answer = folder.run(&format!("check {JOURNAL} --json")).json();
    assert_eq!(answer["records"], 1 + written);
    assert!(written > WRITERS, "they came to write");
}
