//! What `way` tells: the points, then each piece with every way to hold it, then what to heed.

use elbowroom_model::way_in::{PointKind, Way, WayFile, WayPoint};
use elbowroom_model::{Rounding, Unit};
use elbowroom_solver::way_in::{Carried, Failed, Legs, PartCarried, PieceIn, PoseTried, TakeOff, WayIn};

use crate::text::look::Look;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::lengths::{shop_unit, shopped, sign, taped_bare, taped_up_bare};
use crate::words::way as words;

/// Column at which poses stand, and blanks after the longest of them.
const INDENT: usize = 3;

/// The page of a way.
pub(crate) fn text(found: &WayIn, file: &WayFile, notices: &[String], look: Look) -> String {
    let mut page = Page::new(look);
    let units = file.units;
    let unit = sign(shop_unit(units));
    page.strong(&words::summary(&file.name, file.way.points.len(), unit));
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Left)]);
    for point in &file.way.points {
        table.row([point.name.clone(), measures(point, units)]);
    }
    page.table(2, &table);
    for piece in &found.pieces {
        tell(&mut page, &file.way, units, piece);
    }
    page.heading(crate::words::NOTICES);
    for notice in notices {
        page.entry(2, notice);
    }
    page.into_text()
}

fn tell(page: &mut Page, way: &Way, units: Unit, piece: &PieceIn) {
    page.gap();
    let carried = &piece.carried;
    if carried.parts.is_empty() {
        page.strong(&words::rolled(&carried.name));
    }
    for part in &carried.parts {
        let sides = part.sides.map(|side| taped_bare(units, side)).join(" x ");
        page.strong(&words::verdict(&part.name, &sides, part.gets_in));
        let longest = part.poses.iter().map(|tried| words::pose(tried.pose).len()).max().unwrap_or_default();
        for tried in &part.poses {
            let said = said(way, tried, part, units);
            page.labelled(INDENT, words::pose(tried.pose), longest + 2 * INDENT, &said);
        }
        if part.gets_in && part.poses.iter().all(|tried| tried.fails.is_some()) {
            let poses: Vec<&str> = part.held.iter().map(|pose| words::pose(*pose)).collect();
            let tight = part.tightest.map(|tight| (taped_bare(units, tight.spare), words::at(way, tight.at)));
            page.paragraph(3, &words::turned_over(&poses, tight.as_ref().map(|(spare, at)| (spare.as_str(), *at))));
        }
        if let Some(fails) = part.fails.as_ref().filter(|fails| fails.short_by.is_none()) {
            page.paragraph(3, &words::cannot_turn_over(words::pose(fails.pose), words::at(way, fails.at)));
        }
    }
    if piece.by_usual_section {
        page.paragraph(INDENT, words::by_usual_section(carried.gets_in));
    }
    if let Some(legs) = piece.legs_off {
        page.paragraph(INDENT, &words::legs_off(&taped_bare(units, legs)));
    }
    for off in &piece.would {
        page.paragraph(INDENT, &would(way, off, units));
    }
    if piece.fixed
        && !carried.gets_in
        && piece.would.is_empty()
        && let Some(told) = words::nothing_off_helps(piece.looked_for)
    {
        page.paragraph(INDENT, told);
    }
    if let Some([width, other, depth]) = piece.most {
        let figure = |length: f64| shopped(units, length, Rounding::Down);
        let other = (other > 0.0).then(|| figure(other));
        page.paragraph(3, &words::most(&figure(width), other.as_deref(), &figure(depth)));
    } else if !carried.gets_in && !piece.fixed {
        page.paragraph(3, words::NONE_GETS_IN);
    }
}

/// What would have to come off, and how the piece gets in then.
fn would(way: &Way, off: &TakeOff, units: Unit) -> String {
    let legs = off.legs.map(|legs| {
        let told = match legs {
            Legs::ComeOff(high) | Legs::Listed(high) => taped_bare(units, high),
            Legs::UpTo(least) => taped_up_bare(units, least),
        };
        (legs, told)
    });
    let doors: Vec<String> = off.leaves.iter().map(|at| words::at(way, *at).to_owned()).collect();
    let poses = match off.carried.parts.as_slice() {
        [part] => part.held.iter().map(|pose| words::pose(*pose)).collect(),
        _ => Vec::new(),
    };
    // The least that would do leaves nothing.
    let is_least = matches!(off.legs, Some(Legs::UpTo(_)));
    let tight = tightest(way, &off.carried, units).filter(|_| !is_least);
    words::would(&words::Off {
        legs: legs.as_ref().map(|(legs, high)| (*legs, high.as_str())),
        doors: &doors,
        wider: &taped_bare(units, off.wider),
        poses: &poses,
        tight: tight.as_ref().map(|(spare, at)| (spare.as_str(), *at)),
    })
}

/// Where least is left of all parts, and how much.
fn tightest<'a>(way: &'a Way, carried: &Carried, units: Unit) -> Option<(String, &'a str)> {
    let all = carried.parts.iter().filter_map(|part| part.tightest);
    let least = all.min_by(|one, other| one.spare.total_cmp(&other.spare))?;
    Some((taped_bare(units, least.spare), words::at(way, least.at)))
}

/// What is said of a pose kept all the way.
fn said(way: &Way, tried: &PoseTried, part: &PartCarried, units: Unit) -> String {
    let Some(fails) = &tried.fails else {
        let kept = part.held.iter().all(|pose| *pose == tried.pose);
        return match &part.tightest {
            Some(tight) if kept => words::gets_in_with(&taped_bare(units, tight.spare), words::at(way, tight.at)),
            _ => words::GETS_IN.to_owned(),
        };
    };
    misses(way, fails, units)
}

/// `17 too wide at street door`.
pub(super) fn misses(way: &Way, fails: &Failed, units: Unit) -> String {
    let by = fails.short_by.map_or_else(String::new, |by| taped_bare(units, by));
    words::misses(&by, fails.asks, words::at(way, fails.at))
}

/// What is measured at a point.
pub(super) fn measures(point: &WayPoint, units: Unit) -> String {
    let tape = |length: f64| taped_bare(units, length);
    let high = |ceiling: Option<f64>| ceiling.filter(|it| it.is_finite()).map(tape);
    match point.kind {
        PointKind::Door { width, height, from } => {
            words::door(&tape(width), high(Some(height)).as_deref(), from.map(tape).as_deref())
        }
        PointKind::Hall { width, ceiling } => words::hall(&tape(width), high(ceiling).as_deref()),
        PointKind::Turn { from, to, ceiling } => words::turn(&tape(from), &tape(to), high(ceiling).as_deref()),
        PointKind::Stairs { width, headroom, pitch } => {
            words::stairs(&tape(width), &tape(headroom), pitch.to_degrees())
        }
        PointKind::Landing { turn, depth, width, ceiling, .. } => {
            words::landing(turn, &tape(depth), &tape(width), high(ceiling).as_deref())
        }
        PointKind::Lift { door, height, width, depth, ceiling } => {
            words::lift([&tape(door), &tape(height), &tape(width), &tape(depth)], high(ceiling).as_deref())
        }
    }
}
