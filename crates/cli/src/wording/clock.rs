//! The clock in words: where a mark stands, and how far it has to go.

use quarterturn_geometry::Index;

const NUMBERS: [&str; 7] = ["no", "one", "two", "three", "four", "five", "six"];

/// Degrees within which an angle is whole or half hours to a person.
const SAME_DEG: f64 = 0.05;

/// "3 o'clock", "half past 1"; between the half hours "100 deg".
pub fn mark(index: Index) -> String {
    let hours = index.hours();
    let named = if hours < 1.0 { 12.0 } else { hours.floor() };
    match hours.fract() {
        0.0 => format!("{named} o'clock"),
        0.5 => format!("half past {named}"),
        _ => format!("{} deg", tenths(index.degrees())),
    }
}

/// "three hours clockwise", "half a turn"; nothing where the mark already stands there.
pub fn turn(from: Index, to: Index) -> Option<String> {
    let turned_deg = from.turn_to(to).degrees();
    let size_deg = turned_deg.abs();
    let way = if turned_deg > 0.0 { "clockwise" } else { "counter-clockwise" };
    match hours(size_deg) {
        _ if from.is_at(to) => None,
        Some(_) if (size_deg - 180.0).abs() < SAME_DEG => Some("half a turn".to_owned()),
        Some(hours) => Some(format!("{hours} {way}")),
        None => Some(format!("{} deg {way}", tenths(size_deg))),
    }
}

/// "mark to 3 o'clock, three hours clockwise from where it is"; "mark stays at 12 o'clock".
pub fn instruction(from: Index, to: Index) -> String {
    match turn(from, to) {
        Some(turn) => format!("mark to {}, {turn} from where it is", mark(to)),
        None => format!("mark stays at {}", mark(to)),
    }
}

/// "three hours", "one and a half hours", where the angle is whole or half hours.
fn hours(angle_deg: f64) -> Option<String> {
    let halves = (0..=12_u8).find(|n| (f64::from(*n) * 15.0 - angle_deg).abs() < SAME_DEG)?;
    let word = NUMBERS.get(usize::from(halves / 2))?;
    Some(match halves {
        1 => "half an hour".to_owned(),
        2 => "one hour".to_owned(),
        _ if halves % 2 == 1 => format!("{word} and a half hours"),
        _ => format!("{word} hours"),
    })
}

/// A number with at most one decimal.
fn tenths(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hour(hour: f64) -> Index {
        Index::from_hour(hour)
    }

    #[test]
    fn marks_are_read_off_the_clock() {
        assert_eq!(mark(hour(0.0)), "12 o'clock");
        assert_eq!(mark(hour(3.0)), "3 o'clock");
        assert_eq!(mark(hour(0.5)), "half past 12");
        assert_eq!(mark(hour(1.5)), "half past 1");
        assert_eq!(mark(Index::from_degrees(100.0)), "100 deg");
    }

    #[test]
    fn turns_go_the_shorter_way() {
        let said = |from, to| turn(hour(from), hour(to));
        assert_eq!(said(12.0, 12.0), None);
        assert_eq!(said(12.0, 3.0).unwrap(), "three hours clockwise");
        assert_eq!(said(1.0, 12.0).unwrap(), "one hour counter-clockwise");
        assert_eq!(said(10.0, 1.0).unwrap(), "three hours clockwise");
        assert_eq!(said(2.0, 8.0).unwrap(), "half a turn");
        assert_eq!(said(12.0, 1.5).unwrap(), "one and a half hours clockwise");
        assert_eq!(said(12.0, 11.5).unwrap(), "half an hour counter-clockwise");
        let fine = turn(Index::TWELVE, Index::from_degrees(100.0));
        assert_eq!(fine.unwrap(), "100 deg clockwise");
    }

    #[test]
    fn an_instruction_names_the_mark_and_the_way() {
        assert_eq!(
            instruction(hour(12.0), hour(3.0)),
            "mark to 3 o'clock, three hours clockwise from where it is"
        );
        assert_eq!(instruction(hour(3.0), hour(3.0)), "mark stays at 3 o'clock");
    }
}
