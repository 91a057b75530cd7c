//! The screen on the axis of the main seat, within the turn of a head, and in clear sight.

use elbowroom_model::{Brief, Clearance, ItemKind};

use super::look::{FAR, Look, opposite};
use super::seats::standing;
use super::{Found, figure, main_seat};
use crate::support::checker::hung;
use crate::support::checker::placing::face;
use crate::support::checker::plane::{Polygon, add, common, counter_clockwise, dot, extent, shared};
use crate::support::checker::room::Ground;
use crate::support::checker::stand::Stand;

/// Over this something hides a screen, mm.
const LOW: f64 = 600.0;

/// Eyes of one who sits are so high at least, mm.
const EYES: f64 = 1100.0;

pub(super) fn found(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<Found> {
    let watched = hung::watched(brief);
    let units = brief.pieces.iter().filter(|piece| piece.kind == watched);
    let foremost = units.min_by(|a, b| {
        let screen = |piece: &elbowroom_model::Piece| piece.screen.unwrap_or(0.0);
        (!a.needed).cmp(&!b.needed).then(screen(b).total_cmp(&screen(a))).then(b.width.most.total_cmp(&a.width.most))
    });
    let media = foremost.and_then(|unit| stands.iter().find(|stand| stand.name() == unit.name));
    let (Some(seat), Some(media)) = (main_seat(brief, stands), media) else { return Vec::new() };
    let before_return =
        seat.return_looks().filter(|run| opposite(run.out, media.facing) && run.place(media.looks().middle).0 > 0.0);
    let (run, beside) = match before_return {
        _ if face(seat, media) => (seat.looks(), false),
        Some(run) => (run, true),
        None => return Vec::new(),
    };
    let between = || vec![media.name().to_owned(), seat.name().to_owned()];
    let (ahead, aside) = run.place(media.looks().middle);
    let mut all = Vec::new();
    if let Some(wanted) = figure(brief, Clearance::ScreenAxis).filter(|_| !beside) {
        let given = Some(aside.abs());
        all.push(Found { rule: "screen_axis", between: between(), given, short: aside.abs() - wanted });
    }
    // A sixth of the width is a third of its half; 45 degrees.
    let mut short = aside.abs() + run.half / 3.0 - ahead;
    if beside {
        let (ahead, aside) = seat.looks().place(media.looks().middle);
        short = short.max(aside.abs() - 3_f64.sqrt() * ahead).max(500.0 - ahead);
    }
    all.push(Found { rule: "screen_turn", between: between(), given: None, short });
    if let Some(wanted) = figure(brief, Clearance::ScreenSight) {
        // One sees what hangs over whatever is no higher than its lower edge, up to the eyes.
        let low = media.hung_at().map_or(LOW, |edge| edge.clamp(LOW, EYES));
        let tall = tall(brief, ground, stands, (&[seat.name(), media.name()], low));
        let in_way = |(name, shape): &(String, Polygon)| {
            let (given, short) =
                if beside { across(seat, media, run, shape)? } else { ahead_of(run, media, shape, wanted)? };
            let between = vec![name.clone(), seat.name().to_owned(), media.name().to_owned()];
            Some(Found { rule: "screen_sight", between, given, short })
        };
        all.extend(tall.iter().filter_map(in_way));
    }
    all
}

/// What is over `low`, mm, or nobody knows how high.
fn tall(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], (but, low): (&[&str], f64)) -> Vec<(String, Polygon)> {
    let height = |name: &str| {
        let item = brief.room.items.iter().find(|item| item.name == name).and_then(|item| match &item.kind {
            ItemKind::Radiator(it) => Some(it.height),
            ItemKind::Fireplace(it) => it.height,
            _ => None,
        });
        let fixed = brief.room.fixed.iter().find(|fixed| fixed.name == name).and_then(|fixed| fixed.height);
        item.or(fixed).unwrap_or(FAR)
    };
    let mut all: Vec<(String, Polygon)> = standing(ground);
    all.retain(|(name, _)| height(name) > low);
    let pieces = stands.iter().filter(|stand| !but.contains(&stand.name()) && !stand.is_flat());
    // Nobody sees over who sits at a desk, a piano or a dining table.
    let over =
        |stand: &Stand<'_>| if ["desk", "piano", "dining-table"].contains(&stand.piece.kind.key()) { LOW } else { low };
    let high = pieces.filter(|stand| stand.piece.height_with_screen() > over(stand));
    all.extend(high.flat_map(|stand| stand.parts().into_iter().map(|part| (stand.name().to_owned(), part))));
    all
}

type Missing = (Option<f64>, f64);

/// How near to the axis a shape comes between front and screen.
fn ahead_of(run: Look, media: &Stand<'_>, shape: &Polygon, wanted: f64) -> Option<Missing> {
    let strip = Look { half: wanted + 1.0, ..run };
    let screen = extent(&media.main(), run.out).0 - dot(run.middle, run.out);
    let (from, to) = strip.covers(shape, (1.0, screen - 1.0))?;
    let given = from.max(-to).max(0.0);
    Some((Some(given), wanted - given))
}

/// How deep a shape reaches into the rectangle from the bay's middle to the far edge of a screen beside it.
fn across(seat: &Stand<'_>, media: &Stand<'_>, run: Look, shape: &Polygon) -> Option<Missing> {
    let bay = seat.looks();
    let aside = extent(&media.main(), run.out).0 - dot(bay.middle, run.out);
    let far = extent(&media.main(), bay.out).1 - dot(bay.middle, bay.out);
    if aside <= 1.0 || far <= 1.0 {
        return None;
    }
    let at = |x: f64, y: f64| add(add(bay.middle, run.out, x), bay.out, y);
    let inner = [at(0.5, 0.5), at(aside - 0.5, 0.5), at(aside - 0.5, far - 0.5), at(0.5, far - 0.5)];
    let rectangle = counter_clockwise(inner.to_vec());
    let part = common(shape, &rectangle);
    (!part.is_empty()).then(|| (None, shared(shape, &rectangle).max(1.0) + 0.5))
}
