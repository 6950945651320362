//! Answers for other programs: their names are pinned in docs/machine-interface.md.

mod aim_answer;
mod apart_answer;
mod archer_answer;
mod bench;
mod bow_answer;
mod checked;
mod checklist;
mod config;
mod cut;
mod doubt_answer;
mod explained;
mod finding_answer;
mod fletch;
mod glue;
mod heads;
mod hint_answer;
mod imported;
mod lean_relation_answer;
mod log;
mod matrix;
mod next;
mod photo;
mod planned;
mod quiver;
mod reach;
mod recorded;
mod rehearsed;
mod repaired;
mod response_answer;
mod shaft_answer;
mod show;
mod standing_out_answer;
mod verify;
mod written;

use quarterturn_entry::visible_json;
use serde::Serialize;
use serde_json::Value;

use crate::failure::{Failure, Kind};

pub use bench::bench;
pub use checked::{damaged, whole};
pub use checklist::checklist;
pub use config::config;
pub use cut::cut;
pub use explained::{explained, words};
pub use fletch::fletch;
pub use glue::glued;
pub use heads::heads;
pub use imported::imported;
pub use log::{export, log};
pub use next::next;
pub use photo::photo;
pub use quiver::quiver;
pub use reach::reach;
pub use recorded::{begun, recorded};
pub use rehearsed::rehearsed;
pub use repaired::repaired;
pub use show::show;
use verify::BesideAnswer;
pub use verify::verify;
pub use written::written;

/// An answer made of what was entered, as one line of JSON.
fn line<T: Serialize>(answer: &T) -> Result<String, Failure> {
    let text = serde_json::to_string(answer).map_err(|error| failed(&error.to_string()))?;
    Ok(visible_json(&text) + "\n")
}

/// An answer made of what was computed, as one line of JSON in which every number is finite.
fn finite_line<T: Serialize>(answer: &T) -> Result<String, Failure> {
    let line = line(answer)?;
    // What is not finite becomes null without notice.
    let holds_null = serde_json::from_str(&line).is_ok_and(|value| holds_null(&value));
    if holds_null { Err(failed("a number in it is not finite")) } else { Ok(line) }
}

fn failed(why: &str) -> Failure {
    Failure::new(Kind::Data, format!("the answer cannot be written as JSON: {why}"))
        .hinting(["this is a fault of the program: please report it with the journal"])
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
    use super::finite_line;

    #[test]
    fn what_is_not_finite_is_never_written() {
        assert_eq!(finite_line(&[1.5, 0.1]).unwrap(), "[1.5,0.1]\n");
        let failure = finite_line(&[1.5, f64::NAN]).unwrap_err();
        assert_eq!(
            failure.what,
            "the answer cannot be written as JSON: a number in it is not finite"
        );
        assert_eq!(
            failure.hints,
            ["this is a fault of the program: please report it with the journal"]
        );
        assert!(finite_line(&[[f64::INFINITY]]).is_err());
    }
}
