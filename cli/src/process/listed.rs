//! Reading a list of real pieces that the command line names.

use std::fs::File;
use std::io::Read;
use std::path::Path;

use elbowroom_model::listing::{self, Asked, Form, LARGEST, Listing};

use super::failure::Failure;
use super::source::{self, Unreadable};

/// A list once read, and what the user calls it.
#[derive(Debug)]
pub(crate) struct List {
    /// The file's name as given, or `standard input`.
    pub name: String,
    /// Its pieces.
    pub listing: Listing,
}

/// Reads the list at `path`, or `stdin` where `path` is `-`; how it is written is told by its name, else by its look.
pub(crate) fn read(path: &Path, stdin: &mut dyn Read, asked: &Asked<'_>) -> Result<List, Failure> {
    let name = source::name(path);
    let bytes = if source::is_standard_input(path) { bytes_of(stdin) } else { bytes_at(path) };
    let bytes = bytes.map_err(|why| Failure::Unreadable { name: name.clone(), why })?;
    let asked = Asked { form: asked.form.or_else(|| Form::of_name(&name)), ..asked.clone() };
    match listing::read(&bytes, &asked) {
        Ok(listing) => Ok(List { name, listing }),
        Err(faults) => Err(Failure::ListFaults { name, faults }),
    }
}

/// All bytes of the list at `path`, or a few more than are read at most: its reader then says so.
pub(crate) fn bytes_at(path: &Path) -> Result<Vec<u8>, Unreadable> {
    let mut file: File = source::open(path)?;
    bytes_of(&mut file)
}

/// All bytes, or a few more than are read at most: the list's own reader then says so.
fn bytes_of(reader: &mut dyn Read) -> Result<Vec<u8>, Unreadable> {
    let mut bytes = Vec::new();
    reader.take(LARGEST as u64 + 1).read_to_end(&mut bytes)?;
    Ok(bytes)
}
