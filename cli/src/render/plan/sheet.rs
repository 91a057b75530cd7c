//! A plan on a sheet of paper, upright or on its side by itself, with its panel, its rulers and its edge.

use super::figure::Drawn;
use super::frame::Frame;
use super::panel::{About, Panel};
use super::whole::{description, title, within};
use super::{Shown, rulers};
use crate::drawing::{Area, At, Fill, Mark, Paper, Path, Pen, Sheet, Stock};

/// Kept free at every edge of the paper, mm: what printers do not reach.
const MARGIN: f64 = 10.0;
/// Between plan and panel, mm.
const BETWEEN: f64 = 5.0;
/// Width of a panel beside the plan, mm.
const PANEL: f64 = 78.0;
/// Share of an upright sheet that the panel below the plan takes.
const BELOW: f64 = 0.36;
/// Types of the panel, mm, the first that fits being taken.
const TYPES: [f64; 4] = [2.5, 2.3, 2.1, SMALLEST];
/// The smallest type that still reads on paper, mm.
const SMALLEST: f64 = 1.9;

/// How a sheet is divided.
struct Division {
    paper: Paper,
    plan: Area,
    strip: Area,
    columns: Vec<Area>,
}

impl Division {
    fn on_its_side(stock: Stock) -> Self {
        let paper = stock.landscape();
        let all = paper.within(MARGIN);
        let left = all.width - PANEL - BETWEEN;
        let strip = Area::new(all.at.x, all.bottom() - rulers::STRIP, left, rulers::STRIP);
        Self {
            paper,
            plan: Area::new(all.at.x, all.at.y, left, all.height - rulers::STRIP),
            strip,
            columns: vec![Area::new(all.right() - PANEL, all.at.y, PANEL, all.height)],
        }
    }

    fn upright(stock: Stock) -> Self {
        let paper = stock.portrait();
        let all = paper.within(MARGIN);
        let below = all.height * BELOW;
        let column = (all.width - BETWEEN) / 2.0;
        let top = all.bottom() - below;
        let plan = Area::new(all.at.x, all.at.y, all.width, all.height - below - rulers::STRIP - BETWEEN);
        let columns = [all.at.x, all.at.x + column + BETWEEN].map(|x| Area::new(x, top, column, below)).to_vec();
        Self { paper, plan, strip: Area::new(all.at.x, plan.bottom(), all.width, rulers::STRIP), columns }
    }
}

/// The sheet of an option.
pub(crate) fn sheet(shown: Shown<'_>, stock: Stock) -> Sheet {
    let ways = [Division::on_its_side(stock), Division::upright(stock)];
    let frames = ways.map(|division| (Frame::within(shown.brief(), &division.plan).scale, division));
    let [side, upright] = frames;
    // The larger scale; where both have it, the sheet whose plan area is shaped more like the room.
    let division = if upright.0 < side.0 || (upright.0 == side.0 && is_tall(&shown)) { upright.1 } else { side.1 };
    drawn(shown, stock, &division)
}

/// Whether the room is taller on the sheet than it is wide.
fn is_tall(shown: &Shown<'_>) -> bool {
    let outline = Area::of(shown.brief().room.outline().iter().map(|at| At::new(at.x, at.y)));
    outline.height > outline.width
}

fn drawn(shown: Shown<'_>, stock: Stock, division: &Division) -> Sheet {
    let north = rulers::to_north(shown.brief());
    let mut plan_area = division.plan;
    if north.is_some() {
        // The arrow has the plan's right upper corner to itself where the room leaves it free.
        plan_area = Area { width: plan_area.width - 12.0, ..plan_area };
        if Frame::within(shown.brief(), &plan_area).scale != Frame::within(shown.brief(), &division.plan).scale {
            plan_area = division.plan;
        }
    }
    let Drawn { scale, mut marks, key } = within(shown, &plan_area);
    if let Some(way) = north {
        marks.extend(rulers::north(At::new(division.plan.right() - 6.0, division.plan.at.y + 6.5), way));
    }
    marks.extend(rulers::strip(&division.strip, scale, shown.units()));
    marks.extend(panel(&shown, &scale.to_string(), stock, &key, &division.columns));
    marks.push(Mark::Layer("edge"));
    marks.push(Path::area(&division.paper.within(MARGIN - 3.0), Some(Pen::ink(0.2)), Fill::None).into());
    Sheet { paper: division.paper, title: title(&shown), description: description(&shown), marks }
}

/// The panel in the largest type in which it fits; what no sheet may leave out where none does.
fn panel(shown: &Shown<'_>, scale: &str, stock: Stock, key: &[String], columns: &[Area]) -> Vec<Mark> {
    let width = columns.first().map_or(0.0, |column| column.width);
    let about = About { shown: *shown, scale, paper: stock.name(), key };
    let full = TYPES.iter().find_map(|small| {
        let (marks, whole) = Panel::full(&about, width, *small).in_columns(columns);
        whole.then_some(marks)
    });
    full.unwrap_or_else(|| Panel::short(&about, width, SMALLEST).in_columns(columns).0)
}
