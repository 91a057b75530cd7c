//! A remedy as a sentence.

use elbowroom_model::article::{a, capital, the};
use elbowroom_model::{Brief, Dimension, Rounding};

use super::remedy::Lever;

/// What is to be changed and what that makes possible: `A sofa no deeper than 86 cm makes 2 options possible.`
pub(super) fn sentence(brief: &Brief, changes: &[(Lever, f64)], options: usize) -> String {
    let parts: Vec<String> = changes.iter().map(|(lever, to)| part(brief, *lever, *to)).collect();
    let verb = if parts.len() > 1 { "together make" } else { "makes" };
    let count = if options == 1 { "1 option".to_owned() } else { format!("{options} options") };
    capital(&format!("{} {verb} {count} possible.", parts.join(" and ")))
}

fn part(brief: &Brief, lever: Lever, to: f64) -> String {
    let units = brief.units;
    match lever {
        Lever::Least(id, dimension) => {
            let name = brief.piece_name(id);
            let most = units.words(to, Rounding::Down);
            match dimension {
                Dimension::Width => format!("{} no wider than {most}", a(name)),
                Dimension::Depth => format!("{} no deeper than {most}", a(name)),
                Dimension::Return => format!("a return of {} no longer than {most}", the(name)),
            }
        }
        Lever::LeaveOut(id) => {
            format!("leaving out {}", the(brief.piece_name(id)))
        }
        Lever::Clearance(rule) => {
            format!("a {} of {}", rule.key().replace('_', " "), units.words(to, Rounding::Down))
        }
        Lever::Wall(id) => {
            let (name, now) = brief.room.wall(id).map(|wall| (wall.name.as_str(), wall.length())).unwrap_or_default();
            format!("{} {} longer", the(name), units.words(to - now, Rounding::Up))
        }
    }
}
