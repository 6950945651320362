//! The names of the simulated disk, its misfortunes, and its power cuts.

use std::cell::{RefCell, RefMut};
use std::collections::BTreeMap;
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};
use std::rc::Rc;

use quarterturn_journal::{Existing, Storage};

use super::Chance;
use super::file::SimulatedFile;
use super::inode::Inode;

/// What happens at one step of what a program asks of the disk.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Misfortune {
    /// The power goes: this step may be done in part, and nothing is done any more.
    PowerCut,
    /// The step fails with this error, a write after a part of its bytes.
    Fails(ErrorKind),
    /// As `Fails`, and every later step that writes fails too.
    FailsFromThenOn(ErrorKind),
}

#[derive(Clone, Debug, Default)]
pub struct SimulatedDisk {
    inner: Rc<RefCell<Inner>>,
}

#[derive(Clone, Debug)]
pub struct Inner {
    pub inodes: Vec<Inode>,
    pub chance: Chance,
    pub read: u64,
    seen: BTreeMap<PathBuf, usize>,
    synced: BTreeMap<PathBuf, usize>,
    pending: Vec<Renamed>,
    steps: usize,
    planned: Option<(usize, Misfortune)>,
    off: bool,
}

/// A name that was given to another file, or to none.
#[derive(Clone, Debug)]
struct Renamed {
    from: Option<PathBuf>,
    to: PathBuf,
    inode: Option<usize>,
}

impl Default for Inner {
    fn default() -> Self {
        Self {
            inodes: Vec::new(),
            chance: Chance::of(0),
            read: 0,
            seen: BTreeMap::new(),
            synced: BTreeMap::new(),
            pending: Vec::new(),
            steps: 0,
            planned: None,
            off: false,
        }
    }
}

impl SimulatedDisk {
    /// An empty disk.
    pub fn new(seed: u64) -> Self {
        let disk = Self::default();
        disk.inner().chance = Chance::of(seed);
        disk
    }

    /// Plans a misfortune for the step `step` from now, the first being 0.
    pub fn plan(&self, step: usize, misfortune: Misfortune) {
        let mut inner = self.inner();
        inner.planned = Some((inner.steps + step, misfortune));
    }

    /// How many steps there were.
    pub fn steps(&self) -> usize {
        self.inner().steps
    }

    /// How many bytes were read.
    pub fn read(&self) -> u64 {
        self.inner().read
    }

    /// What a program finds when the power is back.
    pub fn after_power_cut(&self, seed: u64) -> Self {
        let mut chance = Chance::of(seed);
        let inner = self.inner();
        let mut names = inner.synced.clone();
        for renamed in &inner.pending {
            if !chance.one_in(3) {
                renamed.made_in(&mut names);
            }
        }
        let left = |inode: &Inode| inode.after_power_cut(&mut chance);
        let inodes = inner.inodes.iter().map(left).collect();
        let found =
            Inner { inodes, seen: names.clone(), synced: names, chance, ..Inner::default() };
        Self { inner: Rc::new(RefCell::new(found)) }
    }

    /// The bytes of a file, where it is there.
    pub fn bytes(&self, path: &Path) -> Option<Vec<u8>> {
        let inner = self.inner();
        inner.seen.get(path).map(|inode| inner.inodes[*inode].seen.clone())
    }

    /// Puts a file there, synced.
    pub fn put(&self, path: &Path, bytes: &[u8]) {
        let mut inner = self.inner();
        let mut inode = Inode::default();
        inode.write(0, bytes);
        inode.sync();
        let number = inner.inodes.len();
        inner.inodes.push(inode);
        inner.seen.insert(path.to_owned(), number);
        inner.synced.insert(path.to_owned(), number);
    }

    pub fn names(&self) -> Vec<PathBuf> {
        self.inner().seen.keys().cloned().collect()
    }

    pub fn inner(&self) -> RefMut<'_, Inner> {
        self.inner.borrow_mut()
    }

    fn opened(&self, path: &Path, at_end: bool) -> io::Result<SimulatedFile> {
        self.inner().step()?;
        let inode = self.inner().seen.get(path).copied().ok_or(ErrorKind::NotFound)?;
        Ok(SimulatedFile::new(self.clone(), inode, at_end))
    }

    fn renamed(&self, from: Option<&Path>, to: &Path, inode: Option<usize>) {
        let renamed = Renamed { from: from.map(Path::to_owned), to: to.to_owned(), inode };
        let mut inner = self.inner();
        renamed.made_in(&mut inner.seen);
        inner.pending.push(renamed);
    }
}

impl Inner {
    /// One more step; its misfortune, if it has one.
    pub fn step(&mut self) -> io::Result<()> {
        let step = self.steps;
        self.steps += 1;
        match self.planned {
            _ if self.off => Err(io::Error::other("the power is off")),
            Some((planned, Misfortune::PowerCut)) if planned == step => {
                self.off = true;
                Err(io::Error::other("the power is off"))
            }
            Some((planned, Misfortune::Fails(kind))) if planned == step => Err(kind.into()),
            Some((planned, Misfortune::FailsFromThenOn(kind))) if planned <= step => {
                Err(kind.into())
            }
            _ => Ok(()),
        }
    }
}

impl Renamed {
    fn made_in(&self, names: &mut BTreeMap<PathBuf, usize>) {
        if let Some(from) = &self.from {
            names.remove(from);
        }
        match self.inode {
            Some(inode) => names.insert(self.to.clone(), inode),
            None => names.remove(&self.to),
        };
    }
}

impl Storage for SimulatedDisk {
    type File = SimulatedFile;

    fn resolve(&self, path: &Path) -> io::Result<PathBuf> {
        Ok(path.to_owned())
    }

    fn open(&self, path: &Path) -> io::Result<SimulatedFile> {
        self.opened(path, false)
    }

    fn open_to_append(&self, path: &Path) -> io::Result<SimulatedFile> {
        self.opened(path, true)
    }

    fn open_lock(&self, path: &Path) -> io::Result<SimulatedFile> {
        if self.inner().seen.contains_key(path) {
            return self.opened(path, false);
        }
        self.create(path)
    }

    fn create(&self, path: &Path) -> io::Result<SimulatedFile> {
        self.inner().step()?;
        if self.inner().seen.contains_key(path) {
            return Err(ErrorKind::AlreadyExists.into());
        }
        let inode = self.inner().inodes.len();
        self.inner().inodes.push(Inode::default());
        self.renamed(None, path, Some(inode));
        Ok(SimulatedFile::new(self.clone(), inode, false))
    }

    fn rename(&self, from: &Path, to: &Path, existing: Existing) -> io::Result<()> {
        self.inner().step()?;
        if existing == Existing::Keep && self.inner().seen.contains_key(to) {
            return Err(ErrorKind::AlreadyExists.into());
        }
        let inode = self.inner().seen.get(from).copied().ok_or(ErrorKind::NotFound)?;
        self.renamed(Some(from), to, Some(inode));
        Ok(())
    }

    fn remove(&self, path: &Path) -> io::Result<()> {
        self.inner().step()?;
        self.renamed(None, path, None);
        Ok(())
    }

    fn sync_folder(&self, _path: &Path) -> io::Result<()> {
        self.inner().step()?;
        let mut inner = self.inner();
        inner.synced = inner.seen.clone();
        inner.pending.clear();
        Ok(())
    }
}
