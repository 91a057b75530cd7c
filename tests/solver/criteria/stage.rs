//! Rooms and layouts set up by hand: a rectangular room, what its walls hold, and pieces where a test wants them.

use elbowroom_model::{
    Brief, Clearance, Criterion, Door, Fireplace, Hand, ItemId, ItemKind, LeadsTo, Opening, Piece, PieceId, PieceKind,
    Point, Radiator, SizeRange, Socket, Stance, Swings, Unit, View, WallId, Window,
};
use elbowroom_solver::composition::TermCost;
use elbowroom_solver::criteria::balance::BalanceFinding;
use elbowroom_solver::criteria::daylight::DaylightFinding;
use elbowroom_solver::criteria::entrance::EntranceFinding;
use elbowroom_solver::criteria::fireside::FiresideFinding;
use elbowroom_solver::criteria::openness::OpennessFinding;
use elbowroom_solver::criteria::screen::ScreenFinding;
use elbowroom_solver::criteria::seats::SeatsFinding;
use elbowroom_solver::criteria::talk::TalkFinding;
use elbowroom_solver::criteria::upkeep::UpkeepFinding;
use elbowroom_solver::criteria::view::ViewFinding;
use elbowroom_solver::criteria::ways::WaysFinding;
use elbowroom_solver::criteria::{Finding, Judgement, LayoutInRoom, judge};
use elbowroom_solver::routes::{End, Route};
use elbowroom_solver::{Layout, Placed, Site, Size};

use crate::support::rooms::{self, Furnish};

/// The walls of [`Stage::room`], clockwise from the top of the plan.
pub(super) const NORTH: usize = 0;
pub(super) const EAST: usize = 1;
pub(super) const SOUTH: usize = 2;
pub(super) const WEST: usize = 3;

/// The ways a piece may face: north is up the plan.
pub(super) const UP: (f64, f64) = (0.0, 1.0);
pub(super) const DOWN: (f64, f64) = (0.0, -1.0);
pub(super) const LEFT: (f64, f64) = (-1.0, 0.0);
pub(super) const RIGHT: (f64, f64) = (1.0, 0.0);

/// A method of [`Stage`] for each criterion: what it found.
macro_rules! findings {
    ($($method:ident: $criterion:ident -> $finding:ident;)*) => {
        impl Stage {
            $(pub(super) fn $method(&self) -> $finding {
                match self.judge(Criterion::$criterion).finding {
                    Finding::$criterion(found) => found,
                    other => panic!("{other:?}"),
                }
            })*
        }
    };
}

findings! {
    view: View -> ViewFinding;
    entrance_finding: Entrance -> EntranceFinding;
    openness: Openness -> OpennessFinding;
    ways: Ways -> WaysFinding;
    screen: Screen -> ScreenFinding;
    talk: Talk -> TalkFinding;
    daylight: Daylight -> DaylightFinding;
    seats: Seats -> SeatsFinding;
    balance: Balance -> BalanceFinding;
    upkeep: Upkeep -> UpkeepFinding;
    fireside: Fireside -> FiresideFinding;
}

/// A brief, a layout and its routes, and what the terms of a plan cost it where a test says so.
#[derive(Debug, Clone)]
pub(super) struct Stage {
    pub(super) brief: Brief,
    pub(super) layout: Layout,
    pub(super) routes: Vec<Route>,
    pub(super) composition: Option<Vec<TermCost>>,
}

impl Stage {
    /// A room `width` across and `depth` from north to south, its north-west corner at the origin.
    pub(super) fn room(width: f64, depth: f64) -> Self {
        let mut brief = rooms::rectangle(width, depth).rule(Clearance::Walkway, 900.0).rule(Clearance::Passage, 600.0);
        brief.room.ceiling = Some(2500.0);
        brief.units = Unit::Centimetre;
        brief.room.walls.iter_mut().for_each(|wall| wall.name += " wall");
        Self { brief, layout: Layout::default(), routes: Vec::new(), composition: None }
    }

    pub(super) fn holds(mut self, wall: usize, name: &str, (at, width): (f64, f64), kind: ItemKind) -> Self {
        self.brief = self.brief.item(name, wall, at, width, kind);
        self
    }

    /// A window from 900 to 2100 above the floor.
    pub(super) fn window(self, wall: usize, name: &str, span: (f64, f64), view: View) -> Self {
        self.holds(wall, name, span, window(900.0, 2100.0, view))
    }

    pub(super) fn entrance(self, wall: usize, name: &str, at: f64) -> Self {
        self.door(wall, name, at, LeadsTo::Entrance)
    }

    /// A door 800 wide that slides.
    pub(super) fn door(self, wall: usize, name: &str, at: f64, leads_to: LeadsTo) -> Self {
        let door = Door { hinge: None, swings: Swings::Slides, opens_to: None, leads_to };
        self.holds(wall, name, (at, 800.0), ItemKind::Door(door))
    }

    pub(super) fn opening(self, wall: usize, name: &str, span: (f64, f64), stance: Stance) -> Self {
        let opening = Opening { leads_to: LeadsTo::Space("dining".to_owned()), stance };
        self.holds(wall, name, span, ItemKind::Opening(opening))
    }

    pub(super) fn fireplace(self, wall: usize, name: &str, span: (f64, f64)) -> Self {
        self.holds(
            wall,
            name,
            span,
            ItemKind::Fireplace(Fireplace { depth: 0.0, opening: None, height: Some(1200.0), keep_clear: 0.0 }),
        )
    }

    pub(super) fn radiator(self, wall: usize, name: &str, span: (f64, f64)) -> Self {
        let radiator = Radiator { depth: 100.0, height: 600.0, keep_clear: 100.0 };
        self.holds(wall, name, span, ItemKind::Radiator(radiator))
    }

    pub(super) fn socket(self, wall: usize, name: &str, at: f64) -> Self {
        self.holds(wall, name, (at, 0.0), ItemKind::Socket(Socket::Power))
    }

    /// A piece whose size is what is usual, with the middle of its back (a corner sofa: its outer corner) at `anchor`.
    pub(super) fn piece(self, kind: PieceKind, anchor: (f64, f64), facing: (f64, f64), size: (f64, f64)) -> Self {
        self.stand(piece(kind, size), placed(anchor, facing, size))
    }

    /// The same at a wall.
    pub(super) fn at_wall(
        mut self,
        wall: usize,
        kind: PieceKind,
        anchor: (f64, f64),
        facing: (f64, f64),
        size: (f64, f64),
    ) -> Self {
        self = self.piece(kind, anchor, facing, size);
        self.layout.placed.last_mut().unwrap().at_wall = Some(WallId(wall));
        self
    }

    /// A corner sofa with `size` (main run, return, depth).
    pub(super) fn corner_sofa(self, anchor: (f64, f64), facing: (f64, f64), hand: Hand, size: (f64, f64, f64)) -> Self {
        let (width, return_length, depth) = size;
        let mut piece = piece(PieceKind::CornerSofa, (width, depth));
        piece.return_length = Some(SizeRange::fixed(return_length));
        piece.hands = vec![hand];
        let mut placed = placed(anchor, facing, (width, depth));
        placed.hand = Some(hand);
        placed.size.return_length = Some(return_length);
        self.stand(piece, placed)
    }

    pub(super) fn stand(mut self, mut piece: Piece, mut placed: Placed) -> Self {
        placed.piece = PieceId(self.brief.pieces.len());
        let alike = self.brief.pieces.iter().filter(|other| other.kind == piece.kind).count();
        if alike > 0 {
            piece.name = format!("{} {}", piece.name, alike + 1);
        }
        self.brief.pieces.push(piece);
        self.layout.placed.push(placed);
        self
    }

    /// The last piece, changed.
    pub(super) fn with_piece(mut self, change: impl FnOnce(&mut Piece)) -> Self {
        change(self.brief.pieces.last_mut().unwrap());
        self
    }

    /// What a wall holds by this name.
    pub(super) fn item(&self, name: &str) -> ItemId {
        ItemId(self.brief.room.items.iter().position(|item| item.name == name).unwrap())
    }

    /// The last piece does not stand.
    pub(super) fn left_out(mut self) -> Self {
        let piece = self.layout.placed.pop().unwrap().piece;
        self.layout.left_out.push(piece);
        self
    }

    /// A main route between two items of these widths, `needs` 900.
    pub(super) fn route(mut self, from: &str, to: &str, width: f64, length: f64) -> Self {
        let (from, to) = (End::Item(self.item(from)), End::Item(self.item(to)));
        self.routes.push(Route {
            from,
            to,
            rule: Clearance::Walkway,
            needs: 900.0,
            width,
            pinch: None,
            chain: Vec::new(),
            length: Some(length),
        });
        self
    }

    /// What all criteria that apply say.
    pub(super) fn judged(&self) -> Vec<Judgement> {
        let site = Site::of(&self.brief);
        let (main_seat, _) = self.brief.pieces().find(|(_, piece)| piece.kind.is_seat()).unwrap();
        let Self { brief, layout, routes, composition } = self;
        let composition = composition.as_deref();
        judge(&LayoutInRoom { brief, site: &site, layout, routes, main_seat, composition })
    }

    /// What one criterion says.
    pub(super) fn judge(&self, criterion: Criterion) -> Judgement {
        let judged = self.judged().into_iter().find(|judgement| judgement.criterion == criterion);
        judged.unwrap_or_else(|| panic!("{criterion:?} does not apply"))
    }

    pub(super) fn score(&self, criterion: Criterion) -> f64 {
        self.judge(criterion).score
    }

    /// The same room and layout seen in a mirror that swaps east and west.
    pub(super) fn mirrored(&self) -> Self {
        let mut other = self.moved(|at| Point::new(-at.x, at.y));
        other.brief.room = rooms::mirrored(&self.brief.room);
        let last = other.brief.room.walls.len() - 1;
        for placed in &mut other.layout.placed {
            placed.at_wall = placed.at_wall.map(|WallId(wall)| WallId(last - wall));
            placed.hand = placed.hand.map(other_hand);
        }
        for piece in &mut other.brief.pieces {
            piece.hands = piece.hands.iter().copied().map(other_hand).collect();
        }
        other
    }

    /// The same with the whole plan turned about the origin.
    pub(super) fn turned(&self, degrees: f64) -> Self {
        let (sine, cosine) = degrees.to_radians().sin_cos();
        self.moved(|point| point * cosine + point.left() * sine)
    }

    /// The same with every place moved.
    fn moved(&self, to: impl Fn(Point) -> Point) -> Self {
        let mut other = self.clone();
        other.brief.room = rooms::moved(&self.brief.room, &to);
        for placed in &mut other.layout.placed {
            (placed.anchor, placed.facing) = (to(placed.anchor), to(placed.facing));
        }
        other
    }
}

pub(super) fn window(sill: f64, head: f64, view: View) -> ItemKind {
    ItemKind::Window(Window { sill, head, view, opens: true, must_reach: false })
}

fn other_hand(hand: Hand) -> Hand {
    if hand == Hand::Left { Hand::Right } else { Hand::Left }
}

fn placed(anchor: (f64, f64), facing: (f64, f64), (width, depth): (f64, f64)) -> Placed {
    Placed {
        piece: PieceId(0),
        at_wall: None,
        anchor: Point::new(anchor.0, anchor.1),
        facing: Point::new(facing.0, facing.1).unit().unwrap(),
        hand: None,
        size: Size { width, depth, ..Size::default() },
    }
}

fn piece(kind: PieceKind, (width, depth): (f64, f64)) -> Piece {
    let height = match kind {
        PieceKind::Sofa | PieceKind::CornerSofa | PieceKind::Armchair => 850.0,
        PieceKind::CoffeeTable => 430.0,
        PieceKind::MediaUnit => 500.0,
        PieceKind::Bookcase => 1800.0,
        PieceKind::Rug => 0.0,
        PieceKind::FloorLamp => 1550.0,
        PieceKind::SideTable => 550.0,
        _ => 750.0,
    };
    Piece {
        width: SizeRange::fixed(width),
        depth: SizeRange::fixed(depth),
        return_length: None,
        height,
        ..rooms::piece(kind)
    }
}
