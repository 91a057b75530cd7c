//! What stands in for a kind that the stock has none of, against every way to hand out a small stock.

use elbowroom_model::{PieceKind, scenario};
use elbowroom_solver::Limits;
use elbowroom_solver::stock::{Asking, By, Days, Owned, assign, plans};

use super::enumeration::{WORK, best};
use super::{asking_for, drawn, owned};
use crate::support::varied::{Draw, varied};

/// Varied room `number`, in which something may stand in for the first main seat and for the first of the tables.
fn with_stand_ins(number: u64) -> String {
    let text = varied(number);
    let with = |text: &str, kind: &str, instead: &str| {
        let (from, to) = (format!("kind: {kind},"), format!("kind: {kind}, instead: [{instead}],"));
        if text.matches(&from).count() == 1 { text.replacen(&from, &to, 1) } else { text.to_owned() }
    };
    let text = with(&text, "corner-sofa", "{ kind: sofa, width: 150..260 }");
    let text = if text.contains("instead") { text } else { with(&text, "sofa", "corner-sofa") };
    with(&text, "media-unit", "{ kind: bookcase, width: 60..150 }")
}

#[test]
fn stand_ins_are_handed_out_as_an_enumeration_does() {
    let sound = (0..16).map(with_stand_ins).filter(|text| scenario::read(text, None).is_ok());
    let solved: Vec<Asking> = sound.map(|text| asking_for(&text, Days { from: 0, to: 0 }, 1)).collect();
    let solved: Vec<Asking> =
        solved.into_iter().filter(|asking| !asking.room.others.is_empty() && !asking.room.has_no_option()).collect();
    assert!(solved.len() > 4, "{} rooms with stand-ins", solved.len());
    let mut stood_in = 0;
    for seed in 0..40 {
        let mut draw = Draw(seed);
        let rooms: Vec<Asking> = (0..2)
            .map(|_| {
                let days = Days { from: draw.from(0, 3) as i32, to: 6 };
                let one = &solved[draw.from(0, solved.len() as u64 - 1) as usize];
                Asking { days, priority: draw.from(1, 2) as u32, ..one.clone() }
            })
            .collect();
        let stock: Vec<Owned> = (0..draw.from(4, 6) as usize).map(|place| drawn(&mut draw, place)).collect();
        let found = assign(&rooms, &stock, WORK);
        assert!(found.is_proven(), "seed {seed}: {found:?}");
        let must = found.must.iter().map(|served| served.count.found).collect();
        assert_eq!((must, found.points.found), best(&rooms, &stock), "seed {seed}");
        let plans = plans(&rooms, &stock, &found, &Limits { shown: 0, ..Limits::default() });
        for ((asking, room), plan) in rooms.iter().zip(&found.rooms).zip(&plans) {
            for one in &room.asked {
                let By::Stock { row } = one.by else { continue };
                let kind = stock[row].piece.kind;
                if asking.room.piece_of(&one.asked.pieces, kind).unwrap().1 {
                    stood_in += 1;
                    // It is what is planned.
                    let planned = plan.as_ref().unwrap();
                    assert!(planned.asked.pieces.iter().any(|piece| piece.kind == kind), "seed {seed}");
                }
            }
        }
    }
    assert!(stood_in > 5, "{stood_in} stood in");
}

/// Of two that fit alike the kind that is asked for is picked; a stand-in where there is none of it.
#[test]
fn the_kind_that_is_asked_for_comes_before_what_stands_in() {
    let text = "
units: cm
walls: [{ length: 520 }, { length: 440 }, { length: 520, holds: [{ kind: door, at: 20, width: 83, hinge: left, swings: in, leads_to: entrance }] }, { length: 440 }]
pieces:
  - { kind: sofa, width: 150..220, instead: [{ kind: armchair, width: 60..120 }] }
";
    let rooms = [asking_for(text, Days { from: 0, to: 0 }, 1)];
    let mut stock = vec![
        owned("chair", PieceKind::Armchair, (800.0, None, 800.0), 1),
        owned("sofa", PieceKind::Sofa, (1600.0, None, 850.0), 1),
    ];
    stock[0].piece.score = Some(60.0);
    let picked = |stock: &[Owned]| assign(&rooms, stock, WORK).rooms[0].asked[0].by;
    assert_eq!(picked(&stock), By::Stock { row: 1 });
    stock[1].piece.count = 0;
    assert_eq!(picked(&stock), By::Stock { row: 0 });
    let plan = plans(&rooms, &stock, &assign(&rooms, &stock, WORK), &Limits::default()).remove(0).unwrap();
    assert_eq!((plan.asked.pieces[0].kind, plan.asked.pieces[0].name.as_str()), (PieceKind::Armchair, "armchair"));
    assert!(!plan.options.is_empty());
}
