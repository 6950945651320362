//! `shaft`: what became of a shaft.

use quarterturn_entry::quantity;
use quarterturn_journal::{AddEntry, Entry, Role, ShaftEntry, Word};
use quarterturn_tuning::ShaftName;

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
    let mut opened = Opened::to_add(&args.journal)?;
    let entry =
        ShaftEntry { shaft: args.name.clone(), change: change.word().to_owned(), note: None };
    let confirmed = opened.append(Entry::Shaft(entry))?;
    let text = if args.json {
        json::recorded(&confirmed)?
    } else {
        screens::recorded_shaft(&opened, &args.name, change)
    };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}

/// Records a shaft or a reference that joins.
fn join(args: &ShaftArgs) -> Result<Answer, Failure> {
    let index_deg = args.index.as_deref().map(|text| {
        quantity::angle_deg(text).map_err(|fault| Failure::in_option("--index", text, &fault))
    });
    let role = if args.reference { Role::Reference } else { Role::Bare };
    let entry = AddEntry {
        shaft: args.name.clone(),
        role: Some(role.word().to_owned()),
        index_deg: index_deg.transpose()?,
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
