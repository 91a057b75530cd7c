//! The ways in which chairs stand that may be turned.

use elbowroom_model::{SecondPlace, TURNS, Turned};
use elbowroom_solver::arrangement::{Arrangement, Stand};

use super::of;
use super::plan::{armchairs, brief, rectangle, sofa};

/// The arrangements of a sofa and one chair.
fn arrangements(turned: Turned) -> Vec<Arrangement> {
    let mut pieces = [vec![sofa()], armchairs(1)].concat();
    pieces.truncate(2);
    (pieces[1].turned, pieces[1].alike) = (turned, None);
    of(&brief(rectangle(6000.0, 6000.0), pieces)).arrangements
}

fn stands(arrangement: &Arrangement) -> &[Stand] {
    &arrangement.standings[1].stands
}

#[test]
fn a_chair_may_stand_square_or_turned_to_either_side_as_the_file_says() {
    let count = |turned| arrangements(turned).iter().map(|one| stands(one).len()).collect::<Vec<_>>();
    let (no, yes, either) = (count(Turned::No), count(Turned::Yes), count(Turned::Either));
    assert!(yes.iter().all(|yes| *yes == 2 * TURNS.len()), "{yes:?}");
    let both: Vec<usize> = no.iter().zip(&yes).map(|(no, yes)| no + yes).collect();
    assert_eq!(either, both, "square first, then turned");
}

#[test]
fn what_is_turned_stands_free_by_its_angle_from_the_way_it_would_look() {
    for arrangement in arrangements(Turned::Either) {
        let place = arrangement.choices.seats()[0].place;
        let facing = arrangement.choices.facing;
        let square = match place {
            SecondPlace::Opposite => -facing,
            SecondPlace::Left => facing.right(),
            SecondPlace::Right => facing.left(),
        };
        for stand in stands(&arrangement) {
            let Some(turn) = stand.turn else { continue };
            assert_eq!(stand.at_wall, None);
            assert_eq!(turn.square, square);
            let by = square.turn_to(stand.facing).to_degrees();
            assert!((by.abs() - turn.degrees).abs() < 1e-9, "{by} {turn:?}");
            assert!((by - turn.counter_clockwise()).abs() < 1e-9, "{by} {turn:?}");
        }
    }
}
