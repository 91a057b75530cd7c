//! Rule 7: by discs that travel.

use elbowroom_model::{Brief, Clearance, Hinge, ItemKind, LeadsTo, PieceKind, WallItem};
use serde_json::Value;

use super::disc::{Gate, Target, travels};
use super::plane::{P, Polygon, add, apart, cross, dot, left, length, minus, unit};
use super::room::Ground;
use super::stand::Stand;
use super::step;
use super::used::Used;

/// How exactly a width is told, mm.
const EXACT: f64 = 5.0;

/// Where a route ends.
#[derive(Clone, Copy)]
enum End<'a> {
    Item(&'a WallItem),
    Used(&'a Used),
    Piece(&'a Stand<'a>),
}

/// A route that must be there.
struct Way<'a> {
    from: &'a WallItem,
    to: End<'a>,
    rule: f64,
}

/// A mouth before it is widened: a line, a stretch on it, and how far it may reach.
pub(super) struct Mouth {
    origin: P,
    along: P,
    out: P,
    span: (f64, f64),
    limits: (f64, f64),
    wall: Option<usize>,
}

/// What is wrong with the routes that an option tells.
pub(crate) fn complaints(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], routes: &Value) -> Vec<String> {
    let none = Vec::new();
    let routes = routes.as_array().unwrap_or(&none);
    ways(brief, ground, stands).iter().filter_map(|way| told(brief, ground, stands, way, routes)).collect()
}

fn told(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], way: &Way<'_>, routes: &[Value]) -> Option<String> {
    let (from, to) = (way.from.name.as_str(), way.to.name());
    let say = |what: String| Some(format!("7 route {from} to {to}: {what}"));
    let is = |route: &&Value| {
        let ends = (route["from"].as_str(), route["to"].as_str());
        ends == (Some(from), Some(to)) || ends == (Some(to), Some(from))
    };
    let Some(route) = routes.iter().find(is) else { return say("is not told".to_owned()) };
    let (Some(width), Some(needs)) = (route["width"].as_f64(), route["needs"].as_f64()) else {
        return say("has no width or needs".to_owned());
    };
    let Some((a, b)) = gates(brief, ground, way) else { return say("has no mouth".to_owned()) };
    let passes = |shapes: &[Polygon], diameter: f64| travels(shapes, &a, &Target::Gate(b), diameter);
    if (needs - way.rule).abs() > 0.05 {
        let less = needs < way.rule && !matches!(way.to, End::Piece(_));
        if !less || passes(&bare(brief, ground), (needs + EXACT).min(way.rule)) {
            return say(format!("needs {needs:.1} where the rule is {:.1}", way.rule));
        }
    }
    if width < needs - 0.05 {
        return say(format!("is {width:.1} wide and needs {needs:.1}"));
    }
    let shapes = around(brief, ground, stands, way, stands);
    if !passes(&shapes, width - EXACT) {
        return say(format!("is narrower than {width:.1}"));
    }
    if passes(&shapes, width + EXACT) {
        return say(format!("is wider than {width:.1}"));
    }
    None
}

/// What is wrong with the routes where so much less is wide enough, the mouths where `laid_out` has them.
pub(crate) fn too_narrow(
    brief: &Brief,
    ground: &Ground,
    laid_out: &[Stand<'_>],
    stands: &[Stand<'_>],
    routes: &Value,
    spare: f64,
) -> Vec<String> {
    let none = Vec::new();
    let routes = routes.as_array().unwrap_or(&none);
    let mut all = Vec::new();
    for way in ways(brief, ground, laid_out) {
        let name = way.to.name();
        let is = |route: &&Value| route["from"] == way.from.name.as_str() && route["to"] == name;
        let needs = routes.iter().find(is).and_then(|route| route["needs"].as_f64()).unwrap_or(way.rule);
        let shapes = around(brief, ground, laid_out, &way, stands);
        let wide =
            gates(brief, ground, &way).is_some_and(|(a, b)| travels(&shapes, &a, &Target::Gate(b), needs - spare));
        if !wide {
            all.push(format!("7 route {} to {name}: too narrow", way.from.name));
        }
    }
    all
}

impl End<'_> {
    fn name(&self) -> &str {
        match self {
            Self::Item(item) => &item.name,
            Self::Used(used) => &used.name,
            Self::Piece(stand) => stand.name(),
        }
    }
}

pub(super) fn entrances(brief: &Brief) -> impl Iterator<Item = &WallItem> {
    brief.room.items.iter().filter(|item| item.kind.leads_to() == Some(&LeadsTo::Entrance))
}

fn ways<'a>(brief: &'a Brief, ground: &'a Ground, stands: &'a [Stand<'a>]) -> Vec<Way<'a>> {
    let (walkway, passage) = (brief.rules.get(Clearance::Walkway), brief.rules.get(Clearance::Passage));
    let mut all: Vec<Way<'_>> = Vec::new();
    for from in entrances(brief) {
        for to in brief.room.items.iter().filter(|item| item.name != from.name) {
            let back = |way: &Way<'_>| way.from.name == to.name && way.to.name() == from.name;
            let rule = match &to.kind {
                ItemKind::Door(_) | ItemKind::Opening(_) if !all.iter().any(back) => walkway,
                ItemKind::Window(it) if it.must_reach || (it.opens && brief.rules.profile == "wheelchair") => passage,
                _ => continue,
            };
            all.push(Way { from, to: End::Item(to), rule });
        }
        all.extend(ground.used.iter().map(|used| Way { from, to: End::Used(used), rule: passage }));
        let led_to = stands.iter().filter(|stand| {
            let kind = stand.piece.kind;
            kind.is_seat()
                || (kind == PieceKind::DiningTable && stand.piece.seats.is_some())
                || matches!(
                    kind,
                    PieceKind::Bookcase
                        | PieceKind::Sideboard
                        | PieceKind::Cabinet
                        | PieceKind::Desk
                        | PieceKind::Piano
                        | PieceKind::OpenFloor
                )
        });
        all.extend(led_to.map(|stand| Way { from, to: End::Piece(stand), rule: passage }));
    }
    all
}

/// Walls and what stands for good.
pub(super) fn bare(brief: &Brief, ground: &Ground) -> Vec<Polygon> {
    let walls = ground.walls.iter().map(|wall| wall.ends.to_vec());
    // In a wheelchair nobody crosses a step; its line may lie so much to either side.
    let steps = ground.steps.iter().filter(|_| brief.rules.profile == "wheelchair");
    let walls = walls.chain(steps.map(|(_, line)| step::strip(line, brief.room.measured_within)));
    walls.chain(ground.bodies.iter().chain(&ground.leaves).map(|(_, body)| body.clone())).collect()
}

/// What stops a disc: not rugs, nor, on the way to a seat, the coffee tables within a passage of it as laid out.
fn around(brief: &Brief, ground: &Ground, laid_out: &[Stand<'_>], way: &Way<'_>, stands: &[Stand<'_>]) -> Vec<Polygon> {
    let passage = brief.rules.get(Clearance::Passage);
    let own_table = |stand: &Stand<'_>| match way.to {
        End::Piece(seat) if seat.piece.kind.is_seat() && stand.moves_aside() => {
            let table = laid_out.iter().find(|other| other.name() == stand.name());
            table.is_some_and(|table| apart(&table.main(), &seat.front()) <= passage + 0.05)
        }
        _ => false,
    };
    let mut all = bare(brief, ground);
    all.extend(stands.iter().filter(|stand| stand.is_in_the_way() && !own_table(stand)).flat_map(Stand::parts));
    all
}

fn gates(brief: &Brief, ground: &Ground, way: &Way<'_>) -> Option<(Gate, Gate)> {
    let from = item_mouth(brief, ground, way.from);
    let to = match way.to {
        End::Item(item) => item_mouth(brief, ground, item),
        End::Used(used) => used_mouth(ground, used),
        End::Piece(stand) => piece_mouth(ground, stand),
    };
    let gates = (from.widened(way.rule, Some(&to)), to.widened(way.rule, Some(&from)));
    let fits = |gate: &Gate| gate.ends[0] != gate.ends[1];
    (fits(&gates.0) && fits(&gates.1)).then_some(gates)
}

pub(super) fn item_mouth(brief: &Brief, ground: &Ground, item: &WallItem) -> Mouth {
    let wall = &ground.walls[item.wall.0];
    let start = super::room::xy(brief.room.walls[item.wall.0].start);
    let origin = add(start, wall.inward, brief.room.measured_within);
    let on = |p: P| dot(minus(p, origin), wall.along);
    let mut limits = (on(wall.ends[0]), on(wall.ends[1]));
    let span = (item.at.max(limits.0), (item.at + item.width).min(limits.1));
    match &item.kind {
        // A leaf that rests in the room ends the doorway at its hinge.
        ItemKind::Door(door) if ground.leaves.iter().any(|(of, _)| *of == item.name) => match door.hinge {
            Some(Hinge::Left) => limits.0 = span.0,
            Some(Hinge::Right) => limits.1 = span.1,
            None => {}
        },
        _ => {}
    }
    let mouth = Mouth { origin, along: wall.along, out: wall.inward, span, limits, wall: Some(item.wall.0) };
    let under = |other: &WallItem| match &other.kind {
        ItemKind::Radiator(it) if other.wall == item.wall && matches!(item.kind, ItemKind::Window(_)) => {
            let shared = (other.at.max(item.at), (other.at + other.width).min(item.at + item.width));
            (shared.0 < shared.1).then_some((shared, it.depth))
        }
        _ => None,
    };
    let radiators = brief.room.items.iter().filter_map(under);
    match radiators.max_by(|a, b| (a.0.1 - a.0.0).total_cmp(&(b.0.1 - b.0.0))) {
        Some((span, depth)) => {
            let origin = add(origin, wall.inward, depth);
            Mouth { origin, span, wall: None, limits: walls_on(ground, origin, wall.along, span), ..mouth }
        }
        None => mouth,
    }
}

fn used_mouth(ground: &Ground, used: &Used) -> Mouth {
    let [from, to] = used.edge;
    let (along, span) = (unit(minus(to, from)), (0.0, length(minus(to, from))));
    Mouth { origin: from, along, out: used.out, span, limits: walls_on(ground, from, along, span), wall: None }
}

fn piece_mouth(ground: &Ground, stand: &Stand<'_>) -> Mouth {
    let origin = add(stand.anchor, stand.facing, stand.depth);
    let along = stand.along();
    let least = stand.piece.width.least.min(stand.width);
    let (from, to) = stand.bay();
    // A U has one width, and its whole bay before it.
    let to = if stand.second.is_some() { to } else { least };
    let span = if stand.away.is_some() { (from, to.max(from)) } else { (-least / 2.0, least / 2.0) };
    let mut limits = walls_on(ground, origin, along, span);
    if stand.away.is_some() {
        limits.0 = limits.0.max(from);
    }
    Mouth { origin, along, out: stand.facing, span, limits, wall: None }
}

/// How far a line runs both ways from the middle of a stretch before it meets a wall.
fn walls_on(ground: &Ground, origin: P, along: P, span: (f64, f64)) -> (f64, f64) {
    let middle = (span.0 + span.1) / 2.0;
    let from = add(origin, along, middle);
    let (mut low, mut high) = (f64::NEG_INFINITY, f64::INFINITY);
    for wall in &ground.walls {
        let [a, b] = wall.ends.map(|end| dot(minus(end, from), left(along)));
        if a * b < 0.0 || (a == 0.0) != (b == 0.0) {
            let place = add(wall.ends[0], minus(wall.ends[1], wall.ends[0]), a / (a - b));
            let way = dot(minus(place, from), along);
            debug_assert!(cross(along, minus(place, from)).abs() < 1e-3);
            if way >= 0.0 { high = high.min(middle + way) } else { low = low.max(middle + way) }
        }
    }
    (low, high)
}

impl Mouth {
    pub(super) fn widened(&self, rule: f64, other: Option<&Self>) -> Gate {
        let (mut low, mut high) = self.limits;
        if let Some(other) = other.filter(|other| self.wall.is_some() && other.wall == self.wall) {
            if other.span.0 >= self.span.1 {
                high = high.min((other.span.0 + self.span.1) / 2.0);
            } else {
                low = low.max((other.span.1 + self.span.0) / 2.0);
            }
        }
        let (mut from, mut to) = self.span;
        let missing = (rule - (to - from)).max(0.0);
        // A millionth at a time would do; in closed form: each end takes half, then what the other could not.
        let (down, up) = ((missing / 2.0).min((from - low).max(0.0)), (missing / 2.0).min((high - to).max(0.0)));
        (from, to) = (from - down, to + up);
        let left_over = missing - down - up;
        (from, to) = (from - left_over.min((from - low).max(0.0)), to + left_over.min((high - to).max(0.0)));
        Gate { ends: [add(self.origin, self.along, from), add(self.origin, self.along, to)], out: self.out }
    }
}
