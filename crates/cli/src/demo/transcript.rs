//! What the demo prints: the screens that a person would see, with what is left out named.

/// Screens one below the other.
#[derive(Default)]
pub struct Transcript {
    text: String,
    left_out: usize,
}

impl Transcript {
    /// A command as it is typed, and its screen.
    pub fn screen(&mut self, command: &str, screen: &str) {
        self.say_what_is_left_out();
        self.text += &format!("$ {command}\n{}\n\n", screen.trim_end());
    }

    /// An end that is not shown.
    pub fn leave_out_an_end(&mut self) {
        self.left_out += 1;
    }

    /// The transcript, and a last word.
    pub fn ending(mut self, last: &str) -> String {
        self.say_what_is_left_out();
        self.text + last
    }

    fn say_what_is_left_out(&mut self) {
        match std::mem::take(&mut self.left_out) {
            0 => {}
            1 => self.text += "  [one more end, shot and entered in the same way]\n\n",
            ends => self.text += &format!("  [{ends} more ends, shot and entered in the same way]\n\n"),
        }
    }
}
