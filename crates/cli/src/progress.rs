//! How far a long computation is, on a terminal only, and only once it has taken a while.

use std::io::{self, IsTerminal, Write};
use std::sync::Mutex;
use std::time::{Duration, Instant};

/// What is quicker than this needs no telling.
const PATIENCE: Duration = Duration::from_secs(1);

/// A line is written over so often at most.
const PAUSE: Duration = Duration::from_millis(200);

/// How wide the bar is, in characters.
const BAR: usize = 30;

/// A line on standard error that is written over as the work goes on.
pub struct Progress {
    what: &'static str,
    begun: Instant,
    told: Mutex<Option<Instant>>,
}

impl Progress {
    /// Nothing is written before it is [told](Self::tell) something.
    pub fn new(what: &'static str) -> Self {
        Self { what, begun: Instant::now(), told: Mutex::new(None) }
    }

    /// So many of `all` are done.
    pub fn tell(&self, done: usize, all: usize) {
        let now = Instant::now();
        if now - self.begun < PATIENCE || !io::stderr().is_terminal() {
            return;
        }
        // Another thread that is telling it already is as good.
        let Ok(mut told) = self.told.try_lock() else { return };
        if told.is_none_or(|last| now - last >= PAUSE) {
            *told = Some(now);
            write(&line(self.what, done, all, now - self.begun));
        }
    }

    /// Takes the line away, where there is one.
    pub fn end(&self) {
        if self.told.lock().is_ok_and(|told| told.is_some()) {
            write("\r\x1b[K");
        }
    }
}

/// "rehearsing [###---] 40 of 120, about 12 s left", over the line before it.
fn line(what: &str, done: usize, all: usize, taken: Duration) -> String {
    let filled = BAR * done / all.max(1);
    let left_s = taken.as_secs_f64() * (all - done) as f64 / done.max(1) as f64;
    let (filled, empty) = ("#".repeat(filled), "-".repeat(BAR - filled));
    format!("\r{what} [{filled}{empty}] {done} of {all}, about {left_s:.0} s left\x1b[K")
}

/// Nobody is left to tell where even this cannot be written.
fn write(text: &str) {
    let mut error = io::stderr().lock();
    let _ = error.write_all(text.as_bytes()).and_then(|()| error.flush());
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_third_done_takes_twice_as_long_again() {
        let line = line("rehearsing", 40, 120, Duration::from_secs(6));
        let bar = format!("[{}{}]", "#".repeat(10), "-".repeat(20));
        assert_eq!(line, format!("\rrehearsing {bar} 40 of 120, about 12 s left\x1b[K"));
    }
}
