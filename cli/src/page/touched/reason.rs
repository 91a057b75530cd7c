//! What a criterion speaks of, as things of the plan.

use elbowroom_solver::BodyId;
use elbowroom_solver::answer::{RankedOption, Thing};
use elbowroom_solver::criteria::arrival::FirstSeen;
use elbowroom_solver::criteria::balance::BalanceFinding;
use elbowroom_solver::criteria::entrance::{EntranceFinding, Met};
use elbowroom_solver::criteria::obstacles::Whose;
use elbowroom_solver::criteria::openness::{OpennessFinding, SideFinding};
use elbowroom_solver::criteria::screen::ScreenFinding;
use elbowroom_solver::criteria::upkeep::{CordFault, UpkeepFinding};
use elbowroom_solver::criteria::view::ViewFinding;
use elbowroom_solver::criteria::ways::{PastGroup, WaysFinding};
use elbowroom_solver::criteria::{Absent, Finding, Judgement};

use crate::render::plan::Marked;

/// What a criterion speaks of, and what that has to do with.
pub(super) fn marked(option: &RankedOption, judgement: &Judgement) -> Marked {
    let seat = Thing::Piece(option.main_seat);
    let (what, by) = match &judgement.finding {
        Finding::View(found) => view(found),
        Finding::Entrance(found) => entrance(found),
        Finding::Openness(found) => openness(found),
        Finding::Ways(found) => return ways(option, found),
        Finding::Screen(found) => screen(found),
        Finding::Talk(found) => (vec![found.out.map_or(seat, Thing::Piece)], vec![seat]),
        Finding::Daylight(found) => (vec![Thing::Item(found.window)], vec![seat]),
        Finding::Seats(_) => (vec![seat], Vec::new()),
        Finding::Balance(found) => balance(found),
        Finding::Upkeep(found) => upkeep(found),
        Finding::Fireside(found) => (vec![Thing::Item(found.fire)], vec![seat]),
        Finding::Absent(Absent::Screen(piece)) => (vec![Thing::Piece(*piece)], Vec::new()),
        Finding::Absent(Absent::Seats | Absent::Ways) => (Vec::new(), Vec::new()),
    };
    let by = by.into_iter().filter(|thing| !what.contains(thing)).collect();
    Marked { what, by, way: None }
}

type Things = (Vec<Thing>, Vec<Thing>);

fn view(found: &ViewFinding) -> Things {
    let avoided = found.avoided.iter().flat_map(|avoided| avoided.windows.iter());
    let windows = found.windows.iter().chain(avoided).copied().map(Thing::Item).collect();
    let hidden = found.hidden.map(|hidden| whose(hidden.by));
    (windows, std::iter::once(Thing::Piece(found.seat)).chain(hidden).collect())
}

fn entrance(found: &EntranceFinding) -> Things {
    let met = found.met.map(|met| match met {
        Met::Back { seat, .. } => Thing::Piece(seat),
        Met::First(FirstSeen::Piece { piece, .. }) => Thing::Piece(piece),
        Met::First(FirstSeen::Item(item)) => Thing::Item(item),
        Met::First(FirstSeen::Wall(wall)) => Thing::Wall(wall),
    });
    let barred = found.barred.map(|bar| whose(bar.whose));
    (vec![Thing::Item(found.doorway)], met.into_iter().chain(barred).collect())
}

fn openness(found: &OpennessFinding) -> Things {
    let (mut openings, mut bars) = (Vec::new(), Vec::new());
    for side in &found.sides {
        match side {
            SideFinding::Open { opening, closed, .. } => {
                openings.push(Thing::Item(*opening));
                bars.extend(closed.map(|bar| whose(bar.whose)));
            }
            SideFinding::Away { opening, .. } => openings.push(Thing::Item(*opening)),
        }
    }
    (openings, bars)
}

/// The tightest way, and what stands in the ways.
fn ways(option: &RankedOption, found: &WaysFinding) -> Marked {
    let ends = found.tightest.ends;
    let way = option.routes.iter().position(|route| (route.from, route.to) == (ends.from, ends.to));
    let through = match found.past_group {
        PastGroup::Through { between, .. } => between.map(Thing::Piece).to_vec(),
        PastGroup::Behind(_) | PastGroup::Aside | PastGroup::NoMainWay => Vec::new(),
    };
    let by = through.into_iter().chain(found.floor.cut_off_by.map(Thing::Piece)).collect();
    Marked { what: [ends.from, ends.to].map(Thing::from).to_vec(), by, way }
}

fn screen(found: &ScreenFinding) -> Things {
    let hidden = found.hidden.and_then(|hidden| hidden.by).map(whose);
    let light = [found.mirrored, found.dazzles].into_iter().flatten().map(Thing::Item);
    (vec![Thing::Piece(found.seat)], hidden.into_iter().chain(light).collect())
}

fn balance(found: &BalanceFinding) -> Things {
    match found.worst {
        Some(worst) => (vec![Thing::Piece(worst.piece)], vec![worst.from]),
        None => (vec![Thing::Piece(found.seat)], Vec::new()),
    }
}

fn upkeep(found: &UpkeepFinding) -> Things {
    let items = found.heat_taken.iter().chain(&found.out_of_reach).copied().map(Thing::Item);
    let pieces = found.cords.iter().map(|fault| match fault {
        CordFault::FarFromSocket { piece, .. } | CordFault::AcrossWay { piece, .. } => Thing::Piece(*piece),
    });
    (items.chain(pieces).collect(), Vec::new())
}

const fn whose(whose: Whose) -> Thing {
    match whose {
        Whose::Back(piece)
        | Whose::ReturnBack(piece)
        | Whose::SecondReturnBack(piece)
        | Whose::Screen(piece)
        | Whose::Piece(piece) => Thing::Piece(piece),
        Whose::Body(BodyId::Fixed(fixed)) => Thing::Fixed(fixed),
        Whose::Body(BodyId::Item(item)) => Thing::Item(item),
    }
}
