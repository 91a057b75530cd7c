//! Changes to a tree: a value put in, a value or a row taken out.

use super::tree::{Entry, Node, NodeValue, Trail, TrailStep};

impl Node {
    /// A whole number that stands in no file.
    pub(crate) fn integer(number: u32) -> Self {
        Self { value: NodeValue::Integer(i64::from(number)), place: None }
    }

    /// A text that stands in no file.
    pub(crate) fn text(text: &str) -> Self {
        Self { value: NodeValue::Text(text.to_owned()), place: None }
    }

    /// The same without places: what stands in no file.
    pub(crate) fn without_places(self) -> Self {
        let value = match self.value {
            NodeValue::List(items) => NodeValue::List(items.into_iter().map(Self::without_places).collect()),
            NodeValue::Map(entries) => NodeValue::Map(entries.into_iter().map(Entry::without_places).collect()),
            plain => plain,
        };
        Self { value, place: None }
    }

    /// Puts `node` at the end of `at`; maps on the way are made where they are not there.
    pub(crate) fn set(&mut self, at: &Trail, node: Self) {
        let mut here = self;
        for step in at.steps() {
            let Some(next) = here.entered(step) else { return };
            here = next;
        }
        *here = node;
    }

    /// Takes out what is at the end of `at`.
    pub(crate) fn remove(&mut self, at: &Trail) {
        let Some((last, way)) = at.steps().split_last() else { return };
        let mut here = self;
        for step in way {
            let Some(next) = here.entered(step) else { return };
            here = next;
        }
        match (&mut here.value, last) {
            (NodeValue::Map(entries), TrailStep::Key(key)) => entries.retain(|entry| entry.key != *key),
            (NodeValue::List(items), TrailStep::Index(index)) if *index < items.len() => {
                items.remove(*index);
            }
            _ => {}
        }
    }

    /// One step down; a key that is not there is put there, empty.
    fn entered(&mut self, step: &TrailStep) -> Option<&mut Self> {
        if self.value == NodeValue::Null {
            self.value = NodeValue::Map(Vec::new());
        }
        match (&mut self.value, step) {
            (NodeValue::Map(entries), TrailStep::Key(key)) => {
                let place = entries.iter().position(|entry| entry.key == *key).unwrap_or(entries.len());
                if place == entries.len() {
                    entries.push(Entry { key: key.clone(), place: None, node: Self::TAKEN_OUT });
                }
                entries.get_mut(place).map(|entry| &mut entry.node)
            }
            (NodeValue::List(items), TrailStep::Index(index)) => items.get_mut(*index),
            _ => None,
        }
    }
}

impl Entry {
    fn without_places(self) -> Self {
        Self { key: self.key, place: None, node: self.node.without_places() }
    }
}

#[cfg(test)]
mod tests {
    use super::{Node, Trail};

    #[test]
    fn what_is_put_in_is_there_and_what_is_taken_out_is_not() {
        let mut tree = Node::read("a: [1, { b: 2 }]").unwrap();
        let at = Trail::default().key("a").index(1).key("c").key("d");
        tree.set(&at, Node::integer(3));
        assert_eq!(tree.at(&at), &Node::integer(3));
        tree.remove(&Trail::default().key("a").index(0));
        assert_eq!(tree.at(&Trail::default().key("a").index(0).key("c").key("d")), &Node::integer(3));
    }
}
