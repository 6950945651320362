//! Every command opens its help with examples, and each of them does what it says.

use crate::commands_page::{below, help};
use crate::support::{Folder, repository::root, shell};

/// These ask a person; what they ask and understand is tried by their own tests.
const ASK: [&str; 2] = ["quarterturn end dozen.journal", "quarterturn practice trial.journal"];

/// What the examples find in their folder.
const BEFOREHAND: &str = r#"
quarterturn new dozen.journal --shafts 1-12 --reference R --distance 18.3m --tolerance 25mm
for end in 1 2 3 4 5 6; do
    quarterturn end dozen.journal "R r$end d2, 4 r31 u8 tl2.5, 7 r3$end u8 tl2, 11 l9 d$end"
done
quarterturn shaft dozen.journal 12 --fletched
quarterturn shaft dozen.journal 10 --fletched
for shaft in 1 2 3 4 5 6; do quarterturn bench dozen.journal $shaft --mass 31$shaft.4gr --length 76${shaft}mm; done
printf 'R 0, 3 r5 u2\n\nR r1, 8 l4 u15 p\n' > evening.txt
printf '{"shots":[{"shaft":"R","x_mm":3,"y_mm":-12},{"shaft":"7","x_mm":31,"y_mm":8}]}' > end.json
printf 'end,shaft,x_mm,y_mm\n1,R,3,-12\n1,5,31,8\n' > ends.csv
quarterturn export dozen.journal --json > dozen.json
printf 'R=1804,1422\n7=1710,1544 i3 p\n' > holes.txt
"#;

#[test]
fn every_command_opens_its_help_with_examples_that_work() {
    let faults = below("").into_iter().map(|command| {
        let folder = Folder::new();
        prepare(&folder, &command);
        faults(&folder, &command)
    });
    let faults: String = faults.collect();
    assert!(faults.is_empty(), "{faults}");
}

#[test]
fn the_sheets_open_their_help_likewise() {
    let folder = Folder::new();
    prepare(&folder, "paper");
    let sheets = below("paper").into_iter().map(|sheet| format!("paper {sheet}"));
    let faults: String = sheets.map(|sheet| faults(&folder, &sheet)).collect();
    assert!(faults.is_empty(), "{faults}");
}

/// What of the examples of a command does not work in `folder`.
fn faults(folder: &Folder, command: &str) -> String {
    let asked = |example: &&String| !ASK.contains(&example.as_str());
    let examples = examples(command);
    let fault = |example: &String| {
        let (done, said) = shell::run(folder.path(), &sooner(example));
        (!done).then(|| format!("$ {example}\n{said}\n"))
    };
    examples.iter().filter(asked).filter_map(fault).collect()
}

/// The example with fewer and smaller invented dozens: forty take a minute without optimisation.
fn sooner(example: &str) -> String {
    let few = "quarterturn rehearse --dozens 20 --shafts 1";
    example.replace("quarterturn rehearse", few).replace("--shafts 6", "")
}

/// The folder in which the examples of a command are tried.
fn prepare(folder: &Folder, command: &str) {
    let before = match command {
        "new" | "demo" | "practice" => return,
        "redo" => format!("{BEFOREHAND}\nfor n in 1 2; do quarterturn undo dozen.journal; done"),
        "repair" => format!("{BEFOREHAND}\nsed -i '3s/e/E/' dozen.journal"),
        _ => BEFOREHAND.to_owned(),
    };
    std::fs::copy(root().join("fixtures/photo/slanting.jpg"), folder.file("face.jpg"))
        .expect("a photo");
    std::fs::copy(root().join("fixtures/photo/tails.jpg"), folder.file("nocks.jpg"))
        .expect("a photo");
    let (done, said) = shell::run(folder.path(), &before);
    assert!(done, "{said}");
}

/// The examples of a command: at least two, and before all its options.
fn examples(command: &str) -> Vec<String> {
    let help = help(command);
    let (_, shown) = help.split_once("\nExamples:\n").expect(command);
    let (shown, after) = shown.split_once("\n\n").expect(command);
    assert!(
        format!("\n{after}").contains("\nOptions:\n"),
        "the options of {command} stand before its examples"
    );
    let mut examples: Vec<String> = Vec::new();
    for line in shown.lines().map(str::trim) {
        match examples.last_mut().filter(|last| last.ends_with('\\')) {
            Some(last) => *last = format!("{last}\n{line}"),
            None => examples.push(line.to_owned()),
        }
    }
    assert!(examples.len() >= 2, "{command} has fewer than two examples");
    for example in &examples {
        let whole = example.split(' ').any(|word| word == "quarterturn");
        assert!(whole, "`{example}` is broken over lines: make it shorter");
    }
    examples
}
