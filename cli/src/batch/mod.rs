//! Many rooms: where they come from, who solves them, what is kept of each, and the files that are made of them.
//!
//! A room goes in as [`given::Given`] and comes out as a [`record::Record`], one line of JSON, in the order given and
//! one after another, so that any number of rooms takes the memory of a few. [`kept`] holds what is solved across runs;
//! [`finish`] makes the files that a reader opens. How those look is `render`'s; what fits is the solver's.

pub(crate) mod content;
pub(crate) mod finish;
pub(crate) mod given;
pub(crate) mod kept;
pub(crate) mod left;
mod line;
pub(crate) mod lines;
pub(crate) mod of_rooms;
pub(crate) mod record;
pub(crate) mod rooms;
pub(crate) mod worker_pool;

use std::fs;
use std::path::Path;

use crate::process::destination::UNDER_WAY;
use crate::render::batch::OfRoom;

/// Takes away what an interrupted run was writing when it ended. Only for who keeps other runs out of the folder.
pub(crate) fn sweep(folder: &Path) {
    let of_rooms = OfRoom::ALL.map(|kind| folder.join(kind.folder()));
    for folder in [folder.to_owned()].into_iter().chain(of_rooms) {
        for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
            if entry.file_name().to_string_lossy().starts_with(UNDER_WAY) {
                // What cannot be taken away is only in the way.
                let _ = fs::remove_file(entry.path());
            }
        }
    }
}
