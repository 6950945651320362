//! The figures as Markdown.

use quarterturn_statistics::Estimate;

use crate::Row;

const HEAD: &str = "| world | protocol | dozens | shots a shaft | wrong, % of keeps | lost, % of usable | \
    open, % | bow asked, % | within 12 bare shots, % | falsely, % | regions, % |\n\
    |---|---|---|---|---|---|---|---|---|---|---|";

/// One line for each world and protocol.
pub fn figures(rows: &[Row]) -> String {
    let lines = rows.iter().map(|Row { world, protocol, figures }| {
        let percent = |share: &Option<Estimate>| said(share.as_ref(), 100.0, 1);
        // Only the program ever asks for the bow, or says how sure it is.
        let of_program =
            |share: &Option<Estimate>| percent(&share.filter(|_| !figures.bins.is_empty()));
        let cells = [
            (*world).to_owned(),
            (*protocol).to_owned(),
            figures.dozens.to_string(),
            said(figures.shots_per_shaft.as_ref(), 1.0, 2),
            percent(&figures.wrong),
            percent(&figures.lost),
            percent(&figures.open),
            of_program(&figures.bow),
            of_program(&figures.bow_early),
            of_program(&figures.bow_false),
            of_program(&figures.covered),
        ];
        format!("\n| {} |", cells.join(" | "))
    });
    HEAD.to_owned() + &lines.collect::<String>() + "\n"
}

/// What was said of `within` beside what was true, for every row in which something was said.
pub fn calibration(rows: &[Row]) -> String {
    let told = rows.iter().filter(|row| !row.figures.bins.is_empty());
    let tables = told.map(|Row { world, protocol, figures }| {
        let lines = figures.bins.iter().map(|bin| {
            let held = said(Some(&bin.held), 1.0, 3);
            format!("\n| {} | {:.3} | {held} |", bin.held.n, bin.said)
        });
        let head = format!("{world}, {protocol}:\n\n| cases | said | true |\n|---|---|---|");
        head + &lines.collect::<String>() + "\n"
    });
    tables.collect::<Vec<_>>().join("\n")
}

/// "2.1 (1.2 to 3.4)": an estimate with its interval at 95 %, or a dash where there is none.
fn said(estimate: Option<&Estimate>, times: f64, decimals: usize) -> String {
    estimate.map_or("-".to_owned(), |Estimate { value, interval, .. }| {
        let [value, lower, upper] = [*value, interval.lower, interval.upper].map(|x| x * times);
        format!("{value:.decimals$} ({lower:.decimals$} to {upper:.decimals$})")
    })
}
