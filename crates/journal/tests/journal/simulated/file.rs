//! An open file of the simulated disk.

use std::fs::TryLockError;
use std::io::{self, Read, Seek, SeekFrom, Write};

use quarterturn_journal::StoredFile;

use super::SimulatedDisk;

pub struct SimulatedFile {
    disk: SimulatedDisk,
    inode: usize,
    at: usize,
    at_end: bool,
}

impl SimulatedFile {
    pub fn new(disk: SimulatedDisk, inode: usize, at_end: bool) -> Self {
        Self { disk, inode, at: 0, at_end }
    }
}

impl Read for SimulatedFile {
    fn read(&mut self, buffer: &mut [u8]) -> io::Result<usize> {
        let mut inner = self.disk.inner();
        inner.step()?;
        let rest = inner.inodes[self.inode].seen.get(self.at..).unwrap_or_default();
        let count = rest.len().min(buffer.len());
        buffer[..count].copy_from_slice(&rest[..count]);
        inner.read += count as u64;
        self.at += count;
        Ok(count)
    }
}

impl Write for SimulatedFile {
    /// Now and then only a part is taken, as systems may; where the step fails, a part was taken too.
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let mut inner = self.disk.inner();
        let done = inner.step();
        let part = inner.chance.below(bytes.len() + 1);
        let count = match &done {
            Err(_) => part,
            Ok(()) if inner.chance.one_in(4) => part.max(1),
            Ok(()) => bytes.len(),
        };
        let inode = &mut inner.inodes[self.inode];
        if self.at_end {
            self.at = inode.seen.len();
        }
        inode.write(self.at, &bytes[..count]);
        self.at += count;
        done.map(|()| count)
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

impl Seek for SimulatedFile {
    fn seek(&mut self, to: SeekFrom) -> io::Result<u64> {
        let SeekFrom::Start(at) = to else { unimplemented!("only from the start") };
        self.at = usize::try_from(at).unwrap();
        Ok(at)
    }
}

impl StoredFile for SimulatedFile {
    fn length(&self) -> io::Result<u64> {
        Ok(self.disk.inner().inodes[self.inode].seen.len() as u64)
    }

    fn cut(&mut self, length: u64) -> io::Result<()> {
        let mut inner = self.disk.inner();
        inner.step()?;
        inner.inodes[self.inode].cut(usize::try_from(length).unwrap());
        Ok(())
    }

    fn sync(&mut self) -> io::Result<()> {
        let mut inner = self.disk.inner();
        let done = inner.step();
        let mut chance = inner.chance.clone();
        let inode = &mut inner.inodes[self.inode];
        match done {
            Ok(()) => inode.sync(),
            Err(_) => inode.fail_to_sync(&mut chance),
        }
        inner.chance = chance;
        done
    }

    fn try_lock(&self) -> Result<(), TryLockError> {
        Ok(())
    }
}
