//! The screen of a new journal, with what belongs before the first bare shot.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{Matching, known_height};

use crate::opened::Opened;
use crate::wording::{BEFORE_THE_FIRST_BARE_SHOT, all, command, count, paragraph};

/// A journal was begun.
pub fn begun(opened: &Opened) -> String {
    let (setup, ruler) = (&opened.journal.state().history().setup, opened.ruler());
    let heading = format!(
        "Begun: {}, {} beside {} at {}, tolerance {}.",
        opened.path.display(),
        count(setup.shafts.len(), "bare shaft"),
        all(&setup.references),
        ruler.distance(setup.distance),
        ruler.read(setup.tolerance)
    );
    let higher = known_height(setup);
    let lighter = (higher > Millimetres::ZERO).then(|| {
        let higher = ruler.estimate(higher);
        format!("Bare shafts lack the vanes' mass: {higher} of height are expected and taken off.")
    });
    let together = (setup.matching == Matching::Set).then(|| {
        "The shafts are to match each other; how they come to the reference is said at the end."
            .to_owned()
    });
    let cautions = BEFORE_THE_FIRST_BARE_SHOT.map(|caution| paragraph("  - ", caution)).join("\n");
    let said = [heading]
        .into_iter()
        .chain(together)
        .chain(lighter)
        .map(|sentence| paragraph("", &sentence));
    let said: Vec<String> = said.collect();
    format!(
        "{}\n\nBefore the first bare shot:\n{cautions}\n\nThen: {}\n",
        said.join("\n"),
        command("next", &opened.path)
    )
}
