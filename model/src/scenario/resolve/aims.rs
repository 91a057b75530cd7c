//! What plans aim at with a piece, held to the sizes that it may have.

use crate::aim::{AimedSizes, PieceAim, SizesAim};
use crate::dimension::Dimension;
use crate::length::Measure;
use crate::piece::{Piece, SizeRange};
use crate::report::{Of, Report, Taken};
use crate::scenario::document::{AimRow, PieceRow};
use crate::scenario::tolerance::TOUCHING;
use crate::unit::Rounding;
use crate::yaml::Trail;

/// What the row at `at` says that plans aim at with `piece`; `None` where it says nothing, or after a fault.
pub(super) fn aim(row: &PieceRow, piece: &Piece, at: &Trail, report: &mut Report<'_>) -> Option<PieceAim> {
    let sizes = match row.aim.as_ref()? {
        AimRow::Word(SizesAim::Usual) => return Some(PieceAim::Usual),
        AimRow::Word(SizesAim::Largest) => return Some(PieceAim::Largest),
        AimRow::Sizes(sizes) => sizes,
    };
    let given = [
        (Dimension::Width, &sizes.width),
        (Dimension::Return, &sizes.return_length),
        (Dimension::SecondReturn, &sizes.second_return),
        (Dimension::Depth, &sizes.depth),
        (Dimension::ReturnDepth, &sizes.return_depth),
    ];
    let mut aimed = AimedSizes::default();
    for (dimension, measure) in given {
        let Some(measure) = measure else { continue };
        let at = at.key("aim").key(dimension.key());
        if let Some(size) = (Read { piece, dimension, at: &at }).size(measure, report) {
            aimed = aimed.with(dimension, size);
        }
    }
    // What is as deep as it is wide has one size, whichever the file gives.
    if piece.square
        && let (Some(size), None) | (None, Some(size)) = (aimed.width, aimed.depth)
    {
        (aimed.width, aimed.depth) = (Some(size), Some(size));
    }
    Some(PieceAim::Sizes(aimed))
}

/// Reads the aim of one dimension.
struct Read<'a> {
    piece: &'a Piece,
    dimension: Dimension,
    at: &'a Trail,
}

impl Read<'_> {
    fn size(&self, measure: &Measure, report: &mut Report<'_>) -> Option<f64> {
        let (name, key) = (self.piece.name.as_str(), self.dimension.key());
        let figure = format!("aimed {}", self.dimension.words());
        let size = report.length(measure, self.at, Of { item: name, figure: &figure }, Taken::AboveZero)?;
        let Some(range) = self.piece.range(self.dimension) else {
            let message = format!("`aim` gives {name} a {key}, and its kind, {}, has none.", self.piece.kind.key());
            report.add(self.at, "key_of_another_kind", name, message, format!("Leave `{key}` out of its `aim`."));
            return None;
        };
        if range.least >= range.most {
            self.tell_fixed(size, range, report);
            return None;
        }
        if !self.piece.steps.is_empty() {
            let message =
                format!("`aim` gives {name} a {key}, and it comes in {} sizes alone.", self.piece.steps.len());
            let remedy = format!("Give it a range of its own as `{key}`, or leave `{key}` out of its `aim`.");
            report.add(self.at, "aim_beside_fixed_size", name, message, remedy);
            return None;
        }
        self.within(size, range, report)
    }

    fn tell_fixed(&self, size: f64, range: SizeRange, report: &mut Report<'_>) {
        let (name, key) = (self.piece.name.as_str(), self.dimension.key());
        let message = format!(
            "`aim` gives {name} a {key} of {}, and its {key} is fixed at {}.",
            report.words(size),
            report.words(range.most)
        );
        let remedy = format!("Leave `{key}` out of its `aim`, or give `{key}` as a range.");
        report.add(self.at, "aim_beside_fixed_size", name, message, remedy);
    }

    fn within(&self, size: f64, range: SizeRange, report: &mut Report<'_>) -> Option<f64> {
        let (end, limit) =
            if size < range.least { ("under its least", range.least) } else { ("over its most", range.most) };
        let off = (range.least - size).max(size - range.most);
        if off <= TOUCHING {
            return Some(size.max(range.least).min(range.most));
        }
        let (name, key) = (self.piece.name.as_str(), self.dimension.key());
        let message = format!(
            "`aim` gives {name} a {key} of {}, {} {end}, {}.",
            report.words(size),
            report.words(off),
            report.words(limit)
        );
        let units = report.units();
        let remedy = format!(
            "Aim between {} and {}, or widen its `{key}`.",
            units.words(range.least, Rounding::Up),
            units.words(range.most, Rounding::Down)
        );
        report.add(self.at, "aim_out_of_range", name, message, remedy);
        None
    }
}
