//! The largest pieces that the places of a plan leave room for.

use elbowroom_model::{Brief, Point};
use elbowroom_solver::answer::{Largest, RankedOption, corners_of, degrees};
use serde::Serialize;

use super::piece::SizeResult;
use super::way::RouteResult;

/// Where everything stands at its largest.
#[derive(Debug, Serialize)]
pub(super) struct LargestResult<'a> {
    /// Pieces as they stand then.
    pieces: Vec<LargestPiece<'a>>,
    /// Routes from every entrance.
    routes: Vec<RouteResult<'a>>,
    /// Value of the sizes.
    size_value: f64,
    /// Size value less the small terms that settle ties.
    objective: f64,
    /// No layout of the plan's stands has more.
    bound: f64,
    /// The bound lies within a thousandth of the objective and every alternative was covered.
    proven: bool,
}

/// A piece at its largest.
#[derive(Debug, Serialize)]
struct LargestPiece<'a> {
    /// Its name.
    name: &'a str,
    /// Convex, counter-clockwise.
    parts: Vec<Vec<Point>>,
    /// Degrees.
    facing: f64,
    /// The wall it stands at; null: it stands free.
    at_wall: Option<&'a str>,
    /// mm.
    size: SizeResult,
}

impl<'a> LargestResult<'a> {
    /// What is told of the largest layout of an option.
    pub(super) fn of(brief: &'a Brief, option: &'a RankedOption) -> Self {
        let Largest { layout, routes, size_value, objective, bound, proven } = &option.largest;
        let piece = |placed: &elbowroom_solver::Placed| LargestPiece {
            name: brief.piece_name(placed.piece),
            parts: corners_of(placed),
            facing: degrees(placed.facing),
            at_wall: placed.at_wall.map(|wall| brief.room.wall_name(wall)),
            size: option.sizes_of(placed.piece).map_or(placed.size, |sizes| sizes.together()).into(),
        };
        Self {
            pieces: layout.placed.iter().map(piece).collect(),
            routes: routes.iter().map(|route| RouteResult::of(brief, route)).collect(),
            size_value: *size_value,
            objective: *objective,
            bound: *bound,
            proven: *proven,
        }
    }
}
