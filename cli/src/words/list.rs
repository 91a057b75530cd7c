//! Words about lists: of names in a sentence, of pieces in a file.

/// `a`, `a and b`, `a, b and c`.
pub(crate) fn listed(names: &[String]) -> String {
    match names.split_last() {
        None => String::new(),
        Some((last, [])) => last.clone(),
        Some((last, others)) => format!("{} and {last}", others.join(", ")),
    }
}

/// A fault with its line, where it has one.
pub(crate) fn fault(line: usize, message: &str) -> String {
    if line == 0 { message.to_owned() } else { format!("line {line}: {message}") }
}

/// How many faults are not told one by one.
pub(crate) fn beyond(count: usize) -> String {
    format!("and {count} more of the kind.")
}

/// Columns that say nothing here.
pub(crate) fn passed_over(name: &str, columns: &[String]) -> String {
    format!("Columns of {name} that say nothing here: {}.", columns.join(", "))
}
