//! In which order an arrow is fletched.

use crate::args::VaneAngle;
use crate::fletching::VanesAsked;

/// The order of the work; common practice of the trade.
const ORDER_OF_GLUING: &str = "Clean the shaft and let it dry, but carry the ink mark over first if the solvent or \
    a wrap takes it. Glue the cock vane, then the others clockwise, each pressed until it holds; put a drop at both \
    ends of every vane; then let all of it cure.";

/// The order, with what was said of the vanes and the wrap.
pub fn how_to_fletch(asked: VanesAsked) -> String {
    let mut said = vec![ORDER_OF_GLUING.to_owned()];
    said.extend(asked.angle.map(|angle| way(angle).to_owned()));
    said.extend(asked.wrap.map(|wrap| {
        format!(
            "The wrap goes on before the vanes, from the end of the shaft {:.0} mm forward, its seam under a vane and \
             the mark carried over on it.",
            wrap.mm()
        )
    }));
    said.join(" ")
}

/// Which way the vanes stand.
const fn way(angle: VaneAngle) -> &'static str {
    match angle {
        VaneAngle::Right => {
            "Vane angle to the right, on every vane of the set: the front of each vane stands right of its back, seen \
             from behind with the vane up."
        }
        VaneAngle::Left => {
            "Vane angle to the left, on every vane of the set: the front of each vane stands left of its back, seen \
             from behind with the vane up."
        }
        VaneAngle::Straight => "Vanes straight along the shaft, on every arrow of the set.",
    }
}
