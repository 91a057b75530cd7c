//! What is carried: a piece as one box, or as the parts that it comes in.

use crate::kind::Drawn;
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

/// A box that is carried.
#[derive(Debug, Clone, PartialEq)]
pub struct LoadPart {
    /// What it is called: the piece's name, or `sofa, part 2`.
    pub name: String,
    /// Width, depth and height as it stands in the room, mm.
    pub sides: [f64; 3],
    /// The narrowest its profile passes when tilted about its length, mm, as its maker says.
    pub diagonal_depth: Option<f64>,
    /// How its end is less than a box, where it is.
    pub profile: Option<Profile>,
}

/// What a seat looks like from its end: the back rises at the rear, and before it nothing is higher than the arms.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Profile {
    /// How high it is at its front, mm.
    pub front: f64,
    /// How thick the back is at its top, mm.
    pub back: f64,
}

/// Height of a seat (common practice, no source), mm.
const SEAT: f64 = 430.0;
/// How high arms stand above the seat (common practice, no source), mm.
const ARM_OVER_SEAT: f64 = 180.0;
/// How thick a back is at its top (common practice, no source), mm.
const BACK: f64 = 150.0;

impl Profile {
    /// That of a listed seat of one straight run; `None` for what has no back, and for a corner sofa, whose runs meet in a
    /// corner as high and as deep as the whole. `off`: what its legs are shorter, mm.
    fn of(piece: &ListedPiece, off: f64) -> Option<Self> {
        if !has_profile(piece) {
            return None;
        }
        let arm = piece.section.seat_height.unwrap_or(SEAT) + ARM_OVER_SEAT;
        let front = (piece.section.arm_height.unwrap_or(arm) - off).max(0.0);
        Some(Self { front, back: piece.section.back_thickness.unwrap_or(BACK) })
    }

    /// Any of its figures is taken as usual.
    #[must_use]
    pub fn is_assumed(piece: &ListedPiece) -> bool {
        let known = piece.section.arm_height.is_some() && piece.section.back_thickness.is_some();
        has_profile(piece) && !known && piece.diagonal_depth.is_none()
    }
}

fn has_profile(piece: &ListedPiece) -> bool {
    piece.kind.traits().drawn == Drawn::Upholstered && piece.return_length.is_none() && piece.parts.is_empty()
}

impl Load {
    /// A piece of a brief at these sizes (width, return, depth; mm). A corner sofa is taken to come as its runs, a second
    /// return and a return with a depth of its own at the most of these; a rug rolled.
    #[must_use]
    pub fn of(piece: &Piece, width: f64, return_length: Option<f64>, depth: f64) -> Self {
        let (name, height) = (piece.name.clone(), piece.own_height());
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
            None => vec![LoadPart {
                name: name.clone(),
                sides: [width, depth, height],
                diagonal_depth: None,
                profile: None,
            }],
        };
        Self { name, parts }
    }

    /// A listed piece in its parts where it comes in parts, and so much lower as its legs are when they are off. `height`:
    /// where the list does not say, mm.
    #[must_use]
    pub fn of_listed(piece: &ListedPiece, height: f64, off: f64) -> Self {
        let name = piece.name.clone();
        if piece.kind.is_flat() {
            return Self { name, parts: Vec::new() };
        }
        let height = piece.height.unwrap_or(height);
        let height = (height - off).max(height / 10.0);
        let parts = match (piece.parts.as_slice(), piece.return_length) {
            ([], Some(other)) => {
                let ListedPiece { width, depth, .. } = *piece;
                let second = piece.second_return.map(|run| (run, depth));
                let returns = [Some((other, piece.return_depth.unwrap_or(depth))), second];
                Runs { name: &name, width, depth, returns }.parts(height)
            }
            ([], None) => {
                let sides = [piece.width, piece.depth, height];
                let (diagonal_depth, profile) = (piece.diagonal_depth, Profile::of(piece, off));
                vec![LoadPart { name: name.clone(), sides, diagonal_depth, profile }]
            }
            (parts, _) => {
                let part = |(place, part): (usize, &crate::listing::Part)| LoadPart {
                    name: format!("{name}, part {}", place + 1),
                    sides: part.sides,
                    diagonal_depth: None,
                    profile: None,
                };
                parts.iter().enumerate().map(part).collect()
            }
        };
        Self { name, parts }
    }
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
    /// Each return is taken whole, the corner counted in both runs: which of them carries it is not known.
    fn parts(&self, height: f64) -> Vec<LoadPart> {
        let run = |what: &str, length: f64, depth: f64| LoadPart {
            name: format!("{}, {what}", self.name),
            sides: [length, depth, height],
            diagonal_depth: None,
            profile: None,
        };
        let returns = ["return", "second return"].into_iter().zip(self.returns);
        let returns = returns.filter_map(|(what, sides)| sides.map(|(length, depth)| run(what, length, depth)));
        std::iter::once(run("main run", self.width, self.depth)).chain(returns).collect()
    }
}
