//! A hit that hardly can be, in words.

use std::path::Path;

use quarterturn_tuning::{Improbable, Slip};

use super::{Ruler, command};

/// What is asked about a hit of end `end`, and how it is put right if it is wrong.
pub fn improbable(improbable: &Improbable, end: usize, ruler: Ruler, journal: &Path) -> String {
    let shaft = &improbable.shaft;
    let way = match &improbable.slip {
        Some(Slip::Number(other)) => format!("{end} --exchange {shaft},{other}"),
        _ => format!("{end} \"{shaft} ...\""),
    };
    let asked = improbable_here(improbable, ruler);
    let fix = command("fix", journal);
    format!("{asked} It is recorded as it is; if it is wrong: {fix} {way}")
}

/// The same before it is recorded.
pub fn improbable_here(improbable: &Improbable, ruler: Ruler) -> String {
    let Improbable { shaft, at, expected, probability, slip } = improbable;
    let away = ruler.estimate((*at - *expected).length());
    let asked = match slip {
        Some(Slip::Sides) => "Is right left?".to_owned(),
        Some(Slip::Heights) => "Is high low?".to_owned(),
        Some(Slip::DecimalPoint) => "Is a decimal point missing, or one too many?".to_owned(),
        Some(Slip::Inches) => "Is it in another unit?".to_owned(),
        Some(Slip::Number(other)) => format!("Were the numbers of {shaft} and {other} exchanged?"),
        None => "Is it what you read?".to_owned(),
    };
    let expected = ruler.hit_estimate(expected.from_spot());
    let rarity = rarity(*probability);
    format!("{shaft} lies {away} from where it was expected, {expected}; {rarity} would. {asked}")
}

/// "one shot in 300".
fn rarity(probability: f64) -> String {
    match 1.0 / probability {
        rare if rare < 1000.0 => format!("one shot in {:.0}", (rare / 100.0).floor() * 100.0),
        rare if rare < 10_000.0 => format!("one shot in {:.0}", (rare / 1000.0).floor() * 1000.0),
        _ => "hardly any shot".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use quarterturn_entry::quantity::Unit;
    use quarterturn_geometry::Point;

    use super::*;

    #[test]
    fn it_says_what_was_expected_and_what_to_do() {
        let said = |slip, probability| {
            let shaft = "7".parse().unwrap();
            let (at, expected) = (Point::new(-62.0, 27.0), Point::new(58.4, 30.0));
            let one = Improbable { shaft, at, expected, probability, slip };
            improbable(&one, 6, Ruler::new(Unit::MILLIMETRE), Path::new("fen.journal"))
        };
        assert_eq!(
            said(Some(Slip::Sides), 0.004),
            "7 lies 120 mm from where it was expected, 58 mm right and 30 mm high; one shot in 200 would. \
             Is right left? It is recorded as it is; if it is wrong: quarterturn fix fen.journal 6 \"7 ...\""
        );
        assert!(said(None, 1e-7).contains("hardly any shot would. Is it what you read?"));
        let number = said(Some(Slip::Number("9".parse().unwrap())), 0.0005);
        assert!(number.contains("one shot in 2000 would. Were the numbers of 7 and 9 exchanged?"));
        assert!(number.ends_with("quarterturn fix fen.journal 6 --exchange 7,9"));
    }
}
