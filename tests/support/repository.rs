//! The files of this repository, as a clone holds them.

use std::fs;
use std::path::{Path, PathBuf};

/// A text file and where it stands, from the root, with `/` between folders.
pub struct Source {
    pub path: String,
    pub text: String,
}

impl Source {
    pub fn name(&self) -> &str {
        self.path.rsplit('/').next().unwrap_or(&self.path)
    }

    pub fn ends_in(&self, extension: &str) -> bool {
        Path::new(&self.path).extension().is_some_and(|end| end == extension)
    }
}

/// The root of the workspace.
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").canonicalize().expect("the root is there")
}

/// The text of one file, named from the root.
pub fn read(path: &str) -> String {
    fs::read_to_string(root().join(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// Every text file below `folder`, named from the root ("" for all), sorted.
pub fn sources(folder: &str) -> Vec<Source> {
    let root = root();
    let mut files = Vec::new();
    walk(&root.join(folder), &mut files);
    files.sort();
    let source = |file: &PathBuf| {
        let path = file.strip_prefix(&root).ok()?.to_str()?.replace('\\', "/");
        Some(Source { path, text: fs::read_to_string(file).ok()? })
    };
    files.iter().filter_map(source).collect()
}

fn walk(folder: &Path, files: &mut Vec<PathBuf>) {
    for entry in
        fs::read_dir(folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()))
    {
        let path = entry.expect("the folder can be read").path();
        let made_or_git = ["target", ".git"].iter().any(|name| path.ends_with(name));
        match path.is_dir() {
            true if made_or_git => {}
            true => walk(&path, files),
            false => files.push(path),
        }
    }
}
