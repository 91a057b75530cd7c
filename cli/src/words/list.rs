//! Words about lists: of names in a sentence, of pieces in a file.

use elbowroom_model::listing::OddSize;
use elbowroom_model::quote::quoted;
use elbowroom_model::{Place, Rounding, Unit};

use super::lengths::shop_unit;

/// `a`, `a and b`, `a, b and c`.
pub(crate) fn listed(names: &[String]) -> String {
    match names.split_last() {
        None => String::new(),
        Some((last, [])) => last.clone(),
        Some((last, others)) => format!("{} and {last}", others.join(", ")),
    }
}

/// A fault with its line, where it has one; in a sheet of a workbook with its row and, where it has one, its column, from 1.
pub(crate) fn fault(sheet: Option<&str>, place: Option<Place>, message: &str) -> String {
    let (line, column) = place.map_or((0, 0), |place| (place.line, place.column));
    match (sheet, line, column) {
        (_, 0, _) => message.to_owned(),
        (None, line, _) => format!("line {line}: {message}"),
        (Some(sheet), row, 0) => format!("sheet {sheet}, row {row}: {message}"),
        (Some(sheet), row, column) => format!("sheet {sheet}, row {row}, column {}: {message}", letters(column)),
    }
}

/// What spreadsheets call a column, from 1: `A`, `Z`, `AA`.
fn letters(column: usize) -> String {
    let (mut left, mut letters) = (column, Vec::new());
    while left > 0 {
        // Below 26.
        letters.push(char::from(b'A' + ((left - 1) % 26) as u8));
        left = (left - 1) / 26;
    }
    letters.into_iter().rev().collect()
}

/// How many faults are not told one by one.
pub(crate) fn beyond(count: usize) -> String {
    format!("and {count} more of the kind.")
}

/// Columns that say nothing here.
pub(crate) fn passed_over(name: &str, columns: &[String]) -> String {
    format!("Columns of {name} that say nothing here: {}.", columns.join(", "))
}

/// A size that no shop has, in the unit that pieces are told in.
pub(crate) fn odd_size(odd: &OddSize, unit: Unit) -> String {
    let unit = shop_unit(unit);
    let told = |length: f64| unit.words(length, Rounding::Nearest);
    let [least, most] = odd.usual.map(told);
    let is = format!(
        "Line {}: the {} of {} is {}, and {least} to {most} is usual",
        odd.line,
        odd.dimension.words(),
        quoted(&odd.name),
        told(odd.length)
    );
    match odd.likely {
        Some(likely) => format!("{is}: is it meant in {}?", likely.key()),
        None => format!("{is}: check the figure and its unit."),
    }
}

#[cfg(test)]
mod tests {
    use super::{Place, fault, letters};

    #[test]
    fn columns_go_by_the_letters_that_spreadsheets_give_them() {
        let told = [1, 26, 27, 52, 53, 702, 703, 16_384].map(letters);
        assert_eq!(told, ["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA", "XFD"]);
        let at = |line, column| Some(Place { line, column, offset: 0, length: 0 });
        assert_eq!(fault(Some("May"), at(3, 2), "no."), "sheet May, row 3, column B: no.");
        assert_eq!(
            [fault(Some("May"), at(3, 0), "no."), fault(Some("May"), None, "no.")],
            ["sheet May, row 3: no.", "no."]
        );
        assert_eq!(fault(None, at(3, 2), "no."), "line 3: no.");
    }
}
