//! What a turn of a nock buys once the shaft is fletched.

/// Rough figures from flight mechanics, and said to be such.
pub const WHAT_A_TURN_BUYS: &str = "Of what turns with the mark, roughly a tenth to a third survives \
    the vanes on a light compound arrow, half or more on a heavy-fronted or a recurve arrow (rough \
    figures from mechanics): do not chase the last few millimetres.";
