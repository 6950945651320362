//! One file of the simulated disk: what is seen of it, and what would be left after a power cut.

use super::Chance;

/// What a disk writes in one piece.
const SECTOR: usize = 512;

#[derive(Clone, Debug, Default)]
pub struct Inode {
    /// What programs see.
    pub seen: Vec<u8>,
    /// What is on the disk for certain.
    synced: Vec<u8>,
    /// What was done since, in order.
    pending: Vec<Change>,
}

#[derive(Clone, Debug)]
enum Change {
    Written { at: usize, bytes: Vec<u8> },
    Cut { length: usize },
}

impl Inode {
    pub fn write(&mut self, at: usize, bytes: &[u8]) {
        self.change(Change::Written { at, bytes: bytes.to_vec() });
    }

    pub fn cut(&mut self, length: usize) {
        self.change(Change::Cut { length });
    }

    fn change(&mut self, change: Change) {
        change.made_in(&mut self.seen);
        self.pending.push(change);
    }

    pub fn sync(&mut self) {
        self.synced.clone_from(&self.seen);
        self.pending.clear();
    }

    /// Some of what was pending reached the disk, torn; the rest never will, though programs go on seeing it.
    pub fn fail_to_sync(&mut self, chance: &mut Chance) {
        let synced = self.after_power_cut(chance).seen;
        self.synced = synced;
        self.pending.clear();
    }

    /// What is left: of each change since the last sync all, nothing or a part, whatever became of those before it.
    pub fn after_power_cut(&self, chance: &mut Chance) -> Self {
        let mut left = self.synced.clone();
        for change in &self.pending {
            match change {
                _ if chance.one_in(3) => {}
                Change::Cut { .. } => change.made_in(&mut left),
                Change::Written { at, bytes } => torn(&mut left, *at, bytes, chance),
            }
        }
        Self { seen: left.clone(), synced: left, pending: Vec::new() }
    }
}

impl Change {
    fn made_in(&self, bytes: &mut Vec<u8>) {
        match self {
            Self::Written { at, bytes: written } => put(bytes, *at, written),
            Self::Cut { length } => bytes.resize(*length, 0),
        }
    }
}

/// Writes all, a part that ends anywhere, or only some sectors; what is passed over is zeros.
fn torn(file: &mut Vec<u8>, at: usize, bytes: &[u8], chance: &mut Chance) {
    match chance.below(3) {
        0 => put(file, at, bytes),
        1 => put(file, at, &bytes[..chance.below(bytes.len() + 1)]),
        _ => {
            let mut start = 0;
            while start < bytes.len() {
                let border = (at + start) / SECTOR * SECTOR + SECTOR - at;
                let end = border.min(bytes.len());
                if !chance.one_in(2) {
                    put(file, at + start, &bytes[start..end]);
                }
                start = end;
            }
            // The length may have been kept though the bytes were not.
            if chance.one_in(2) && file.len() < at + bytes.len() {
                file.resize(at + bytes.len(), 0);
            }
        }
    }
}

fn put(file: &mut Vec<u8>, at: usize, bytes: &[u8]) {
    let end = at + bytes.len();
    if file.len() < end {
        file.resize(end, 0);
    }
    file[at..end].copy_from_slice(bytes);
}
