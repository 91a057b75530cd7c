//! A plan on a sheet of paper, upright or on its side by itself, with its panel, its rulers and its edge.

use elbowroom_solver::plan::Plan;

use super::figure::Drawn;
use super::frame::Frame;
use super::head::head;
use super::matters::matters;
use super::panel::{About, Panel};
use super::title_block::{Room, TitleBlock, Titled};
use super::whole::{description, planned, title};
use super::{Purpose, Shown, rulers};
use crate::drawing::{Area, At, Fill, Mark, Paper, Path, Pen, Sheet, Stock, hand};

/// Kept free at every edge of the paper, mm: what printers do not reach.
const MARGIN: f64 = 10.0;
/// Between plan and panel, mm.
const BETWEEN: f64 = 5.0;
/// Width of a panel beside the plan, mm.
const PANEL: f64 = 78.0;
/// Share of an upright sheet that the panel below the plan takes.
const BELOW: f64 = 0.36;
/// Share of a client's sheet that its title block may take.
const BLOCK: f64 = 0.45;
/// Types of the panel, mm, the first that fits being taken.
const TYPES: [f64; 3] = [hand::NAMES, hand::FIGURES, SMALLEST];
/// The smallest type that still reads on paper, mm: a fourth, for sheets whose words have no room in a larger one.
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

/// The sheet of an option, or of the room as it stands.
pub(crate) fn sheet(shown: Shown<'_>, purpose: Purpose, stock: Stock) -> Sheet {
    match purpose {
        Purpose::Client => for_client(shown, stock),
        Purpose::Working => for_working(shown, stock),
    }
}

/// The larger scale; where both have it, the sheet whose plan area is shaped more like the room.
fn side_or_upright<T>(shown: &Shown<'_>, plan_of: impl Fn(&T) -> Area, [side, upright]: [T; 2]) -> T {
    let [of_side, of_upright] = [&side, &upright].map(|way| Frame::within(shown.brief(), &plan_of(way)).scale);
    let is_upright = of_upright < of_side || (of_upright == of_side && is_tall(shown));
    if is_upright { upright } else { side }
}

/// Whether the room is taller on the sheet than it is wide.
fn is_tall(shown: &Shown<'_>) -> bool {
    let outline = Area::of(shown.brief().room.outline().iter().map(|at| At::new(at.x, at.y)));
    outline.height > outline.width
}

/// The plan large, its title block below it.
fn for_client(shown: Shown<'_>, stock: Stock) -> Sheet {
    let plan = shown.plan();
    let matters = matters(&shown, &plan);
    let titled = Titled { shown, paper: stock.name(), matters: &matters, key: &[] };
    let papers = [stock.landscape(), stock.portrait()];
    let paper = side_or_upright(&shown, |paper| above(&titled, paper).1, papers);
    let key = planned(shown, Purpose::Client, plan.clone(), &above(&titled, &paper).1).key;
    let (block, area) = above(&Titled { key: &key, ..titled }, &paper);
    let Drawn { scale, mut marks, .. } = with_north(shown, Purpose::Client, plan, &area);
    marks.extend(block.marks(&paper.within(MARGIN), &shown, scale));
    finished(shown, paper, marks)
}

/// The title block of a paper in the largest type that leaves the plan its share, and the area above it.
fn above(titled: &Titled<'_>, paper: &Paper) -> (TitleBlock, Area) {
    let all = paper.within(MARGIN);
    let most = all.height * BLOCK;
    let block = |small: f64| TitleBlock::new(titled, Room { width: all.width, most }, small);
    let block = TYPES.into_iter().map(block).find(TitleBlock::is_whole).unwrap_or_else(|| block(SMALLEST));
    let height = all.height - block.height() - BETWEEN;
    (block, Area { height, ..all })
}

fn for_working(shown: Shown<'_>, stock: Stock) -> Sheet {
    let ways = [Division::on_its_side(stock), Division::upright(stock)];
    let division = side_or_upright(&shown, |division| division.plan, ways);
    let plan = shown.plan();
    let Drawn { scale, mut marks, key } = with_north(shown, Purpose::Working, plan.clone(), &division.plan);
    marks.extend(rulers::strip(&division.strip, scale, shown.units()));
    marks.push(rulers::imprint(&division.strip, scale, stock.name(), shown.unit()));
    marks.extend(panel(&About { shown, plan: &plan, key: &key }, &division.columns));
    finished(shown, division.paper, marks)
}

/// The plan with its arrow to the north, which has the right upper corner to itself where the room leaves it free.
fn with_north(shown: Shown<'_>, purpose: Purpose, plan: Plan, area: &Area) -> Drawn {
    let Some(way) = rulers::to_north(shown.brief()) else { return planned(shown, purpose, plan, area) };
    let beside = Area { width: area.width - 12.0, ..*area };
    let scale = |area: &Area| Frame::within(shown.brief(), area).scale;
    let held = if scale(&beside) == scale(area) { beside } else { *area };
    let mut drawn = planned(shown, purpose, plan, &held);
    drawn.marks.extend(rulers::north(At::new(area.right() - 6.0, area.at.y + 6.5), way));
    drawn
}

fn finished(shown: Shown<'_>, paper: Paper, mut marks: Vec<Mark>) -> Sheet {
    marks.push(Mark::Layer("edge"));
    marks.push(Path::area(&paper.within(MARGIN - 3.0), Some(Pen::ink(hand::FITTINGS)), Fill::None).into());
    Sheet { paper, title: title(&shown), description: description(&shown), marks }
}

/// The panel in the largest type in which it fits; what no sheet may leave out where none does.
fn panel(about: &About<'_>, columns: &[Area]) -> Vec<Mark> {
    let width = columns.first().map_or(0.0, |column| column.width);
    let headed = |small: f64| {
        let mut panel = Panel::new(width, small);
        head(&mut panel, &about.shown);
        panel
    };
    let full = TYPES.iter().find_map(|small| {
        let (marks, whole) = headed(*small).full(about).in_columns(columns);
        whole.then_some(marks)
    });
    full.unwrap_or_else(|| headed(SMALLEST).short(about).in_columns(columns).0)
}
