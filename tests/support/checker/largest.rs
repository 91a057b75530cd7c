//! The largest layout of an option, read as if it were the option's own.

use serde_json::Value;

/// The mark of a largest layout that is read as an option's own.
const IS_LARGEST: &str = "read from the largest layout";

/// Whether it is a largest layout so read: its circle to turn in is not told.
pub(crate) fn is_one(option: &Value) -> bool {
    option[IS_LARGEST] == true
}

/// The option with its pieces as the largest layout has them; `None` where it tells none.
pub(crate) fn of(option: &Value) -> Option<Value> {
    let largest = option["largest"].as_object()?;
    let mut merged = option.clone();
    let told = largest.get("pieces")?.as_array()?;
    for piece in merged["pieces"].as_array_mut()? {
        let same = told.iter().find(|other| other["name"] == piece["name"]);
        for field in ["parts", "facing", "at_wall", "size"] {
            // A piece that the largest layout does not tell has no place in it.
            piece[field] = same.map_or(Value::Null, |other| other[field].clone());
        }
    }
    merged["routes"] = largest.get("routes").cloned().unwrap_or(Value::Null);
    // What is told to be given of an eased rule is what the plan gives.
    for eased in merged["eased"].as_array_mut().into_iter().flatten() {
        eased["given"] = Value::Null;
    }
    merged[IS_LARGEST] = Value::Bool(true);
    Some(merged)
}

/// What is wrong with how the two layouts of an option go together.
pub(crate) fn complaints(option: &Value) -> Vec<String> {
    let names = |pieces: &Value| -> Vec<String> {
        let pieces = pieces.as_array().into_iter().flatten();
        pieces.filter_map(|piece| piece["name"].as_str().map(str::to_owned)).collect()
    };
    let mut all = Vec::new();
    if names(&option["pieces"]) != names(&option["largest"]["pieces"]) {
        all.push("the largest layout has other pieces than the plan".to_owned());
    }
    for piece in option["pieces"].as_array().into_iter().flatten() {
        for dimension in ["width", "return", "depth"] {
            let planned = piece["range"][dimension]["planned"].as_f64();
            let size = piece["size"][dimension].as_f64();
            if let Some((planned, size)) = planned.zip(size).filter(|(planned, size)| (planned - size).abs() > 1e-6) {
                all.push(format!("{}'s {dimension} is {size}, and {planned} is told as planned", piece["name"]));
            }
        }
    }
    for field in ["size_value", "objective", "bound", "proven"] {
        if option[field] != option["largest"][field] {
            all.push(format!("{field} is not the largest layout's"));
        }
    }
    all
}
