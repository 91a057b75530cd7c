//! All arrangements of a room.

use elbowroom_model::{Brief, Piece, PieceId, SecondPlace, Turned};

use super::bounds::{Bounds, NoRoom};
use super::cast::Cast;
use super::media::{self, ScreenPlace};
use super::naming;
use super::only;
use super::other_pieces::Group;
use super::seating::{self, Seating};
use super::second_seat::{self, Company};
use super::stand::{Arrangement, Choices, Relation, Role, SecondSeat, Stand, Standing};
use crate::routes::work_of_routes;
use crate::site::Site;

/// The most arrangements that are solved, and the most dropped ones that are told: far beyond any room one lives in.
pub const MOST_ARRANGEMENTS: usize = 256;
/// So many are solved in any case.
const FEWEST_AT_LEAST: usize = 8;

/// How many arrangements of a room are solved at most: fewer where each has routes by the thousand.
fn most_solved(brief: &Brief) -> usize {
    (MOST_ARRANGEMENTS / work_of_routes(brief)).max(FEWEST_AT_LEAST)
}

/// The arrangements of a room.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Enumeration {
    /// Those that may fit, each seating with the first way to place the second seats, then each with the next.
    pub arrangements: Vec<Arrangement>,
    /// Those that cannot fit, with the reason. Their pieces keep all their stands, so that a remedy can be sought.
    pub dropped: Vec<Dropped>,
    /// How many more there are than are looked at.
    pub beyond: usize,
}

/// An arrangement that cheap bounds dropped.
#[derive(Debug, Clone, PartialEq)]
pub struct Dropped {
    /// What it would have been.
    pub arrangement: Arrangement,
    /// Why it cannot hold.
    pub reason: NoRoom,
}

/// All arrangements of a room, those that cannot hold apart.
#[must_use]
pub fn enumerate(brief: &Brief, site: &Site) -> Enumeration {
    let mut enumeration = Enumeration::default();
    let Some(cast) = Cast::of(brief) else { return enumeration };
    let bounds = Bounds::of(brief, site);
    let maker = Maker { brief, site, cast: &cast, bounds: &bounds, most_solved: most_solved(brief) };
    let bases = maker.bases();
    let rounds = bases.iter().map(|base| base.companies.len()).max().unwrap_or(0);
    for round in 0..rounds {
        for base in &bases {
            if let Some(company) = base.companies.get(round) {
                maker.add(&mut enumeration, base, company);
            }
        }
    }
    enumeration.beyond += bases.iter().map(|base| base.beyond).sum::<usize>();
    let kept = enumeration.arrangements.iter_mut().map(|arrangement| &mut arrangement.key);
    let dropped = enumeration.dropped.iter_mut().map(|dropped| &mut dropped.arrangement.key);
    naming::distinct(&mut kept.chain(dropped).collect::<Vec<_>>());
    enumeration
}

/// The main seat and the screen placed, and the ways to place the second seats about them.
struct Base {
    seating: Seating,
    screen: Option<ScreenPlace>,
    companies: Vec<Company>,
    /// Ways that were not listed.
    beyond: usize,
}

/// The decisions of an arrangement. The hand of a U with two returns alike is none.
fn choices(brief: &Brief, main: PieceId, base: &Base, company: &Company) -> Choices {
    let Seating { back, faced, facing, hand } = base.seating;
    let media_wall = base.screen.map(|place| place.wall);
    let hand = hand.filter(|_| !brief.piece(main).is_some_and(Piece::has_like_returns));
    Choices { seat_back: back, faced, facing, hand, media_wall, second_seats: company.clone() }
}

struct Maker<'a> {
    brief: &'a Brief,
    site: &'a Site,
    cast: &'a Cast,
    bounds: &'a Bounds<'a>,
    most_solved: usize,
}

impl Maker<'_> {
    fn bases(&self) -> Vec<Base> {
        let places = self.seatings().into_iter().flat_map(|seating| {
            let screens = media::places(self.brief, self.site, self.cast, &seating);
            screens.into_iter().map(move |screen| (seating, screen))
        });
        let places = places.filter(|(seating, screen)| self.makes_sense(seating, *screen));
        let base = |(seating, screen): (Seating, Option<ScreenPlace>)| {
            let (companies, all) = second_seat::companies(self.brief, self.cast, &seating, screen, MOST_ARRANGEMENTS);
            let beyond = all - companies.len();
            Base { seating, screen, companies, beyond }
        };
        places.map(base).collect()
    }

    /// At every wall; free-standing before every wall.
    fn seatings(&self) -> Vec<Seating> {
        let Some(seat) = self.brief.piece(self.cast.main) else { return Vec::new() };
        let mut seatings = seating::at_walls(self.site, seat);
        seatings.extend(self.site.walls.iter().flat_map(|wall| seating::free_before(wall, seat)));
        seatings
    }

    /// A free-standing seat that no screen ties to its wall is the same before every wall that runs the same way.
    fn makes_sense(&self, seating: &Seating, screen: Option<ScreenPlace>) -> bool {
        let tied = screen.is_some_and(|place| place.role == Role::Screen);
        let ways = || seating::ways_to_look(self.site, |wall| self.bounds.depth_before(wall));
        seating.faced.is_none_or(|faced| tied || ways().iter().any(|way| way.id == faced))
    }

    fn add(&self, enumeration: &mut Enumeration, base: &Base, company: &Company) {
        let choices = choices(self.brief, self.cast.main, base, company);
        if !only::is_wanted(self.brief, &choices) {
            return;
        }
        let seconds: Vec<SecondSeat> = company.iter().flatten().copied().collect();
        let (standings, no_stand) = self.standings(base, &seconds);
        let opposite = seconds.iter().filter(|seat| seat.place == SecondPlace::Opposite);
        let opposite: Vec<PieceId> = opposite.map(|seat| seat.piece).collect();
        let reason = self.bounds.group(self.cast, &base.seating, base.screen, &opposite).or(no_stand);
        let full = match reason {
            Some(_) => enumeration.dropped.len() >= MOST_ARRANGEMENTS,
            None => enumeration.arrangements.len() >= self.most_solved,
        };
        if full {
            enumeration.beyond += 1;
            return;
        }
        let key = naming::key(self.brief, self.cast.screen.is_some(), &choices);
        let arrangement = Arrangement { key, choices, main_seat: self.cast.main, standings };
        match reason {
            None => enumeration.arrangements.push(arrangement),
            Some(reason) => enumeration.dropped.push(Dropped { arrangement, reason }),
        }
    }

    /// How each piece may stand; and why a piece that must stand cannot stand anywhere.
    fn standings(&self, base: &Base, seconds: &[SecondSeat]) -> (Vec<Standing>, Option<NoRoom>) {
        let group = Group { brief: self.brief, site: self.site, main: self.cast.main, seating: &base.seating, seconds };
        let mut no_stand = None;
        let mut standings = Vec::with_capacity(self.brief.pieces.len());
        for place in self.brief.piece_ids() {
            let mut standing = self.standing(base, &group, place);
            let left = self.keep_possible(&mut standing);
            no_stand = no_stand.or(left);
            standings.push(standing);
        }
        (standings, no_stand)
    }

    fn standing(&self, base: &Base, group: &Group<'_>, place: PieceId) -> Standing {
        let Seating { back, facing, hand, .. } = base.seating;
        let main = self.cast.main;
        if place == main {
            let stand = Stand { at_wall: back, facing, relation: Relation::Alone, turn: None };
            return Standing { piece: place, role: Role::MainSeat, hand, stands: vec![stand] };
        }
        if let Some(seat) = group.seconds.iter().find(|seat| seat.piece == place) {
            let turned = self.brief.piece(place).map_or(Turned::No, |piece| piece.turned);
            let stands = second_seat::stands(self.site, main, &base.seating, seat.place, turned);
            return Standing { piece: place, role: seat.place.into(), hand: seat.hand, stands };
        }
        if self.cast.screen == Some(place) {
            let role = base.screen.map_or(Role::Screen, |screen| screen.role);
            return Standing { piece: place, role, hand: None, stands: self.screen_stands(base) };
        }
        let piece = self.brief.piece(place);
        if let Some(piece) = piece.filter(|piece| piece.group.is_some()) {
            let (role, stands) = group.apart(piece);
            return Standing { piece: place, role, hand: None, stands };
        }
        let role = piece.map_or(Role::Other, |piece| Group::role(piece.kind));
        let stands = piece.map_or(Vec::new(), |piece| group.stands(piece));
        Standing { piece: place, role, hand: None, stands }
    }

    /// The media unit at its wall; nowhere in an arrangement without a screen.
    fn screen_stands(&self, base: &Base) -> Vec<Stand> {
        let at = |place: ScreenPlace| {
            let relation = match place.role {
                Role::Screen => Relation::Faces { seat: self.cast.main },
                _ => Relation::Alone,
            };
            let wall = self.site.wall(place.wall)?;
            Some(Stand { at_wall: Some(wall.id), facing: wall.inward, relation, turn: None })
        };
        base.screen.and_then(at).into_iter().collect()
    }

    /// Strikes out the walls that the piece cannot stand along. Where none is left, a piece that may be left out has no
    /// stand; one that must stand keeps them all, and the reason comes back of the wall that comes nearest.
    fn keep_possible(&self, standing: &mut Standing) -> Option<NoRoom> {
        let reason = |stand: &Stand| stand.at_wall.and_then(|wall| self.bounds.along(standing.piece, wall));
        let possible: Vec<Stand> = standing.stands.iter().filter(|stand| reason(stand).is_none()).copied().collect();
        let needed = self.brief.piece(standing.piece).is_some_and(|piece| piece.needed)
            || only::asks_for(self.brief, standing.role, standing.piece);
        let reasons = standing.stands.iter().filter_map(reason);
        let nearest = reasons.min_by(|one, other| one.short_by().total_cmp(&other.short_by())).copied();
        if possible.is_empty() && needed {
            return nearest;
        }
        standing.stands = possible;
        None
    }
}
