//! How a tail leans, in words.

use quarterturn_geometry::Lean;

/// "tail 2.5 deg left, 1 deg high"; "tail straight"; "tail not read", which is another thing.
pub fn tail(lean: Option<Lean>) -> String {
    let Some(lean) = lean else { return "tail not read".to_owned() };
    let sides = [side(lean.x.degrees(), "right", "left"), side(lean.y.degrees(), "high", "low")];
    let said: Vec<String> = sides.into_iter().flatten().collect();
    if said.is_empty() { "tail straight".to_owned() } else { format!("tail {}", said.join(", ")) }
}

fn side(deg: f64, positive: &str, negative: &str) -> Option<String> {
    let tenths = (deg.abs() * 10.0).round() / 10.0;
    (tenths > 0.0).then(|| format!("{tenths} deg {}", if deg > 0.0 { positive } else { negative }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn unknown_is_not_straight() {
        assert_eq!(tail(None), "tail not read");
        assert_eq!(tail(Some(Lean::from_degrees(0.0, 0.0))), "tail straight");
        assert_eq!(tail(Some(Lean::from_degrees(-2.5, 1.0))), "tail 2.5 deg left, 1 deg high");
        assert_eq!(tail(Some(Lean::from_degrees(0.0, -1.0))), "tail 1 deg low");
    }
}
