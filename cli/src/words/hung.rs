//! How high something hangs, in words.

/// How high something hangs: its middle, its lower and its upper edge.
pub(crate) fn told([middle, lower, upper]: [String; 3]) -> String {
    format!("its middle {middle} above the floor, from {lower} to {upper}")
}

/// What hangs, by the heights of its lower edge, its middle and its upper edge.
pub(crate) fn to_be_marked([lower, middle, upper]: [&str; 3]) -> String {
    format!(
        "It hangs: on the wall mark its middle {middle} above the floor, its lower edge at {lower} and its upper edge at {upper}, \
         and tape a sheet of card there. The strips show where it juts out over the floor."
    )
}
