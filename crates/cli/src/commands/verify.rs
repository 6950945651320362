//! `verify`: finished arrows by number, and the sight.

use quarterturn_tuning::verify;

use super::heads::length;
use crate::answer::Answer;
use crate::args::VerifyArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{json, screens};

/// Shows whether each finished arrow lands with the others; the journal is only read.
pub fn run(args: &VerifyArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let eye_to_pin = args.eye_to_pin.as_ref();
    let eye_to_pin = eye_to_pin.map(|text| length("--eye-to-pin", text, None)).transpose()?;
    let state = opened.journal.state();
    let setup = &state.history().setup;
    let groups: Vec<_> = state.groups_beside_this_bow().collect();
    let verified = verify(&groups, setup.tolerance, setup.distance);
    let promised = opened.advice().shafts;
    let text = if args.json {
        json::verify(&opened, &verified, &promised, eye_to_pin)?
    } else {
        screens::verify(&opened, &verified, &promised, eye_to_pin)
    };
    Ok(Answer::new(text).noticing(opened.notices()))
}
