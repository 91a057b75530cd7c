//! The arrangement that a finished layout bears out, however its pieces came to stand there: in a room as it is nobody has
//! decided anything, and yet one seat is the main one and the others stand about it.

use elbowroom_model::{Brief, Piece, PieceId, Point, SecondPlace, Stands, WallId, ring};

use super::cast::Cast;
use super::direction::face;
use super::naming;
use super::other_pieces::Group;
use super::seating::Seating;
use super::stand::{Arrangement, Choices, Relation, Role, SecondSeat, Stand, Standing};
use super::tolerance::{COSINE_OF_HALF, TABLE_OF_SEAT};
use crate::geometry::{Ray, Segment, apart};
use crate::layout::{Layout, Placed};
use crate::site::Site;

impl Arrangement {
    /// The arrangement of a layout: the main seat is the foremost of those that stand, by the rule that holds for every
    /// arrangement, and each piece has the one stand that it has. `None` where no seat stands.
    #[must_use]
    pub fn as_placed(brief: &Brief, site: &Site, layout: &Layout) -> Option<Self> {
        let cast = Cast::of_those(brief, |piece| layout.of(piece).is_some())?;
        let placed = AsPlaced { brief, layout, main: layout.of(cast.main)? };
        let choices = placed.choices(site, &cast);
        let standing = |piece| placed.standing(&cast, piece);
        Some(Self {
            key: naming::key(brief, cast.screen.is_some(), &choices),
            main_seat: cast.main,
            standings: brief.piece_ids().map(standing).collect(),
            choices,
        })
    }
}

/// What stands, seen from the main seat.
struct AsPlaced<'a> {
    brief: &'a Brief,
    layout: &'a Layout,
    main: &'a Placed,
}

impl AsPlaced<'_> {
    fn choices(&self, site: &Site, cast: &Cast) -> Choices {
        let Placed { at_wall, facing, hand, .. } = *self.main;
        let seat = |&piece: &PieceId| {
            let placed = self.layout.of(piece)?;
            Some(SecondSeat { piece, place: self.second_place(placed), hand: placed.hand })
        };
        Choices {
            seat_back: at_wall,
            faced: if at_wall.is_none() { self.faced(site) } else { None },
            facing,
            hand: hand.filter(|_| !self.brief.piece(self.main.piece).is_some_and(Piece::has_like_returns)),
            media_wall: cast.screen.and_then(|screen| self.layout.of(screen)?.at_wall),
            second_seats: cast.rows.iter().map(|row| row.iter().filter_map(seat).collect()).collect(),
        }
    }

    /// The wall that the main seat looks at straight.
    fn faced(&self, site: &Site) -> Option<WallId> {
        let ahead = Ray { from: middle_of_front(self.main), way: self.main.facing };
        let met =
            |wall: &crate::site::SiteWall| Some((wall.id, ahead.meets(Segment::new(wall.start, wall.end))?.reach));
        let met = site.walls.iter().filter_map(met);
        met.min_by(|one, other| one.1.total_cmp(&other.1)).map(|(wall, _)| wall)
    }

    fn standing(&self, cast: &Cast, id: PieceId) -> Standing {
        let piece = self.brief.piece(id);
        let Some(placed) = self.layout.of(id) else {
            let role = piece.map_or(Role::Other, |piece| Group::role(piece.kind));
            return Standing { piece: id, role, hand: None, stands: Vec::new() };
        };
        if let Some(piece) = piece.filter(|piece| piece.group.is_some()) {
            return self.standing_apart(piece, placed);
        }
        let role = self.role(cast, piece, placed);
        let relation = match role {
            Role::MainSeat | Role::LeftOf | Role::RightOf | Role::ScreenBeside => Relation::Alone,
            Role::Opposite | Role::Screen => Relation::Faces { seat: cast.main },
            Role::Table => Relation::Before { seat: self.served(placed) },
            Role::Other | Role::Apart => self.relation(piece, placed),
        };
        let stand = Stand { at_wall: placed.at_wall, facing: placed.facing, relation, turn: None };
        Standing { piece: id, role, hand: placed.hand, stands: vec![stand] }
    }

    /// A piece of a group of its own, at the nearest of that group's seats.
    fn standing_apart(&self, piece: &Piece, placed: &Placed) -> Standing {
        let of_group = |seat: &&Placed| {
            self.brief.piece(seat.piece).is_some_and(|seat| seat.kind.is_seat() && seat.group == piece.group)
        };
        let seats = || self.layout.placed.iter().filter(of_group);
        let before = |seat: &Placed| (seat.piece, (middle(placed) - middle_of_front(seat)).norm());
        let beside = |seat: &Placed| (seat.piece, apart(&seat.main(), &placed.main()));
        let (role, relation) = if piece.kind.is_seat() {
            (Role::Apart, Relation::Alone)
        } else if piece.kind.stands_before_seat() {
            (Role::Other, Relation::Before { seat: self.nearest(seats().map(before)) })
        } else {
            (Role::Other, self.beside(self.nearest(seats().map(beside)), placed))
        };
        let stand = Stand { at_wall: placed.at_wall, facing: placed.facing, relation, turn: None };
        Standing { piece: placed.piece, role, hand: placed.hand, stands: vec![stand] }
    }

    fn beside(&self, seat: PieceId, placed: &Placed) -> Relation {
        let of = self.layout.of(seat).unwrap_or(self.main);
        Relation::Beside { seat, left: (middle(placed) - middle(of)).dot(of.left()) > 0.0 }
    }

    fn role(&self, cast: &Cast, piece: Option<&Piece>, placed: &Placed) -> Role {
        if placed.piece == cast.main {
            return Role::MainSeat;
        }
        if cast.screen == Some(placed.piece) {
            return self.screen_role(placed);
        }
        if cast.rows.iter().flatten().any(|seat| *seat == placed.piece) {
            return self.second_place(placed).into();
        }
        piece.map_or(Role::Other, |piece| Group::role(piece.kind))
    }

    /// Opposite the main seat, or beside it where the return of a corner sofa faces it. A screen that nobody faces counts
    /// as opposite, so that what is wrong with it is told.
    fn screen_role(&self, screen: &Placed) -> Role {
        let Placed { at_wall, facing, hand, .. } = *self.main;
        let of_return = Seating { back: at_wall, faced: None, facing, hand }.return_facing();
        let opposite = face(facing, screen.facing) && self.ahead(screen) > 0.0;
        let beside = of_return.is_some_and(|way| face(way, screen.facing));
        if !opposite && beside { Role::ScreenBeside } else { Role::Screen }
    }

    /// Opposite where it faces the main seat, or may be turned from there; else on the side on which it stands.
    fn second_place(&self, seat: &Placed) -> SecondPlace {
        let aside = (middle(seat) - middle(self.main)).dot(self.main.left());
        let may_turn = self.brief.piece(seat.piece).is_some_and(|piece| piece.turned.may_turn());
        let is_turned_from_there = may_turn && -self.main.facing.dot(seat.facing) > COSINE_OF_HALF;
        let is_opposite = face(self.main.facing, seat.facing) || is_turned_from_there;
        if is_opposite && self.ahead(seat) > 0.0 {
            SecondPlace::Opposite
        } else if aside > 0.0 {
            SecondPlace::Left
        } else {
            SecondPlace::Right
        }
    }

    /// How far the middle of a piece lies before the back of the main seat, mm.
    fn ahead(&self, placed: &Placed) -> f64 {
        (middle(placed) - self.main.back_middle()).dot(self.main.facing)
    }

    /// The seat that a table serves: the main one where it lies before that, however near others stand to it; else of those
    /// that have it before them the one with its front nearest to it.
    fn served(&self, table: &Placed) -> PieceId {
        if self.is_before_main(table) {
            return self.main.piece;
        }
        let off = |seat: &Placed| {
            let way = middle(table) - middle_of_front(seat);
            (way.dot(seat.facing) > 0.0).then(|| (seat.piece, way.norm()))
        };
        self.nearest(self.seats().filter_map(off))
    }

    /// Whether a table lies before the front of the main seat, some of its width at least, and as near as a table of that
    /// seat would.
    fn is_before_main(&self, table: &Placed) -> bool {
        let main = self.main;
        let (table, seat) = (table.main(), main.main());
        let clear = -table.support(-main.facing) - seat.support(main.facing);
        let left = main.left();
        let overlap = table.support(left).min(seat.support(left)) + table.support(-left).min(seat.support(-left));
        (0.0..=TABLE_OF_SEAT).contains(&clear) && overlap > 0.0
    }

    fn relation(&self, piece: Option<&Piece>, placed: &Placed) -> Relation {
        match piece.map(|piece| piece.kind.traits().stands) {
            Some(Stands::UnderSeats) => Relation::Under { seat: self.main.piece },
            Some(Stands::BesideSeats) => {
                let off = |seat: &Placed| (seat.piece, apart(&seat.main(), &placed.main()));
                self.beside(self.nearest(self.seats().map(off)), placed)
            }
            _ => Relation::Alone,
        }
    }

    fn seats(&self) -> impl Iterator<Item = &Placed> {
        let is_seat = |placed: &&Placed| self.brief.piece(placed.piece).is_some_and(Piece::is_seat_of_main_group);
        self.layout.placed.iter().filter(is_seat)
    }

    /// The nearest of some seats; the main one where there are none.
    fn nearest(&self, seats: impl Iterator<Item = (PieceId, f64)>) -> PieceId {
        seats.min_by(|one, other| one.1.total_cmp(&other.1)).map_or(self.main.piece, |(seat, _)| seat)
    }
}

/// Middle of a piece on the floor (of a corner sofa: of its main run).
fn middle(placed: &Placed) -> Point {
    ring::middle(placed.main().corners())
}

fn middle_of_front(placed: &Placed) -> Point {
    let (left, right) = placed.front();
    (left + right) * 0.5
}
