//! Drawn rooms without end: on no plan do words lie on words, on walls, or on pieces that they do not name, and no leader, no
//! line that measures and none that leads to one runs through words.

use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::{Limits, Unwatched};
use resvg::tiny_skia::Point;

use super::figure::Drawn;
use super::frame::Frame;
use super::furniture::on_floor;
use super::outline::solid;
use super::tests::{Block, overlap, ranked, texts};
use super::whole::planned;
use super::{Purpose, Shown};
use crate::drawing::{At, Fill, Mark, Path, Sheet, Step, Stock, Tone, meet};
use crate::fuzz::mutation::varied;

/// Layers of lines that no words lie on: what measures, what leads to it, ways, and among the labels their leaders.
const LINES: [&str; 6] = ["gaps", "from-walls", "measures", "ways", "pinches", "labels"];

/// Every straight stretch of these layers, with the layer that it is in.
fn lines(marks: &[Mark]) -> Vec<(&'static str, [At; 2])> {
    let (mut layer, mut lines) = ("", Vec::new());
    for mark in marks {
        match mark {
            Mark::Layer(name) => layer = *name,
            Mark::Path(Path { steps, pen: Some(_), fill: Fill::None }) if LINES.contains(&layer) => {
                let places: Vec<At> = steps.iter().filter_map(place).collect();
                lines.extend(places.windows(2).map(|leg| (layer, [leg[0], leg[1]])));
            }
            Mark::Path(_) | Mark::Text(_) => {}
        }
    }
    lines
}

fn place(step: &Step) -> Option<At> {
    match *step {
        Step::Move(at) | Step::Line(at) => Some(at),
        Step::Arc { .. } | Step::Close => None,
    }
}

/// What lies on what it should not.
fn collisions(answer: &Answer, option: &RankedOption, purpose: Purpose) -> Vec<String> {
    let shown = Shown::Option { answer, option };
    let paper = Stock::A4.landscape();
    let area = paper.within(12.0);
    let frame = Frame::within(&answer.brief, &area);
    let Drawn { marks, key, .. } = planned(shown, purpose, shown.plan(), &area);
    let sheet = Sheet { paper, title: String::new(), description: String::new(), marks };
    let lines = lines(&sheet.marks);
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
    let is_lettered = |number: &usize| texts.iter().any(|(_, text)| *text == number.to_string());
    let missing = (1..=key.len()).filter(|number| !is_lettered(number));
    let mut found: Vec<String> = missing.map(|number| format!("number {number} is nowhere")).collect();
    for (place, (block, text)) in texts.iter().enumerate() {
        let others = texts[place + 1..].iter().filter(|(other, _)| overlap(block, other));
        found.extend(others.map(|(_, other)| format!("{text} on {other}")));
        found.extend(walls.iter().filter(|wall| overlap(block, wall)).map(|_| format!("{text} on a wall")));
        let strange = bodies.iter().filter(|(name, size, body)| text != name && text != size && overlap(block, body));
        found.extend(strange.map(|(name, ..)| format!("{text} on {name}")));
        let ink = block.map(|at| At::new(f64::from(at.x), f64::from(at.y)));
        let struck = lines.iter().filter(|(_, line)| meet(line, &ink));
        found.extend(struck.map(|(layer, _)| format!("{text} struck by a line of {layer}")));
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
