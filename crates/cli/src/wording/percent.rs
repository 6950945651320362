//! Probabilities as people say them.

/// Whole percent, never 0 and never 100: "87 %", "more than 99 %", "less than 1 %".
pub fn percent(probability: f64) -> String {
    match (probability * 100.0).round() {
        _ if probability > 0.99 => "more than 99 %".to_owned(),
        _ if probability < 0.01 => "less than 1 %".to_owned(),
        whole => format!("{whole} %"),
    }
}

/// The same, short enough for a column: "> 99 %".
pub fn percent_short(probability: f64) -> String {
    percent(probability).replace("more than", ">").replace("less than", "<")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn never_certain() {
        assert_eq!(percent(0.873), "87 %");
        assert_eq!(percent(0.9999), "more than 99 %");
        assert_eq!(percent(1.0), "more than 99 %");
        assert_eq!(percent(0.0), "less than 1 %");
        assert_eq!(percent_short(0.9999), "> 99 %");
    }
}
