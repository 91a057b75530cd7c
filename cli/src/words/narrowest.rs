//! Where a way is narrowest, in words: between what stands on it, at the front that it leads to, or in a doorway at its end,
//! whose own width is no matter of the room and is told beside it.

use elbowroom_model::Brief;
use elbowroom_model::article::the;
use elbowroom_solver::answer::Thing;
use elbowroom_solver::routes::Route;

use super::lengths::taped_bare;
use super::rank::between;

/// A doorway is as wide as the way, mm, within what a tape shows.
const AS_WIDE: f64 = 0.5;

/// `coffee table and media unit; the hall door itself 76`.
pub(crate) fn narrowest(brief: &Brief, route: &Route) -> String {
    let on_the_way = route.pinch.map(|pinch| between(brief, pinch.between.map(Thing::from)));
    let ends = [route.from, route.to].map(Thing::from);
    let doorway = narrow_doorway(brief, ends, route.width);
    match (on_the_way, doorway) {
        (Some(pinch), None) => pinch,
        (Some(pinch), Some((name, width))) => {
            format!("{pinch}; {} itself {}", the(name), taped_bare(brief.units, width))
        }
        (None, Some((name, width))) if width >= route.width - AS_WIDE => format!("{} itself", the(name)),
        (None, Some((name, width))) => {
            format!("nothing in the room; {} itself {}", the(name), taped_bare(brief.units, width))
        }
        (None, None) => at_the_end(brief, ends[1]),
    }
}

/// The doorway at an end of a way that is no wider than the room leaves it: its name and its own width, mm. A walker turns
/// aside there, which the width of a way in the room does not tell.
pub(crate) fn narrow_doorway(brief: &Brief, ends: [Thing; 2], width: f64) -> Option<(&str, f64)> {
    let items = ends.into_iter().filter_map(|end| match end {
        Thing::Item(item) => brief.room.item(item),
        _ => None,
    });
    let narrow = items.filter(|item| item.width <= width + AS_WIDE);
    narrow.min_by(|one, other| one.width.total_cmp(&other.width)).map(|item| (item.name.as_str(), item.width))
}

/// Of a way that nothing narrows.
fn at_the_end(brief: &Brief, to: Thing) -> String {
    match to {
        Thing::Item(_) => "nothing in the room".to_owned(),
        _ => format!("the front of {}", the(to.name(brief))),
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Brief, Clearance, ItemId, PieceId, Point, scenario};
    use elbowroom_solver::routes::{End, Pinch, Route, ShapeId};

    use super::narrowest;

    fn brief() -> Brief {
        let text = "
units: cm
walls:
  - name: hall wall
    length: 500
    holds:
      - { kind: door, name: hall door, at: 20, width: 76, hinge: left, swings: out, leads_to: entrance }
      - { kind: door, name: yard door, at: 300, width: 95, hinge: left, swings: out, leads_to: garden }
  - { name: stair wall, length: 400 }
  - { name: back wall, length: 500 }
  - { name: yard wall, length: 400 }
pieces:
  - { kind: sofa }
  - { kind: coffee-table }
";
        scenario::read(text, None).unwrap()
    }

    fn told(to: End, width: f64, between: Option<[usize; 2]>) -> String {
        let of_piece = |piece| ShapeId::Part { piece: PieceId(piece), part: 0 };
        let pinch = between.map(|two| Pinch { between: two.map(of_piece), at: [Point::default(); 2] });
        let from = End::Item(ItemId(0));
        let rule = Clearance::Walkway;
        let route = Route { from, to, rule, needs: 610.0, width, pinch, chain: Vec::new(), length: None };
        narrowest(&brief(), &route)
    }

    #[test]
    fn a_doorway_that_is_no_wider_than_its_way_is_told_beside_it() {
        let (yard, sofa) = (End::Item(ItemId(1)), End::Piece(PieceId(0)));
        assert_eq!(told(yard, 700.0, Some([0, 1])), "sofa and coffee table");
        assert_eq!(told(yard, 914.4, Some([0, 1])), "sofa and coffee table; the hall door itself 76");
        assert_eq!(told(yard, 914.4, None), "nothing in the room; the hall door itself 76");
        assert_eq!(told(yard, 700.0, None), "nothing in the room");
        assert_eq!(told(sofa, 760.0, None), "the hall door itself");
        assert_eq!(told(sofa, 700.0, None), "the front of the sofa");
    }
}
