//! How a room stands: what is being worked out, what is at fault, what came of it; alike on every screen.

use elbowroom_model::Fault;
use elbowroom_model::filed::Filed;
use maud::{Markup, html};
use serde_json::{Value, json};

use crate::page::room::{Seen, Stage};
use crate::words::page as words;

/// How a room stands, as the script of the page takes it.
pub(in crate::page) struct Told(pub(in crate::page) Value);

/// The name of a room, or of its file where it has none.
pub(super) fn room_name(seen: &Seen, file: &str) -> String {
    let name = || Filed::read(&seen.text).ok()?.values()["name"].as_str().map(str::to_owned);
    match &seen.read {
        Ok(brief) => brief.room.name.clone(),
        Err(_) => name().unwrap_or_else(|| file.to_owned()),
    }
}

/// The place in the file that a fault is of: `walls.0.length`.
pub(in crate::page) fn path_of_fault(filed: Option<&Filed>, fault: &Fault) -> String {
    filed.zip(fault.place).map(|(filed, place)| filed.path_at(place.offset)).unwrap_or_default()
}

/// Instead of a part that needs an answer, where there is none.
pub(super) fn no_answer(seen: &Seen, otherwise: &'static str) -> &'static str {
    let is_busy = matches!(seen.stage, Stage::Busy { .. });
    words::no_answer(seen.stage == Stage::Stopped, is_busy, otherwise)
}

/// The stage of a room by a word.
const fn stage(seen: &Seen) -> &'static str {
    match seen.stage {
        Stage::Busy { .. } => "busy",
        Stage::Done => "done",
        Stage::Faulty => "faulty",
        Stage::Failed => "failed",
        Stage::Stopped => "stopped",
    }
}

/// One line for the status.
fn line(seen: &Seen) -> String {
    match (seen.stage, &seen.solved) {
        (Stage::Busy { done, all }, _) => words::busy(done, all),
        (Stage::Done, Some(solved)) => words::found(&solved.answer),
        (Stage::Done, None) => String::new(),
        (Stage::Faulty, _) => match (unmeasured(seen), faults_of(seen).is_empty()) {
            (walls @ 1.., true) => words::to_measure(walls),
            _ => words::FAULTS.to_owned(),
        },
        (Stage::Failed, _) => words::FAILED.to_owned(),
        (Stage::Stopped, _) => words::STOPPED.to_owned(),
    }
}

/// How a room stands, for the script: the step, the stage, the line that is told, the faults at their fields.
pub(in crate::page) fn told(seen: &Seen) -> Told {
    let filed = Filed::read(&seen.text).ok();
    let fault = |fault: &Fault| {
        json!({
            "at": path_of_fault(filed.as_ref(), fault),
            "message": clean(&fault.message),
            "remedy": clean(&fault.remedy),
        })
    };
    Told(json!({
        "step": seen.step,
        "stage": stage(seen),
        "line": clean(&line(seen)),
        "of": seen.solved.as_ref().map(|solved| solved.step),
        "can": seen.can,
        "faults": faults_of(seen).into_iter().map(fault).collect::<Vec<_>>(),
    }))
}

/// Walls that have no length yet: a room that is being measured has some.
fn unmeasured(seen: &Seen) -> usize {
    let values = Filed::read(&seen.text).map(|filed| filed.values()).unwrap_or_default();
    values["walls"].as_array().into_iter().flatten().filter(|wall| is_unmeasured(wall)).count()
}

fn is_unmeasured(wall: &Value) -> bool {
    wall.get("length").is_some_and(Value::is_null) && wall["start"].is_null()
}

/// What is wrong with the file; what is still to be measured is not.
fn faults_of(seen: &Seen) -> Vec<&Fault> {
    let Err(faults) = &seen.read else { return Vec::new() };
    let filed = Filed::read(&seen.text).ok();
    let values = filed.as_ref().map(Filed::values).unwrap_or_default();
    let is_to_come = |fault: &Fault| {
        let path = path_of_fault(filed.as_ref(), fault);
        let wall = path.strip_prefix("walls.").and_then(|row| row.split('.').next()?.parse::<usize>().ok());
        let is_of_wall = path.split('.').count() <= 3 && !path.contains(".holds");
        fault.code == "missing_key" && is_of_wall && wall.is_some_and(|wall| is_unmeasured(&values["walls"][wall]))
    };
    faults.iter().filter(|fault| !is_to_come(fault)).collect()
}

fn clean(text: &str) -> String {
    crate::text::safe::safe(text)
}

/// The status and what goes with it.
pub(super) fn state(seen: &Seen, file: &str, may_change: bool) -> Markup {
    let stage = stage(seen);
    html! {
        div id="state" data-stage=(stage) data-file=(file) {
            p id="line" role="status" data-now-first=(words::NOW_FIRST) { (line(seen)) }
            progress id="progress" aria-label=(words::FIRST_LOOK) hidden[stage != "busy"] {}
            @if may_change {
                button type="button" id="stop" data-do="halt" hidden[stage != "busy"] { (words::STOP) }
                button type="button" id="go-on" data-do="go-on" hidden[!matches!(stage, "stopped" | "failed")] {
                    @if stage == "failed" { (words::AGAIN) } @else { (words::GO_ON) }
                }
            }
            (faults(seen))
        }
    }
}

/// The faults, each with its remedy; their fields show them too.
fn faults(seen: &Seen) -> Markup {
    let faults = faults_of(seen);
    html! {
        ul id="faults" hidden[faults.is_empty()] {
            @for fault in faults.iter() {
                li { (fault.message) " " (fault.remedy) }
            }
        }
    }
}
