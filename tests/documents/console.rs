//! The console blocks of a document: commands, and what is shown under them.

/// A piece of a document.
pub enum Part<'a> {
    /// What is not run, as it stands.
    Text(&'a str),
    /// Commands that are run.
    Console(Block<'a>),
}

/// One console block.
pub struct Block<'a> {
    pub kind: Kind,
    pub commands: Vec<Shown<'a>>,
}

/// How the commands of a block end.
#[derive(Clone, Copy)]
pub enum Kind {
    /// A block `console`: each exits with 0.
    Done,
    /// A block `console refused`: each exits with another code.
    Refused,
}

impl Kind {
    pub fn word(self) -> &'static str {
        match self {
            Self::Done => "console",
            Self::Refused => "console refused",
        }
    }

    /// Whether the exit code must be 0.
    pub fn ends_well(self) -> bool {
        matches!(self, Self::Done)
    }
}

/// A command and the lines that are shown under it.
pub struct Shown<'a> {
    pub command: String,
    pub output: Vec<&'a str>,
}

impl Shown<'_> {
    pub fn is_cargo(&self) -> bool {
        self.command.starts_with("cargo ")
    }

    /// The command with `output` under it, as a document has it.
    pub fn as_written(&self, output: &[&str]) -> String {
        let lines = output.iter().map(|line| format!("{line}\n"));
        format!("$ {}\n{}", self.command.replace('\n', "\n> "), lines.collect::<String>())
    }
}

/// The document, parted at its console blocks.
pub fn parts(document: &str) -> Vec<Part<'_>> {
    let mut parts = Vec::new();
    let mut rest = document;
    while let Some((text, kind, block)) = next_block(rest) {
        let (inside, after) = block.split_once("```").expect("a block ends");
        parts.push(Part::Text(text));
        parts.push(Part::Console(Block { kind, commands: commands(inside) }));
        rest = after;
    }
    parts.push(Part::Text(rest));
    parts
}

fn next_block(text: &str) -> Option<(&str, Kind, &str)> {
    let found = [Kind::Done, Kind::Refused].map(|kind| {
        let (before, after) = text.split_once(&format!("```{}\n", kind.word()))?;
        Some((before, kind, after))
    });
    found.into_iter().flatten().min_by_key(|(before, ..)| before.len())
}

/// The commands of a block; a line that begins with `> ` goes on with the command.
fn commands(block: &str) -> Vec<Shown<'_>> {
    let mut commands: Vec<Shown> = Vec::new();
    for line in block.lines() {
        match (line.strip_prefix("$ "), line.strip_prefix("> "), commands.last_mut()) {
            (Some(command), _, _) => {
                commands.push(Shown { command: command.to_owned(), output: Vec::new() });
            }
            (None, Some(more), Some(last)) if last.output.is_empty() => {
                last.command += "\n";
                last.command += more;
            }
            (None, _, Some(last)) => last.output.push(line.trim_end()),
            (None, _, None) => panic!("a console block opens with a command, not with `{line}`"),
        }
    }
    commands
}
