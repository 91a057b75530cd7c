//! Drawn rooms without end: on no plan do words lie on words, on walls, or on pieces that they do not name.

use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::{Limits, Unwatched};
use resvg::tiny_skia::Point;

use super::frame::Frame;
use super::furniture::on_floor;
use super::outline::solid;
use super::tests::{Block, overlap, ranked, texts};
use super::whole::planned;
use super::{Purpose, Shown};
use crate::drawing::{At, Sheet, Stock, Tone};
use crate::fuzz::mutation::varied;

/// What lies on what it should not.
fn collisions(answer: &Answer, option: &RankedOption, purpose: Purpose) -> Vec<String> {
    let shown = Shown::Option { answer, option };
    let paper = Stock::A4.landscape();
    let area = paper.within(12.0);
    let frame = Frame::within(&answer.brief, &area);
    let marks = planned(shown, purpose, shown.plan(), &area).marks;
    let sheet = Sheet { paper, title: String::new(), description: String::new(), marks };
    let texts = texts(&sheet);
    let ring = |ring: Vec<At>| -> Block {
        std::array::from_fn(|place| Point::from_xy(ring[place].x as f32, ring[place].y as f32))
    };
    let walls: Vec<Block> = solid(&answer.brief).iter().map(|wall| ring(frame.all(wall))).collect();
    let mut bodies: Vec<(String, String, Block)> = Vec::new();
    for one in on_floor(&shown) {
        let size = super::pieces::size(&shown, one.piece, one.size);
        bodies.extend(one.parts().iter().map(|part| (one.piece.name.clone(), size.clone(), ring(frame.all(part)))));
    }
    let mut found = Vec::new();
    for (place, (block, text)) in texts.iter().enumerate() {
        let others = texts[place + 1..].iter().filter(|(other, _)| overlap(block, other));
        found.extend(others.map(|(_, other)| format!("{text} on {other}")));
        found.extend(walls.iter().filter(|wall| overlap(block, wall)).map(|_| format!("{text} on a wall")));
        let strange = bodies.iter().filter(|(name, size, body)| text != name && text != size && overlap(block, body));
        found.extend(strange.map(|(name, ..)| format!("{text} on {name}")));
    }
    found
}

/// Draws rooms and sees that nothing collides on either sheet of their first three options.
fn see(rooms: std::ops::Range<u64>) {
    let mut plans = 0;
    let mut found = Vec::new();
    for room in rooms {
        let Ok(brief) = elbowroom_model::scenario::read(&varied::varied(room), None) else { continue };
        let answer = elbowroom_solver::rank(&brief, &Limits { shown: 0, ..Limits::default() }, &Unwatched);
        for option in answer.options.iter().take(3) {
            for purpose in [Purpose::Client, Purpose::Working] {
                let of = |what| format!("room {room}, option {}, {purpose:?}: {what}", option.rank);
                found.extend(collisions(&answer, option, purpose).into_iter().map(of));
                plans += 1;
            }
        }
    }
    assert!(plans > 20, "{plans}");
    assert!(found.is_empty(), "{} in {plans} plans: {found:#?}", found.len());
}

#[test]
fn nothing_collides_in_two_hundred_drawn_rooms() {
    see(0..200);
}

#[test]
fn nothing_collides_in_any_option_of_any_demo_room() {
    let mut found = Vec::new();
    for answer in ranked() {
        for option in &answer.options {
            for purpose in [Purpose::Client, Purpose::Working] {
                let of = |what| format!("{}, option {}, {purpose:?}: {what}", answer.brief.room.name, option.rank);
                found.extend(collisions(answer, option, purpose).into_iter().map(of));
            }
        }
    }
    assert!(found.is_empty(), "{}: {found:#?}", found.len());
}

/// `cargo test -p elbowroom --lib --release -- --ignored nothing_collides_in_two_thousand_drawn_rooms`
#[test]
#[ignore = "takes minutes"]
fn nothing_collides_in_two_thousand_drawn_rooms() {
    see(0..2000);
}

/// WCAG 2.2, 1.4.3 and 1.4.11 (published): lettering 4.5:1 on what it lies on, what one sits on 3:1 against the floor.
#[test]
fn lettering_stands_out_from_every_ground() {
    let light = |tone: Tone| {
        let [red, green, blue] = tone.shares().map(|share| {
            let share = f64::from(share) / 255.0;
            if share <= 0.04045 { share / 12.92 } else { ((share + 0.055) / 1.055).powf(2.4) }
        });
        0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05
    };
    let contrast = |one: Tone, other: Tone| light(one).max(light(other)) / light(one).min(light(other));
    for ground in [Tone::Seat, Tone::Piece, Tone::Rug, Tone::Floor, Tone::Fixed, Tone::Paper] {
        assert!(contrast(Tone::Ink, ground) >= 4.5, "{ground:?}");
    }
    for tone in [Tone::Grey, Tone::Blue, Tone::Vermilion] {
        assert!(contrast(tone, Tone::Floor) >= 4.5 && contrast(tone, Tone::Paper) >= 4.5, "{tone:?}");
    }
    assert!(contrast(Tone::Seat, Tone::Floor) >= 3.0);
}
