//! What is said of the quiver: what to look at again, and how it stands beside the archer's own limits.

use quarterturn_geometry::Millimetres;
use quarterturn_journal::{Limits, Quiver, QuiverArrow};

use super::{Ruler, all, visible};

/// After a hard hit; common practice of the trade.
pub const AFTER_A_HARD_HIT: &str = "After a hard hit: flex and twist the shaft and listen, spin it, look at nock and insert, \
    then shoot it beside the others; a nick, a crack or a crackle: destroy it. Then record it: shaft --checked.";

/// After a new nock; common practice of the trade.
pub const AFTER_A_NEW_NOCK: &str = "After a new nock: set it from the ink mark again, so that the mark stands where it \
    stood, dot its upper ear, try it on the string, then shoot the arrow beside the others. Then record it: shaft --checked.";

/// After a new string; common practice of the trade.
pub const AFTER_A_NEW_STRING: &str = "After a new string or serving: where all arrows land together is new, and no arrow's \
    mark is. Check nocking point, rest and draw, shoot in the string, then a group of each head from each distance, \
    and see verify and heads. Groups from before are left out from here on.";

/// What belongs to a quiver of broadheads; common practice of the trade.
pub const IN_THE_QUIVER: [&str; 4] = [
    "Broadheads stay in a covered quiver until the arrow is nocked, and are turned with a wrench. A head that was \
     practised with is sharpened or changed before it hunts.",
    "Flex every shaft and look at every nock before each day.",
    "Carbon breaks into splinters: look for them in the meat.",
    "Local law and licensed instruction come before anything this program says; it holds no law of its own.",
];

/// What is to be looked at again, a sentence each.
pub fn rechecks(quiver: &Quiver, in_quiver: &[&QuiverArrow]) -> Vec<String> {
    let string = quiver.new_string_on.as_ref().map(|on| {
        format!("The string was renewed on {on}, and no group was shot since. {AFTER_A_NEW_STRING}")
    });
    let named = |on: fn(&QuiverArrow) -> Option<&String>| {
        let hit = in_quiver.iter().filter_map(|arrow| Some((&arrow.name, on(arrow)?)));
        let said: Vec<String> = hit.map(|(name, on)| format!("{name} (on {on})")).collect();
        (!said.is_empty()).then(|| all(said))
    };
    let hard = named(|arrow| arrow.hard_hit_on.as_ref());
    let hard =
        hard.map(|names| format!("Hard hits, not checked since: {names}. {AFTER_A_HARD_HIT}"));
    let nock = named(|arrow| arrow.new_nock_on.as_ref());
    let nock =
        nock.map(|names| format!("New nocks, not checked since: {names}. {AFTER_A_NEW_NOCK}"));
    let never = in_quiver.iter().filter(|arrow| arrow.checked_on.is_none());
    let never: Vec<String> = never.map(|arrow| arrow.name.clone()).collect();
    let never = (!never.is_empty()).then(|| {
        format!(
            "Never recorded as checked: {}. Flex, spin, look at the nock: shaft --checked.",
            all(never)
        )
    });
    [string, hard, nock, never].into_iter().flatten().collect()
}

/// How the arrows stand beside the limits that the archer has read: a line each. `finished` are masses of finished arrows.
pub fn compared(
    limits: &Limits,
    finished: &[(&str, Option<f64>)],
    arrows: &[&QuiverArrow],
    ruler: Ruler,
) -> Vec<String> {
    let arrow = limits.least_arrow_gr.map(|least| {
        let said = against(finished, least, "finished mass");
        format!("Arrow at least {least} gr: {said}")
    });
    let draw = limits.least_draw_lb.map(|least| {
        let least_lb = tenth(least);
        match limits.draw_lb.map(tenth) {
            Some(draw) if draw >= least_lb => {
                format!("Draw at least {least_lb} lb: {draw} lb, kept.")
            }
            Some(draw) => format!("Draw at least {least_lb} lb: {draw} lb, NOT KEPT."),
            None => format!("Draw at least {least_lb} lb: not entered, --draw 60lb."),
        }
    });
    let width = limits.least_width_mm.map(|least| {
        let width = |arrow: &&QuiverArrow| arrow.head.as_ref().and_then(|head| head.width_mm);
        let widths: Vec<(&str, Option<f64>)> =
            arrows.iter().map(|arrow| (arrow.name.as_str(), width(arrow))).collect();
        let said = against(&widths, least, "width of a head");
        format!("Head at least {} wide: {said}", ruler.read(Millimetres::new(least)))
    });
    [arrow, draw, width].into_iter().flatten().collect()
}

fn against(values: &[(&str, Option<f64>)], least: f64, what: &str) -> String {
    let those = |test: &dyn Fn(Option<f64>) -> bool| {
        let names: Vec<String> = values
            .iter()
            .filter(|(_, value)| test(*value))
            .map(|(name, _)| visible(name))
            .collect();
        (!names.is_empty()).then(|| all(names))
    };
    let kept = those(&|value| value.is_some_and(|value| value >= least));
    let kept = kept.map(|names| format!("kept by {names}"));
    let below = those(&|value| value.is_some_and(|value| value < least));
    let below = below.map(|names| format!("NOT KEPT by {names}"));
    let unknown = those(&|value| value.is_none());
    let unknown = unknown.map(|names| format!("no {what} entered of {names}"));
    let said: Vec<String> = [kept, below, unknown].into_iter().flatten().collect();
    if said.is_empty() { "no arrow is in the quiver.".to_owned() } else { said.join("; ") + "." }
}

/// Grains came from pounds and go back to them.
fn tenth(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}
