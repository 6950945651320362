//! What is said of the vanes that are to be glued on.

use clap::Args;
use clap::ValueEnum;

use super::whole_number::within;

/// The vanes, the rest they must clear, and the wrap under them.
#[derive(Args, Debug)]
pub struct VanesArgs {
    /// Where the cock vane is to stand on the string, by the clock, seen from behind [default: that of the rest]
    #[arg(long, value_name = "HOUR", conflicts_with = "rest",
          value_parser = within(1_u8..=12))]
    pub cock: Option<u8>,

    /// The rest that the vanes must clear
    #[arg(long, value_enum, default_value_t = Rest::DropAway)]
    pub rest: Rest,

    /// How many vanes, 3 or 4
    #[arg(long, value_name = "COUNT", default_value_t = 3,
          value_parser = within(3_u8..=4))]
    pub vanes: u8,

    /// Which way the vanes turn the arrow, seen from behind; the same on all of them
    #[arg(long, value_enum, value_name = "WAY")]
    pub vane_angle: Option<VaneAngle>,

    /// How long the wrap under the vanes is, from the end of the shaft; left out: none
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub wrap: Option<String>,
}

/// A rest by what the vanes must clear.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Rest {
    /// It falls away: cock vane up
    DropAway,
    /// It holds the shaft all round: cock vane up
    FullCapture,
    /// A shelf or a side rest of a right-handed bow: cock vane away from it, at 9
    SideRight,
    /// The same of a left-handed bow, at 3
    SideLeft,
}

/// Which way vanes turn an arrow.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum VaneAngle {
    /// Clockwise
    Right,
    /// Counter-clockwise
    Left,
    /// Not at all
    Straight,
}

impl Rest {
    /// Where the cock vane stands; common practice.
    pub const fn cock(self) -> u8 {
        match self {
            Self::DropAway | Self::FullCapture => 12,
            Self::SideRight => 9,
            Self::SideLeft => 3,
        }
    }
}

impl VaneAngle {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Right => "right",
            Self::Left => "left",
            Self::Straight => "straight",
        }
    }
}
