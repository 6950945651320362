//! `config`: what need not be typed, from three places, the nearest first.

use crate::support::Folder;

const BEGIN: &str = "new a.journal --shafts 1-3 --reference R";

/// What is begun with what is set, as `new` says it.
fn begun(folder: &Folder, more: &str) -> String {
    let begun = folder.run(&format!("{BEGIN} {more}")).variable("HOME", "/nowhere");
    begun.any_stdout().check().lines().next().unwrap_or_default().to_owned()
}

/// What is said of the file `text`.
#[track_caller]
fn refused(text: &str, said: &str) {
    let folder = Folder::new();
    folder.write("quarterturn.toml", text);
    folder.run("config").code(3).stderr(said).check();
}

#[test]
fn what_is_set_need_not_be_typed_and_what_is_typed_comes_first() {
    let folder = Folder::new();
    folder.write(
        "quarterturn.toml",
        "[new]\ndistance = \"20yd\"\ntolerance = \"1in\"\nunits = \"in\"\n",
    );
    let begun = begun(&folder, "--tolerance 2in");
    assert_eq!(begun, "Begun: a.journal, 3 bare shafts beside R at 20 yd, tolerance 2 in.");
}

#[test]
fn the_environment_comes_before_the_folder_and_that_before_the_own_file() {
    let folder = Folder::new();
    folder.write("quarterturn.toml", "[new]\ntolerance = \"1in\"\n[reach]\nchance = 0.9\n");
    std::fs::create_dir_all(folder.file(".config/quarterturn")).unwrap();
    folder.write(
        ".config/quarterturn/quarterturn.toml",
        "[new]\ntolerance = \"3in\"\ndistance = \"20yd\"\narrows-per-end = 6\n",
    );
    let home = folder.path().to_str().unwrap().to_owned();
    let config = |arguments| {
        let run = folder.run(arguments).variable("HOME", &home);
        run.variable("QUARTERTURN_NEW_DISTANCE", "18m")
    };
    let own = format!("{home}/.config/quarterturn/quarterturn.toml");
    let said = format!(
        "command  option            value  set in\n\
         new      --distance        18m    QUARTERTURN_NEW_DISTANCE\n\
         new      --tolerance       1in    quarterturn.toml\n\
         new      --arrows-per-end  6      {own}\n\
         reach    --chance          0.9    quarterturn.toml\n\n\
         Looked at, the first before the second:\n  quarterturn.toml\n  {own}\n\n\
         See: quarterturn config --help\n"
    );
    config("config").stdout(&said).check();
    let json = config("config --json").json();
    assert_eq!(
        (&json["schema"], &json["settings"][0]["value"]),
        (&"quarterturn.config/1".into(), &"18m".into())
    );
}

#[test]
fn where_nothing_is_set_that_is_said() {
    let said = "Nothing is set.\n\nLooked at, the first before the second:\n  quarterturn.toml\n\nSee: quarterturn \
        config --help\n";
    Folder::new().run("config").stdout(said).check();
}

#[test]
fn what_cannot_be_set_is_shown_where_it_stands() {
    refused(
        "[new]\ndistanc = \"20yd\"\n",
        "error: the settings cannot be read\n --> quarterturn.toml:2:1\n  |\n2 | distanc = \"20yd\"\n  | ^^^^^^^ no \
         option that can be set\n  |\n  = help: did you mean \"distance\"?\n",
    );
    refused(
        "[undo]\n",
        "error: the settings cannot be read\n --> quarterturn.toml:1:2\n  |\n1 | [undo]\n  |  ^^^^ no command that \
         can be set\n  |\n  = help: what can be set: new, paper, cut, fletch, verify, heads, reach and rehearse\n",
    );
    refused(
        "new = 3\n",
        "error: the settings cannot be read\n --> quarterturn.toml:1:1\n  |\n1 | new = 3\n  | ^^^ this is a command, \
         not an option\n  |\n  = help: write [new] on a line of its own, and its options below\n",
    );
    refused(
        "[reach]\nplate = [1]\n",
        "error: the settings cannot be read\n --> quarterturn.toml:2:9\n  |\n2 | plate = [1]\n  |         ^^^ a text \
         in quotes or a number is expected here\n",
    );
    refused(
        "[new\n",
        "error: the settings cannot be read\n --> quarterturn.toml:1:5\n  |\n1 | [new\n  |     ^ unclosed table, \
         expected `]`\n  |\n  = help: the file is TOML: a line like distance = \"20yd\" below a line like [new]\n",
    );
}

#[test]
fn a_refused_command_says_where_its_settings_come_from() {
    let folder = Folder::new();
    folder.write("quarterturn.toml", "[new]\ndistance = \"20\"\ntolerance = \"1in\"\n");
    let told = "--distance 20 is set in quarterturn.toml\n";
    folder.run(BEGIN).code(2).stderr_has("a length needs a unit").stderr_has(told).check();
    folder.run("new").code(2).stderr_has(&format!("note: {told}")).check();
    // A file that is wrong keeps nobody from entering an end.
    folder.write("quarterturn.toml", "[new\n");
    folder.run("explain keep").any_stdout().check();
}

#[test]
fn a_variable_that_sets_nothing_is_told() {
    let folder = Folder::new();
    let run = folder.run("config").variable("QUARTERTURN_NEW_DISTANSE", "20yd");
    let said = "note: the variable QUARTERTURN_NEW_DISTANSE sets nothing: did you mean QUARTERTURN_NEW_DISTANCE?\n";
    run.stdout_has("Nothing is set.").stderr(said).check();
}
