//! Reads an end from the JSON that other programs write.

use std::ops::Range;

use serde::de::DeserializeOwned;
use serde_json::Value;

use crate::json_piece::JsonPiece;
use crate::json_reason::reason;
use crate::shape::{END, GROUP, Shape};
use crate::{EndEntry, Fault, GroupEntry, Place, What};

/// Reads an end from JSON text; what it means is checked when it is appended.
///
/// Members that are not known are kept: [`EndEntry::unread`] names them.
///
/// # Errors
/// The first fault where the text is not JSON, else every value of the wrong kind and every known member that
/// is missing or stands twice. [`Fault::span`] says where in `text`.
pub fn read_end(text: &str) -> Result<EndEntry, Vec<Fault>> {
    read(text, &END)
}

/// Reads a group of finished arrows from JSON text, as [`read_end`] reads an end.
///
/// # Errors
/// As there.
pub fn read_group(text: &str) -> Result<GroupEntry, Vec<Fault>> {
    read(text, &GROUP)
}

fn read<T: DeserializeOwned>(text: &str, shape: &Shape) -> Result<T, Vec<Fault>> {
    let syntax = |error| vec![syntax_fault(text, &error)];
    serde_json::from_str::<Value>(text).map_err(syntax)?;
    let faults = shape.faults(JsonPiece::whole(text), &Place::WHOLE);
    if faults.is_empty() { serde_json::from_str(text).map_err(syntax) } else { Err(faults) }
}

fn syntax_fault(text: &str, error: &serde_json::Error) -> Fault {
    let reason = if error.is_eof() { "the text ends too early".to_owned() } else { reason(error) };
    Fault::whole(What::Syntax { reason, span: given_up(text, error) })
}

/// The character at which the reader of JSON gave up; empty at the end of the text.
fn given_up(text: &str, error: &serde_json::Error) -> Range<usize> {
    let before = text.split_inclusive('\n').take(error.line().saturating_sub(1)).map(str::len);
    let byte = before.sum::<usize>() + error.column().saturating_sub(1);
    let started = text.char_indices().take_while(|(start, _)| *start <= byte).last();
    match started {
        Some((start, c)) if !error.is_eof() => start..start + c.len_utf8(),
        _ => text.len()..text.len(),
    }
}
