//! The plan itself, without the sheet round it: what is drawn on it, in which order.

use elbowroom_model::PieceId;
use elbowroom_solver::plan::Plan;
use elbowroom_solver::routes::Route;
use elbowroom_solver::setting_out::SettingOut;

use super::figure::{Drawn, Figure};
use super::frame::Frame;
use super::shown::PieceShown;
use super::{
    Layers, Marked, Purpose, Shown, breaches, from_walls, furniture, gaps, items, largest, marked, pieces, points,
    turning, walls, ways, zones,
};
use crate::drawing::{Area, At, Paper, Scale, Sheet};
use crate::words::plan as words;

/// Kept round the walls of a small plan, mm of paper.
const ROUND: f64 = 1.5;

/// The plan in the middle of `area`, at the largest listed scale that it holds.
pub(super) fn planned(shown: Shown<'_>, purpose: Purpose, plan: Plan, area: &Area) -> Drawn {
    let frame = Frame::within(shown.brief(), area);
    drawn(Figure::new(shown, purpose, plan, frame, *area))
}

/// A plan on a sheet of its own size.
pub(crate) struct Alone {
    /// The sheet.
    pub sheet: Sheet,
    /// What each number on it stands for, from 1.
    pub key: Vec<String>,
}

/// The plan at this scale on a sheet of its own size, for who sets it out.
pub(crate) fn alone(shown: Shown<'_>, scale: Scale) -> Alone {
    let (frame, area) = Frame::at_scale(shown.brief(), scale);
    by_itself(shown, Purpose::Working, frame, area)
}

/// The plan for who lives in the room, on a sheet of its own size, as large as one so wide and high holds it.
pub(crate) fn for_page(shown: Shown<'_>, widest: &Paper) -> Alone {
    let (frame, area) = Frame::at_scale(shown.brief(), Frame::largest_scale(shown.brief(), widest));
    by_itself(shown, Purpose::Client, frame, area)
}

/// The same with what is chosen to be shown, what is touched marked on it, and what each number on it stands for.
pub(crate) fn on_screen(shown: Shown<'_>, layers: Layers, marked: &Marked, widest: &Paper) -> Alone {
    let (frame, area) = Frame::at_scale(shown.brief(), Frame::largest_scale(shown.brief(), widest));
    // Floor that is kept free goes with every gap that is.
    let purpose = if layers.zones { Purpose::Working } else { Purpose::Client };
    let mut figure = Figure::new(shown, purpose, shown.plan(), frame, area);
    with_layers(&mut figure, layers, marked);
    on_own_sheet(&shown, area, figure.finished())
}

/// The piece at a place of the plan for a page, or of the one as small as a stamp, by its place on the sheet, mm.
pub(crate) fn touched(shown: Shown<'_>, at: At, widest: &Paper, is_small: bool) -> Option<PieceId> {
    let frame = match is_small {
        true => Frame::of_room(shown.brief(), widest, ROUND).0,
        false => Frame::at_scale(shown.brief(), Frame::largest_scale(shown.brief(), widest)).0,
    };
    let holds = |piece: &PieceShown<'_>| piece.parts().iter().any(|part| at.is_in(&frame.all(part)));
    let pieces: Vec<PieceShown<'_>> = shown.pieces().into_iter().filter(holds).collect();
    // What lies under others is touched where nothing else is.
    let top = pieces.iter().find(|piece| !furniture::lies_under(**piece)).or(pieces.first());
    top.map(|piece| piece.placed.piece)
}

/// The plan as small as a stamp, with the size of each piece that has room for it: as large as a sheet so wide and high
/// holds it.
pub(crate) fn thumbnail(shown: Shown<'_>, widest: &Paper) -> Sheet {
    let (frame, area) = Frame::of_room(shown.brief(), widest, ROUND);
    let mut figure = Figure::new(shown, Purpose::Client, shown.plan(), frame, area);
    walls::floor(&mut figure);
    furniture::draw(&mut figure);
    items::draw(&mut figure);
    walls::draw(&mut figure);
    pieces::sized(&mut figure);
    let paper = Paper { width: area.width, height: area.height };
    Sheet { paper, title: title(&shown), description: description(&shown), marks: figure.finished().marks }
}

fn by_itself(shown: Shown<'_>, purpose: Purpose, frame: Frame, area: Area) -> Alone {
    on_own_sheet(&shown, area, drawn(Figure::new(shown, purpose, shown.plan(), frame, area)))
}

fn on_own_sheet(shown: &Shown<'_>, area: Area, drawn: Drawn) -> Alone {
    let sheet = Sheet {
        paper: Paper { width: area.width, height: area.height },
        title: title(shown),
        description: description(shown),
        marks: drawn.marks,
    };
    Alone { sheet, key: drawn.key }
}

fn drawn(mut figure: Figure<'_>) -> Drawn {
    match figure.purpose {
        Purpose::Client => for_client(&mut figure),
        Purpose::Working => for_working(&mut figure),
    }
    figure.finished()
}

fn for_client(figure: &mut Figure<'_>) {
    walls::floor(figure);
    furniture::draw(figure);
    items::draw(figure);
    walls::draw(figure);
    turning::draw(figure);
    let gaps = gaps::draw(figure);
    walls::measure(figure);
    let left_over = items::name_outside(figure);
    pieces::name(figure);
    gaps::name(figure, &gaps);
    turning::name(figure);
    items::name(figure, &left_over);
}

fn for_working(figure: &mut Figure<'_>) {
    walls::floor(figure);
    zones::draw(figure);
    furniture::draw(figure);
    pieces::seats(figure);
    ways::sights(figure);
    items::draw(figure);
    walls::draw(figure);
    turning::draw(figure);
    let gaps = gaps::draw(figure);
    let ways = ways::draw(figure);
    let from_walls = from_walls::draw(figure, &gaps);
    breaches::draw(figure);
    walls::measure(figure);
    let left_over = items::name_outside(figure);
    breaches::name(figure);
    pieces::name(figure);
    ways::name(figure, &ways);
    gaps::name(figure, &gaps);
    from_walls::name(figure, &from_walls);
    turning::name(figure);
    items::name(figure, &left_over);
}

/// What a client's plan has, and what is chosen beside it: with sizes alone it is that plan.
fn with_layers(figure: &mut Figure<'_>, layers: Layers, marked: &Marked) {
    walls::floor(figure);
    if layers.zones {
        zones::draw(figure);
    }
    furniture::draw(figure);
    if layers.sights {
        pieces::seats(figure);
        ways::sights(figure);
    }
    items::draw(figure);
    walls::draw(figure);
    turning::draw(figure);
    if layers.largest {
        largest::draw(figure);
    }
    let gaps = if layers.sizes || layers.zones { gaps::draw(figure) } else { Vec::new() };
    let ways = if layers.ways { ways::draw(figure) } else { Vec::new() };
    marked::draw(figure, marked, layers.ways);
    walls::measure(figure);
    let left_over = items::name_outside(figure);
    if layers.sizes {
        pieces::name(figure)
    } else {
        pieces::name_alone(figure)
    }
    if layers.ways {
        ways::name(figure, &ways);
    } else if let Some(way) = marked.way {
        ways::name_one(figure, way);
    }
    if layers.largest {
        largest::name(figure);
    }
    gaps::name(figure, &gaps);
    turning::name(figure);
    items::name(figure, &left_over);
}

/// The room and the pieces on the floor, with the points that a tape starts from and the corners that it finds: as large
/// as a sheet so wide and high holds it, and the sheet that it takes.
pub(crate) fn to_set_out(shown: Shown<'_>, out: &SettingOut, widest: &Paper) -> (Paper, Drawn) {
    let (frame, paper) = Frame::filling(shown.brief(), widest);
    let mut figure = Figure::new(shown, Purpose::Working, shown.plan(), frame, paper.within(0.0));
    furniture::draw(&mut figure);
    items::draw(&mut figure);
    walls::draw(&mut figure);
    turning::draw(&mut figure);
    points::draw(&mut figure, out);
    points::name(&mut figure, out);
    walls::measure(&mut figure);
    let left_over = items::name_outside(&mut figure);
    pieces::named(&mut figure, |piece| points::place_and_name(out, piece));
    turning::name(&mut figure);
    items::name(&mut figure, &left_over);
    (paper, figure.finished())
}

/// What the plan is, in words.
pub(super) fn title(shown: &Shown<'_>) -> String {
    match *shown {
        Shown::Option { answer, option } => words::title(&answer.brief, option),
        Shown::AsItStands { room, .. } => words::title_as_it_stands(room),
    }
}

/// Sizes and ways in words.
pub(super) fn description(shown: &Shown<'_>) -> String {
    let brief = shown.brief();
    let size = |one: PieceShown<'_>| format!("{} {}", one.piece.name, pieces::size(shown, one.piece, one.size));
    let way = |(place, route): (usize, &Route)| {
        words::way(brief, &ways::letter(place), route, &shown.tape(route.width), &shown.tape(route.needs))
    };
    let sizes: Vec<String> = shown.pieces().into_iter().map(size).collect();
    let ways: Vec<String> = shown.routes().iter().enumerate().map(way).collect();
    words::description(&sizes, &ways)
}
