//! What is carried: a piece as one box, or as the parts that it comes in.

use super::Profile;
use crate::listing::ListedPiece;
use crate::piece::Piece;

/// A piece to be carried in.
#[derive(Debug, Clone, PartialEq)]
pub struct Load {
    /// The piece's name.
    pub name: String,
    /// Each part that is carried by itself; none: it is rolled or so small that no door stops it.
    pub parts: Vec<LoadPart>,
}

/// A box that is carried, or less than a box from its end.
#[derive(Debug, Clone, PartialEq)]
pub struct LoadPart {
    /// What it is called: the piece's name, or `sofa, part 2`.
    pub name: String,
    /// Width, depth and height as it stands in the room, mm.
    pub sides: [f64; 3],
    /// The narrowest its profile passes when tilted about its length, mm, as its maker says.
    pub diagonal_depth: Option<f64>,
    /// What it looks like from its end, where that is known to be less than a box.
    pub profile: Option<Profile>,
}

impl LoadPart {
    /// A box of these sides, mm.
    #[must_use]
    pub const fn of_box(name: String, sides: [f64; 3]) -> Self {
        Self { name, sides, diagonal_depth: None, profile: None }
    }
}

impl Load {
    /// A piece of a brief at these sizes (width, return, depth; mm). A corner sofa is taken to come as its runs, a second
    /// return and a return with a depth of its own at the most of these; a rug rolled; all else a box.
    #[must_use]
    pub fn of(piece: &Piece, width: f64, return_length: Option<f64>, depth: f64) -> Self {
        Self::lowered(piece, width, return_length, depth, 0.0)
    }

    /// As [`of`](Self::of), by `off` mm of legs lower.
    #[must_use]
    pub fn lowered(piece: &Piece, width: f64, return_length: Option<f64>, depth: f64, off: f64) -> Self {
        let (name, height) = (piece.name.clone(), without_legs(piece.own_height(), off));
        if piece.kind.is_flat() {
            return Self { name, parts: Vec::new() };
        }
        let parts = match return_length {
            Some(other) => {
                let deep = piece.return_depth.map_or(depth, |own| own.most);
                let second = piece.second_return.map(|second| second.most);
                Runs { name: &name, width, depth, returns: [Some((other, deep)), second.map(|run| (run, depth))] }
                    .parts(height)
            }
            None => vec![LoadPart::of_box(name.clone(), [width, depth, height])],
        };
        Self { name, parts }
    }

    /// A listed piece by `off` mm of legs lower, in its parts where it comes in parts. `height`: where the list does not
    /// say, mm.
    #[must_use]
    pub fn of_listed(piece: &ListedPiece, height: f64, off: f64) -> Self {
        let name = piece.name.clone();
        if piece.kind.is_flat() {
            return Self { name, parts: Vec::new() };
        }
        let height = without_legs(piece.height.unwrap_or(height), off);
        let parts = match (piece.parts.as_slice(), piece.return_length) {
            ([], Some(other)) => {
                let ListedPiece { width, depth, .. } = *piece;
                let second = piece.second_return.map(|run| (run, depth));
                let returns = [Some((other, piece.return_depth.unwrap_or(depth))), second];
                Runs { name: &name, width, depth, returns }.parts(height)
            }
            ([], None) => {
                let whole = LoadPart::of_box(name.clone(), [piece.width, piece.depth, height]);
                vec![LoadPart { diagonal_depth: piece.diagonal_depth, profile: Profile::of(piece, off), ..whole }]
            }
            (parts, _) => {
                let part = |(place, part): (usize, &crate::listing::Part)| {
                    LoadPart::of_box(format!("{name}, part {}", place + 1), part.sides)
                };
                parts.iter().enumerate().map(part).collect()
            }
        };
        Self { name, parts }
    }
}

/// What is left of a height without legs; what is no leg any more is not taken off.
fn without_legs(height: f64, off: f64) -> f64 {
    (height - off).max(height / 10.0)
}

/// A corner sofa in its runs.
struct Runs<'a> {
    name: &'a str,
    width: f64,
    depth: f64,
    /// Length and depth of each return.
    returns: [Option<(f64, f64)>; 2],
}

impl Runs<'_> {
    /// Each return is taken whole, the corner counted in both runs: which of them carries it is not known. In the corner a
    /// run is as high and as deep as the whole, so that each is a box.
    fn parts(&self, height: f64) -> Vec<LoadPart> {
        let run = |what: &str, length: f64, depth: f64| {
            LoadPart::of_box(format!("{}, {what}", self.name), [length, depth, height])
        };
        let returns = ["return", "second return"].into_iter().zip(self.returns);
        let returns = returns.filter_map(|(what, sides)| sides.map(|(length, depth)| run(what, length, depth)));
        std::iter::once(run("main run", self.width, self.depth)).chain(returns).collect()
    }
}
