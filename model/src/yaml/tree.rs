//! A YAML text as a tree whose every key and value knows its place; hostile text is turned away.

use std::fmt;

use serde::de::{Deserialize, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use serde_saphyr::{DuplicateKeyPolicy, Location, MergeKeyPolicy, NonFiniteFloatPolicy, Spanned};

use crate::fault::{Fault, Place};

/// The largest text that is read, bytes.
pub(crate) const LARGEST_TEXT: usize = 1 << 20;
/// How deep lists and maps may nest; a scenario needs six.
const DEEPEST: usize = 24;
/// Values in one text, those that aliases repeat included; the largest scenario needs some thousands.
const MOST_VALUES: usize = 20_000;
/// Values that aliases may repeat in one text.
const MOST_REPEATED: usize = 5_000;

/// A value and where it stands.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Node {
    /// The value.
    pub(crate) value: NodeValue,
    /// Where it stands.
    pub(crate) place: Option<Place>,
}

/// What a node holds.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum NodeValue {
    /// Nothing.
    Null,
    /// `true` or `false`.
    Bool(bool),
    /// A whole number.
    Integer(i64),
    /// Any other number.
    Float(f64),
    /// A text.
    Text(String),
    /// A list.
    List(Vec<Node>),
    /// Keys and values in the file's order; a key may stand twice.
    Map(Vec<Entry>),
}

/// A key and its value.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Entry {
    /// The key.
    pub(crate) key: String,
    /// Where the key stands.
    pub(crate) place: Option<Place>,
    /// The value.
    pub(crate) node: Node,
}

/// One step down a tree.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum TrailStep {
    /// Into a map.
    Key(String),
    /// Into a list.
    Index(usize),
}

/// The way from the root of a tree to one of its nodes.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Trail(Vec<TrailStep>);

impl Trail {
    /// One step further, into a map.
    #[must_use]
    pub(crate) fn key(&self, key: &str) -> Self {
        self.with(TrailStep::Key(key.to_owned()))
    }

    /// One step further, into a list.
    #[must_use]
    pub(crate) fn index(&self, index: usize) -> Self {
        self.with(TrailStep::Index(index))
    }

    /// The steps from the root.
    #[must_use]
    pub(crate) fn steps(&self) -> &[TrailStep] {
        &self.0
    }

    fn with(&self, step: TrailStep) -> Self {
        let mut steps = self.0.clone();
        steps.push(step);
        Self(steps)
    }
}

impl Node {
    /// Stands where a value was at fault and was taken out.
    pub(crate) const TAKEN_OUT: Self = Self { value: NodeValue::Null, place: None };
    /// The tree of what was read without one: nothing has a place.
    pub(crate) const NOTHING: Self = Self { value: NodeValue::Map(Vec::new()), place: None };

    /// Reads `text`.
    ///
    /// # Errors
    /// The one fault that keeps the text from being read at all.
    pub(crate) fn read(text: &str) -> Result<Self, Box<Fault>> {
        turn_away(text)?;
        let options = serde_saphyr::options! {
            budget: serde_saphyr::budget! {
                max_depth: DEEPEST,
                flow_nesting_limit: DEEPEST,
                max_documents: 2,
                max_nodes: MOST_VALUES,
                max_events: 4 * MOST_VALUES,
                max_aliases: 1000,
                max_anchors: 1000,
            },
            alias_limits: serde_saphyr::alias_limits! {
                max_total_replayed_events: MOST_REPEATED,
                max_replay_stack_depth: DEEPEST,
            },
            duplicate_keys: DuplicateKeyPolicy::PassThrough,
            merge_keys: MergeKeyPolicy::AsOrdinary,
            non_finite_float_policy: NonFiniteFloatPolicy::PassThrough,
            strict_booleans: true,
            leading_zero_numbers_as_strings: true,
            underscored_numbers_as_strings: true,
            reject_unsupported_tags: true,
            with_snippet: false,
        };
        serde_saphyr::from_str_with_options(text, options).map_err(|error| Box::new(not_yaml(&error)))
    }

    /// The node at the end of `trail`, or the last one on the way there.
    #[must_use]
    pub(crate) fn at(&self, trail: &Trail) -> &Self {
        let mut node = self;
        for step in trail.steps() {
            let next = match (&node.value, step) {
                (NodeValue::Map(entries), TrailStep::Key(key)) => {
                    entries.iter().find(|entry| entry.key == *key).map(|entry| &entry.node)
                }
                (NodeValue::List(items), TrailStep::Index(index)) => items.get(*index),
                _ => None,
            };
            match next {
                Some(next) => node = next,
                None => return node,
            }
        }
        node
    }
}

/// Text that is no scenario whatever is in it: too large, binary, or empty.
fn turn_away(text: &str) -> Result<(), Box<Fault>> {
    let fault = |code, message: String, remedy: &str| {
        Err(Box::new(Fault { code, item: None, message, remedy: remedy.to_owned(), place: None }))
    };
    if text.len() > LARGEST_TEXT {
        let message = format!("The file is {} bytes long; at most {LARGEST_TEXT} (1 MiB) are read.", text.len());
        return fault("file_too_large", message, "One file describes one room: a few hundred lines at most.");
    }
    if text.contains('\0') {
        let message = "The file holds NUL bytes: it is no text.".to_owned();
        return fault("binary_file", message, "Give a scenario written as YAML text.");
    }
    let says = |line: &str| !line.trim().is_empty() && !line.trim_start().starts_with('#') && line.trim() != "---";
    if !text.trim_start_matches('\u{feff}').lines().any(says) {
        let message = "The file is empty.".to_owned();
        return fault("empty_file", message, "Start from the commented scenario that `new` writes.");
    }
    Ok(())
}

fn not_yaml(error: &serde_saphyr::Error) -> Fault {
    let error = error.without_snippet();
    let place = error.location().as_ref().and_then(place);
    let said = error.render_with_formatter(&serde_saphyr::UserMessageFormatter);
    // The place is told beside the message.
    let said = crate::quote::clean(said.split(" at line ").next().unwrap_or_default());
    let (code, message, remedy) = match error {
        _ if said.contains("limit") || said.contains("too complex") => (
            "too_much",
            "The file nests deeper, or holds or repeats more, than any scenario does.".to_owned(),
            "A scenario nests six deep: remove what is nested deeper or repeated by aliases.",
        ),
        serde_saphyr::Error::MultipleDocuments { .. } => (
            "several_documents",
            "The file holds several documents.".to_owned(),
            "One file describes one room: keep one document, and give the others files of their own.",
        ),
        _ => (
            "not_yaml",
            format!("The file cannot be read as YAML: {}.", said.trim_end_matches('.')),
            "Mend the YAML at this place: check indents, colons, brackets and quotes.",
        ),
    };
    Fault { code, item: None, message, remedy: remedy.to_owned(), place }
}

fn place(location: &Location) -> Option<Place> {
    let span = location.span();
    let number = |number: u64| usize::try_from(number).ok();
    let line = number(location.line()).filter(|line| *line > 0)?;
    Some(Place {
        line,
        column: number(location.column())?.max(1),
        offset: number(span.byte_offset().unwrap_or_default())?,
        length: number(span.byte_len().unwrap_or_default())?,
    })
}

impl<'de> Deserialize<'de> for Node {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let spanned = Spanned::<NodeValue>::deserialize(deserializer)?;
        Ok(Self { value: spanned.value, place: place(&spanned.referenced) })
    }
}

impl<'de> Deserialize<'de> for NodeValue {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(AnyValue)
    }
}

struct AnyValue;

impl<'de> Visitor<'de> for AnyValue {
    type Value = NodeValue;

    fn expecting(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str("a value")
    }

    fn visit_unit<E: Error>(self) -> Result<NodeValue, E> {
        Ok(NodeValue::Null)
    }

    fn visit_none<E: Error>(self) -> Result<NodeValue, E> {
        Ok(NodeValue::Null)
    }

    fn visit_some<D: Deserializer<'de>>(self, deserializer: D) -> Result<NodeValue, D::Error> {
        NodeValue::deserialize(deserializer)
    }

    fn visit_bool<E: Error>(self, value: bool) -> Result<NodeValue, E> {
        Ok(NodeValue::Bool(value))
    }

    fn visit_i64<E: Error>(self, value: i64) -> Result<NodeValue, E> {
        Ok(NodeValue::Integer(value))
    }

    fn visit_u64<E: Error>(self, value: u64) -> Result<NodeValue, E> {
        // Beyond 2^63 no figure here is exact or sensible; as a float it is refused by its size.
        Ok(i64::try_from(value).map_or(NodeValue::Float(value as f64), NodeValue::Integer))
    }

    fn visit_f64<E: Error>(self, value: f64) -> Result<NodeValue, E> {
        Ok(NodeValue::Float(value))
    }

    fn visit_str<E: Error>(self, value: &str) -> Result<NodeValue, E> {
        Ok(NodeValue::Text(value.to_owned()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<NodeValue, A::Error> {
        let mut items = Vec::new();
        while let Some(item) = list.next_element()? {
            items.push(item);
        }
        Ok(NodeValue::List(items))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<NodeValue, A::Error> {
        let mut entries = Vec::new();
        while let Some(key) = map.next_key::<Spanned<String>>()? {
            let node = map.next_value()?;
            entries.push(Entry { key: key.value, place: place(&key.referenced), node });
        }
        Ok(NodeValue::Map(entries))
    }
}
