//! A small plan of an option: the outline, what the walls hold, the pieces, seats darker than the rest. No text, so it reads at the size of a stamp.

use std::fmt::Write;

use elbowroom_model::Drawn;
use elbowroom_model::{Brief, ItemKind, Point};
use elbowroom_solver::answer::RankedOption;

/// The folder that holds the plans of a run, beside its pages.
pub(crate) const PLANS: &str = "plans";
/// How their names end.
pub(crate) const PLAN_ENDING: &str = ".svg";

/// The plan of a content, as named from the folder of the run.
pub(crate) fn plan_name(content: &str) -> String {
    format!("{PLANS}/{content}{PLAN_ENDING}")
}

/// Room left round the outline, mm.
const MARGIN: f64 = 150.0;

/// The plan as SVG; `None` where the room has no extent.
pub(crate) fn plan(brief: &Brief, option: &RankedOption) -> Option<String> {
    let outline = brief.room.outline();
    let (low, high) = extent(&outline)?;
    let at = |point: Point| format!("{:.0},{:.0}", point.x - low.x + MARGIN, high.y - point.y + MARGIN);
    let polygon = |points: &[Point], class: &str| {
        let points: Vec<String> = points.iter().map(|point| at(*point)).collect();
        format!("<polygon class=\"{class}\" points=\"{}\"/>\n", points.join(" "))
    };
    let size = high - low;
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {:.0} {:.0}\">\n<style>{STYLE}</style>\n",
        size.x + 2.0 * MARGIN,
        size.y + 2.0 * MARGIN
    );
    svg.push_str(&polygon(&outline, "room"));
    for fixed in &brief.room.fixed {
        match fixed.step() {
            Some([from, to]) => {
                let _ =
                    writeln!(svg, "<polyline stroke=\"#222\" stroke-width=\"30\" points=\"{} {}\"/>", at(from), at(to));
            }
            None => svg.push_str(&polygon(&fixed.corners, "fixed")),
        }
    }
    for item in &brief.room.items {
        let (Some((left, right)), Some(class)) = (brief.room.ends(item), class(&item.kind)) else { continue };
        let _ = writeln!(svg, "<polyline class=\"{class}\" points=\"{} {}\"/>", at(left), at(right));
    }
    // Rugs lie under everything.
    let (rugs, others): (Vec<_>, Vec<_>) = option.pieces(brief).partition(|one| one.piece.kind.is_flat());
    for one in rugs.into_iter().chain(others) {
        let class = match one.piece.kind.traits().drawn {
            Drawn::Rug | Drawn::OpenFloor => "rug",
            Drawn::Upholstered | Drawn::Padded => "seat",
            Drawn::WithFront | Drawn::Screen | Drawn::Lamp | Drawn::Plant | Drawn::Plain => "piece",
        };
        one.parts().iter().for_each(|part| svg.push_str(&polygon(part, class)));
    }
    svg.push_str("</svg>\n");
    Some(svg)
}

const STYLE: &str = ".room{fill:#fff;stroke:#222;stroke-width:90}.fixed{fill:#888}.window{stroke:#6aa6d8;stroke-width:60}\
    .way{stroke:#fff;stroke-width:100}.heat{stroke:#c65d21;stroke-width:60;stroke-dasharray:120 50}.piece{fill:#f1eee6;stroke:#222;stroke-width:20}.seat{fill:#b9b09a;stroke:#222;stroke-width:20}\
    .rug{fill:none;stroke:#999;stroke-width:14;stroke-dasharray:60 40}polyline{fill:none}";

/// How an item on a wall is drawn.
const fn class(kind: &ItemKind) -> Option<&'static str> {
    match kind {
        ItemKind::Window(_) => Some("window"),
        ItemKind::Door(_) | ItemKind::Opening(_) => Some("way"),
        ItemKind::Radiator(_) | ItemKind::Fireplace(_) => Some("heat"),
        ItemKind::Socket(_) => None,
    }
}

/// The least and greatest coordinates.
fn extent(points: &[Point]) -> Option<(Point, Point)> {
    let (first, rest) = points.split_first()?;
    let grown = |(low, high): (Point, Point), point: &Point| {
        (Point::new(low.x.min(point.x), low.y.min(point.y)), Point::new(high.x.max(point.x), high.y.max(point.y)))
    };
    Some(rest.iter().fold((*first, *first), grown))
}
