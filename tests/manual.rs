//! Pages for `man` and what shells need to complete, both from the one definition.

use crate::support::Folder;

#[test]
fn a_page_a_command_with_its_examples_before_its_options() {
    let folder = Folder::new();
    let said = folder.run("manual man1").any_stdout().check();
    let pages = std::fs::read_dir(folder.file("man1")).unwrap().count();
    let first = format!("{pages} pages in man1. Read one with: man man1/quarterturn.1\n");
    assert_eq!(said, first);
    let page = folder.read("man1/quarterturn-end.1");
    let places = ["NAME", "SYNOPSIS", "EXAMPLES", "OPTIONS", "EXTRA"]
        .map(|section| page.find(&format!(".SH {section}")).expect(section));
    assert!(places.is_sorted(), "{page}");
    // A formatter without a locale knows no other letters.
    for name in std::fs::read_dir(folder.file("man1")).unwrap() {
        let page = std::fs::read_to_string(name.unwrap().path()).unwrap();
        assert!(page.is_ascii(), "{page}");
    }
    folder.run("manual man1").code(5).stderr_has("man1 exists already").check();
    let json = folder.run("manual again --json").json();
    assert_eq!(json["files"].as_array().map(Vec::len), Some(pages));
}

#[test]
fn every_shell_is_told_every_command() {
    for shell in ["bash", "elvish", "fish", "powershell", "zsh"] {
        let script = Folder::new().run(&format!("completions {shell}")).any_stdout().check();
        for word in ["show", "rehearse", "arrows-per-end"] {
            assert!(script.contains(word), "{word} for {shell}");
        }
    }
    Folder::new().run("completions csh").code(2).stderr_has("[possible values: bash").check();
}
