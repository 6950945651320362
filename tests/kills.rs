//! A program that is killed at any moment loses nothing that it had confirmed. `QUARTERTURN_KILLS` kills more often.

use std::env;
use std::process::{Command, Stdio};
use std::thread::sleep;
use std::time::Duration;

use crate::support::{Folder, JOURNAL, PROGRAM};

#[test]
fn what_was_confirmed_before_a_kill_is_there() {
    let kills = env::var("QUARTERTURN_KILLS").ok().and_then(|text| text.parse().ok()).unwrap_or(40);
    let folder = Folder::begun("1-3");
    let (mut confirmed, mut least) = (1, 1);
    for kill in 0..kills {
        let mut child = Command::new(PROGRAM)
            .args(["end", JOURNAL, "R 0, 1 r31 u8"])
            .current_dir(folder.path())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        // Spread over the time that it takes, which is a few milliseconds.
        sleep(Duration::from_micros(kill * 7919 % 9000));
        let _ = child.kill();
        let done = child.wait().unwrap().success();
        let answer = folder.run(&format!("check {JOURNAL} --json")).json();
        assert_eq!(answer["whole"], true);
        let records = answer["records"].as_u64().unwrap();
        least += u64::from(done);
        // One that was not confirmed may be there, whole.
        assert!((confirmed + u64::from(done)..=confirmed + 1).contains(&records), "kill {kill}");
        confirmed = records;
    }
    assert!(least <= confirmed);
}
