//! A hit is asked about where it hardly can lie, with the slip that explains it; an ordinary one never is.

use quarterturn_geometry::Offset;

use super::journal::{Journal, name, shot};
use crate::{Event, Improbable, Shot, SimulatedArcher, Slip, World, advise, improbable};

/// Five ends of the reference and shafts 1 to 3, each at its own place with a little scatter, and one more end.
fn after(last: impl FnOnce([Shot; 4]) -> Vec<Shot>) -> Vec<Improbable> {
    let places = [("R", 5.0, -10.0), ("1", 60.0, 30.0), ("2", -50.0, 10.0), ("3", 8.0, -45.0)];
    let of_end = |number: usize| {
        places.map(|(name, x_mm, y_mm)| {
            let turn = 2.4 * number as f64 + x_mm;
            let scatter = Offset::new(turn.cos(), turn.sin()) * 10.0;
            shot(name, 12.0, Offset::new(x_mm, y_mm) + scatter)
        })
    };
    let journal = (0..5).fold(Journal::of(3), |journal, end| journal.end(of_end(end).to_vec()));
    improbable(&journal.end(last(of_end(5))).history)
}

fn moved(mut shot: Shot, to: Offset) -> Shot {
    shot.hit.as_mut().unwrap().at = quarterturn_geometry::Point::SPOT + to;
    shot
}

#[test]
fn an_ordinary_end_is_not_asked_about() {
    assert_eq!(after(|end| end.to_vec()), []);
}

#[test]
fn nothing_is_asked_before_anything_is_known() {
    let far = vec![shot("R", 12.0, Offset::new(300.0, 200.0))];
    assert_eq!(improbable(&Journal::of(3).end(far).history), []);
    assert_eq!(improbable(&Journal::of(3).history), []);
}

#[test]
fn a_slip_is_named_where_it_explains_the_hit() {
    let asked = |which: usize, to: Offset| {
        let said = after(|mut end| {
            end[which] = moved(end[which].clone(), to);
            end.to_vec()
        });
        assert_eq!(said.len(), 1, "{said:?}");
        said.into_iter().next().unwrap()
    };
    let sides = asked(1, Offset::new(-62.0, 27.0));
    assert_eq!((sides.shaft.as_str(), &sides.slip), ("1", &Some(Slip::Sides)));
    assert!(sides.probability < 0.01 && sides.expected.x_mm > 40.0, "{sides:?}");
    assert_eq!(asked(3, Offset::new(8.0, 48.0)).slip, Some(Slip::Heights));
    assert_eq!(asked(2, Offset::new(-510.0, 90.0)).slip, Some(Slip::DecimalPoint));
    assert_eq!(asked(1, Offset::new(1500.0, 800.0)).slip, Some(Slip::Inches));
    // A reference too.
    assert_eq!(asked(0, Offset::new(95.0, 80.0)).slip, None);
}

#[test]
fn exchanged_numbers_are_named_on_both() {
    let said = after(|[reference, one, two, three]| {
        let (at_one, at_two) = (one.hit, two.hit);
        vec![reference, Shot { hit: at_two, ..one }, Shot { hit: at_one, ..two }, three]
    });
    let slips: Vec<_> = said.iter().map(|one| (one.shaft.clone(), one.slip.clone())).collect();
    let number = |other| Some(Slip::Number(name(other)));
    assert_eq!(slips, [(name("1"), number("2")), (name("2"), number("1"))]);
}

#[test]
fn about_one_shot_in_a_hundred_of_an_ordinary_archer_is_asked_about() {
    let (mut asked, mut shots) = (0, 0);
    for seed in 0..6 {
        let setup = crate::Setup::beside_one_reference(6);
        let mut archer = SimulatedArcher::new(&setup, World::ORDINARY, seed);
        let mut history = crate::History { setup, events: Vec::new() };
        for _ in 0..12 {
            let crate::Step::Shoot(end) = advise(&history, &crate::Policy::default()).step else {
                break;
            };
            history.events.push(Event::End(archer.shoot(&end, "evening")));
            shots += end.len();
            asked += improbable(&history).len();
        }
    }
    let share = asked as f64 / shots as f64;
    assert!(shots > 150 && share < 0.03, "{asked} of {shots}");
}
