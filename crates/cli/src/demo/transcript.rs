//! What the demo prints: the screens that a person would see, with what is left out named.

/// Screens one below the other.
#[derive(Default)]
pub struct Transcript {
    blocks: Vec<String>,
    left_out: usize,
}

impl Transcript {
    /// A command as it is typed, and its screen.
    pub fn screen(&mut self, command: &str, screen: &str) {
        self.say_what_is_left_out();
        self.blocks.push(format!("$ {command}\n{}", screen.trim_end()));
    }

    /// An end that is not shown.
    pub fn leave_out_an_end(&mut self) {
        self.left_out += 1;
    }

    /// The transcript with a last word.
    pub fn ending(mut self, last: &str) -> String {
        self.say_what_is_left_out();
        self.blocks.push(last.to_owned());
        self.blocks.join("\n\n")
    }

    fn say_what_is_left_out(&mut self) {
        let said = match std::mem::take(&mut self.left_out) {
            0 => return,
            1 => "  [one more end, shot and entered in the same way]".to_owned(),
            ends => format!("  [{ends} more ends, shot and entered in the same way]"),
        };
        self.blocks.push(said);
    }
}
