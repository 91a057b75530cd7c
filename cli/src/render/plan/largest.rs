//! The outlines that pieces have at the largest sizes that fit together, over the plan as it is drawn.

use elbowroom_solver::Placed;
use elbowroom_solver::answer::corners_of;

use super::figure::Figure;
use super::{Shown, pieces};
use crate::drawing::{Area, At, Dash, Fill, Label, Mark, Path, Pen, clipped, hand};
use crate::words::plan as words;

/// Outlines that lie nearer to each other than this are one, mm of the room.
const SAME: f64 = 5.0;
/// From an outline to the words that tell of it, mm.
const OFF: f64 = 1.8;

/// Every outline that is another than the piece as drawn.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("largest"));
    let pen = Pen::ink(hand::OUTLINES).broken(Dash::Dashed);
    for placed in larger(&figure.shown) {
        for part in corners_of(placed) {
            let ring = figure.frame.all(&part);
            figure.labels.mind_ring(&ring);
            figure.put(Path::ring(ring, Some(pen), Fill::None));
        }
    }
}

/// Whose each is, and how large.
pub(super) fn name(figure: &mut Figure<'_>) {
    let shown = figure.shown;
    for placed in larger(&shown) {
        let Some(piece) = shown.brief().piece(placed.piece) else { continue };
        let text = words::largest(&clipped(&piece.name), &pieces::size(&shown, piece, placed.size));
        let corners = corners_of(placed).into_iter().flatten().map(|corner| figure.frame.at(corner));
        let all = Area::of(corners);
        let label = Label::new(all.at, Vec::new(), hand::FIGURES, text);
        figure.labels.place(&Label { places: round(&all, &label), ..label });
    }
}

/// The pieces that may be larger than they are drawn, or then lie elsewhere.
fn larger<'a>(shown: &Shown<'a>) -> Vec<&'a Placed> {
    let Shown::Option { option, .. } = *shown else { return Vec::new() };
    let is_other = |placed: &&Placed| {
        option.layout.of(placed.piece).is_none_or(|drawn| {
            let [one, other] = [corners_of(drawn), corners_of(placed)].map(|parts| parts.concat());
            one.len() != other.len() || one.iter().zip(&other).any(|(one, other)| (*one - *other).norm() > SAME)
        })
    };
    option.largest.layout.placed.iter().filter(is_other).collect()
}

/// Places along each side of an outline, outside it before within.
fn round(all: &Area, label: &Label) -> Vec<At> {
    let (width, height) = label.size();
    let (across, down) = ((all.width - width) / 2.0, (all.height - height) / 2.0);
    let beyond = [OFF + height / 2.0, -OFF - height / 2.0];
    let level = beyond.into_iter().flat_map(|off| {
        [0.0, -across, across]
            .into_iter()
            .flat_map(move |x| [(x, -all.height / 2.0 - off), (x, all.height / 2.0 + off)])
    });
    let beside = [OFF + width / 2.0, -OFF - width / 2.0].into_iter().flat_map(|off| {
        [0.0, -down, down].into_iter().flat_map(move |y| [(-all.width / 2.0 - off, y), (all.width / 2.0 + off, y)])
    });
    level.chain(beside).map(|(x, y)| all.middle() + At::new(x, y)).collect()
}
