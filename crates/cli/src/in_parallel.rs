//! The same work many times over, on as many cores as there are.

use std::panic::resume_unwind;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;

/// What `work` gives for 0 to `count` − 1, in that order; `done` hears how many are done each time one is.
pub fn in_parallel<T: Send>(
    count: usize,
    work: impl Fn(usize) -> T + Sync,
    done: impl Fn(usize) + Sync,
) -> Vec<T> {
    let (next, finished) = (AtomicUsize::new(0), AtomicUsize::new(0));
    let worker = || {
        let mut own = Vec::new();
        loop {
            let place = next.fetch_add(1, Ordering::Relaxed);
            if place >= count {
                return own;
            }
            own.push((place, work(place)));
            done(finished.fetch_add(1, Ordering::Relaxed) + 1);
        }
    };
    let cores = thread::available_parallelism().map_or(1, usize::from).min(count);
    let mut all: Vec<(usize, T)> = thread::scope(|scope| {
        let workers: Vec<_> = (0..cores).map(|_| scope.spawn(worker)).collect();
        let own = workers
            .into_iter()
            .map(|worker| worker.join().unwrap_or_else(|why| resume_unwind(why)));
        own.flatten().collect()
    });
    all.sort_by_key(|(place, _)| *place);
    all.into_iter().map(|(_, one)| one).collect()
}

#[cfg(test)]
mod tests {
    use std::sync::Mutex;

    use super::in_parallel;

    #[test]
    fn every_one_is_done_once_and_in_order() {
        let heard = Mutex::new(Vec::new());
        let squares = in_parallel(50, |k| k * k, |done| heard.lock().unwrap().push(done));
        assert_eq!(squares, (0..50).map(|k| k * k).collect::<Vec<_>>());
        let mut heard = heard.into_inner().unwrap();
        heard.sort_unstable();
        assert_eq!(heard, (1..=50).collect::<Vec<_>>());
        assert!(in_parallel(0, |k| k, |_| {}).is_empty());
    }
}
