//! `report`: the whole dozen on one page.

use crate::answer::Answer;
use crate::args::ReportArgs;
use crate::failure::Failure;
use crate::input;
use crate::opened::Opened;
use crate::output;
use crate::report_page::report;

/// Writes the report; the journal is only read.
pub fn run(args: &ReportArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let page = report(&opened, &opened.doubts())?;
    let file = args.output.clone().unwrap_or_else(|| opened.path.with_extension("html"));
    let answer = if input::is_standard(&file) {
        Answer::new(page)
    } else {
        output::write(&file, page, output::existing(args.force))?;
        let text = format!("The report is written to {}.\n", file.display());
        Answer::of_files(text, &[file], args.json)?
    };
    Ok(answer.noticing(opened.notices()))
}
