//! What stands out, in words.

use quarterturn_tuning::{FarShot, WideShaft};

use super::{Ruler, count};

/// "Shaft 7 in end 5 hit 41 mm right from its other hits at that mark; …", a sentence.
pub fn far_shot(shot: &FarShot, ruler: Ruler) -> String {
    let FarShot { shaft, end, from_others, spread, spread_without } = shot;
    format!(
        "{shaft} in end {end} hit {} its other shots at that mark; without it your own group would be {}, not {}.",
        ruler.miss_of(*from_others),
        ruler.estimate(*spread_without),
        ruler.estimate(*spread),
    )
}

/// "Shaft 7 spreads 2.4 times as wide as the others (8 shots, once in 60 by chance).", a sentence.
pub fn wide_shaft(wide: &WideShaft) -> String {
    let WideShaft { shaft, times, shots, by_chance } = wide;
    let once_in = by_chance.recip().min(1000.0);
    let decimals = usize::from(*times < 9.95);
    format!(
        "{shaft} spreads {times:.decimals$} times as wide as the others ({}; by chance less than once in {once_in:.0}).",
        count(*shots, "repeated shot")
    )
}

#[cfg(test)]
mod tests {
    use quarterturn_geometry::{Millimetres, Offset};

    use super::*;
    use quarterturn_entry::quantity::Unit;

    #[test]
    fn shots_and_shafts_are_named_with_what_they_change() {
        let shot = FarShot {
            shaft: "7".parse().unwrap(),
            end: 5,
            from_others: Offset::new(41.0, -3.0),
            spread: Millimetres::new(17.2),
            spread_without: Millimetres::new(13.8),
        };
        assert_eq!(
            far_shot(&shot, Ruler::new(Unit::MILLIMETRE)),
            "7 in end 5 hit 41 mm right and 3 mm low of its other shots at that mark; without it your own \
             group would be 14 mm, not 17 mm."
        );
    }

    #[test]
    fn two_digits_and_chances_beyond_a_thousand_say_enough() {
        let wide = |times, by_chance| {
            wide_shaft(&WideShaft { shaft: "7".parse().unwrap(), times, shots: 8, by_chance })
        };
        let rest = "times as wide as the others (8 repeated shots; by chance less than once in";
        assert_eq!(wide(2.44, 0.02), format!("7 spreads 2.4 {rest} 50)."));
        assert_eq!(wide(40.9, 0.0), format!("7 spreads 41 {rest} 1000)."));
    }
}
