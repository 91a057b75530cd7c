//! Labels that find a free place: none lies on another, none leaves the area they belong in.
//!
//! A label tries the places that its maker would like best, then a place further off with a leader to what it names. What
//! finds neither becomes a number in a ring, and its words go to the key.

use super::meets::{lies_in, meet};
use super::{Area, At, Fill, Label, Mark, Path, Pen, Tone, edges};

/// Kept free between labels, mm.
const BETWEEN: f64 = 0.5;
/// A leader is looked for at these steps from what it names, mm.
const STEP: f64 = 2.5;
/// A leader is no longer than this, mm.
const LONGEST_LEADER: f64 = 45.0;
/// Ways that a leader may take.
const WAYS: usize = 24;
/// Type of a number in a ring, mm.
const NUMBER: f64 = 2.2;
/// What a line under a label costs, mm of leader.
const CROSSED: f64 = 6.0;

/// What was placed so far.
#[derive(Debug)]
pub(crate) struct Labels {
    within: Area,
    /// What is taken: each a block, turned or not.
    taken: Vec<[At; 4]>,
    minded: Vec<[At; 2]>,
    /// Lines that no label lies on.
    barred: Vec<[At; 2]>,
    /// The same for what does not lie on bodies, which hide them.
    under: Vec<[At; 2]>,
    /// The outline of the room.
    floor: Vec<At>,
    bodies: Vec<Vec<At>>,
    marks: Vec<Mark>,
    key: Vec<String>,
    /// Numbers that stand for something else.
    before: usize,
}

impl Labels {
    /// Labels that stay within an area.
    pub(crate) const fn new(within: Area) -> Self {
        Self {
            within,
            taken: Vec::new(),
            minded: Vec::new(),
            barred: Vec::new(),
            under: Vec::new(),
            floor: Vec::new(),
            bodies: Vec::new(),
            marks: Vec::new(),
            key: Vec::new(),
            before: 0,
        }
    }

    /// The same, its numbers beginning after those that stand for something else.
    pub(crate) const fn counting_after(mut self, before: usize) -> Self {
        self.before = before;
        self
    }

    /// No label may lie there.
    pub(crate) fn keep_out(&mut self, area: Area) {
        self.taken.push(area.corners());
    }

    /// The same of a rectangle that may be turned.
    pub(crate) fn keep_out_ring(&mut self, ring: [At; 4]) {
        self.taken.push(ring);
    }

    /// Something stands there: only its own name lies on it. A convex outline.
    pub(crate) fn body(&mut self, ring: Vec<At>) {
        self.mind_ring(&ring);
        self.bodies.push(ring);
    }

    /// A label had better not lie on this line.
    pub(crate) fn mind(&mut self, line: [At; 2]) {
        self.minded.push(line);
    }

    /// The same of every edge of an outline.
    pub(crate) fn mind_ring(&mut self, ring: &[At]) {
        self.minded.extend(edges(ring));
    }

    /// No label may lie on this line.
    pub(crate) fn bar(&mut self, line: [At; 2]) {
        self.barred.push(line);
    }

    /// No label may lie on these edges, but for what lies on a body that hides them.
    pub(crate) fn bar_under(&mut self, ring: &[At]) {
        self.under.extend(edges(ring));
    }

    /// The room: labels of what is outside stay off it.
    pub(crate) fn room(&mut self, outline: Vec<At>) {
        self.floor = outline;
    }

    /// Puts a label where there is room for it.
    pub(crate) fn place(&mut self, label: &Label) {
        if let Some(middle) = self.best(label, label.places.iter().map(|at| (*at, 0.0))) {
            self.put(label, middle);
        } else if let Some(middle) = self.beside(label) {
            self.lead(label, middle);
            self.put(label, middle);
        } else {
            self.number(label);
        }
    }

    /// The same for a label that can be left off: whether it found a place.
    pub(crate) fn place_if_free(&mut self, label: &Label) -> bool {
        let found = self.best(label, label.places.iter().map(|at| (*at, 0.0)));
        if let Some(middle) = found {
            self.put(label, middle);
        }
        found.is_some()
    }

    /// All marks, and the words of each number.
    pub(crate) fn finished(self) -> (Vec<Mark>, Vec<String>) {
        (self.marks, self.key)
    }

    /// The place that costs least; each with what it costs by itself.
    fn best(&self, label: &Label, places: impl Iterator<Item = (At, f64)>) -> Option<At> {
        let costs = places.filter_map(|(middle, cost)| {
            let block = label.block(middle, BETWEEN / 2.0);
            let is_free = self.is_free(&block) && self.suits(label, &block);
            is_free.then(|| (middle, cost + self.crossed(&block) * CROSSED))
        });
        costs.min_by(|one, other| one.1.total_cmp(&other.1)).map(|(middle, _)| middle)
    }

    /// The best place round what the label names, within reach of a leader.
    fn beside(&self, label: &Label) -> Option<At> {
        let (width, height) = label.size();
        let rings = (1..).map(|ring| f64::from(ring) * STEP).take_while(|reach| *reach <= LONGEST_LEADER);
        let places = rings.flat_map(|reach| {
            (0..WAYS).map(move |way| {
                let (sine, cosine) = (std::f64::consts::TAU * way as f64 / WAYS as f64).sin_cos();
                let off = At::new(cosine * (reach + width / 2.0), sine * (reach + height / 2.0));
                (label.of + off, reach)
            })
        });
        self.best(label, places)
    }

    fn is_free(&self, block: &[At; 4]) -> bool {
        self.within.holds(&Area::of(*block)) && self.taken.iter().all(|taken| !meet(taken, block))
    }

    /// Whether a label of its kind may lie there.
    fn suits(&self, label: &Label, block: &[At; 4]) -> bool {
        let off = |lines: &[[At; 2]]| lines.iter().all(|line| !meet(&line[..], block));
        off(&self.barred)
            && (label.over || self.bodies.iter().all(|body| !meet(body, block)) && off(&self.under))
            && !(label.outside && lies_in(&self.floor, block))
    }

    /// How many minded lines run through a block.
    fn crossed(&self, block: &[At; 4]) -> f64 {
        self.minded.iter().filter(|line| meet(&line[..], block)).count() as f64
    }

    fn put(&mut self, label: &Label, middle: At) {
        self.taken.push(label.block(middle, BETWEEN / 2.0));
        self.marks.extend(label.marks(middle));
    }

    /// A leader from the label's nearest edge.
    fn lead(&mut self, label: &Label, middle: At) {
        let area = Area::of(label.block(middle, BETWEEN));
        let from = At::new(label.of.x.clamp(area.at.x, area.right()), label.of.y.clamp(area.at.y, area.bottom()));
        self.minded.push([from, label.of]);
        self.marks.push(Path::line([from, label.of], Pen::of(0.15, Tone::Grey)).into());
        self.marks.push(Path::circle(label.of, 0.4, None, Fill::Tone(Tone::Grey)).into());
    }

    /// A number in a ring where the label would have been, or as near to it as there is room.
    fn number(&mut self, label: &Label) {
        self.key.push(label.lines.iter().map(|(line, _)| line.as_str()).collect::<Vec<_>>().join(" "));
        let number = Label {
            places: vec![label.of],
            ..Label::new(label.of, Vec::new(), NUMBER, (self.before + self.key.len()).to_string())
        };
        let free = self.best(&number, std::iter::once((label.of, 0.0))).or_else(|| self.beside(&number));
        let Some(middle) = free else { return };
        if middle != label.of {
            self.lead(&number, middle);
        }
        self.marks.push(Path::circle(middle, NUMBER * 0.75, Some(Pen::ink(0.18)), Fill::Tone(Tone::Paper)).into());
        self.put(&number, middle);
    }
}

#[cfg(test)]
mod tests {
    use super::Labels;
    use crate::drawing::{Area, At, Label, Mark, Side};

    fn texts(marks: &[Mark]) -> usize {
        marks.iter().filter(|mark| matches!(mark, Mark::Text(text) if text.side == Side::Middle)).count()
    }

    #[test]
    fn what_has_no_room_at_its_place_gets_a_leader_and_then_a_number() {
        let middle = At::new(20.0, 10.0);
        let label = |text: &str| Label::new(middle, vec![middle], 2.5, text);
        let mut labels = Labels::new(Area::new(0.0, 0.0, 40.0, 20.0));
        labels.place(&label("a name of some length"));
        assert_eq!(labels.marks.len(), 1);
        labels.place(&label("another name of some length"));
        assert_eq!((texts(&labels.marks), labels.marks.len()), (2, 4), "a leader with a dot");
        labels.place(&label("a name that is far too long to find a place on so small a sheet"));
        let (marks, key) = labels.finished();
        assert_eq!((texts(&marks), key.len()), (3, 1));
    }

    #[test]
    fn a_label_had_rather_not_lie_on_a_line() {
        let (on, off) = (At::new(10.0, 10.0), At::new(10.0, 15.0));
        let mut labels = Labels::new(Area::new(0.0, 0.0, 20.0, 20.0));
        labels.mind([At::new(0.0, 10.0), At::new(20.0, 10.0)]);
        labels.place(&Label::new(on, vec![on, off], 2.0, "here"));
        assert!(matches!(&labels.marks[0], Mark::Text(text) if text.at.y > 13.0));
    }
}
