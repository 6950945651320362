//! A rehearsal that cannot be.

use super::Marked;
use crate::support::Folder;

/// `rehearse` with the option `option` set to `marked` and the others right is refused.
#[track_caller]
fn refused(option: &str, marked: &str, label: &str, hint: &str) {
    let marked = Marked::of(marked);
    let mut settings = vec![("group", "80mm"), ("distance", "18.3m"), ("tolerance", "25mm")];
    settings.retain(|(name, _)| *name != option);
    settings.push((option, &marked.text));
    let folder = Folder::new();
    let rehearse = settings
        .iter()
        .fold(folder.run("rehearse"), |run, (name, value)| run.arg(&format!("--{name}={value}")));
    let what = format!("the value of --{option} cannot be used");
    rehearse.code(2).stderr(&marked.message(&what, None, label, &[hint])).check();
}

const NUMBER: &str = "check the number and its unit";

#[test]
fn lengths() {
    let units = "write 80mm, 80cm, 80in, 80ft, 80yd or 80m";
    refused("group", "80⟦⟧", "a length needs a unit", units);
    let lengths = "use mm, cm, in, ft, yd or m";
    refused("tolerance", "25⟦gr⟧", "\"gr\" is a unit of mass, not of length", lengths);
    let butt = "more than 0 and at most 3 m is expected";
    refused("group", "⟦0mm⟧", butt, NUMBER);
    refused("tolerance", "⟦-25mm⟧", butt, NUMBER);
    refused("tolerance", "⟦4m⟧", butt, NUMBER);
    refused("distance", "⟦500m⟧", "more than 0 and at most 200 m is expected", NUMBER);
}

#[test]
fn what_is_left_out_is_named() {
    let folder = Folder::new();
    let run = folder.run("rehearse --group 80mm --tolerance 25mm").code(2);
    run.stderr_has("--distance <LENGTH>").check();
}

#[test]
fn counts_are_within_reason() {
    for (option, value) in
        [("shafts", "0"), ("shafts", "61"), ("arrows-per-end", "1"), ("dozens", "19")]
    {
        let rehearse = "rehearse --group 80mm --distance 18.3m --tolerance 25mm";
        let folder = Folder::new();
        let run = folder.run(&format!("{rehearse} --{option} {value}")).code(2);
        run.stderr_has(&format!("'{value}'")).stderr_has(option).check();
    }
}
