//! A remedy in words.

use elbowroom_model::article::{a, capital, the};
use elbowroom_model::{Brief, Dimension, Only, Rounding};
use elbowroom_solver::answer::Answer;
use elbowroom_solver::refusal::{Change, Lever, Remedy};

/// What is to be changed and what that makes possible: `A sofa no deeper than 86 cm makes 2 options possible.` Where it is
/// not known that nothing fits as asked, what was tried and how many fit then.
pub(crate) fn remedy(brief: &Brief, remedy: &Remedy, nothing_fits: bool) -> String {
    let count = if remedy.options == 1 { "1 option".to_owned() } else { format!("{} options", remedy.options) };
    if let [Change { lever: Lever::GetsIn(piece, dimension), to, .. }] = remedy.changes[..] {
        let size = brief.units.words(to, Rounding::Down);
        let (name, dimension) = (brief.piece_name(piece), dimension.words());
        return format!("{name} gets in with a {dimension} of {size} or less, which makes {count} possible.");
    }
    if let [Change { lever: Lever::Wall(id), from, to }] = remedy.changes[..] {
        let (wall, short) = (capital(&the(brief.room.wall_name(id))), brief.units.words(to - from, Rounding::Up));
        let verb = if remedy.options == 1 { "fits" } else { "fit" };
        return format!("{wall} is {short} too short: with that more, {count} {verb}.");
    }
    let parts: Vec<String> = remedy.changes.iter().map(|change| part(brief, *change)).collect();
    let parts_told = parts.join(" and ");
    if !nothing_fits {
        let fit = if remedy.options == 1 { "fits" } else { "fit" };
        return format!("Tried, and {count} {fit}: {parts_told}.");
    }
    let verb = if parts.len() > 1 { "together make" } else { "makes" };
    capital(&format!("{parts_told} {verb} {count} possible."))
}

/// What would help, or helped where it was tried: the remedies of an answer.
pub(crate) fn remedies(answer: &Answer) -> Vec<String> {
    let told = |one: &Remedy| remedy(&answer.brief, one, answer.undecided() == 0);
    // Nobody moves a wall: what asks for that comes last.
    let asks_for_a_wall = |one: &&Remedy| one.changes.iter().any(|change| matches!(change.lever, Lever::Wall(_)));
    let (last, first): (Vec<&Remedy>, Vec<&Remedy>) = answer.remedies.iter().partition(asks_for_a_wall);
    first.into_iter().chain(last).map(told).collect()
}

/// What a change is about: `sofa.depth`, a piece that is left out, the kind of one that hangs, a clearance's key, a wall.
pub(crate) fn lever(brief: &Brief, lever: Lever) -> String {
    match lever {
        Lever::Least(piece, dimension) | Lever::Raised(piece, dimension) | Lever::GetsIn(piece, dimension) => {
            format!("{}.{}", brief.piece_name(piece), dimension.key())
        }
        Lever::LeaveOut(piece) => brief.piece_name(piece).to_owned(),
        Lever::Hang(piece, _) => format!("{}.kind", brief.piece_name(piece)),
        Lever::Clearance(rule) => rule.key().to_owned(),
        Lever::Wall(id) => brief.room.wall_name(id).to_owned(),
        Lever::Only(line) => format!("only.{}", decision(brief, &line)),
        Lever::Exclude(line) => format!("exclude.{}", decision(brief, &line)),
    }
}

/// A decision as files name it.
fn decision<'a>(brief: &'a Brief, only: &Only) -> &'a str {
    match only {
        Only::SecondSeat(Some(seat), _) => brief.piece_name(*seat),
        other => other.choice(),
    }
}

fn part(brief: &Brief, Change { lever, from, to }: Change) -> String {
    let units = brief.units;
    match lever {
        Lever::Least(id, dimension) | Lever::GetsIn(id, dimension) => {
            let name = brief.piece_name(id);
            let most = units.words(to, Rounding::Down);
            match dimension {
                Dimension::Width => format!("{} no wider than {most}", a(name)),
                Dimension::Depth => format!("{} no deeper than {most}", a(name)),
                Dimension::Return => format!("a return of {} no longer than {most}", the(name)),
                Dimension::SecondReturn => format!("a second return of {} no longer than {most}", the(name)),
                Dimension::ReturnDepth => format!("a return of {} no deeper than {most}", the(name)),
            }
        }
        Lever::Raised(id, dimension) => {
            let (name, least) = (brief.piece_name(id), units.words(to, Rounding::Up));
            match dimension {
                Dimension::Width => format!("{} no narrower than {least}", a(name)),
                Dimension::Depth => format!("{} no shallower than {least}", a(name)),
                Dimension::Return => format!("a return of {} no shorter than {least}", the(name)),
                Dimension::SecondReturn => format!("a second return of {} no shorter than {least}", the(name)),
                Dimension::ReturnDepth => format!("a return of {} no shallower than {least}", the(name)),
            }
        }
        Lever::LeaveOut(id) => format!("leaving out {}", the(brief.piece_name(id))),
        Lever::Only(line) => format!("leaving `{}` out of `only`", decision(brief, &line)),
        Lever::Exclude(line) => format!("leaving `{}` out of `exclude`", decision(brief, &line)),
        Lever::Hang(id, wall) => {
            let (wall, piece) = (the(brief.room.wall_name(wall)), the(brief.piece_name(id)));
            format!("a screen hung on {wall} instead of {piece}")
        }
        Lever::Clearance(rule) if units.rounded(to, Rounding::Down) <= 0.0 => format!("`{}: 0`", rule.key()),
        Lever::Clearance(rule) => {
            format!("a {} of {}", rule.key().replace('_', " "), units.words(to, Rounding::Down))
        }
        Lever::Wall(id) => {
            let name = brief.room.wall_name(id);
            format!("{} {} longer", the(name), units.words(to - from, Rounding::Up))
        }
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Clearance, Dimension, PieceId, WallId, scenario};

    use super::remedy;
    use elbowroom_solver::refusal::{Change, Lever, Remedy};

    #[test]
    fn what_was_tried_is_told_as_that_where_nobody_knows() {
        let text = "units: cm\nwalls: [{ length: 500 }, { length: 400 }, { length: 500 }, { length: 400 }]\npieces:\n  \
                    - { kind: sofa, depth: 90..100 }\n  - { kind: armchair }\n";
        let brief = scenario::read(text, None).unwrap();
        let change = |lever, from, to| Change { lever, from, to };
        let depth = change(Lever::Least(PieceId(0), Dimension::Depth), 900.0, 860.0);
        let told = |changes: &[Change], options, nothing_fits| {
            remedy(&brief, &Remedy { changes: changes.to_vec(), options }, nothing_fits)
        };
        assert_eq!(told(&[depth], 2, true), "A sofa no deeper than 86 cm makes 2 options possible.");
        assert_eq!(told(&[depth], 2, false), "Tried, and 2 options fit: a sofa no deeper than 86 cm.");
        let pair = [change(Lever::LeaveOut(PieceId(1)), 1.0, 0.0), change(Lever::Wall(WallId(0)), 5000.0, 5230.0)];
        let both = "Leaving out the armchair and wall 1 23 cm longer together make 1 option possible.";
        assert_eq!(told(&pair, 1, true), both);
        let passage = [change(Lever::Clearance(Clearance::Passage), 609.6, 500.0)];
        assert_eq!(told(&passage, 1, false), "Tried, and 1 option fits: a passage of 50 cm.");
        let at_wall = [change(Lever::Clearance(Clearance::MediaOffWall), 50.0, 0.0)];
        assert_eq!(told(&at_wall, 2, true), "`media_off_wall: 0` makes 2 options possible.");
        let wall = [change(Lever::Wall(WallId(2)), 5000.0, 5170.0)];
        assert_eq!(told(&wall, 3, true), "Wall 3 is 17 cm too short: with that more, 3 options fit.");
        let hung = [change(Lever::Hang(PieceId(1), WallId(2)), 1.0, 0.0)];
        assert_eq!(told(&hung, 12, true), "A screen hung on wall 3 instead of the armchair makes 12 options possible.");
        let in_by_the_way = [change(Lever::GetsIn(PieceId(0), Dimension::Width), 1500.0, 1400.0)];
        assert_eq!(
            told(&in_by_the_way, 3, true),
            "sofa gets in with a width of 140 cm or less, which makes 3 options possible."
        );
    }
}
