//! An id that follows from what an entry says.

use quarterturn_journal::{Entry, RecordId};

/// The id of the `ordinal`-th entry of a file that says the same as `entry`: the same file gives the same ids.
///
/// # Source
/// The hash FNV-1a of 64 bits (G. Fowler, L. C. Noll, K.-P. Vo, The FNV non-cryptographic hash algorithm, RFC 9923),
/// over the JSON of the entry and the ordinal: it must be the same on every machine and in every later version.
pub(crate) fn content_id(entry: &Entry, ordinal: usize) -> Option<RecordId> {
    let json = serde_json::to_string(entry).ok()?;
    let text = format!("{} {json} {ordinal}", entry.kind());
    let hash = text.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
    });
    Some(RecordId::from_bits(hash))
}
