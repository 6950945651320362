//! A number of an entry that may be left out, with the name it goes by.

use crate::limit::Limit;
use crate::{Fault, What};

/// An optional number and the name of its member.
#[derive(Clone, Copy)]
pub(crate) struct Number {
    name: &'static str,
    value: Option<f64>,
}

impl Number {
    pub const fn new(name: &'static str, value: Option<f64>) -> Self {
        Self { name, value }
    }

    pub const fn value(self) -> Option<f64> {
        self.value
    }

    /// The same number, if it keeps the limit on either side of zero.
    pub fn either_way(self, limit: Limit) -> Result<Self, Fault> {
        self.kept(|value| limit.either_way(value))
    }

    /// The same number, if it is above zero and keeps the limit.
    pub fn above_zero(self, limit: Limit) -> Result<Self, Fault> {
        self.kept(|value| limit.above_zero(value))
    }

    /// Both coordinates or neither.
    pub fn with(self, y: Self) -> Result<Option<[f64; 2]>, Fault> {
        self.needs(y)?;
        y.needs(self)?;
        Ok(self.value.zip(y.value).map(|(x, y)| [x, y]))
    }

    /// That `other` stands beside it, if it stands at all.
    pub fn needs(self, other: Self) -> Result<(), Fault> {
        match (self.value, other.value) {
            (Some(_), None) => Err(Fault::at(self.name, What::Alone { needs: other.name })),
            _ => Ok(()),
        }
    }

    fn kept(self, limit: impl Fn(f64) -> Result<f64, What>) -> Result<Self, Fault> {
        let value = self.value.map(limit).transpose();
        Ok(Self { value: value.map_err(|what| Fault::at(self.name, what))?, ..self })
    }
}
