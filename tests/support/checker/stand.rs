//! A piece of a result as it stands.

use elbowroom_model::{Brief, Piece, PieceKind};
use serde_json::Value;

use super::plane::{P, Polygon, add, counter_clockwise, dot, extent, left, length, minus};

/// A piece, and what it takes to lay it out again with other sizes.
#[derive(Clone)]
pub(crate) struct Stand<'a> {
    pub(crate) piece: &'a Piece,
    pub(crate) at_wall: Option<String>,
    pub(crate) facing: P,
    /// Middle of the back; of a corner sofa the outer corner.
    pub(crate) anchor: P,
    /// Of a corner sofa: from the corner along the main run.
    pub(crate) away: Option<P>,
    pub(crate) width: f64,
    pub(crate) run: Option<f64>,
    /// Of a U: the return at the other end.
    pub(crate) second: Option<f64>,
    pub(crate) depth: f64,
    /// How deep the first return is, where that is told by itself.
    pub(crate) own: Option<f64>,
}

impl<'a> Stand<'a> {
    /// Reads a piece of a result; the complaint where its fields do not fit together.
    pub(crate) fn read(brief: &'a Brief, value: &Value) -> Result<Self, String> {
        let name = value["name"].as_str().ok_or("a piece has no name")?;
        let fault = |what: &str| format!("{name}: {what}");
        let piece = brief.pieces.iter().find(|piece| piece.name == name).ok_or_else(|| fault("was not asked for"))?;
        if value["kind"].as_str() != Some(piece.kind.key()) {
            return Err(fault("has another kind than asked"));
        }
        let number = |value: &Value, what: &str| value.as_f64().ok_or_else(|| fault(what));
        let degrees = number(&value["facing"], "has no facing")?;
        let facing = [degrees.to_radians().cos(), degrees.to_radians().sin()];
        let (width, depth) =
            (number(&value["size"]["width"], "has no width")?, number(&value["size"]["depth"], "has no depth")?);
        let [run, second, own] = ["return", "second_return", "return_depth"].map(|it| value["size"][it].as_f64());
        let parts = parts(&value["parts"]).ok_or_else(|| fault("has no parts"))?;
        let main = parts.first().ok_or_else(|| fault("has no parts"))?;
        let across = left(facing);
        let ((low, high), back) = (extent(main, across), extent(main, facing).0);
        let place = |sideways: f64| add(add([0.0, 0.0], across, sideways), facing, back);
        let (anchor, away) = match parts.get(1) {
            // The corner is at the end of the main run where the return is.
            Some(run) if centre(run, across) > (low + high) / 2.0 => (place(high), Some(minus([0.0, 0.0], across))),
            Some(_) => (place(low), Some(across)),
            None => (place((low + high) / 2.0), None),
        };
        if (piece.kind == PieceKind::CornerSofa) != run.is_some() || run.is_some() != away.is_some() {
            return Err(fault("has a return where it should not, or none where it should"));
        }
        if (piece.second_return.is_some(), piece.return_depth.is_some()) != (second.is_some(), own.is_some()) {
            return Err(fault(
                "has a second return or a depth of its return where it should not, or none where it should",
            ));
        }
        let at_wall = value["at_wall"].as_str().map(str::to_owned);
        let stand = Self { piece, at_wall, facing, anchor, away, width, run, second, depth, own };
        stand.matches(&parts).then_some(stand.clone()).ok_or_else(|| fault("has parts that its sizes do not give"))
    }

    /// Main run (or the whole), then each return less its corner.
    pub(crate) fn parts(&self) -> Vec<Polygon> {
        let (Some(_), Some(run)) = (self.away, self.run) else { return vec![self.main()] };
        let (from, to) = self.bay();
        let mut parts = vec![self.main(), self.block((0.0, from), (self.depth, run))];
        parts.extend(self.second.map(|second| self.block((to, self.width), (self.depth, second))));
        parts
    }

    /// Of a corner sofa: from where to where along its main run one sits with nothing beside the knees, from its corner.
    pub(crate) fn bay(&self) -> (f64, f64) {
        let far = if self.second.is_some() { self.width - self.depth } else { self.width };
        (self.own.unwrap_or(self.depth), far)
    }

    pub(crate) fn main(&self) -> Polygon {
        let half = self.width / 2.0;
        let across = if self.away.is_some() { (0.0, self.width) } else { (-half, half) };
        self.block(across, (0.0, self.depth))
    }

    /// From the anchor along its main run, or to its left.
    pub(crate) fn along(&self) -> P {
        self.away.unwrap_or_else(|| left(self.facing))
    }

    /// A rectangle in its own axes: along, and outward from its back.
    pub(crate) fn block(&self, (from, to): (f64, f64), (near, far): (f64, f64)) -> Polygon {
        let at = |x: f64, y: f64| add(add(self.anchor, self.along(), x), self.facing, y);
        counter_clockwise(vec![at(from, near), at(to, near), at(to, far), at(from, far)])
    }

    /// Its front edge (of a corner sofa: the main run's).
    pub(crate) fn front(&self) -> [P; 2] {
        let (from, to) = if self.away.is_some() { (0.0, self.width) } else { (-self.width / 2.0, self.width / 2.0) };
        let at = |x: f64| add(add(self.anchor, self.along(), x), self.facing, self.depth);
        [at(from), at(to)]
    }

    pub(crate) fn is_rug(&self) -> bool {
        self.piece.kind == PieceKind::Rug
    }

    /// One walks and sees over it: a rug, or floor that stays open.
    pub(crate) fn is_flat(&self) -> bool {
        self.is_rug() || self.piece.kind == PieceKind::OpenFloor
    }

    /// Pushed aside by who walks up to a seat, or turns.
    pub(crate) fn moves_aside(&self) -> bool {
        self.piece.kind == PieceKind::CoffeeTable || self.is_footrest()
    }

    /// May stand where legs have room.
    pub(crate) fn is_footrest(&self) -> bool {
        matches!(self.piece.kind, PieceKind::Pouf | PieceKind::FloorCushion)
    }

    /// Height of the lower edge of what hangs, mm.
    pub(crate) fn hung_at(&self) -> Option<f64> {
        (self.piece.kind == PieceKind::WallScreen).then_some(self.piece.height)
    }

    /// Whether nobody walks where it is: of what hangs, what juts out over 4 in under 80 in (2010 ADA Standards 307).
    pub(crate) fn is_in_the_way(&self) -> bool {
        !self.is_flat() && self.hung_at().is_none_or(|edge| edge < 2032.0 && self.piece.depth.most > 101.6)
    }

    pub(crate) fn name(&self) -> &str {
        &self.piece.name
    }

    fn matches(&self, parts: &[Polygon]) -> bool {
        const NEAR: f64 = 0.5;
        let own = self.parts();
        let same = |first: &Polygon, second: &Polygon| {
            first.len() == second.len()
                && first.iter().all(|&p| second.iter().any(|&q| length(minus(p, q)) < NEAR))
                && super::plane::turning(second) > 0.0
        };
        own.len() == parts.len() && own.iter().zip(parts).all(|(first, second)| same(first, second))
    }
}

fn centre(shape: &[P], axis: P) -> f64 {
    shape.iter().map(|&p| dot(p, axis)).sum::<f64>() / shape.len() as f64
}

fn parts(value: &Value) -> Option<Vec<Polygon>> {
    let place = |value: &Value| Some([value[0].as_f64()?, value[1].as_f64()?]);
    let part = |value: &Value| value.as_array()?.iter().map(place).collect::<Option<Polygon>>();
    value.as_array()?.iter().map(part).collect()
}
