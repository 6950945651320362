//! `shaft`: what became of a shaft.

use quarterturn_entry::quantity;
use quarterturn_journal::{AddEntry, Entry, Role, ShaftEntry, Word};
use quarterturn_tuning::{ShaftChange, ShaftName, Verdict};

use crate::alike::alike;
use crate::answer::Answer;
use crate::args::ShaftArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{json, screens};

/// Records what became of a shaft or a reference, or that it joins.
pub fn run(args: &ShaftArgs) -> Result<Answer, Failure> {
    if args.state.add {
        return join(args);
    }
    let change = args.state.change();
    let mut opened = if change == ShaftChange::Fletched {
        Opened::at(&args.journal)?
    } else {
        Opened::to_add(&args.journal)?
    };
    let index_deg = index_deg(args)?;
    let advised = || advised_deg(&opened, &args.name).filter(|_| change == ShaftChange::Fletched);
    let entry = ShaftEntry {
        shaft: args.name.clone(),
        change: change.word().to_owned(),
        index_deg: index_deg.or_else(advised),
        on: args.on.clone(),
        note: None,
    };
    let confirmed = opened.append(Entry::Shaft(entry))?;
    let text = if args.json {
        json::recorded(&confirmed)?
    } else {
        screens::recorded_shaft(&opened, &args.name, change)
    };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}

fn index_deg(args: &ShaftArgs) -> Result<Option<f64>, Failure> {
    let read = |text: &String| {
        quantity::angle_deg(text).map_err(|fault| Failure::in_option("--index", text, &fault))
    };
    args.index.as_ref().map(read).transpose()
}

/// Where `fletch` says that the mark of a kept shaft belongs: it is hardly ever where it was last shot.
fn advised_deg(opened: &Opened, name: &str) -> Option<f64> {
    let advice = opened.advice();
    let report = advice.shafts.iter().find(|report| report.shaft.as_str() == name)?;
    matches!(report.verdict, Verdict::Keep).then(|| report.index.degrees())
}

/// Records a shaft or a reference that joins.
fn join(args: &ShaftArgs) -> Result<Answer, Failure> {
    let role = if args.reference { Role::Reference } else { Role::Bare };
    let entry = AddEntry {
        shaft: args.name.clone(),
        role: Some(role.word().to_owned()),
        index_deg: index_deg(args)?,
    };
    let mut opened = Opened::at(&args.journal)?;
    let confirmed = opened.append(Entry::Add(entry))?;
    let text = if args.json {
        json::recorded(&confirmed)?
    } else {
        screens::recorded_join(&opened, &args.name, role)
    };
    let setup = &opened.journal.state().history().setup;
    let names = setup.shafts.iter().map(|(name, _)| name).chain(&setup.references);
    let twins = alike(&names.map(ShaftName::as_str).collect::<Vec<_>>());
    let twins = twins.into_iter().filter(|said| said.contains(&format!("\"{}\"", args.name)));
    Ok(Answer::new(text).noticing(twins).noticing(screens::what_else(&confirmed)))
}
