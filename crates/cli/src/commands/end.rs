//! `end`: reads an end, records it and says it back.

use std::io::{self, IsTerminal};

use quarterturn_entry::{Advising, quantity, shorthand};
use quarterturn_journal::{Confirmed, EndEntry, Entry, Fault, JournalError, Place, read_end};

use crate::answer::Answer;
use crate::args::EndArgs;
use crate::dialogue::{Dialogue, Heard};
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::refusal::{END_NOT_RECORDED, end_not_recorded};
use crate::typed_file::TypedFile;
use crate::{clock, input, json, report, screens};

/// Records an end, or all ends of a file.
pub fn run(args: &EndArgs) -> Result<Answer, Failure> {
    if let Some(file) = &args.file {
        return from_json(&mut Opened::to_add(&args.journal)?, &input::read(file)?);
    }
    let mut opened = Opened::at(&args.journal)?;
    let line = (!args.line.is_empty()).then(|| args.line.join(" "));
    match (line, &args.typed) {
        (_, Some(file)) => {
            let about = About::of(args)?;
            from_file(&mut opened, &about, &input::read(file)?)
        }
        (Some(line), None) => from_line(&mut opened, &About::of(args)?, &line),
        (None, None) => {
            let about = About::of(args)?;
            let nobody = args.no_input || !io::stdin().is_terminal() || !io::stdout().is_terminal();
            if nobody { Err(nothing_to_enter()) } else { from_person(&mut opened, &about) }
        }
    }
}

/// What the options say of an end.
struct About {
    evening: Option<String>,
    note: Option<String>,
    distance_m: Option<f64>,
}

impl About {
    fn of(args: &EndArgs) -> Result<Self, Failure> {
        let distance = args.distance.as_ref().map(|text| {
            quantity::length(text, None)
                .map_err(|fault| Failure::in_option("--distance", text, &fault))
        });
        let distance_m = distance.transpose()?.map(quarterturn_geometry::Millimetres::metres);
        Ok(Self { evening: args.evening.clone(), note: args.note.clone(), distance_m })
    }

    fn put(&self, end: EndEntry) -> EndEntry {
        let Self { evening, note, distance_m } = self;
        EndEntry {
            evening: evening.clone(),
            note: end.note.or_else(|| note.clone()),
            distance_m: *distance_m,
            ..end
        }
    }
}

fn nothing_to_enter() -> Failure {
    Failure::new(Kind::Usage, "there is no end to enter").hinting([
        "type it behind the journal, for example \"R 0, 7 r31 u8\"",
        "or name a file: --file for lines, --json for JSON; - is standard input",
        "on a terminal, and without --no-input, you are asked arrow by arrow",
    ])
}

fn from_json(opened: &mut Opened, input: &input::Input) -> Result<Answer, Failure> {
    let refused = |faults: &[Fault]| {
        let marked = Marked::file(&input.origin, &input.text);
        end_not_recorded(END_NOT_RECORDED, faults, marked, |fault| fault.span(&input.text))
    };
    let entry = read_end(&input.text).map_err(|faults| refused(&faults))?;
    let unread = entry.unread();
    let confirmed = record(opened, entry, refused)?;
    let answer = Answer::new(json::recorded(&confirmed)?);
    Ok(answer.noticing(unread.iter().map(not_read)).noticing(screens::what_else(&confirmed)))
}

fn from_line(opened: &mut Opened, about: &About, line: &str) -> Result<Answer, Failure> {
    let typed = shorthand::parse(line, opened.ruler().unit()).map_err(|located| {
        let marked = Marked::typed(line).wrong(located.span, located.fault.to_string());
        Failure::new(Kind::Data, END_NOT_RECORDED).marking(marked).hinting(located.fault.way_on())
    })?;
    let confirmed = record(opened, about.put(typed.entry.clone()), |faults| {
        end_not_recorded(END_NOT_RECORDED, faults, Marked::typed(line), |fault| {
            typed.span(&fault.place)
        })
    })?;
    let answer = Answer::new(screens::recorded_end(opened));
    Ok(answer.noticing(screens::what_else(&confirmed)))
}

/// Records every end of a file of lines, or none where one of them is wrong.
fn from_file(opened: &mut Opened, about: &About, input: &input::Input) -> Result<Answer, Failure> {
    let file = TypedFile::read(input, opened.ruler().unit())?;
    let stamp = clock::stamp()?;
    let mut state = opened.journal.state().clone();
    for end in &file.ends {
        let entry = Entry::End(about.put(end.typed.entry.clone()));
        state = state.with(entry, &stamp).map_err(|faults| {
            let marked = Marked::file(&input.origin, &input.text);
            end_not_recorded(END_NOT_RECORDED, &faults, marked, |fault| end.span(&fault.place))
        })?;
    }
    let mut screens = Vec::new();
    for end in file.ends {
        opened.append(Entry::End(about.put(end.typed.entry)))?;
        screens.push(screens::recorded_end(opened));
    }
    Ok(Answer::new(screens.join("\n")))
}

/// Asks a person arrow by arrow.
fn from_person(opened: &mut Opened, about: &About) -> Result<Answer, Failure> {
    let mut dialogue = Dialogue::begin(opened);
    let mut screen = dialogue.opening();
    let stamp = clock::stamp()?;
    loop {
        report::screen(&screen)?;
        let line = input::line()?;
        match dialogue.hear(line.as_deref(), |end| {
            opened.journal.state().with(Entry::End(about.put(end.clone())), &stamp)
        }) {
            Heard::Asking(next) => screen = next,
            Heard::Stopped => return Ok(Answer::new("Nothing was recorded.\n".to_owned())),
            Heard::Done(end) => {
                let confirmed = opened.append(Entry::End(about.put(end)))?;
                let answer = Answer::new(screens::recorded_end(opened));
                return Ok(answer.noticing(screens::what_else(&confirmed)));
            }
        }
    }
}

/// Appends an end; what the journal finds wrong with it is told by `refused`.
fn record(
    opened: &mut Opened,
    entry: EndEntry,
    refused: impl Fn(&[Fault]) -> Failure,
) -> Result<Confirmed, Failure> {
    let stamp = clock::stamp()?;
    opened.journal.append(Entry::End(entry), &stamp).map_err(|error| match error {
        JournalError::Refused { faults } => refused(&faults),
        error => error.into(),
    })
}

fn not_read(place: &Place) -> String {
    format!("{place} is kept in the journal, and not read: it is not a name that is known here")
}
