//! How a table is written.

/// How a table is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// A header line, then a line for each row: parted by commas, semicolons or tabs (RFC 4180 quoting).
    Separated,
    /// One JSON object on each line.
    JsonLines,
    /// A YAML list of rows, or `pieces:` with such a list under it.
    Yaml,
    /// A workbook (`.xlsx`), of which one sheet holds the table.
    Workbook,
}

impl Form {
    /// The form that a file of this name is in; `None` where the name does not say.
    #[must_use]
    pub fn of_name(name: &str) -> Option<Self> {
        let (_, ending) = name.rsplit_once('.')?;
        match ending.to_ascii_lowercase().as_str() {
            "csv" | "tsv" | "tab" => Some(Self::Separated),
            "ndjson" | "jsonl" => Some(Self::JsonLines),
            "yaml" | "yml" => Some(Self::Yaml),
            "xlsx" => Some(Self::Workbook),
            _ => None,
        }
    }

    /// The form that a text looks like: an object first is JSON, a list or a lone key first is YAML.
    pub(super) fn of_text(text: &str) -> Self {
        let says = |line: &&str| !line.is_empty() && !line.starts_with('#') && *line != "---";
        let first = text.lines().map(str::trim).find(says).unwrap_or_default();
        if first.starts_with('{') {
            Self::JsonLines
        } else if first.starts_with("- ") || first == "-" || first.starts_with('[') || is_key(first) {
            Self::Yaml
        } else {
            Self::Separated
        }
    }
}

/// `pieces:` or `units: cm`.
fn is_key(line: &str) -> bool {
    line.split_once(':').is_some_and(|(key, rest)| {
        key.chars().all(|c| c.is_ascii_alphabetic() || c == '_') && !rest.contains([',', ';', '\t'])
    })
}
