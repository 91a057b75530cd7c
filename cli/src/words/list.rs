//! Words about lists of pieces.

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
