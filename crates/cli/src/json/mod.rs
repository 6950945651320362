//! Answers for other programs: their names are pinned in docs/machine-interface.md.

mod archer_answer;
mod bow_answer;
mod matrix;
mod next;
mod planned;
mod recorded;
mod shaft_answer;
mod show;

use serde::Serialize;
use serde_json::Value;

use crate::failure::{Failure, Kind};

pub use next::next;
pub use recorded::{begun, recorded};
pub use show::show;

/// The answer as one line of JSON.
fn line<T: Serialize>(answer: &T) -> Result<String, Failure> {
    let failed = |why: String| {
        Failure::new(Kind::Data, format!("the answer cannot be written as JSON: {why}"))
    };
    let value = serde_json::to_value(answer).map_err(|error| failed(error.to_string()))?;
    // What is not a finite number becomes null without notice.
    if holds_null(&value) {
        return Err(failed("a number in it is not finite".to_owned())
            .hinting(["this is a fault of the program: please report it with the journal"]));
    }
    let text = serde_json::to_string(answer).map_err(|error| failed(error.to_string()))?;
    Ok(text + "\n")
}

fn holds_null(value: &Value) -> bool {
    match value {
        Value::Null => true,
        Value::Array(items) => items.iter().any(holds_null),
        Value::Object(members) => members.values().any(holds_null),
        Value::Bool(_) | Value::Number(_) | Value::String(_) => false,
    }
}

#[cfg(test)]
mod tests {
    use super::line;

    #[test]
    fn what_is_not_finite_is_never_written() {
        assert_eq!(line(&[1.5, 0.1]).unwrap(), "[1.5,0.1]\n");
        assert!(line(&[1.5, f64::NAN]).is_err());
        assert!(line(&[[f64::INFINITY]]).is_err());
    }
}
