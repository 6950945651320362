//! How the verdicts compare with the truth: the dozen is invented, so it is known.

use quarterturn_tuning::{Fate, Ruling, ShaftReport};

use super::Played;
use crate::wording::{Table, count, mark, verdict};

impl Played {
    /// How many of the kept shafts truly land inside the tolerance, in a sentence.
    pub fn truth(&self) -> String {
        let tolerance = self.opened.journal.state().history().setup.tolerance;
        let kept: Vec<_> = self.fates().filter(|(_, fate)| fate.ruling == Ruling::Keep).collect();
        let inside = kept.iter().filter(|(_, fate)| fate.miss.length() <= tolerance).count();
        format!(
            "The dozen is invented, so the truth is known: of {} to keep {inside} truly land inside \
             the tolerance at that mark.",
            count(kept.len(), "shaft")
        )
    }

    /// Every shaft: its verdict, what was said of its miss, and the truth.
    pub fn truths(&self) -> String {
        let ruler = self.opened.ruler();
        let said = format!("said ({})", ruler.unit().symbol);
        let mut table = Table::new(["shaft", "verdict", "mark at", &said, "in truth"]);
        for (report, fate) in self.fates() {
            table.row([
                report.shaft.to_string(),
                verdict(report.verdict).to_owned(),
                mark(report.index),
                ruler.miss_bare(report.miss.mean),
                format!("{}{}", ruler.miss_bare(fate.miss), remark(&fate)),
            ]);
        }
        table.lines().collect::<Vec<_>>().join("\n")
    }

    fn fates(&self) -> impl Iterator<Item = (&ShaftReport, Fate)> {
        let tolerance = self.opened.journal.state().history().setup.tolerance;
        self.advice.shafts.iter().filter_map(move |report| {
            let settled = (Ruling::from(report.verdict), report.index);
            Some((report, Fate::of(&self.archer, tolerance, &report.shaft, settled)?))
        })
    }
}

/// What else is to be known of a shaft.
const fn remark(fate: &Fate) -> &'static str {
    match (fate.groups, fate.usable, fate.ruling) {
        (false, ..) => "; does not group",
        (_, true, Ruling::Retire) => "; some mark would bring it well inside",
        (_, false, Ruling::Open) => "; no mark brings it well inside",
        _ => "",
    }
}

#[cfg(test)]
mod tests {
    use quarterturn_geometry::{Index, Offset};

    use super::*;

    #[test]
    fn what_else_is_to_be_known_is_said() {
        let fate = |ruling, groups, usable| Fate {
            shaft: "7".parse().unwrap(),
            ruling,
            index: Index::TWELVE,
            miss: Offset::ZERO,
            groups,
            usable,
            mistake: None,
        };
        let said = [
            (Ruling::Keep, false, false),
            (Ruling::Retire, true, true),
            (Ruling::Open, true, false),
            (Ruling::Keep, true, true),
        ]
        .map(|(ruling, groups, usable)| remark(&fate(ruling, groups, usable)));
        let expected = [
            "; does not group",
            "; some mark would bring it well inside",
            "; no mark brings it well inside",
            "",
        ];
        assert_eq!(said, expected);
    }
}
