//! What the README and the documents show is what happens: their commands are run, one after the other.
//!
//! Each document has an empty folder of its own; the chapters of the tutorial share one, in the order of their names,
//! with the tables that stand beside them. `QUARTERTURN_REWRITE=1` puts what came in the place of what does not fit.

mod console;
mod fits;

use std::env::var_os;
use std::{fs, thread};

use console::{Block, Part, parts};
use fits::fits;

use crate::support::repository::{read, root, sources};
use crate::support::{Folder, shell};

const TUTORIAL: &str = "docs/tutorial/";
/// They have a photo of the face in their folder.
const PHOTO: &str = "photo.md";

#[test]
fn every_command_shows_what_the_documents_show() {
    let pages = sources("docs").into_iter().filter(|source| source.ends_in("md"));
    let mut paths: Vec<_> = pages.map(|page| page.path).collect();
    paths.retain(|path| !path.starts_with(TUTORIAL));
    paths.push("README.md".to_owned());
    let faults: String = paths.iter().map(|path| play(&prepared(path), path)).collect();
    assert!(faults.is_empty(), "{faults}");
}

/// What no document has a reason to show, so that every message is read as a person sees it.
#[test]
fn every_command_says_what_was_read_aloud() {
    let pages = sources("tests/said");
    assert!(pages.len() > 1, "no messages are kept");
    // Each waits for the disk most of the time.
    let faults: String = thread::scope(|scope| {
        let play = |page| scope.spawn(move || play(&prepared(page), page));
        let playing: Vec<_> = pages.iter().map(|page| play(page.path.as_str())).collect();
        playing.into_iter().map(|played| played.join().expect("the page is played")).collect()
    });
    assert!(faults.is_empty(), "{faults}");
}

#[test]
fn every_command_shows_what_the_tutorial_shows() {
    let folder = Folder::new();
    let (chapters, tables): (Vec<_>, Vec<_>) =
        sources(TUTORIAL).into_iter().partition(|source| source.ends_in("md"));
    assert!(!chapters.is_empty(), "the tutorial has no chapter");
    for table in tables {
        folder.write(table.name(), &table.text);
    }
    let faults: String = chapters.iter().map(|chapter| play(&folder, &chapter.path)).collect();
    assert!(faults.is_empty(), "{faults}");
    for chapter in &chapters {
        pictures_are_current(&folder, &chapter.text);
    }
}

#[test]
fn every_page_stands_in_the_table_of_the_book_and_every_stage_in_the_justfile() {
    let table = read("docs/SUMMARY.md");
    for page in
        sources("docs").iter().filter(|page| page.ends_in("md") && page.name() != "SUMMARY.md")
    {
        let path = page.path.trim_start_matches("docs/");
        assert!(table.contains(&format!("({path})")), "{path} is not in docs/SUMMARY.md");
    }
    let (ci, just) = (read(".ci/run"), read("justfile"));
    let stages = ci.lines().find_map(|line| line.trim().strip_prefix("set -- ")).expect("stages");
    for stage in stages.split(' ') {
        assert!(
            just.contains(&format!("\n{stage}:\n    .ci/run {stage}\n")),
            "{stage} in the justfile"
        );
    }
}

/// What a chapter shows of the pictures that its commands drew is what they drew.
fn pictures_are_current(folder: &Folder, chapter: &str) {
    let shown = chapter.split("](../pictures/").skip(1).filter_map(|rest| rest.split(')').next());
    for name in shown.filter(|name| folder.names().contains(&(*name).to_owned())) {
        let (drawn, path) = (folder.read(name), format!("docs/pictures/{name}"));
        if var_os("QUARTERTURN_REWRITE").is_some() {
            fs::write(root().join(&path), &drawn).expect("the picture is written");
        }
        assert!(drawn == read(&path), "{path} is not what the tutorial draws now: look at it");
    }
}

/// The commands for people who build the program are run by `.ci/run`, which reads them out of the README.
#[test]
fn the_cargo_commands_are_those_of_the_ci() {
    let (ci, readme) = (read(".ci/run"), read("README.md"));
    let lines = readme.lines().filter_map(|line| line.strip_prefix("$ cargo "));
    let verbs: Vec<_> = lines.filter_map(|line| line.split(' ').next()).collect();
    assert_eq!(verbs, ["run", "test"], "the main command and the tests");
    for verb in verbs {
        assert!(ci.contains(&format!("readme_command {verb}")), "nobody runs `cargo {verb}`");
    }
}

/// The empty folder of a document; those about photos have one in it.
fn prepared(path: &str) -> Folder {
    let folder = Folder::new();
    if path.ends_with(PHOTO) {
        fs::copy(root().join("fixtures/photo/slanting.jpg"), folder.file("face.jpg")).unwrap();
        fs::copy(root().join("fixtures/photo/tails.jpg"), folder.file("nocks.jpg")).unwrap();
    }
    folder
}

/// Runs the commands of one document in `folder`, and says where what comes is not what is shown.
fn play(folder: &Folder, path: &str) -> String {
    let document = read(path);
    let mut rewritten = String::new();
    let mut faults = Vec::new();
    for part in parts(&document) {
        match part {
            Part::Text(text) => rewritten += text,
            Part::Console(block) => rewritten += &played(folder, &block, &mut faults),
        }
    }
    if var_os("QUARTERTURN_REWRITE").is_some() && rewritten != document {
        fs::write(root().join(path), rewritten).expect("the document is written");
    }
    faults.iter().flat_map(|fault| [path, "\n", fault, "\n"]).collect()
}

/// Runs the commands of one block; what does not fit is a fault. Returns the block as it should be.
fn played(folder: &Folder, block: &Block, faults: &mut Vec<String>) -> String {
    let mut rewritten = format!("```{}\n", block.kind.word());
    let (_, today) = shell::run(folder.path(), "date +%F");
    for shown in block.commands.iter().filter(|shown| !shown.is_cargo()) {
        let (ended, came) = shell::run(folder.path(), &shown.command);
        let lines: Vec<_> = came.lines().map(str::trim_end).collect();
        let fitting = shown.output.is_empty() || fits(&shown.output, &lines);
        if !fitting || ended != block.kind.ends_well() {
            faults.push(format!("$ {}\n{}", shown.command, lines.join("\n")));
        }
        rewritten += &if fitting {
            shown.as_written(&shown.output)
        } else {
            let undated: Vec<_> = lines.iter().map(|line| undated(line, today.trim())).collect();
            shown.as_written(&undated.iter().map(String::as_str).collect::<Vec<_>>())
        };
    }
    for shown in block.commands.iter().filter(|shown| shown.is_cargo()) {
        rewritten += &shown.as_written(&shown.output);
    }
    rewritten + "```"
}

/// A line without the day on which it was written, which is another one tomorrow, and what follows on it.
fn undated(line: &str, today: &str) -> String {
    line.split_once(today).map_or(line.to_owned(), |(before, _)| format!("{before}..."))
}

#[test]
fn a_document_is_put_together_again_as_it_was() {
    let folder = Folder::new();
    let text = "a\n\n```console\n$ echo b \\\n>   c\nb c\n$ true\n```\nd\n\n```console refused\n$ false\n```\n";
    let mut faults = Vec::new();
    let again: String = parts(text)
        .iter()
        .map(|part| match part {
            Part::Text(text) => (*text).to_owned(),
            Part::Console(block) => played(&folder, block, &mut faults),
        })
        .collect();
    assert_eq!(again, text);
    assert!(faults.is_empty(), "{faults:?}");
}
