//! Any other file is written whole or not at all, and over nothing but a plain file.

use std::fs;

use quarterturn_journal::{Existing, WriteError, write_whole};

#[test]
fn a_file_is_kept_or_replaced_as_asked() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("target.svg");
    write_whole(&path, b"one", Existing::Keep).unwrap();
    let error = write_whole(&path, b"two", Existing::Keep).unwrap_err();
    assert!(matches!(error, WriteError::Exists), "{error}");
    assert_eq!(fs::read(&path).unwrap(), b"one");
    write_whole(&path, b"three", Existing::Replace).unwrap();
    assert_eq!(fs::read(&path).unwrap(), b"three");
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
}

#[test]
fn a_journal_is_never_replaced() {
    let folder = tempfile::tempdir().unwrap();
    for begins in ["{\"v\":1,\"seq\":1,", "{\"v\":7 of a later program", "{\"v\":"] {
        let path = folder.path().join("dozen.journal");
        fs::write(&path, begins).unwrap();
        let error = write_whole(&path, b"one", Existing::Replace).unwrap_err();
        assert!(matches!(error, WriteError::Journal), "{error}");
        assert_eq!(error.to_string(), "it is a journal");
        assert_eq!(fs::read_to_string(&path).unwrap(), begins);
    }
}

#[test]
fn a_folder_is_not_replaced_and_nothing_is_left_where_a_folder_is_missing() {
    let folder = tempfile::tempdir().unwrap();
    let error = write_whole(folder.path(), b"one", Existing::Replace).unwrap_err();
    assert!(matches!(error, WriteError::NotPlain), "{error}");
    let missing = folder.path().join("nowhere").join("target.svg");
    let error = write_whole(&missing, b"one", Existing::Replace).unwrap_err();
    assert!(matches!(error, WriteError::Nothing(_)), "{error}");
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 0);
}

#[cfg(unix)]
#[test]
fn what_replaces_a_file_is_for_the_same_eyes() {
    use std::os::unix::fs::{PermissionsExt, symlink};
    let folder = tempfile::tempdir().unwrap();
    let (path, link) = (folder.path().join("target.svg"), folder.path().join("link.svg"));
    fs::write(&path, "mine").unwrap();
    fs::set_permissions(&path, fs::Permissions::from_mode(0o600)).unwrap();
    write_whole(&path, b"one", Existing::Replace).unwrap();
    assert_eq!(fs::metadata(&path).unwrap().permissions().mode() & 0o777, 0o600);
    symlink(&path, &link).unwrap();
    for existing in [Existing::Keep, Existing::Replace] {
        write_whole(&link, b"two", existing).unwrap_err();
    }
    assert_eq!(fs::read(&path).unwrap(), b"one");
}
