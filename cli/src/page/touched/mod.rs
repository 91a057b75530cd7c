//! What somebody touches of an option: a size, a way, a reason; and what of the plan it has to do with.

mod reason;

use elbowroom_model::{Criterion, PieceId};
use elbowroom_solver::answer::{PieceSizes, RankedOption, Thing};
use elbowroom_solver::routes::End;
use elbowroom_solver::rules::With;
use elbowroom_solver::sizes::Holding;

use crate::render::plan::Marked;

/// What is touched.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Touched {
    /// How large a piece may be.
    Size(PieceId),
    /// A way, by its place.
    Way(usize),
    /// What a criterion says.
    Reason(Criterion),
}

impl Touched {
    /// What a button of the page calls it.
    pub(super) fn key(self) -> String {
        match self {
            Self::Size(piece) => format!("size-{}", piece.0),
            Self::Way(place) => format!("way-{place}"),
            Self::Reason(criterion) => format!("reason-{}", criterion.key()),
        }
    }

    /// What is called so; nothing where that is nothing.
    pub(super) fn of(key: &str) -> Option<Self> {
        let (what, which) = key.split_once('-')?;
        match what {
            "size" => which.parse().ok().map(|place| Self::Size(PieceId(place))),
            "way" => which.parse().ok().map(Self::Way),
            "reason" => Criterion::ALL.iter().find(|criterion| criterion.key() == which).map(|it| Self::Reason(*it)),
            _ => None,
        }
    }

    /// What of the plan it has to do with; `sizes`: those of the option, with what holds each.
    pub(super) fn marked(self, option: &RankedOption, sizes: &[PieceSizes]) -> Marked {
        match self {
            Self::Size(piece) => held(piece, option, sizes),
            Self::Way(place) => {
                let route = option.routes.get(place);
                let ends = route.map(|route| [route.from, route.to].map(Thing::from).to_vec());
                Marked { what: Vec::new(), by: ends.unwrap_or_default(), way: route.map(|_| place) }
            }
            Self::Reason(criterion) => {
                option.judgement(criterion).map(|judgement| reason::marked(option, judgement)).unwrap_or_default()
            }
        }
    }
}

/// A piece, and what holds its sizes.
fn held(piece: PieceId, option: &RankedOption, sizes: &[PieceSizes]) -> Marked {
    let own = sizes.iter().find(|sizes| sizes.piece == piece);
    let held_by = own.map(|sizes| sizes.held_by.as_slice()).unwrap_or_default();
    let causes = held_by.iter().filter_map(|held| match held.by {
        Holding::Cause(cause) => Some(cause),
        Holding::Most | Holding::Way(_) => None,
    });
    let (mut by, mut way) = (Vec::new(), None);
    for cause in causes {
        if let With::Route(demand) = cause.with {
            way = option
                .routes
                .iter()
                .position(|route| (route.from, route.to) == (End::Item(demand.from), demand.to))
                .or(way);
        }
        // What holds it by way of another piece holds that one.
        let things = [Thing::Piece(cause.piece), Thing::kept_from(cause.piece, cause.with)];
        by.extend(things.into_iter().filter(|thing| *thing != Thing::Piece(piece)));
    }
    by.sort_unstable();
    by.dedup();
    Marked { what: vec![Thing::Piece(piece)], by, way }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Criterion, PieceId};

    use super::Touched;

    #[test]
    fn what_is_touched_is_called_by_one_name() {
        let all = [Touched::Size(PieceId(3)), Touched::Way(0), Touched::Reason(Criterion::View)];
        for touched in all {
            assert_eq!(Touched::of(&touched.key()), Some(touched));
        }
        for none in ["", "size", "size-", "size--1", "way-x", "reason-none", "wall-1"] {
            assert_eq!(Touched::of(none), None, "{none}");
        }
    }
}
