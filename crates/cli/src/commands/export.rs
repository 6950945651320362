//! `export`: everything, for other programs.

use quarterturn_entry::table;

use crate::answer::Answer;
use crate::args::ExportArgs;
use crate::failure::Failure;
use crate::json;
use crate::opened::Opened;
use crate::output;
use crate::wording::count;

/// Writes every record; the journal is only read.
pub fn run(args: &ExportArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let records = opened.journal.records()?;
    let text = if args.csv { table::written(&records) } else { json::export(&records)? };
    let Some(file) = &args.output else {
        return Ok(Answer::new(text).noticing(opened.notices()));
    };
    output::write(file, &text, output::existing(args.force))?;
    let said = format!("Written: {}, {}\n", file.display(), count(records.len(), "record"));
    Ok(Answer::new(crate::wording::visible(&said)).noticing(opened.notices()))
}
