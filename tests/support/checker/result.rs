//! What a result says of itself: fields, names, order, scores, shares, proofs.

use std::collections::BTreeSet;

use elbowroom_model::{Brief, Clearance, Criterion, Dimension, Piece};
use serde_json::Value;

/// How far a told figure may be rounded.
const ROUNDED: f64 = 0.051;
/// How far the bound of a proven option may lie above its objective, as a share.
const PROVEN: f64 = 0.001;

/// What is wrong with the result as a document.
pub(crate) fn complaints(brief: &Brief, result: &Value) -> Vec<String> {
    let mut all = Vec::new();
    let mut want = |holds: bool, what: &str| {
        if !holds {
            all.push(what.to_owned());
        }
    };
    want(result["format"] == "elbowroom-result/1", "format is not elbowroom-result/1");
    for field in ["room", "rules", "options", "refused", "remedies", "notices", "work"] {
        want(!result[field].is_null(), &format!("{field} is missing"));
    }
    let outline = result["room"]["outline"].as_array().map_or(0, Vec::len);
    want(outline == brief.room.walls.len(), "the outline has not one corner for each wall");
    let area = result["room"]["area"].as_f64().unwrap_or(0.0);
    want((area - brief.room.area() / 1e6).abs() < 0.06, "the area is not the outline's");
    want(result["rules"]["profile"] == brief.rules.profile.as_str(), "another profile is told");
    for &rule in Clearance::ALL.iter().filter(|rule| brief.asks(**rule)) {
        let told = result["rules"].get(rule.key());
        let in_force = brief.rules.figure(rule).figure;
        let same = told.is_some_and(|told| match (told.as_f64(), in_force) {
            (Some(told), Some(figure)) => (told - figure).abs() < ROUNDED,
            (told, figure) => told.unwrap_or(0.0) == figure.unwrap_or(0.0),
        });
        want(same, &format!("{} is told as {told:?}, in force {in_force:?}", rule.key()));
    }
    let options = list(&result["options"]);
    let keys: Vec<&str> = options.iter().filter_map(|option| option["key"].as_str()).collect();
    let refused: Vec<&str> = list(&result["refused"]).iter().filter_map(|it| it["key"].as_str()).collect();
    let different: BTreeSet<&str> = keys.iter().chain(&refused).copied().collect();
    want(different.len() == options.len() + list(&result["refused"]).len(), "keys are missing or not all different");
    for it in list(&result["refused"]) {
        want(text(&it["why"]) && text(&it["rule"]), &format!("{} is refused with no reason", it["key"]));
        want(it["short_by"].is_null() || it["short_by"].as_f64().is_some_and(|by| by >= 0.0), "short_by is no length");
    }
    let ranks: Vec<u64> = options.iter().filter_map(|option| option["rank"].as_u64()).collect();
    want(ranks == (1..=options.len() as u64).collect::<Vec<_>>(), "ranks do not run from 1");
    let shares: Vec<f64> = options.iter().filter_map(|option| option["first_place_share"].as_f64()).collect();
    let sum: f64 = shares.iter().sum();
    let whole = if options.iter().all(is_aside) { 0.0 } else { 1.0 };
    want((sum - whole).abs() < 1e-6 * (options.len() + 1) as f64, &format!("shares sum to {sum}"));
    want(options.is_sorted_by_key(is_aside), "something stands behind what is set aside");
    want(
        shares.len() == options.len() && shares.iter().all(|share| (0.0..=1.0).contains(share)),
        "a share is no share",
    );
    want(!options.is_empty() || !list(&result["remedies"]).is_empty(), "nothing fits, and no remedy is named");
    want(options.is_empty() || list(&result["remedies"]).is_empty(), "options fit, and still a remedy is named");
    let judged_by = |option: &Value| list(&option["criteria"]).iter().map(|it| it["name"].clone()).collect::<Vec<_>>();
    want(
        options.iter().all(|option| judged_by(option) == judged_by(&options[0])),
        "options are judged by different criteria",
    );
    for option in options {
        let key = option["key"].as_str().unwrap_or("?");
        all.extend(of_option(brief, option, options).into_iter().map(|what| format!("{key}: {what}")));
    }
    all
}

fn of_option(brief: &Brief, option: &Value, options: &[Value]) -> Vec<String> {
    let mut all = criteria(brief, option);
    let mut want = |holds: bool, what: &str| {
        if !holds {
            all.push(what.to_owned());
        }
    };
    want(text(&option["title"]), "has no title");
    want(option["choices"]["facing"].is_number(), "choices have no facing");
    want(option["never_first"].is_boolean() && option["proven"].is_boolean(), "never_first or proven is no yes or no");
    let share = option["first_place_share"].as_f64().unwrap_or(0.0);
    // What scores alike shares first places, and none of it is ever first alone.
    let alike = |other: &Value| at_least_as_good(other, option) && at_least_as_good(option, other);
    let has_twin = options.iter().any(|other| other["key"] != option["key"] && alike(other));
    want(share <= 0.0 || option["never_first"] == false || has_twin, "is never first, and has a share of first places");
    if let Some(by) = option["dominated_by"].as_str() {
        let better = options.iter().find(|other| other["key"] == by);
        want(better.is_some_and(|better| at_least_as_good(better, option)), "is not dominated by what it says");
        want(option["never_first"] == true, "is dominated, and yet first for some weights");
    }
    if is_aside(option) {
        let aside = &option["set_aside"];
        let known = list(&option["criteria"])
            .iter()
            .any(|it| it["name"] == aside["criterion"] && it["score"] == aside["score"]);
        want(known, "is set aside for a criterion or a score that it has not got");
        want(share == 0.0 && option["turns_if"].is_null(), "is set aside, and yet first for some weights");
        let dominates = options.iter().any(|other| other["dominated_by"] == option["key"]);
        want(option["dominated_by"].is_null() && !dominates, "is set aside, and yet held against others");
    }
    want(is_aside(option) || !breaks_a_must(option), "scores under 25 in a must, and is not set aside");
    let family = options.iter().find(|other| other["key"] == option["family"]);
    let alike = |other: &Value, what: &str| other["choices"][what] == option["choices"][what];
    want(
        family.is_some_and(|it| {
            it["rank"].as_u64() <= option["rank"].as_u64() && alike(it, "seat_back") && alike(it, "hand")
        }),
        "its family is not that of an option before it with the same wall and hand",
    );
    let turns = &option["turns_if"];
    if !turns.is_null() {
        let known = Criterion::ALL.iter().any(|criterion| turns["criterion"] == criterion.key());
        let weight = turns["weight"].as_f64().is_some_and(|weight| (0.0..=5.0).contains(&weight));
        let then = options.iter().any(|other| other["key"] == turns["then_first"]);
        want(known && weight && then, "turns_if names no wish, no weight of 0 to 5, or no option");
    }
    let figure = |name: &str| option[name].as_f64().unwrap_or(f64::NAN);
    let (objective, bound) = (figure("objective"), figure("bound"));
    want(bound >= objective - 1e-3, "its bound lies below its objective");
    let close = bound - objective <= PROVEN * objective.abs().max(1.0);
    want(option["proven"] == false || close, "is proven with a bound too far off");
    // The limits are those of the largest layout, where one is told.
    let value = size_value(brief, &super::largest::of(option).unwrap_or_else(|| option.clone()));
    want(
        (figure("size_value") - value).abs() <= 0.01 * value.abs().max(1.0).sqrt() + ROUNDED,
        &format!("size_value is {value:.2}"),
    );
    want(objective <= figure("size_value") + 1e-3, "its objective lies above its size value");
    all.extend(pieces(brief, option));
    all.extend(gaps_and_routes(option));
    all
}

fn is_aside(option: &Value) -> bool {
    !option["set_aside"].is_null()
}

fn breaks_a_must(option: &Value) -> bool {
    let figure = |it: &Value, what: &str| it[what].as_f64().unwrap_or(0.0);
    list(&option["criteria"]).iter().any(|it| figure(it, "weight") >= 5.0 && figure(it, "score") < 25.0)
}

fn criteria(brief: &Brief, option: &Value) -> Vec<String> {
    let mut all = Vec::new();
    let mut names = BTreeSet::new();
    let (mut sum, mut weights, mut plain, mut count) = (0.0, 0.0, 0.0, 0.0);
    for it in list(&option["criteria"]) {
        let known = Criterion::ALL.iter().find(|criterion| it["name"] == criterion.key());
        let (Some(criterion), Some(score), Some(weight)) = (known, it["score"].as_f64(), it["weight"].as_f64()) else {
            all.push(format!("a criterion has no name, score or weight: {it}"));
            continue;
        };
        let figures =
            it["figure"].is_number() && ["deg", "mm", "percent", "count"].iter().any(|unit| it["unit"] == *unit);
        if !(0.0..=100.0).contains(&score) || !figures || !text(&it["reason"]) || !text(&it["basis"]) {
            all.push(format!("{}: score past 0..100, or no figure, unit, reason or basis", criterion.key()));
        }
        if (weight - brief.wishes.get(*criterion)).abs() > 1e-9 {
            all.push(format!("{}: weight {weight} is not the wish", criterion.key()));
        }
        if !names.insert(criterion.key()) {
            all.push(format!("{} is told twice", criterion.key()));
        }
        sum += score * weight;
        weights += weight;
        plain += score;
        count += 1.0;
    }
    let mean = if weights > 0.0 { sum / weights } else { plain / count };
    if option["score"].as_f64().is_none_or(|score| (score - mean).abs() > 2.0 * ROUNDED) {
        all.push(format!("score {} is not the weighted mean {mean:.2}", option["score"]));
    }
    all
}

fn at_least_as_good(first: &Value, second: &Value) -> bool {
    let score = |option: &Value, name: &Value| {
        let all = list(&option["criteria"]).iter();
        all.filter(|it| it["name"] == *name).find_map(|it| it["score"].as_f64())
    };
    let pairs = list(&second["criteria"]).iter().map(|it| (score(first, &it["name"]), it["score"].as_f64()));
    pairs.into_iter().all(|(first, second)| first.zip(second).is_some_and(|(a, b)| a >= b - ROUNDED))
}

/// How high a piece is, mm: of a screen that hangs its upper edge, 9 parts of a diagonal of the root of 337 over its lower.
fn top(piece: &Piece) -> f64 {
    let hung = piece.screen.filter(|_| piece.kind.hangs());
    piece.height + hung.map_or(0.0, |diagonal| diagonal * 9.0 / 337.0_f64.sqrt())
}

fn pieces(brief: &Brief, option: &Value) -> Vec<String> {
    let mut all = Vec::new();
    let names = |field: &str| -> Vec<String> {
        list(&option[field]).iter().filter_map(|it| it["name"].as_str().map(str::to_owned)).collect()
    };
    let (stand, out) = (names("pieces"), names("left_out"));
    for piece in &brief.pieces {
        let times = stand.iter().chain(&out).filter(|name| **name == piece.name).count();
        if times != 1 || (piece.needed && out.contains(&piece.name)) {
            all.push(format!("{} is told {times} times, or left out though needed", piece.name));
        }
    }
    if stand.len() + out.len() != brief.pieces.len() || list(&option["left_out"]).iter().any(|it| !text(&it["why"])) {
        all.push("pieces stand that were not asked for, or one is left out with no reason".to_owned());
    }
    for it in list(&option["pieces"]) {
        let asked = brief.pieces.iter().find(|piece| it["name"] == piece.name.as_str());
        let height =
            asked.zip(it["height"].as_f64()).is_some_and(|(piece, height)| (top(piece) - height).abs() < ROUNDED);
        let keys: Vec<&str> = Dimension::ALL.iter().map(|dimension| dimension.key()).collect();
        let held = list(&it["held_by"])
            .iter()
            .all(|held| keys.iter().any(|key| held["dimension"] == *key) && text(&held["by"]) && text(&held["rule"]));
        if !height || !held || it.get("at_wall").is_none() {
            all.push(format!("{}: another height, no at_wall, or a bad held_by", it["name"]));
        }
    }
    all
}

fn gaps_and_routes(option: &Value) -> Vec<String> {
    let mut all = Vec::new();
    for gap in list(&option["gaps"]) {
        let (clear, needs) = (gap["clear"].as_f64(), gap["needs"].as_f64());
        let kept = clear.zip(needs).is_some_and(|(clear, needs)| clear >= needs - 1.0);
        if !kept || list(&gap["between"]).len() != 2 || !text(&gap["rule"]) {
            all.push(format!("a gap is not kept or not told: {gap}"));
        }
    }
    for route in list(&option["routes"]) {
        let pinch = &route["pinch"];
        let whole = pinch.is_null() || (list(&pinch["between"]).len() == 2 && list(&pinch["at"]).len() == 2);
        let straight = || {
            let at = |i: usize| Some([pinch["at"][i][0].as_f64()?, pinch["at"][i][1].as_f64()?]);
            let (a, b) = (at(0)?, at(1)?);
            Some((a[0] - b[0]).hypot(a[1] - b[1]))
        };
        // What pinches a route is as far apart as the route is wide.
        let fits = pinch.is_null()
            || straight().zip(route["width"].as_f64()).is_some_and(|(gap, width)| (gap - width).abs() <= 5.0);
        if !whole || !fits || route["length"].as_f64().is_none_or(|length| length <= 0.0) {
            all.push(format!("a route's pinch or length is not told: {route}"));
        }
    }
    all
}

/// Weight times value of each size, from its least (a piece that need not be there: from nothing).
fn size_value(brief: &Brief, option: &Value) -> f64 {
    let mut sum = 0.0;
    for it in list(&option["pieces"]) {
        let Some(piece) = brief.pieces.iter().find(|piece| it["name"] == piece.name.as_str()) else { continue };
        for (range, size) in [
            (Some(piece.width), it["size"]["width"].as_f64()),
            (piece.return_length, it["size"]["return"].as_f64()),
            (piece.second_return, it["size"]["second_return"].as_f64()),
            (piece.return_depth, it["size"]["return_depth"].as_f64()),
            (Some(piece.depth), it["size"]["depth"].as_f64()),
        ] {
            let (Some(range), Some(size)) = (range, size) else { continue };
            let from = if piece.needed { range.least } else { 0.0 };
            let value = if size <= range.usual { size - from } else { range.usual - from + (size - range.usual) / 4.0 };
            sum += piece.weight * value;
        }
    }
    sum
}

fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

fn text(value: &Value) -> bool {
    value.as_str().is_some_and(|text| !text.trim().is_empty())
}
