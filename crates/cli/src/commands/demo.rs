//! `demo`: a whole tuning with an invented dozen.

use quarterturn_journal::Existing;

use super::plot;
use crate::answer::Answer;
use crate::args::DemoArgs;
use crate::demo::{JOURNAL, SEED, Transcript, WORLD, play};
use crate::failure::Failure;
use crate::output;
use crate::plot::Backdrop;
use crate::wording::{command, paragraph};

/// Plays a tuning in a new folder, and tells it.
pub fn run(args: &DemoArgs) -> Result<Answer, Failure> {
    output::new_folder(&args.folder)?;
    let mut transcript = Transcript::default();
    let played = play(&args.folder.join(JOURNAL), WORLD, SEED, &mut transcript)?;
    let opened = &played.opened;
    let picture = opened.path.with_extension("svg");
    output::write(&picture, plot::target(opened, Backdrop::Grid), Existing::Keep)?;
    let written =
        format!("Written: {} and its picture {}.", opened.path.display(), picture.display());
    let try_next = [
        format!("look at {}", picture.display()),
        command("undo", &opened.path),
        format!("{} --json", command("next", &opened.path)),
        "quarterturn new my-dozen.journal --shafts 1-12 --reference R \\\n    --distance 18.3m \
         --tolerance 25mm"
            .to_owned(),
    ];
    let text = transcript.ending(&format!(
        "{}\n{}\n\nTry next:\n  {}\n",
        paragraph("", &played.truth()),
        paragraph("", &written),
        try_next.join("\n  ")
    ));
    let files = [opened.path.clone(), picture];
    Answer::of_files(text, &files, args.json)
}
