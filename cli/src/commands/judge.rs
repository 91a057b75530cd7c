//! `judge`: the room as it stands.

use std::io::Read;

use elbowroom_model::{Brief, PieceId};
use elbowroom_solver::Limits;
use elbowroom_solver::judge::{NotPlaced, Placement, judge};

use super::{form, letters};
use crate::args::{Form, JudgeArgs};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{room, solved};
use crate::render::{judge as page, plan};
use crate::result::judge::JudgeResult;
use crate::text::json;

/// Reads, judges, ranks for comparison, prints.
pub(super) fn run(
    args: &JudgeArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let drawing = args.drawing(&args.room.scenario.files())?;
    let drawing = drawing
        .map(|destination| Ok::<_, Failure>((form::form_of_file::<Form>(&destination)?, destination)))
        .transpose()?;
    let typeface = args.font.typeface()?;
    let brief = room(&args.room, stdin)?;
    let judged = Placement::of(&brief).and_then(|placement| judge(&brief, &placement));
    let judged = judged.map_err(|why| not_placed(&brief, why))?;
    let answer = solved(&brief, &Limits { shown: 0, ..Limits::default() }, args.room.threads, stderr)?;
    let text = if args.json {
        json::text(&JudgeResult::of(&judged, &answer))?
    } else {
        page::text(&page::JudgePage { room: &judged, answer: &answer }, stdout.look())
    };
    if let Some((form, destination)) = drawing {
        let sheet =
            plan::sheet(plan::Shown::AsItStands { answer: &answer, room: &judged }, plan::Purpose::Working, args.paper);
        let sheets = [sheet];
        letters::tell(&sheets, &typeface, stderr);
        destination.write(&form::drawn(&sheets, form, &typeface)?, stdout)?;
    }
    stdout.write(&text)?;
    Ok(if judged.broken.is_empty() { Exit::Done } else { Exit::NothingFits })
}

/// Why nothing is judged, with the names of what has no place and a wall to show by how one is given.
fn not_placed(brief: &Brief, why: NotPlaced) -> Failure {
    let missing = match why {
        NotPlaced::Pieces(pieces) => pieces,
        NotPlaced::NoSeat => Vec::new(),
    };
    let is_alike = |piece: &PieceId| brief.piece(*piece).is_some_and(|piece| piece.alike.is_some());
    let wall = brief.room.walls.first().map_or_else(String::new, |wall| wall.name.clone());
    Failure::NotPlaced {
        several_alike: missing.iter().any(is_alike),
        names: missing.into_iter().map(|piece| brief.piece_name(piece).to_owned()).collect(),
        wall,
    }
}
