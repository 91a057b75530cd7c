//! A group of its own beside the main one: its seats near one another and turned to one another, what serves them square to
//! them, and room between its seats and those of any other group.

use elbowroom_model::{Clearance, Rule};

use super::{Cause, LayoutRule, LinearPoint, Pose, Requirement, RuleContext, With, level, separation};
use crate::arrangement::{Relation, Role, alike, face};
use crate::program::Row;

/// The middles of the fronts of two seats of a group are no further apart, mm: the social distance, close phase, to 7 ft
/// (Hall 1966, published). So all of them lie within that of the middle of the group.
const REACH: f64 = 2134.0;

/// Directions in which that is asked for: within the polygon that they bound it holds, and two in a hundred are given away.
const DIRECTIONS: u32 = 16;

/// No seat of a group has another's front further behind its own, mm: it would be turned from it (common practice, no
/// source).
const BEHIND: f64 = 300.0;

/// Groups of their own.
#[derive(Debug)]
pub(super) struct Groups;

impl LayoutRule for Groups {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let mut found = on_one_level(context, first, second);
        if first.piece.group.is_some() || second.piece.group.is_some() {
            found.extend(of_groups(context, first, second));
        }
        found
    }
}

fn of_groups(context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
    if first.piece.kind.is_seat() && second.piece.kind.is_seat() {
        return if first.piece.group == second.piece.group {
            vec![company(context, first, second)]
        } else {
            parted(context, first, second)
        };
    }
    askew(first, second).into_iter().chain(askew(second, first)).collect()
}

/// What serves a seat, and the seats of a group of its own, stand on one side of each step, or past the same end of it.
fn on_one_level(context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
    let serves = |one: &Pose, other: &Pose| one.stand.relation.seat() == Some(other.id);
    let sit_together =
        first.role == Role::Apart && second.role == Role::Apart && first.piece.group == second.piece.group;
    if !sit_together && !serves(first, second) && !serves(second, first) {
        return Vec::new();
    }
    let cause = |with: With| Cause { rule: Rule::Fixed, piece: first.id, with };
    let of_step = |(with, alternatives)| Requirement { cause: cause(with), alternatives };
    level::on_one_side(context, first, second).map(of_step).collect()
}

fn cause(first: &Pose, second: &Pose) -> Cause {
    Cause { rule: Rule::Group, piece: first.id, with: With::Piece(second.id) }
}

/// Near one another; two that are alone face one way, or each other, and one of them at least stands at a wall.
fn company(context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Requirement {
    let (one, other) = (first.stand.facing, second.stand.facing);
    let seats = context.brief.pieces.iter().filter(|piece| piece.is_seat_apart() && piece.group == first.piece.group);
    let is_pair = seats.count() == 2;
    let is_square = !alike(one, other) && !face(one, other);
    let is_adrift = first.wall().is_none() && second.wall().is_none();
    if is_adrift || (is_pair && is_square) {
        return Requirement { cause: cause(first, second), alternatives: Vec::new() };
    }
    Requirement::always(cause(first, second), together(first, second))
}

/// Near one another, and neither behind the other.
fn together(first: &Pose, second: &Pose) -> Vec<Row> {
    let between = front(second).from(&front(first));
    let mut rows = vec![
        between.along(first.stand.facing).at_least(-BEHIND),
        between.along(-second.stand.facing).at_least(-BEHIND),
    ];
    let step = std::f64::consts::TAU / f64::from(DIRECTIONS);
    let reach = REACH * (step / 2.0).cos();
    rows.extend((0..DIRECTIONS).map(|place| {
        let (sine, cosine) = (step * f64::from(place)).sin_cos();
        between.along(first.stand.facing * cosine + first.left() * sine).at_most(reach)
    }));
    rows
}

/// The middle of its front.
fn front(seat: &Pose) -> LinearPoint {
    seat.middle_of_back().moved(seat.stand.facing, &seat.depth())
}

/// Room to walk between the seats of two groups.
fn parted(context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
    let gap = context.brief.rules.get(Clearance::BetweenGroups);
    let cause = Cause { rule: Clearance::BetweenGroups.into(), ..cause(first, second) };
    let pairs = first.parts.iter().flat_map(|one| second.parts.iter().map(move |other| (one, other)));
    pairs.map(|(one, other)| Requirement { cause, alternatives: separation::apart(one, other, gap) }).collect()
}

/// What serves a seat of such a group stands as that seat is turned; what is square may be turned by a quarter.
fn askew(served: &Pose, seat: &Pose) -> Option<Requirement> {
    if seat.role != Role::Apart {
        return None;
    }
    let (own, of_seat) = (served.stand.facing, seat.stand.facing);
    let fits = match served.stand.relation {
        Relation::Before { seat: id } if id == seat.id => alike(own, of_seat),
        Relation::Beside { seat: id, .. } if id == seat.id => {
            let quarter = served.piece.square && (alike(own, of_seat.left()) || alike(own, of_seat.right()));
            alike(own, of_seat) || alike(own, -of_seat) || quarter
        }
        _ => true,
    };
    (!fits).then(|| Requirement { cause: cause(served, seat), alternatives: Vec::new() })
}
