//! `judge`: the room as it stands.

use std::io::Read;

use elbowroom_model::{Brief, PieceId};
use elbowroom_solver::Limits;
use elbowroom_solver::judge::{NotPlaced, Placement, judge};

use crate::args::JudgeArgs;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{room, solved};
use crate::render::judge as page;
use crate::result::judge::JudgeResult;
use crate::text::json;

/// Reads, judges, ranks for comparison, prints.
pub(super) fn run(
    args: &JudgeArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let brief = room(&args.room, stdin)?;
    let judged = Placement::of(&brief).and_then(|placement| judge(&brief, &placement));
    let judged = judged.map_err(|why| not_placed(&brief, why))?;
    let answer = solved(&brief, &Limits { shown: 0, ..Limits::default() }, args.room.threads, stderr)?;
    let text = if args.json {
        json::text(&JudgeResult::of(&judged, &answer))?
    } else {
        page::text(&page::JudgePage { room: &judged, answer: &answer }, stdout.look())
    };
    stdout.write(&text)?;
    Ok(if judged.broken.is_empty() { Exit::Done } else { Exit::NothingFits })
}

/// Why nothing is judged, with the names of what has no place.
fn not_placed(brief: &Brief, why: NotPlaced) -> Failure {
    let name = |piece: PieceId| brief.piece_name(piece).to_owned();
    match why {
        NotPlaced::Pieces(pieces) => Failure::NotPlaced { names: pieces.into_iter().map(name).collect() },
        NotPlaced::NoSeat => Failure::NotPlaced { names: Vec::new() },
    }
}
