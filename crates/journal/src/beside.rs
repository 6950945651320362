//! The names of what stands beside a file.

use std::path::{Path, PathBuf};

/// `name.kind` beside the file `name`.
pub(crate) fn beside(path: &Path, kind: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(".");
    name.push(kind);
    name.into()
}

/// `name.kind-1`, `name.kind-2` and so on.
pub(crate) fn numbered(path: &Path, kind: &str) -> impl Iterator<Item = PathBuf> {
    (1_u32..).map(move |n| beside(path, &format!("{kind}-{n}")))
}
