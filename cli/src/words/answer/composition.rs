//! A term of composition in words: what a plan does not keep whole, and by how much.

mod about_room;
mod of_walkers;

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Piece, Rounding, Term, tables};
use elbowroom_solver::answer::Thing;
use elbowroom_solver::composition::TermCost;

use crate::words::figures::area;
use crate::words::lengths::taped;

/// Lengths under this are told as a tape reads, mm: rounded to a centimetre they could read as none.
const SMALL: f64 = 10.0;

/// One term: `The media unit stands 12 cm off the middle of the front of the sofa.`
pub(crate) fn term(brief: &Brief, told: &TermCost) -> String {
    format!("{}.", capital(&clause(brief, told)))
}

/// The same within a sentence.
pub(crate) fn clause(brief: &Brief, told: &TermCost) -> String {
    let [one, other] = [Thing::Piece(told.piece), told.other()].map(|thing| the(thing.name(brief)));
    let named = Named { brief, told, one, other };
    match told.term {
        Term::ScreenAside
        | Term::TableAside
        | Term::RugAside
        | Term::FocusAside
        | Term::FireAside
        | Term::OppositeAside
        | Term::Mirrored
        | Term::FireFar
        | Term::FocusAmid
        | Term::FireAmid
        | Term::PairAside => named.on_axis(),
        Term::SideAlong
        | Term::ToTable
        | Term::FrontsApart
        | Term::TurnedAway
        | Term::TableWide
        | Term::GroupWide
        | Term::FarFromWindow => named.in_group(),
        Term::LooksPast | Term::Turned => named.of_turned(),
        Term::Beam | Term::ScreenBeside | Term::ReturnAside | Term::ScreenFar | Term::UnderScreen => named.of_screen(),
        Term::OffWall
        | Term::OffMiddle
        | Term::ScreenOffMiddle
        | Term::FloorBehind
        | Term::FloorBehindFireside
        | Term::FloorToDining
        | Term::ReturnBehind
        | Term::BesideStorage
        | Term::StorageFar
        | Term::StorageApart
        | Term::DiningBySeat => named.at_wall(),
        Term::RugUnderOther => format!("{} reaches under {}", named.one, named.other),
        Term::RugUnderMain | Term::RugPastTable | Term::RugUnderSecond | Term::RugShort | Term::RugLarge => {
            named.of_rug()
        }
        Term::AtEnd | Term::AlongEnd | Term::TwoAtEnd | Term::BySecondSeat => named.at_end(),
        Term::ScreenByFocus
        | Term::BeforeWindow
        | Term::OverHeater
        | Term::BackToFire
        | Term::BackToWishedFire
        | Term::DiningAtFire
        | Term::BackToView
        | Term::BackToWishedView
        | Term::ReturnBackToView
        | Term::AcrossOpening
        | Term::ByDoor
        | Term::SecondByDoor
        | Term::BehindLeaf
        | Term::BeyondStep
        | Term::OpenFloorInUse
        | Term::RugInSwing => named.about_room(),
        Term::WayAcross | Term::SmallByWay | Term::CutOff | Term::InWay => named.of_walkers(),
    }
}

/// A term with the names of its two things.
struct Named<'a> {
    brief: &'a Brief,
    told: &'a TermCost,
    /// The piece that pays.
    one: String,
    /// What it stands to.
    other: String,
}

impl Named<'_> {
    /// Whether what pays stands, or hangs.
    fn stands(&self) -> &'static str {
        let hangs = self.brief.piece(self.told.piece).is_some_and(|piece| piece.kind.hangs());
        if hangs { "hangs" } else { "stands" }
    }

    fn on_axis(&self) -> String {
        let stands = self.stands();
        let Self { one, other, .. } = self;
        let off = self.length(self.told.off);
        match self.told.term {
            Term::TableAside | Term::RugAside => format!("{one} lies {off} off the middle of the front of {other}"),
            Term::FocusAside | Term::FireAside => format!("{one} faces {other} {off} off its middle"),
            Term::FocusAmid | Term::FireAmid => {
                format!("{other} lies {off} off the middle between {one} and the seat that it faces")
            }
            Term::FireFar => {
                let far = self.length(tables::price(Term::FireFar).free + self.told.off);
                format!("{one} stands {far} from {other}, further than one gathers about it")
            }
            Term::Mirrored => format!("{one} stands {off} off the place that would match {other}"),
            Term::PairAside => format!("the middle between {one} and {other} lies {off} off the middle of the group"),
            _ => format!("{one} {stands} {off} off the middle of the front of {other}"),
        }
    }

    fn in_group(&self) -> String {
        let Self { brief, told, one, other } = self;
        let off = self.length(told.off);
        match told.term {
            Term::SideAlong if self.is_by_table() => {
                format!("{one} stands {off} out of line with the middle of {other}")
            }
            Term::SideAlong => format!("{one} stands {off} out of line with the middle of the group"),
            Term::ToTable => format!("{one} stands {off} further from {other} than one reaches"),
            Term::FrontsApart => {
                let easy = tables::price(told.term).free;
                let [apart, easy] = brief.units.side_by_side(easy + told.off, easy);
                format!("the fronts of {one} and {other} are {apart} apart; one talks easily over up to {easy}")
            }
            Term::GroupWide => {
                let easy = tables::price(told.term).free;
                let [apart, easy] = brief.units.side_by_side(easy + told.off, easy);
                format!("{one} stands {apart} from {other} in one direction; one talks easily over up to {easy}")
            }
            Term::FarFromWindow => {
                let far = self.length(tables::price(told.term).free + told.off);
                format!("{one} stands {far} from the nearest window, further than one reads by it")
            }
            Term::TableWide => format!("{one} is {off} longer than two thirds of {other}"),
            _ => format!("{one} is turned away from the group about {other}"),
        }
    }

    fn of_turned(&self) -> String {
        let Self { told, one, other, .. } = self;
        match told.term {
            Term::LooksPast => {
                let middle = if self.is_by_table() { other.as_str() } else { "the group" };
                format!("{one} looks past the middle of {middle} by {}", self.length(told.off))
            }
            _ => format!("{one} is turned {} degrees, where square would be plainer", told.off.round()),
        }
    }

    fn of_screen(&self) -> String {
        let stands = self.stands();
        let Self { told, one, other, .. } = self;
        let off = self.length(told.off);
        match told.term {
            Term::Beam => format!("{one} stands {off} too near to the view from {other} to the screen"),
            Term::UnderScreen if told.off > 0.0 => format!("{one} stands {off} off the middle of {other}"),
            Term::UnderScreen => format!("{one} stands at another wall than {other}"),
            Term::ReturnAside => format!(
                "{one} stands {} off the middle of the return of {other}",
                self.length(tables::price(told.term).free + told.off)
            ),
            Term::ScreenBeside => format!("{one} lies {off} further to one side of {other} than ahead of it"),
            _ => format!("{one} {stands} {off} further from {other} than its screen is easily seen from"),
        }
    }

    fn at_wall(&self) -> String {
        let stands = self.stands();
        let Self { told, one, other, .. } = self;
        let off = self.length(told.off);
        match told.term {
            Term::OffWall => format!("{one} stands {off} further off {other} than it needs to"),
            Term::OffMiddle => {
                format!("{one} {stands} {off} off the middle{} of what is free of {other}", self.and_off_its_end())
            }
            Term::ScreenOffMiddle => {
                format!("{one}, and the group with it, {stands} {off} off the middle of what is free of {other}")
            }
            Term::FloorBehind | Term::FloorToDining | Term::FloorBehindFireside if told.off <= 0.0 => {
                format!("{one} leaves as much floor as a room of its own behind it")
            }
            Term::FloorBehind | Term::FloorToDining => {
                format!("{one} leaves {} of floor behind it", area(told.off / 1e6))
            }
            Term::FloorBehindFireside => {
                format!("{one} gathers about the fire and leaves {} of floor behind it", area(told.off / 1e6))
            }
            Term::ReturnBehind => {
                let free = tables::price(told.term).free;
                format!("the return of {} leaves {} of floor behind it", one, area((told.off + free) / 1e6))
            }
            Term::StorageFar => {
                let far = self.length(tables::price(told.term).free + told.off);
                format!("{one} {stands} {far} from the middle of the group")
            }
            Term::StorageApart => format!("{one} {stands} at another wall than {other}"),
            Term::DiningBySeat => {
                let [has, wanted] = self.brief.units.side_by_side(self.left(), tables::price(told.term).free);
                format!("{one} stands {has} from {other}; chairs and whoever passes want {wanted}")
            }
            _ => format!("{one} stands {} beside {other}, and looms over it", self.length(self.left())),
        }
    }

    fn of_rug(&self) -> String {
        let Self { brief, told, one, other } = self;
        let (free, left) = (tables::price(told.term).free, self.left());
        let [has, wanted] = brief.units.side_by_side(left, free);
        let short = self.length(-left);
        match told.term {
            Term::RugUnderMain if left >= 0.0 => format!("{one} reaches {has} under {other}; {wanted} holds it better"),
            Term::RugUnderMain => format!("{one} ends {short} before {other}; {wanted} under it holds it better"),
            Term::RugPastTable if left >= 0.0 => format!("{one} ends {has} past {other}; {wanted} holds it better"),
            Term::RugPastTable => format!("{one} ends {short} before the far side of {other}"),
            Term::RugUnderSecond if left >= 0.0 => {
                format!("{other} reaches {has} under {one}; {wanted} holds it better")
            }
            Term::RugUnderSecond => format!("{other} ends {short} before {one}; {wanted} under it holds it better"),
            Term::RugShort if left >= 0.0 => format!("{one} is {has} longer than {other}; {wanted} looks better"),
            Term::RugShort => format!("{one} is {short} shorter than {other}"),
            _ => format!("{one} is {} longer than it need be", self.length(told.off)),
        }
    }

    fn at_end(&self) -> String {
        let Self { brief, told, one, other } = self;
        match told.term {
            Term::AtEnd => {
                let near = tables::price(told.term).far;
                let [has, wanted] = brief.units.side_by_side(told.off, near);
                let reach = if told.off > near { format!("; a hand finds it within {wanted}") } else { String::new() };
                format!("{one} stands {has} from the end of {other}{reach}")
            }
            Term::AlongEnd => {
                let off = self.length(told.off);
                let is_for_feet = brief.piece(told.piece).is_some_and(|piece| piece.kind.traits().moves_aside);
                let place =
                    if is_for_feet { "its place by the front of" } else { "where a hand finds it at the end of" };
                format!("{one} stands {off} before or behind {place} {other}")
            }
            Term::BySecondSeat => format!("{one} stands by {other}, where fewer sit"),
            _ => format!("{one} and {other} stand at one end of a seat, or close together"),
        }
    }

    /// What there is of a length that the term wants more of, mm.
    fn left(&self) -> f64 {
        tables::price(self.told.term).free - self.told.off
    }

    fn length(&self, length: f64) -> String {
        let units = self.brief.units;
        if length.abs() < SMALL { taped(units, length) } else { units.words(length, Rounding::Nearest) }
    }

    /// Whether it stands to a table, and not to the seat that one would stand before.
    fn is_by_table(&self) -> bool {
        let Thing::Piece(other) = self.told.other() else { return false };
        self.brief.piece(other).is_some_and(|piece| piece.kind.stands_before_seat())
    }

    /// Where else it may stand at what is free of a wall: snug at an end, or in the corner that it is made for.
    fn and_off_its_end(&self) -> &'static str {
        let has_one_return = |piece: &Piece| piece.return_length.is_some() && piece.second_return.is_none();
        match self.brief.piece(self.told.piece) {
            Some(piece) if has_one_return(piece) => ", and out of the corner,",
            Some(piece) if !piece.kind.is_seat() && !piece.kind.carries_screen() => ", and off either end,",
            _ => "",
        }
    }
}

#[cfg(test)]
mod tests;
