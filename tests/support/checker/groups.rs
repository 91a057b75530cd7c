//! Groups of their own: room between the seats of two groups; near one another, what serves them at hand.

use elbowroom_model::{Brief, Clearance, PieceKind};

use super::placing::SLACK;
use super::plane::{P, apart, length, minus};
use super::stand::Stand;

/// Hall 1966: social distance, close phase, to 7 ft.
const REACH: f64 = 2134.0;
/// A surface within 450 of a seat place (trade).
const AT_HAND: f64 = 450.0;

fn seats<'s, 'a>(stands: &'s [Stand<'a>]) -> impl Iterator<Item = &'s Stand<'a>> {
    stands.iter().filter(|stand| stand.piece.kind.is_seat())
}

/// What is wrong between the seats of two groups.
pub(crate) fn parted(brief: &Brief, stands: &[Stand<'_>]) -> Vec<String> {
    let wanted = brief.rules.get(Clearance::BetweenGroups);
    let mut all = Vec::new();
    for (i, seat) in seats(stands).enumerate() {
        for other in seats(stands).skip(i + 1).filter(|other| other.piece.group != seat.piece.group) {
            let (first, second) = (seat.parts(), other.parts());
            let pairs = first.iter().flat_map(|a| second.iter().map(move |b| apart(a, b)));
            let clear = pairs.fold(f64::INFINITY, f64::min);
            if clear < wanted - SLACK {
                all.push(format!("11 between_groups: {} and {} are {clear:.1} apart", seat.name(), other.name()));
            }
        }
    }
    all
}

/// What is too far from its group.
pub(crate) fn scattered(stands: &[Stand<'_>]) -> Vec<String> {
    let front = |seat: &Stand<'_>| {
        let [a, b] = seat.front();
        [(a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0]
    };
    let mut all = Vec::new();
    for stand in stands.iter().filter(|stand| stand.piece.group.is_some()) {
        let group: Vec<&Stand<'_>> = seats(stands).filter(|seat| seat.piece.group == stand.piece.group).collect();
        let fronts: Vec<P> = group.iter().map(|seat| front(seat)).collect();
        let mean = |axis: usize| fronts.iter().map(|p| p[axis]).sum::<f64>() / fronts.len() as f64;
        let off = match stand.piece.kind {
            kind if kind.is_seat() => length(minus(front(stand), [mean(0), mean(1)])) - REACH,
            // Its place is that of any coffee table.
            PieceKind::CoffeeTable => continue,
            _ => group.iter().map(|seat| apart(&seat.main(), &stand.main())).fold(f64::INFINITY, f64::min) - AT_HAND,
        };
        if off > SLACK {
            all.push(format!("group: {} stands {off:.1} too far from its group", stand.name()));
        }
    }
    all
}
