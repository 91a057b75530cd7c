//! A second, simpler checker of results, written from the result format alone.
//!
//! It reads the JSON that `rank --json` prints and the brief of the scenario, and shares no code with the solver: overlaps by
//! clipping, walls by places along the edges, routes by squares of floor that are halved, all on plain `[x, y]`.

mod ceiling;
mod comfort;
mod disc;
mod groups;
mod hung;
mod largest;
mod pairs;
mod placing;
pub(crate) mod plane;
mod result;
mod room;
mod sizing;
mod stand;
mod step;
mod turned;
mod turning;
mod used;
mod walking;

use elbowroom_model::Brief;
use serde_json::Value;

/// Everything that is wrong with a result; empty where it keeps the format.
pub(crate) fn complaints(brief: &Brief, json: &str) -> Vec<String> {
    let result: Value = match serde_json::from_str(json) {
        Ok(result) => result,
        Err(error) => return vec![format!("no JSON: {error}")],
    };
    let mut all = result::complaints(brief, &result);
    let options = result["options"].as_array().map_or(&[][..], Vec::as_slice);
    for option in options {
        let key = option["key"].as_str().unwrap_or("?");
        all.extend(of_option(brief, option).into_iter().map(|what| format!("{key}: {what}")));
    }
    all
}

/// Everything that is wrong with one option's layouts: the plan, and the largest where it is told.
pub(crate) fn of_option(brief: &Brief, option: &Value) -> Vec<String> {
    let (holds, limits) = ([Part::Places, Part::Comfort, Part::Routes], [Part::Smaller, Part::Larger]);
    let check = |option: &Value, parts: &[Part]| -> Vec<String> {
        parts.iter().flat_map(|part| of_part(brief, option, *part)).collect()
    };
    let mut all = check(option, &holds);
    let Some(largest) = largest::of(option) else {
        all.extend(check(option, &limits));
        return all;
    };
    all.extend(largest::complaints(option));
    let of_largest = check(&largest, &holds).into_iter().chain(check(&largest, &limits));
    all.extend(of_largest.map(|what| format!("largest: {what}")));
    all
}

/// Which of the rules to look at.
#[derive(Clone, Copy, PartialEq)]
pub(crate) enum Part {
    /// 1 to 6, and 11.
    Places,
    /// The rules of comfort, and what is eased of them.
    Comfort,
    /// 7.
    Routes,
    /// 8.
    Smaller,
    /// 9.
    Larger,
}

/// What is wrong with one part of an option's layout.
pub(crate) fn of_part(brief: &Brief, option: &Value, part: Part) -> Vec<String> {
    let pieces = option["pieces"].as_array().map_or(&[][..], Vec::as_slice);
    let read: Result<Vec<_>, String> = pieces.iter().map(|piece| stand::Stand::read(brief, piece)).collect();
    let stands = match read {
        Ok(stands) => stands,
        Err(what) => return vec![what],
    };
    let ground = room::Ground::of(brief);
    match part {
        Part::Places => {
            let mut all = placing::complaints(brief, &ground, &stands, placing::Table::InPlace);
            all.extend(turned::complaints(brief, &stands));
            all.extend(turning::turning(brief, &ground, &stands));
            if !largest::is_one(option) {
                all.extend(turning::told_circle(brief, &ground, &stands, &option["turning_circle"]));
            }
            all
        }
        Part::Comfort => comfort::complaints(brief, &ground, &stands, option),
        Part::Routes => walking::complaints(brief, &ground, &stands, &option["routes"]),
        Part::Smaller => sizing::smaller(brief, &ground, &stands, option),
        Part::Larger => sizing::larger(brief, &ground, &stands, option),
    }
}
