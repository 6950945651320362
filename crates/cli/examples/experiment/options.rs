//! What can be asked of the experiment.

use std::path::PathBuf;

use clap::Parser;
use clap::builder::PossibleValuesParser;
use quarterturn_tuning::{Protocol, World};

use crate::drawn_once;
use crate::named::{PROTOCOLS, WORLDS};

/// Plays invented dozens and prints Markdown tables; how fast it went is said on standard error.
#[derive(Debug, Parser)]
pub struct Options {
    /// How many dozens in each world
    #[arg(long, default_value_t = 400)]
    pub dozens: usize,

    /// Another seed plays other archers
    #[arg(long, default_value_t = 1)]
    pub seed: u64,

    /// Only these worlds
    #[arg(long, value_delimiter = ',', value_parser = PossibleValuesParser::new(WORLDS.map(|(name, _)| name)))]
    worlds: Vec<String>,

    /// Only these protocols
    #[arg(long, value_delimiter = ',', value_parser = PossibleValuesParser::new(PROTOCOLS.map(|(name, _)| name)))]
    protocols: Vec<String>,

    /// One world of its own instead, whose sizes are drawn once from this seed and reported as they come
    #[arg(long, value_name = "SEED", conflicts_with = "worlds")]
    drawn_once: Option<u64>,

    /// Write the figures to this file as JSON too
    #[arg(long, value_name = "FILE")]
    pub json: Option<PathBuf>,
}

impl Options {
    /// The worlds to play.
    pub fn worlds(&self) -> Vec<(&'static str, World)> {
        match self.drawn_once {
            Some(seed) => vec![("drawn once", drawn_once::world(seed))],
            None => chosen(&WORLDS, &self.worlds),
        }
    }

    /// The protocols to play them by.
    pub fn protocols(&self) -> Vec<(&'static str, Protocol)> {
        chosen(&PROTOCOLS, &self.protocols)
    }
}

/// Those of `all` that are named, or all where none is.
fn chosen<T: Copy>(all: &[(&'static str, T)], named: &[String]) -> Vec<(&'static str, T)> {
    let wanted = |(name, _): &&(&str, T)| named.is_empty() || named.iter().any(|one| one == name);
    all.iter().filter(wanted).copied().collect()
}
