//! The screen of `show`.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{
    Advice, Doubt, MeasuredFrom, Miss, ShaftReport, Spread, StandingOut, Step, Verdict,
};

use crate::opened::Opened;
use crate::wording::{
    self, Ruler, Table, all, command, count, mark, paragraph, percent_short, reason, verdict,
};

/// What the columns mean, after where the miss is from.
const COLUMNS: &str = "with the mark there; the truth lies within the ± about two times in three. Shots: \
    those at this mark of all that count.";

/// Every shaft, the bow and the archer.
pub fn show(opened: &Opened, advice: &Advice, doubts: &[Doubt]) -> String {
    let (ruler, standing_out) = (opened.ruler(), opened.standing_out());
    let mut blocks = vec![
        paragraph("", &heading(opened)),
        shafts(&advice.shafts, doubts, ruler),
        paragraph("", &columns(advice)),
        paragraph("", &bow(advice, ruler)),
        paragraph("", &archer(advice, ruler)),
    ];
    blocks.extend(far(&standing_out, ruler));
    blocks.extend(wording::asides(advice, ruler).map(|(lead, said)| paragraph(lead, &said)));
    blocks.push(format!("Then: {}", command(then(advice), &opened.path)));
    blocks.join("\n\n") + "\n"
}

/// What follows: `next`, or what follows on that where nothing is left to shoot.
fn then(advice: &Advice) -> &'static str {
    let is_kept = |report: &ShaftReport| report.verdict == Verdict::Keep;
    match advice.step {
        Step::Finished(_) if advice.shafts.iter().any(is_kept) => "fletch",
        Step::Finished(_) => "checklist",
        Step::Shoot(_) | Step::MoveBow => "next",
    }
}

/// "12 shafts beside R at 18.3 m, tolerance 25 mm; 2 evenings."
pub fn heading(opened: &Opened) -> String {
    let state = opened.journal.state();
    let (setup, ruler) = (&state.history().setup, opened.ruler());
    format!(
        "{} beside {} at {}, tolerance {}; {}.",
        count(setup.shafts.len(), "shaft"),
        all(&setup.references),
        ruler.distance(setup.distance),
        ruler.read(setup.tolerance),
        count(state.evenings().len(), "evening"),
    )
}

/// Each shaft: what is known, the reason of its verdict, and the shots that it hangs on.
fn shafts(reports: &[ShaftReport], doubts: &[Doubt], ruler: Ruler) -> String {
    let miss = format!("miss there ({})", ruler.unit().symbol);
    let mut table = Table::new(["shaft", "verdict", "mark at", &miss, "inside", "shots"]);
    for report in reports {
        table.row([
            report.shaft.to_string(),
            verdict(report.verdict).to_owned(),
            mark(report.index),
            miss_and_error(&report.miss, ruler),
            format!("{:>6}", percent_short(report.within)),
            format!("{} of {}", report.shots_here, report.shots_total),
        ]);
    }
    let mut lines = table.lines();
    let mut shown: Vec<String> = lines.next().into_iter().collect();
    for (line, report) in lines.zip(reports) {
        shown.push(line);
        shown.push(paragraph("       ", &why(report, ruler)));
        let of_shaft = doubts.iter().filter(|doubt| doubt.shaft == report.shaft);
        shown.extend(of_shaft.map(|doubt| paragraph("       ", &wording::doubt(doubt, ruler))));
    }
    shown.join("\n")
}

/// The reason of a verdict, and how many shots were left out.
pub fn why(report: &ShaftReport, ruler: Ruler) -> String {
    let reason = reason(report, ruler);
    match report.shots_left_out {
        0 => reason,
        shots => format!("{reason}; {} left out", count(shots, "shot")),
    }
}

/// "12 ± 6 right, 3 ± 6 low".
pub fn miss_and_error(miss: &Miss, ruler: Ruler) -> String {
    let cov = &miss.covariance_mm2;
    let side = |mm: f64, variance_mm2: f64, positive, negative| {
        let say = |mm| ruler.estimate_bare(Millimetres::new(mm));
        let side = match say(mm.abs()) {
            nothing if nothing == say(0.0) => "",
            _ if mm < 0.0 => negative,
            _ => positive,
        };
        format!("{} ± {}{side}", say(mm.abs()), say(variance_mm2.sqrt()))
    };
    let across = side(miss.mean.x_mm, cov.m11, " right", " left");
    let up = side(miss.mean.y_mm, cov.m22, " high", " low");
    format!("{across}, {up}")
}

/// What the columns of the table mean, and what was not read for them.
pub fn columns(advice: &Advice) -> String {
    let columns = format!("The miss is from {}, {COLUMNS}", measured_from(advice));
    match advice.older_shots {
        0 => columns,
        older => {
            format!("{columns} The oldest {older} are kept, and no longer read for the misses.")
        }
    }
}

fn measured_from(advice: &Advice) -> &'static str {
    match advice.measured_from {
        MeasuredFrom::Reference => "the reference",
        MeasuredFrom::CommonPoint(_) => "the point that most shafts can reach",
    }
}

/// Where bare shafts as a whole land, in a sentence or two.
pub fn bow(advice: &Advice, ruler: Ruler) -> String {
    let bow = &advice.bow;
    if advice.shafts.iter().all(|report| report.shots_total == 0) {
        return "Common offset: not known before a bare shaft was shot.".to_owned();
    }
    if let MeasuredFrom::CommonPoint(point) = &advice.measured_from {
        return format!(
            "The point that most shafts can reach lies {} ({}) from the reference. About {:.0} of {} \
             come inside the tolerance of it at their best mark.",
            miss_and_error(point, ruler),
            ruler.unit().symbol,
            bow.expected_within_if_moved,
            count(bow.shafts, "shaft")
        );
    }
    format!(
        "Common offset of bare shafts from the reference: {} ({}). As the bow stands, about {:.0} of \
         {} come inside the tolerance at their best mark.",
        miss_and_error(&bow.offset, ruler),
        ruler.unit().symbol,
        bow.expected_within_now,
        count(bow.shafts, "shaft")
    ) + &bow
        .response
        .as_ref()
        .map(|response| format!(" Measured: {}.", wording::response_seen(response, ruler)))
        .unwrap_or_default()
}

/// The archer's own group, in a sentence.
pub fn archer(advice: &Advice, ruler: Ruler) -> String {
    let Some(Spread { per_axis, interval, shots, .. }) = advice.archer.spread else {
        return "Your own group: not known before an arrow was shot twice at one mark.".to_owned();
    };
    let [lower, upper] = [interval.lower, interval.upper].map(Millimetres::new);
    format!(
        "Your own group: one arrow at one mark spreads {} either way in each direction, drift and \
         reading included ({:.0} % sure: {} to {}; {}).",
        ruler.estimate(per_axis),
        interval.level * 100.0,
        ruler.estimate_bare(lower),
        ruler.estimate(upper),
        count(shots, "repeated shot")
    )
}

/// What stands out, where anything does.
fn far(standing_out: &StandingOut, ruler: Ruler) -> Option<String> {
    let shots = standing_out.shots.iter().map(|shot| wording::far_shot(shot, ruler));
    let said: Vec<_> = shots.chain(standing_out.shafts.iter().map(wording::wide_shaft)).collect();
    (!said.is_empty()).then(|| paragraph("Stands out: ", &said.join(" ")))
}
