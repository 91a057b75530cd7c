//! The pieces: sizes asked for, least, usual and most.

use elbowroom_model::article::a;
use elbowroom_model::{Brief, Dimension, Hand, Piece, PieceAim, Room, SizesAim, StandsAt, Unit};

use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::check as words;
use crate::words::figures::counted;
use crate::words::hung;
use crate::words::lengths::{shop_unit, sign, taped, taped_bare};
use crate::words::rank::{ITS_RETURN, ITS_SECOND_RETURN};

/// Each piece in turn.
pub(super) fn tell(page: &mut Page, brief: &Brief) {
    page.heading(&words::pieces(sign(shop_unit(brief.units))));
    let mut table = Table::new(&[
        ("", Stand::Left),
        ("width", Stand::Right),
        ("return", Stand::Right),
        ("depth", Stand::Right),
        ("", Stand::Left),
    ]);
    for piece in &brief.pieces {
        let size = |dimension| range(piece, dimension, brief.units);
        let sizes = [Dimension::Width, Dimension::Return, Dimension::Depth].map(size);
        let [width, return_length, depth] = sizes;
        table.row([piece.name.clone(), width, return_length, depth, said(&brief.room, piece, brief.units)]);
        let [second, deep] = [Dimension::SecondReturn, Dimension::ReturnDepth].map(size);
        let blank = String::new;
        if !deep.is_empty() {
            table.row([ITS_RETURN.to_owned(), blank(), blank(), deep, blank()]);
        }
        if !second.is_empty() {
            table.row([ITS_SECOND_RETURN.to_owned(), blank(), second, blank(), blank()]);
        }
    }
    page.table(2, &table);
    if brief.sizes == SizesAim::Largest {
        page.paragraph(2, words::AIMED_AT_LARGEST);
    }
}

/// `200 / 230 / 280`, or one figure where there is no choice.
fn range(piece: &Piece, dimension: Dimension, units: Unit) -> String {
    let Some(range) = piece.range(dimension) else { return String::new() };
    let tape = |length: f64| taped_bare(units, length);
    if range.least >= range.most {
        tape(range.most)
    } else {
        format!("{} / {} / {}", tape(range.least), tape(range.usual), tape(range.most))
    }
}

/// What else the file says of a piece.
fn said(room: &Room, piece: &Piece, units: Unit) -> String {
    let mut said = Vec::new();
    let kind = piece.kind.words();
    if !piece.name.starts_with(&kind) {
        said.push(kind);
    }
    match piece.hands.as_slice() {
        _ if piece.has_like_returns() => said.push(words::TWO_RETURNS.to_owned()),
        [Hand::Left] => said.push("left hand".to_owned()),
        [Hand::Right] => said.push("right hand".to_owned()),
        [] => {}
        _ => said.push("either hand".to_owned()),
    }
    if piece.chaise {
        said.push("a chaise".to_owned());
    }
    said.extend(words::paired(piece.pair).map(str::to_owned));
    said.extend(words::may_turn(piece.turned));
    if let Some(screen) = piece.screen {
        said.push(format!("screen {}", taped(Unit::Inch, screen)));
        let beyond = piece.carried_width().filter(|_| piece.screen_beyond(piece.width.most).is_some());
        said.extend(beyond.map(|width| words::wider_than_its_piece(&taped(shop_unit(units), width))));
    }
    if let Some(seats) = piece.seats {
        said.push(counted(seats as usize, "chair", "chairs"));
    }
    said.extend(piece.group.as_deref().map(words::of_group));
    if piece.passing {
        said.push("people pass behind the chairs".to_owned());
    }
    if !piece.steps.is_empty() {
        said.push(counted(piece.steps.len(), "size to choose from", "sizes to choose from"));
    }
    if let Some(middle) = piece.hung_centre() {
        said.push(hung::told(
            [middle, piece.lower_edge(), piece.height_with_screen()].map(|height| taped(units, height)),
        ));
    } else if piece.height > 0.0 {
        said.push(format!("{} high", taped(shop_unit(units), piece.height)));
    }
    if !piece.needed {
        said.push("only if it fits".to_owned());
    }
    said.extend(piece.aim.map(|aim| aimed_at(aim, units)));
    let stand_ins: Vec<String> = piece.instead.iter().map(|stand_in| a(&stand_in.kind.words())).collect();
    said.extend((!stand_ins.is_empty()).then(|| words::stand_ins(&stand_ins)));
    said.extend(piece.stands.map(|stands| stands_at(room, &stands, piece.held, units)));
    said.join(", ")
}

/// What plans aim at with a piece.
fn aimed_at(aim: PieceAim, units: Unit) -> String {
    match aim {
        PieceAim::Usual => words::AIMED_AT_USUAL.to_owned(),
        PieceAim::Largest => words::AIMED_AT_ITS_MOST.to_owned(),
        PieceAim::Sizes(sizes) => {
            let one = |&dimension: &Dimension| {
                sizes.get(dimension).map(|size| format!("{} {}", dimension.words(), taped(shop_unit(units), size)))
            };
            words::aimed_at(&Dimension::ALL.iter().filter_map(one).collect::<Vec<_>>().join(", "))
        }
    }
}

/// Where a piece stands.
fn stands_at(room: &Room, stands: &StandsAt, held: bool, units: Unit) -> String {
    let tape = |length: f64| taped(units, length);
    match *stands {
        StandsAt::Wall { wall, from, off } => {
            words::stands_at_wall(room.wall_name(wall), &tape(from), &tape(off), held)
        }
        StandsAt::Place { back, facing } => {
            let at = format!("({}, {})", taped_bare(units, back.x), taped_bare(units, back.y));
            words::stands_at_place(&at, facing.degrees(), held)
        }
    }
}
