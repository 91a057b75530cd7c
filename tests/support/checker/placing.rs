//! Rules 1 to 6 and 11 of the result format, each by sampling or clipping.

use elbowroom_model::{Brief, Clearance, PieceKind};

use super::ceiling;
use super::groups;
use super::hung;
use super::plane::{
    P, Polygon, along_edges, apart, common, dot, edges, extent, left, minus, overlap, shared, thickness,
};
use super::plane::{to_segment, within};
use super::room::Ground;
use super::stand::Stand;
use super::step;

/// What rounding explains, mm.
pub(crate) const SLACK: f64 = 0.5;
/// How exactly a table lies before its seat, mm.
const PLACE: f64 = 1.0 + 1e-6;
/// How much farther off its wall a piece may stand, mm.
const FOOT: f64 = 304.8;
/// How much of its width a piece may have past the ends of its wall as measured, mm.
const PAST_ENDS: f64 = 50.0;
/// How far from opposite two fronts may be turned, degrees.
pub(crate) const FACING: f64 = 10.0;

/// Whether the table must lie in its place, or only not too near (when pieces are smaller than laid out).
#[derive(Clone, Copy, PartialEq)]
pub(crate) enum Table {
    InPlace,
    NotTooNear,
}

/// What is wrong with pieces that stand so.
pub(crate) fn complaints(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], table: Table) -> Vec<String> {
    let mut all = inside(ground, stands);
    all.extend(overlaps(stands));
    all.extend(zones(brief, ground, stands));
    all.extend(stands.iter().flat_map(|stand| hung::complaints(brief, ground, stand)));
    all.extend(step::complaints(brief, ground, stands));
    all.extend(ceiling::complaints(brief, ground, stands));
    all.extend(tables(brief, ground, stands, table));
    all.extend(media(brief, stands));
    all.extend(stands.iter().filter_map(|stand| off_wall(brief, ground, stand)));
    all.extend(facing(brief, stands));
    all.extend(groups::parted(brief, stands));
    if table == Table::InPlace {
        all.extend(groups::scattered(stands));
        all.extend(super::pairs::complaints(stands));
    }
    all.extend(fronts(brief, ground, stands));
    all
}

fn inside(ground: &Ground, stands: &[Stand<'_>]) -> Vec<String> {
    let outside = |shape: &Polygon| past_walls(ground, shape) > SLACK;
    let wrong = stands.iter().filter(|stand| stand.parts().iter().any(outside));
    wrong.map(|stand| format!("1 room: {} reaches past a wall", stand.name())).collect()
}

/// How far a shape reaches past the walls, by places along its edges and by the room's corners inside it.
fn past_walls(ground: &Ground, shape: &Polygon) -> f64 {
    let from_walls = |p: P| edges(&ground.outline).map(|(a, b)| to_segment(p, a, b)).fold(f64::INFINITY, f64::min);
    let out = along_edges(shape, 5.0).into_iter().filter(|&p| !within(p, &ground.outline)).map(from_walls);
    let into = |p: &P| within(*p, shape);
    let depth = |p: P| edges(shape).map(|(a, b)| to_segment(p, a, b)).fold(f64::INFINITY, f64::min);
    let corners = ground.outline.iter().copied().filter(into).map(depth);
    out.chain(corners).fold(0.0, f64::max)
}

fn overlaps(stands: &[Stand<'_>]) -> Vec<String> {
    let mut all = Vec::new();
    for (i, first) in stands.iter().enumerate() {
        for second in &stands[i + 1..] {
            let depth = most_shared(&first.parts(), &second.parts());
            if depth > SLACK && !first.is_rug() && !second.is_rug() && !hung::over(first, second) {
                all.push(format!("2 overlap: {} and {} by {depth:.1}", first.name(), second.name()));
            }
        }
    }
    all
}

fn most_shared(first: &[Polygon], second: &[Polygon]) -> f64 {
    first.iter().flat_map(|a| second.iter().map(move |b| shared(a, b))).fold(0.0, f64::max)
}

fn zones(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<String> {
    let mut all = Vec::new();
    for stand in stands {
        for zone in &ground.zones {
            let stops = if stand.is_rug() { zone.stops_rugs } else { stand.piece.height_with_screen() > zone.above };
            let depth = most_shared(&stand.parts(), &zone.shapes);
            if stops && depth > SLACK && !hung::clears(brief, ground, stand, zone) {
                all.push(format!("3-4 {}: {} enters {}'s by {depth:.1}", zone.rule, stand.name(), zone.item));
            }
        }
    }
    all
}

fn tables(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], how: Table) -> Vec<String> {
    let mut all = Vec::new();
    for table in of_kind(stands, PieceKind::CoffeeTable) {
        let seats = stands.iter().filter(|seat| seat.piece.kind.is_seat() && seat.piece.group == table.piece.group);
        let tried = seats.map(|seat| before_seat(brief, ground, stands, (seat, table), how));
        all.extend(tried.min_by_key(Vec::len).unwrap_or_default());
    }
    all
}

/// What is wrong with a table if this is the seat that it serves.
fn before_seat(
    brief: &Brief,
    ground: &Ground,
    stands: &[Stand<'_>],
    (seat, table): (&Stand<'_>, &Stand<'_>),
    how: Table,
) -> Vec<String> {
    let needs = brief.rules.get(Clearance::SeatToTable);
    let across = left(seat.facing);
    let clear = extent(&table.main(), seat.facing).0 - extent(&seat.main(), seat.facing).1;
    let mut all = Vec::new();
    let mut say = |what: &str| all.push(format!("5 seat_to_table: {} before {}: {what}", table.name(), seat.name()));
    if clear < needs - PLACE || (clear > needs + PLACE && how == Table::InPlace) {
        say(&format!("lies at {clear:.1}, not {needs:.1}"));
    }
    let (of_seat, of_table) = (extent(&seat.main(), across), extent(&table.main(), across));
    if overlap(of_seat, of_table) <= 0.0 {
        say("does not overlap it sideways");
    }
    if seat.parts().iter().skip(1).any(|run| apart(run, &table.main()) < needs - SLACK) {
        say("lies too near to its return");
    }
    // What has an area in the strip between the two, over the stretch they share.
    let (from, to) = (of_seat.0.max(of_table.0), of_seat.1.min(of_table.1));
    let (near, far) = (extent(&seat.main(), seat.facing).1, extent(&table.main(), seat.facing).0);
    let at = |x: f64, y: f64| [across[0] * x + seat.facing[0] * y, across[1] * x + seat.facing[1] * y];
    let strip = super::plane::counter_clockwise(vec![at(from, near), at(to, near), at(to, far), at(from, far)]);
    let others = stands.iter().filter(|other| !other.is_flat() && ![seat.name(), table.name()].contains(&other.name()));
    let pieces = others.flat_map(Stand::parts);
    let between =
        pieces.chain(ground.bodies.iter().map(|(_, body)| body.clone())).any(|it| shared(&strip, &it) > SLACK);
    if from < to && near < far && between {
        say("something stands in between");
    }
    all
}

fn media(brief: &Brief, stands: &[Stand<'_>]) -> Vec<String> {
    let needs = brief.rules.get(Clearance::Passage);
    let tables: Vec<&Stand<'_>> = of_kind(stands, PieceKind::CoffeeTable).collect();
    let mut all = Vec::new();
    let watched: Vec<&str> = hung::screens(brief, stands).map(Stand::name).collect();
    let kinds = [PieceKind::MediaUnit, PieceKind::WallScreen];
    for media in stands.iter().filter(|stand| kinds.contains(&stand.piece.kind)) {
        let faced = watched.contains(&media.name()) && tables.is_empty();
        let seats = stands.iter().filter(|seat| seat.piece.kind.is_seat() && faced && face(seat, media));
        let fronts = seats.map(|seat| (seat.name(), seat.front().to_vec()));
        let shapes = tables.iter().map(|table| (table.name(), table.main())).chain(fronts);
        for (name, shape) in shapes {
            let clear = apart(&shape, &media.main());
            if clear < needs - SLACK {
                all.push(format!("5 passage: {name} and {} are {clear:.1} apart", media.name()));
            }
        }
    }
    all
}

fn off_wall(brief: &Brief, ground: &Ground, stand: &Stand<'_>) -> Option<String> {
    let say = |what: String| Some(format!("6 off_wall: {} {what}", stand.name()));
    let Some(name) = &stand.at_wall else {
        let kind = stand.piece.kind;
        let free = kind.is_storage() || kind == PieceKind::MediaUnit;
        return if free { say("must stand at a wall".to_owned()) } else { None };
    };
    let Some(wall) = ground.walls.iter().find(|wall| wall.name == *name) else {
        return say(format!("stands at no wall: {name}"));
    };
    let at = brief.room.walls.iter().position(|wall| wall.name == *name);
    let kept = |it: &elbowroom_model::KeptFree| Some(it.wall.0) == at && it.kind == stand.piece.kind;
    if brief.room.kept_free.iter().any(kept) {
        return Some(format!("6 keep_free: {} must not stand at {name}", stand.name()));
    }
    let main = stand.main();
    // The back edge: the two corners that lie farthest back.
    let mut corners = main.clone();
    corners.sort_by(|a, b| dot(*a, stand.facing).total_cmp(&dot(*b, stand.facing)));
    let off: Vec<f64> = corners[..2].iter().map(|&p| dot(minus(p, wall.ends[0]), wall.inward)).collect();
    let (least, most) = (off[0].min(off[1]), off[0].max(off[1]));
    let gap = stand.piece.off_wall;
    if most - least > SLACK || dot(stand.facing, wall.inward) < 0.0 {
        return say("has a back that is not parallel to its wall".to_owned());
    }
    let furthest = if stand.hung_at().is_some() { f64::INFINITY } else { gap + FOOT };
    if least < gap - SLACK || least > furthest + SLACK {
        return say(format!("stands {least:.1} off its wall, gap {gap:.1}"));
    }
    let back = extent(&corners[..2], wall.along);
    let past = (back.1 - back.0) - overlap(wall.measured, back).max(0.0);
    // Where the rule of solid wall is in force it says how far.
    let has_own_limit = brief.rules.get(Clearance::SolidWall) <= 0.0;
    if has_own_limit && past > PAST_ENDS + SLACK {
        say(format!("has {past:.1} past the ends of its wall"))
    } else {
        None
    }
}

/// Whether two pieces face each other: within 10 degrees of opposite, fronts overlapping sideways, each ahead.
pub(crate) fn face(first: &Stand<'_>, second: &Stand<'_>) -> bool {
    let turned = (-dot(first.facing, second.facing)).clamp(-1.0, 1.0).acos().to_degrees();
    let across = left(first.facing);
    let middle = |stand: &Stand<'_>| {
        let (low, high) = extent(&stand.main(), first.facing);
        (low + high) / 2.0
    };
    turned <= FACING
        && overlap(extent(&first.front(), across), extent(&second.front(), across)) > SLACK
        && middle(second) > middle(first)
}

fn facing(brief: &Brief, stands: &[Stand<'_>]) -> Vec<String> {
    let mut all = Vec::new();
    for (i, seat) in stands.iter().enumerate().filter(|(_, stand)| stand.piece.kind.is_seat()) {
        for (j, other) in stands.iter().enumerate() {
            let is_screen = hung::screens(brief, stands).any(|screen| screen.name() == other.name());
            let rule = match other.piece.kind {
                _ if is_screen => Clearance::ScreenToSeat,
                kind if kind.is_seat() && j > i => Clearance::FacingSeats,
                _ => continue,
            };
            let clear = apart(&seat.front(), &other.front());
            if face(seat, other) && clear < brief.rules.get(rule) - SLACK {
                all.push(format!("11 {}: {} and {} are {clear:.1} apart", rule.key(), seat.name(), other.name()));
            }
        }
    }
    all
}

fn fronts(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<String> {
    let mut all = Vec::new();
    for stand in stands {
        let kind = stand.piece.kind;
        let rule = match kind {
            PieceKind::Bookcase | PieceKind::Sideboard | PieceKind::Cabinet => Clearance::StorageFront,
            PieceKind::Desk | PieceKind::Piano => Clearance::DeskFront,
            PieceKind::DiningTable if stand.piece.passing => Clearance::DiningPassing,
            PieceKind::DiningTable => Clearance::DiningChair,
            _ => continue,
        };
        let (half, depth, reach) = (stand.width / 2.0, stand.depth, brief.rules.get(rule));
        let mut sides = vec![((-half, half), (depth, depth + reach))];
        if kind == PieceKind::DiningTable && depth > stand.width {
            sides = vec![((half, half + reach), (0.0, depth)), ((-half - reach, -half), (0.0, depth))];
        } else if kind == PieceKind::DiningTable && stand.at_wall.is_none() {
            sides.push(((-half, half), (-reach, 0.0)));
        }
        for (across, out) in sides {
            let zone = stand.block(across, out);
            // One opens storage over floor that is kept open; chairs stand on none.
            let stops_it = |other: &Stand<'_>| if kind.is_storage() { !other.is_flat() } else { !other.is_rug() };
            let others = stands.iter().filter(|other| stops_it(other) && other.name() != stand.name());
            let mut stops: Vec<Polygon> = others.flat_map(Stand::parts).collect();
            stops.extend(ground.bodies.iter().map(|(_, body)| body.clone()));
            if kind == PieceKind::DiningTable {
                let swings = ground.zones.iter().filter(|zone| zone.rule == "door_swing");
                stops.extend(swings.flat_map(|zone| zone.shapes.clone()));
            }
            let over_step = ground.steps.iter().any(|(_, line)| step::is_over(&zone, line, brief.room.measured_within));
            if over_step
                || past_walls(ground, &zone) > SLACK
                || stops.iter().any(|stop| thickness(&common(&zone, stop)) > SLACK)
            {
                all.push(format!("11 {}: not clear at {}", rule.key(), stand.name()));
            }
        }
    }
    all
}

fn of_kind<'s, 'a>(stands: &'s [Stand<'a>], kind: PieceKind) -> impl Iterator<Item = &'s Stand<'a>> {
    stands.iter().filter(move |stand| stand.piece.kind == kind)
}
