//! Whatever the clock says, records follow each other by their numbers.

use quarterturn_journal::{Checked, Entry, Stamp};

use crate::scene::{Scene, end_of, stamp};

#[test]
fn order_is_by_number_and_a_clock_that_was_set_back_is_told() {
    // Back a year, forward, an hour gained and lost, another zone, before 1970, a leap second, the ends of the calendar.
    let times = [
        ("2027-03-02T10:15:00+01:00", false),
        ("2026-03-02T10:15:00+01:00", true),
        ("2031-01-01T00:00:00Z", false),
        ("2027-10-31T02:59:59+02:00", true),
        ("2027-10-31T02:00:00+01:00", false),
        ("2027-10-31T03:30:00+02:00", false),
        ("2027-10-30T18:00:00-08:00", false),
        ("1969-12-31T23:59:59Z", true),
        ("1972-06-30T23:59:60Z", false),
        ("9999-12-31T23:59:59Z", false),
        ("0000-01-01T00:00:00Z", true),
        ("2027-03-02T10:15:00.999999999+14:00", false),
    ];
    let scene = Scene::begun();
    for (id, (time, back)) in (2..).zip(times) {
        let stamp = Stamp { time: time.parse().unwrap(), ..stamp(id) };
        let confirmed = scene.open().append(Entry::End(end_of(&["R"])), &stamp).unwrap();
        assert_eq!((confirmed.record.seq, confirmed.later.is_some()), (id, back), "{time}");
    }
    let checked = Checked::of(&scene.path).unwrap();
    assert_eq!(checked.records, 13);
    assert_eq!(checked.earlier, [3, 5, 9, 12]);
    assert_eq!(scene.open().state().history().events.len(), 12);
}
