//! What the reader of JSON says, without the place, which is shown in our own way.

/// The reason for `error`, in the reader's words.
pub(crate) fn reason(error: &serde_json::Error) -> String {
    let said = error.to_string();
    said.rsplit_once(" at line ").map_or(said.as_str(), |(reason, _)| reason).to_owned()
}
