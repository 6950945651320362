//! A place inside a JSON text: `shots[2].x_mm`.

use std::fmt;

/// The way from the whole of a JSON text to one value in it; without steps it is the whole.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Place {
    steps: Vec<Step>,
}

/// One step into a JSON text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Step {
    /// The member of an object with this name.
    Member(String),
    /// The item of a list, the first being 0.
    Item(usize),
}

impl Place {
    /// The whole text.
    pub const WHOLE: Self = Self { steps: Vec::new() };

    /// The member `name` of the whole.
    pub(crate) fn of(name: &str) -> Self {
        Self::WHOLE.member(name)
    }

    /// The member `name` of what stands here.
    pub(crate) fn member(mut self, name: &str) -> Self {
        self.steps.push(Step::Member(name.to_owned()));
        self
    }

    /// The item `item` of what stands here, the first being 0.
    pub(crate) fn item(mut self, item: usize) -> Self {
        self.steps.push(Step::Item(item));
        self
    }

    /// This place seen from outside, where what it lies in is at `outer`.
    pub(crate) fn under(self, mut outer: Self) -> Self {
        outer.steps.extend(self.steps);
        outer
    }

    /// The steps from the whole to the place.
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// The shot of an end that it lies in, the first being 0.
    pub fn shot(&self) -> Option<usize> {
        match self.steps.as_slice() {
            [Step::Member(list), Step::Item(shot), ..] if list == "shots" => Some(*shot),
            _ => None,
        }
    }

    /// The item of a list that it is or lies in, the first being 0: 2 for `order[2]`.
    pub fn nth(&self) -> Option<usize> {
        self.steps.iter().find_map(|step| match step {
            Step::Item(item) => Some(*item),
            Step::Member(_) => None,
        })
    }

    /// The member it is or lies in: `flags` for `shots[2].flags[0]`; none for the whole of a shot.
    pub fn name(&self) -> Option<&str> {
        match self.steps.as_slice() {
            [_, Step::Item(_)] if self.shot().is_some() => None,
            [_, Step::Item(_), Step::Member(name), ..] | [Step::Member(name), ..] => Some(name),
            _ => None,
        }
    }
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (depth, step) in self.steps.iter().enumerate() {
            match step {
                Step::Member(name) if depth == 0 => write!(f, "{name}")?,
                Step::Member(name) => write!(f, ".{name}")?,
                Step::Item(item) => write!(f, "[{item}]")?,
            }
        }
        Ok(())
    }
}
