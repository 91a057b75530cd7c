//! What walls keep off them: kinds that must not stand there, and what is higher than a ceiling that falls.

use crate::article::the;
use crate::report::Report;
use crate::room::Room;

/// Tells of each such wall what it keeps off, so that sheets say it too.
pub(super) fn tell(room: &Room, report: &mut Report<'_>) {
    for (id, wall) in room.walls() {
        let kinds: Vec<String> =
            room.kept_free.iter().filter(|kept| kept.wall == id).map(|kept| kept.kind.words()).collect();
        if !kinds.is_empty() {
            report.notice(format!("Kept free: no {} stands at {}.", kinds.join(", no "), the(&wall.name)));
        }
        for slope in room.slopes.iter().filter(|slope| slope.wall == id) {
            report.notice(format!(
                "Toward {} the ceiling falls from {}, {} out, to {} at the wall: what is higher stands further out.",
                the(&wall.name),
                report.words(slope.from),
                report.words(slope.over),
                report.words(slope.to)
            ));
        }
    }
}
