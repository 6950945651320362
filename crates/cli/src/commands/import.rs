//! `import`: adds what a table or an export says and the journal does not have yet.

use std::collections::{HashMap, HashSet};
use std::ops::Range;

use quarterturn_entry::{Advising, Incoming, Located, exported, table};
use quarterturn_journal::{Entry, Fault, Journal, JournalError, RecordId, Stamp, State};

use crate::answer::Answer;
use crate::args::ImportArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::input::{self, Input};
use crate::opened::Opened;
use crate::refusal::hints;
use crate::screens::{self, Imported};
use crate::{clock, json};

/// What is said above a file in which something is wrong.
const NOT_IMPORTED: &str = "nothing was imported";

/// Imports a file, or says what it would add.
pub fn run(args: &ImportArgs) -> Result<Answer, Failure> {
    let input = input::table(&args.file)?;
    let incoming = read(&input)?;
    let (mut opened, rest) = begun(args, &input, &incoming)?;
    let plan = Plan::of(&opened, &input, rest)?;
    if !args.dry_run {
        for (entry, stamp) in &plan.entries {
            opened.journal.append(entry.clone(), stamp)?;
        }
    }
    let begun = incoming.len() - rest.len();
    let imported = Imported { others: plan.imported.others + begun, ..plan.imported };
    let text = if args.json {
        json::imported(imported, args.dry_run)?
    } else {
        screens::imported(&opened, imported, args.dry_run)
    };
    Ok(Answer::new(text).noticing(opened.notices()))
}

fn read(input: &Input) -> Result<Vec<Incoming>, Failure> {
    let text = input.text.as_str();
    let is_json = text.trim_start().starts_with('{');
    let read = if is_json { exported(text) } else { table::read(text) };
    read.map_err(|faults| {
        let marked = faults
            .iter()
            .fold(Marked::file(&input.origin, text), |marked, Located { fault, span }| {
                marked.wrong(span.clone(), fault.to_string())
            });
        let ways_on = faults.iter().filter_map(|located| located.fault.way_on());
        Failure::new(Kind::Data, NOT_IMPORTED).marking(marked).hinting(ways_on)
    })
}

/// The journal, begun by the export where there is none yet, and what is left to be added to it.
fn begun<'a>(
    args: &ImportArgs,
    input: &Input,
    incoming: &'a [Incoming],
) -> Result<(Opened, &'a [Incoming]), Failure> {
    let missing = match Opened::at(&args.journal) {
        Ok(opened) => return Ok((opened, incoming)),
        Err(failure) if args.journal.exists() => return Err(failure),
        Err(failure) => failure,
    };
    let Some((Incoming { entry: Entry::New(beginning), id, time, .. }, rest)) =
        incoming.split_first()
    else {
        return Err(missing);
    };
    if args.dry_run {
        let failure = Failure::new(Kind::Data, "a journal that is not there has no dry run");
        return Err(
            failure.hinting(["import it under a new name, and delete that if it is not wanted"])
        );
    }
    let now = clock::stamp()?;
    let stamp = Stamp { id: *id, time: time.clone().unwrap_or(now.time) };
    let journal =
        Journal::create(&args.journal, beginning.clone(), &stamp).map_err(
            |error| match &error {
                JournalError::Refused { faults } => {
                    refused(input, faults, |_| incoming_span(incoming))
                }
                _ => error.into(),
            },
        )?;
    Ok((Opened { journal, path: args.journal.clone() }, rest))
}

fn incoming_span(incoming: &[Incoming]) -> Range<usize> {
    incoming.first().map_or(0..0, |first| first.whole.clone())
}

/// What is to be added, each entry found to be right in its turn.
struct Plan {
    entries: Vec<(Entry, Stamp)>,
    imported: Imported,
}

impl Plan {
    fn of(opened: &Opened, input: &Input, incoming: &[Incoming]) -> Result<Self, Failure> {
        let known = opened.journal.records()?;
        let known: HashMap<RecordId, u64> = known.iter().map(|r| (r.stamp.id, r.seq)).collect();
        let mut numbers = Numbers::of(&known, incoming);
        let mut state = opened.journal.state().clone();
        let (mut entries, mut imported) = (Vec::new(), Imported::default());
        let mut seen = HashSet::new();
        let now = clock::stamp()?.time;
        for one in incoming {
            if known.contains_key(&one.id) || !seen.insert(one.id) {
                imported.known += 1;
                continue;
            }
            let stamp = Stamp { id: one.id, time: one.time.clone().unwrap_or(now.clone()) };
            let entry = numbers.here(input, one)?;
            state = accepted(&state, &entry, &stamp)
                .map_err(|faults| refused(input, &faults, |fault| one.span(&fault.place)))?;
            numbers.added(one, state.records());
            imported.count(&entry);
            entries.push((entry, stamp));
        }
        Ok(Self { entries, imported })
    }
}

fn accepted(state: &State, entry: &Entry, stamp: &Stamp) -> Result<State, Vec<Fault>> {
    state.with(entry.clone(), stamp)
}

fn refused(input: &Input, faults: &[Fault], span: impl Fn(&Fault) -> Range<usize>) -> Failure {
    let marked = faults.iter().fold(Marked::file(&input.origin, &input.text), |marked, fault| {
        marked.wrong(span(fault), fault.what.to_string())
    });
    Failure::new(Kind::Data, NOT_IMPORTED).marking(marked).hinting(hints(faults))
}

/// Which number a record has here, by the number it had where it comes from.
struct Numbers(HashMap<u64, u64>);

impl Numbers {
    fn of(known: &HashMap<RecordId, u64>, incoming: &[Incoming]) -> Self {
        let both = |one: &Incoming| Some((one.seq?, *known.get(&one.id)?));
        Self(incoming.iter().filter_map(both).collect())
    }

    fn added(&mut self, one: &Incoming, here: u64) {
        self.0.extend(one.seq.map(|there| (there, here)));
    }

    /// The entry with the numbers that records have here.
    fn here(&self, input: &Input, one: &Incoming) -> Result<Entry, Failure> {
        let mut entry = one.entry.clone();
        let seq = match &mut entry {
            Entry::Undo(undo) => &mut undo.seq,
            Entry::Redo(redo) => &mut redo.seq,
            Entry::Fix(fix) => &mut fix.seq,
            _ => return Ok(entry),
        };
        let Some(here) = self.0.get(seq) else {
            let label = format!("the record {seq} that this speaks of is not in the file");
            let marked = Marked::file(&input.origin, &input.text).wrong(one.whole.clone(), label);
            return Err(Failure::new(Kind::Data, NOT_IMPORTED)
                .marking(marked)
                .hinting(["import the whole export"]));
        };
        *seq = *here;
        Ok(entry)
    }
}
