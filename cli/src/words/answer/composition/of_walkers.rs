//! Terms about walkers: ways across a group, small things beside a way, floor that is cut off.

use elbowroom_model::{Clearance, Term, tables};
use elbowroom_solver::answer::Thing;

use super::Named;
use crate::words::figures::area;

impl Named<'_> {
    pub(super) fn of_walkers(&self) -> String {
        let Self { told, one, other, .. } = self;
        match told.term {
            Term::InWay => format!("{one} stands in the straight way to {other}"),
            Term::WayAcross if told.other() == Thing::Piece(told.piece) => {
                format!("a main way runs where people sit at {one}")
            }
            Term::WayAcross => format!("a main way cuts between {one} and {other}"),
            Term::SmallByWay => {
                let walkway = self.brief.rules.get(Clearance::Walkway);
                let [off, walkway] = self.brief.units.side_by_side(walkway - told.off, walkway);
                format!("{one} stands {off} from where one walks from door to door; {walkway} keeps it out of the way")
            }
            _ => {
                let all = area((tables::price(told.term).free + told.off) / 1e6);
                format!("{all} of floor by {one} cannot be walked to")
            }
        }
    }
}
