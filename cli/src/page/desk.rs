//! What the whole page shares: who is let in, which files there are, which rooms are open.

use std::collections::{BTreeMap, VecDeque};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};

use super::guard::Guard;
use super::ranked::RankedAll;
use super::room::Room;
use super::shelf::{NotPut, Shelf};

/// Rooms whose answers are kept: those that were asked of last. An answer with its plans takes some megabytes, and is worked out
/// anew where somebody comes back to a room.
const ANSWERS_KEPT: usize = 4;

/// What every request can come at.
#[derive(Clone)]
pub(super) struct Desk {
    pub(super) guard: Arc<Guard>,
    pub(super) shelf: Arc<Shelf>,
    /// The run over all rooms of the folder.
    pub(super) ranked: RankedAll,
    open: Arc<Mutex<Open>>,
    asked: Arc<Mutex<Instant>>,
}

/// The rooms that are open.
#[derive(Default)]
struct Open {
    rooms: BTreeMap<String, Arc<Room>>,
    /// Those whose answers are kept, by name, the last that was asked of first.
    lately: VecDeque<String>,
}

impl Open {
    /// Somebody asks of this room: answers of rooms that were not asked of lately are kept no longer.
    fn ask(&mut self, name: &str) {
        if self.lately.front().is_some_and(|last| last == name) {
            return;
        }
        self.lately.retain(|known| known != name);
        self.lately.push_front(name.to_owned());
        if self.lately.len() > ANSWERS_KEPT
            && let Some(room) = self.lately.pop_back().and_then(|old| self.rooms.get(&old))
        {
            room.forget_answer();
        }
    }
}

impl Desk {
    /// A desk with no room open.
    pub(super) fn new(guard: Guard, shelf: Shelf) -> Self {
        Self {
            guard: Arc::new(guard),
            shelf: Arc::new(shelf),
            ranked: RankedAll::default(),
            open: Arc::default(),
            asked: Arc::new(Mutex::new(Instant::now())),
        }
    }

    /// Somebody who was let in has asked for something.
    pub(super) fn ask(&self) {
        *self.asked.lock().unwrap_or_else(PoisonError::into_inner) = Instant::now();
    }

    /// For how long nobody has.
    pub(super) fn idle(&self) -> Duration {
        self.asked.lock().unwrap_or_else(PoisonError::into_inner).elapsed()
    }

    /// The room of this name, opened where it is not yet; none where the shelf has no such file.
    pub(super) fn room(&self, name: &str) -> Option<Arc<Room>> {
        let path = self.shelf.path(name)?;
        let mut open = self.open.lock().unwrap_or_else(PoisonError::into_inner);
        open.ask(name);
        let room = open.rooms.entry(name.to_owned()).or_insert_with(|| Arc::new(Room::at(name.to_owned(), path)));
        Some(Arc::clone(room))
    }

    /// Has the one room that there is worked on before anybody asks; what is amiss with its file is told then.
    pub(super) fn begin(&self) {
        if self.shelf.is_folder() {
            return;
        }
        for room in self.shelf.names().iter().filter_map(|name| self.room(name)) {
            let _ = room.opened();
        }
    }

    /// Calls a room something else; no step is taken meanwhile, and the room of the old name is open no longer.
    pub(super) fn rename(&self, old: &str, name: &str) -> Result<String, NotPut> {
        let mut open = self.open.lock().unwrap_or_else(PoisonError::into_inner);
        let renamed = || self.shelf.rename(old, name);
        let Some(room) = open.rooms.get(old).cloned() else { return renamed() };
        let name = room.between_steps(renamed)?;
        room.rest();
        open.rooms.remove(old);
        Ok(name)
    }

    /// Has every room stop its work.
    pub(super) fn close(&self) {
        for room in self.open.lock().unwrap_or_else(PoisonError::into_inner).rooms.values() {
            room.rest();
        }
    }
}
