//! One run of the program: what goes in, and everything that must come out.

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use serde_json::Value;

/// The program as Cargo built it for these tests.
pub const PROGRAM: &str = env!("CARGO_BIN_EXE_quarterturn");

/// One run. It is strict: an output that a test does not mention must be empty, and the exit code 0.
#[must_use = "nothing runs before `check`"]
pub struct Run {
    folder: PathBuf,
    arguments: Vec<String>,
    variables: Vec<(String, String)>,
    stdin: String,
    code: i32,
    stdout: Expected,
    stderr: Expected,
}

/// What an output must be.
enum Expected {
    Exactly(String),
    Holding(Vec<String>),
    Anything,
}

impl Run {
    pub fn new(folder: &Path) -> Self {
        Self {
            folder: folder.to_owned(),
            arguments: Vec::new(),
            variables: Vec::new(),
            stdin: String::new(),
            code: 0,
            stdout: Expected::Exactly(String::new()),
            stderr: Expected::Exactly(String::new()),
        }
    }

    /// More arguments, parted at blanks.
    pub fn args(mut self, arguments: &str) -> Self {
        self.arguments.extend(arguments.split_whitespace().map(str::to_owned));
        self
    }

    /// One more argument, which may hold blanks.
    pub fn arg(mut self, argument: &str) -> Self {
        self.arguments.push(argument.to_owned());
        self
    }

    /// With this variable in the environment, which is empty otherwise.
    pub fn variable(mut self, name: &str, value: &str) -> Self {
        self.variables.push((name.to_owned(), value.to_owned()));
        self
    }

    pub fn stdin(mut self, text: &str) -> Self {
        text.clone_into(&mut self.stdin);
        self
    }

    pub fn code(mut self, code: i32) -> Self {
        self.code = code;
        self
    }

    pub fn stdout(mut self, text: &str) -> Self {
        self.stdout = Expected::Exactly(text.to_owned());
        self
    }

    pub fn stderr(mut self, text: &str) -> Self {
        self.stderr = Expected::Exactly(text.to_owned());
        self
    }

    /// The output holds this part, among others.
    pub fn stdout_has(mut self, part: &str) -> Self {
        self.stdout.also(part);
        self
    }

    /// The messages hold this part, among others.
    pub fn stderr_has(mut self, part: &str) -> Self {
        self.stderr.also(part);
        self
    }

    /// The output is the concern of another test.
    pub fn any_stdout(mut self) -> Self {
        self.stdout = Expected::Anything;
        self
    }

    /// Runs the program, holds everything against what was expected, and returns its output.
    pub fn check(self) -> String {
        let output = self.output();
        let stdout = text(output.stdout);
        let stderr = text(output.stderr);
        let told = format!("in `quarterturn {}`", self.arguments.join(" "));
        assert_eq!(output.status.code(), Some(self.code), "exit code {told}\n{stdout}{stderr}");
        self.stderr.check(&stderr, &format!("standard error {told}"));
        self.stdout.check(&stdout, &format!("standard output {told}"));
        stdout
    }

    /// Runs the program, and returns its exit code and what it said on standard error: for tables of messages.
    pub fn said(self) -> (i32, String) {
        let output = self.output();
        (output.status.code().expect("it ended by itself"), text(output.stderr))
    }

    /// Runs the program, whose output must be one JSON value, and returns that value.
    pub fn json(self) -> Value {
        let stdout = self.any_stdout().check();
        serde_json::from_str(&stdout).unwrap_or_else(|error| panic!("{error} in\n{stdout}"))
    }

    fn output(&self) -> Output {
        let mut child = Command::new(PROGRAM)
            .args(&self.arguments)
            .current_dir(&self.folder)
            // What a developer's shell says about colour, language or time must not matter.
            .env_clear()
            .env("TZ", "UTC")
            .envs(self.variables.iter().map(|(name, value)| (name, value)))
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .expect("the program starts");
        // A program that never reads closes the pipe: that is its right.
        let _ = child.stdin.take().expect("piped").write_all(self.stdin.as_bytes());
        child.wait_with_output().expect("the program ends")
    }
}

impl Expected {
    fn also(&mut self, part: &str) {
        match self {
            Self::Holding(parts) => parts.push(part.to_owned()),
            Self::Exactly(_) | Self::Anything => *self = Self::Holding(vec![part.to_owned()]),
        }
    }

    fn check(&self, text: &str, what: &str) {
        match self {
            Self::Exactly(expected) => assert!(
                text == expected,
                "{what}\n--- expected ---\n{expected}\n--- came ---\n{text}\n---"
            ),
            Self::Holding(parts) => {
                for part in parts {
                    assert!(text.contains(part), "{what} lacks `{part}`:\n{text}");
                }
            }
            Self::Anything => {}
        }
    }
}

fn text(bytes: Vec<u8>) -> String {
    String::from_utf8(bytes).expect("the program writes UTF-8")
}
