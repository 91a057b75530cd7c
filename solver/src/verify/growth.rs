//! No size can grow by a hand's breadth while all else stays: else the largest size was not found.

use elbowroom_model::{Brief, Dimension, Piece, Point, Rule};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::checked_room::CheckedRoom;
use super::comfort::{self, Eased};
use super::resized::grown;
use super::tolerance::{SLACK, TO_SPARE};
use super::{sizes, standing, table, turned, turning, ways};
use crate::arrangement::Arrangement;
use crate::layout::{Layout, Placed};

/// How much no size may grow, mm (result format, rule 9).
const BY: f64 = 20.0;

/// Sizes that can grow by 20 mm with all else as it is (for a seat's depth its table moves along) and break no rule.
/// Sizes in steps and sizes that are tied to another are left out. Empty where every size is the largest.
#[must_use]
pub fn growth(checked: &CheckedRoom<'_>, layout: &Layout, arrangement: &Arrangement) -> Vec<Breach> {
    let growing = Growing { checked, arrangement, circle: &|layout| layout.turning_circle };
    let scene = CheckedLayout::of(checked, layout, arrangement);
    let told = |growth: Growth<'_, '_>| {
        Breach::new(Rule::Largest, Wrong::CanGrow(growth.dimension), &[growth.piece.thing()], BY)
    };
    growing.growths(layout, &scene).map(told).collect()
}

/// `layout` with every size let out that can still grow by 20 mm with all else as it is; `circle` gives a free one to turn in,
/// where one is asked for. A search leaves such a size where it was cut short, or where it holds what no rule of the result
/// asks for (a second seat beside the middle of the main one).
#[must_use]
pub fn let_out(
    checked: &CheckedRoom<'_>,
    layout: &Layout,
    arrangement: &Arrangement,
    circle: &dyn Fn(&Layout) -> Option<Point>,
) -> Layout {
    let growing = Growing { checked, arrangement, circle };
    let mut found = layout.clone();
    for _ in 0..MOST_LET_OUT {
        match growing.first_larger(&found) {
            Some(larger) => found = larger,
            None => break,
        }
    }
    found
}

/// Sizes of one layout that are let out at most: a hand's breadth at a time they would take as long as they are wide.
const MOST_LET_OUT: usize = 24;

/// A size that can grow by [`BY`].
struct Growth<'s, 'a> {
    piece: &'s InPlace<'a>,
    dimension: Dimension,
    /// How far it is below its most, mm.
    room: f64,
    /// Which of the ways of [`larger`] there is room for, the first.
    way: usize,
}

/// Layouts of an arrangement whose sizes may grow.
struct Growing<'g, 'a> {
    checked: &'g CheckedRoom<'a>,
    arrangement: &'g Arrangement,
    /// Where a circle to turn in is free.
    circle: &'g dyn Fn(&Layout) -> Option<Point>,
}

impl<'a> Growing<'_, 'a> {
    /// Every size that can grow, piece by piece.
    fn growths<'s>(&'s self, layout: &'s Layout, scene: &'s CheckedLayout<'a>) -> impl Iterator<Item = Growth<'s, 'a>> {
        let eased = Eased::of(layout, &comfort::measures(scene));
        let free = scene.pieces.iter().filter(move |piece| is_free(scene.brief, piece));
        let sizes =
            free.flat_map(|piece| piece.piece.dimensions().into_iter().map(move |dimension| (piece, dimension)));
        sizes.filter_map(move |(piece, dimension)| {
            let room = room_to_grow(piece, dimension)?;
            let ways = larger(scene, layout, piece, dimension, BY);
            let way = ways.into_iter().position(|layout| self.as_it_fits(layout, &eased).is_some())?;
            Some(Growth { piece, dimension, room, way })
        })
    }

    /// The layout with the first size let out that can be, as far as halving finds.
    fn first_larger(&self, layout: &Layout) -> Option<Layout> {
        let scene = CheckedLayout::of(self.checked, layout, self.arrangement);
        let Growth { piece, dimension, room, way } = self.growths(layout, &scene).next()?;
        let eased = Eased::of(layout, &comfort::measures(&scene));
        let larger_by = |by: f64| {
            let larger = larger(&scene, layout, piece, dimension, by).into_iter().nth(way)?;
            self.as_it_fits(larger, &eased)
        };
        let mut by = room;
        while by > BY && larger_by(by).is_none() {
            by = (by / 2.0).max(BY);
        }
        larger_by(by - TO_SPARE)
    }

    /// The layout with a circle to turn in that is free, where every rule holds; `eased`: what the layout as found falls short
    /// of.
    fn as_it_fits(&self, layout: Layout, eased: &Eased) -> Option<Layout> {
        let scene = CheckedLayout::of(self.checked, &layout, self.arrangement);
        // The cheap rules first: most growths break one of them.
        let stands = sizes::breaches(&scene, &layout).is_empty()
            && standing(&scene).is_empty()
            && table::out_of_place(&scene).is_empty()
            && turned::breaches(&scene).is_empty()
            && eased.is_kept(&comfort::measures(&scene))
            && self.stands_with_narrow_tables(&layout);
        if !stands {
            return None;
        }
        let is_free = turning::breaches(&scene, &layout).is_empty();
        let turning_circle = if is_free { layout.turning_circle } else { (self.circle)(&layout) };
        let layout = Layout { turning_circle, ..layout.clone() };
        let fits = turning::breaches(&scene, &layout).is_empty() && ways::too_narrow(&scene, &layout).is_empty();
        fits.then_some(layout)
    }

    /// Whether what stands would still be right about a dining table that is bought narrower than it is deep: its chairs are
    /// at its ends then.
    fn stands_with_narrow_tables(&self, layout: &Layout) -> bool {
        let mut narrow = layout.clone();
        let mut is_other = false;
        for placed in &mut narrow.placed {
            let piece = self.checked.brief.piece(placed.piece);
            let least =
                piece.filter(|piece| piece.kind.is_dined_at() && piece.steps.is_empty()).map(|it| it.width.least);
            if let Some(least) =
                least.filter(|least| *least < placed.size.depth && placed.size.depth <= placed.size.width)
            {
                placed.size.width = least.max(placed.size.depth - SLACK);
                is_other = true;
            }
        }
        !is_other || standing(&CheckedLayout::of(self.checked, &narrow, self.arrangement)).is_empty()
    }
}

/// A piece whose sizes are neither in steps nor tied. A dining table's are: its long side is to stay its long side.
fn is_free(brief: &Brief, piece: &InPlace<'_>) -> bool {
    let tied = |other: &Piece| other.alike == Some(piece.placed.piece);
    piece.piece.steps.is_empty()
        && !piece.piece.square
        && !piece.is_flat()
        && !piece.piece.kind.is_dined_at()
        && piece.piece.alike.is_none()
        && !brief.pieces.iter().any(tied)
}

/// How far a dimension is below its most, mm, where that is [`BY`] or more. The width of a U stays as it is planned.
fn room_to_grow(piece: &InPlace<'_>, dimension: Dimension) -> Option<f64> {
    if dimension == Dimension::Width && piece.piece.second_return.is_some() {
        return None;
    }
    let most = piece.piece.range(dimension).map(|range| range.most)?;
    let left = most - piece.placed.size.get(dimension)?;
    (left >= BY).then_some(left)
}

/// The layouts in which the piece is larger by `by` in one dimension.
fn larger(
    scene: &CheckedLayout<'_>,
    layout: &Layout,
    piece: &InPlace<'_>,
    dimension: Dimension,
    by: f64,
) -> Vec<Layout> {
    let side = table::side_of_seat(scene, piece);
    let moves = piece.piece.kind.is_seat() && dimension == Dimension::Depth;
    let tables = if moves { table::tables_of(scene, piece) } else { Vec::new() };
    let with = |larger: Placed| {
        let mut layout = layout.clone();
        for placed in &mut layout.placed {
            if tables.contains(&placed.piece) {
                placed.anchor = placed.anchor + piece.placed.facing * by;
            }
            if placed.piece == larger.piece {
                *placed = larger.clone();
            }
        }
        layout
    };
    grown(piece.placed, dimension, by, side).into_iter().map(with).collect()
}
