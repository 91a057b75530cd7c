//! Labels that find a free place: none lies on another, none leaves the area they belong in.
//!
//! A label tries the places that its maker would like best, then a place further off with a leader to what it names. What
//! finds neither becomes a number in a ring, and its words go to the key.

use super::meets::{lies_in, meet, runs_along};
use super::{Area, At, Fill, Label, Mark, Path, Pen, Tone, edges, hand};

/// Kept free between labels, mm.
const BETWEEN: f64 = 0.5;
/// A leader is looked for at these steps from what it names, mm.
const STEP: f64 = 2.5;
/// A leader is no longer than this, mm.
const LONGEST_LEADER: f64 = 45.0;
/// Ways that a leader may take.
const WAYS: usize = 24;
/// Type of a number in a ring, mm.
const NUMBER: f64 = hand::FIGURES;
/// What a line under a label costs, mm of leader.
const CROSSED: f64 = 10.0;
/// What a leader costs by itself, mm of its length.
const LEADER: f64 = 2.0;
/// What it costs to lead over a line, mm of leader.
const OVER_LINE: f64 = 1.5;
/// What it costs to lead over a wall, mm of leader.
const OVER_WALL: f64 = 20.0;
/// What it costs to lead along a line, mm of leader: the two are then seen as one.
const ALONG_LINE: f64 = 40.0;
/// What it costs to name outside the room what stands in it, mm of leader.
const OUTSIDE: f64 = 3.0;

/// What was placed so far.
#[derive(Debug)]
pub(crate) struct Labels {
    within: Area,
    /// Where no words may lie: each a block, turned or not.
    kept_free: Vec<[At; 4]>,
    /// Where words lie.
    taken: Vec<[At; 4]>,
    minded: Vec<[At; 2]>,
    /// Lines that no label lies on.
    barred: Vec<[At; 2]>,
    /// The same for what does not lie on bodies, which hide them.
    under: Vec<[At; 2]>,
    /// From labels to what they name.
    leaders: Vec<[At; 2]>,
    /// The outline of the room.
    floor: Vec<At>,
    bodies: Vec<Vec<At>>,
    marks: Vec<Mark>,
    key: Vec<String>,
    /// Numbers that stand for something else.
    before: usize,
}

/// A place for a label.
#[derive(Debug, Clone, Copy)]
struct Found {
    middle: At,
    /// mm of leader.
    cost: f64,
}

impl Labels {
    /// Labels that stay within an area.
    pub(crate) const fn new(within: Area) -> Self {
        Self {
            within,
            kept_free: Vec::new(),
            taken: Vec::new(),
            minded: Vec::new(),
            barred: Vec::new(),
            under: Vec::new(),
            leaders: Vec::new(),
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
        self.kept_free.push(area.corners());
    }

    /// The same of a rectangle that may be turned.
    pub(crate) fn keep_out_ring(&mut self, ring: [At; 4]) {
        self.kept_free.push(ring);
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

    /// Puts a label where there is room for it: at one of its places, or a little off where it lies better.
    pub(crate) fn place(&mut self, label: &Label) {
        let near = self.best(label);
        let dear = near.map_or(f64::INFINITY, |near| near.cost);
        if let Some(found) = self.beside(label, dear) {
            self.lead(label, found.middle);
            self.put(label, found.middle);
        } else if let Some(found) = near {
            self.put(label, found.middle);
        } else {
            self.number(label);
        }
    }

    /// The same for a label that can be left off: whether it found one of its places.
    pub(crate) fn place_if_free(&mut self, label: &Label) -> bool {
        self.put_if_found(label, self.best(label))
    }

    /// The same with a leader that costs less than so much, mm of leader, where none of its places is free.
    pub(crate) fn place_if_near(&mut self, label: &Label, dear: f64) -> bool {
        let near = self.best(label);
        if let Some(found) = self.beside(label, near.map_or(dear, |near| near.cost.min(dear))) {
            self.lead(label, found.middle);
            self.put(label, found.middle);
            return true;
        }
        self.put_if_found(label, near)
    }

    /// The same for a label that has another place elsewhere: it lies on no line either.
    pub(crate) fn place_if_clear(&mut self, label: &Label) -> bool {
        self.put_if_found(label, self.best(label).filter(|found| found.cost <= 0.0))
    }

    /// The first of these places at which no body stands.
    pub(crate) fn bare(&self, places: &[At]) -> Option<At> {
        let is_bare = |at: &&At| self.bodies.iter().all(|body| !at.is_in(body));
        places.iter().find(is_bare).copied()
    }

    fn put_if_found(&mut self, label: &Label, found: Option<Found>) -> bool {
        if let Some(found) = found {
            self.put(label, found.middle);
        }
        found.is_some()
    }

    /// All marks, and the words of each number.
    pub(crate) fn finished(self) -> (Vec<Mark>, Vec<String>) {
        (self.marks, self.key)
    }

    /// The one of its places that costs least.
    fn best(&self, label: &Label) -> Option<Found> {
        let found = label.places.iter().filter_map(|middle| self.at(label, *middle));
        found.min_by(|one, other| one.cost.total_cmp(&other.cost))
    }

    /// The best place round what the label names, within reach of a leader, where one costs less than so much.
    fn beside(&self, label: &Label, dear: f64) -> Option<Found> {
        let (width, height) = label.size();
        let mut best: Option<Found> = None;
        for ring in 1.. {
            let reach = f64::from(ring) * STEP;
            let limit = best.map_or(dear, |best| best.cost);
            if reach > LONGEST_LEADER || LEADER + reach >= limit {
                break;
            }
            let places = (0..WAYS).map(|way| {
                let (sine, cosine) = (std::f64::consts::TAU * way as f64 / WAYS as f64).sin_cos();
                label.of + At::new(cosine * (reach + width / 2.0), sine * (reach + height / 2.0))
            });
            let led = places.filter_map(|middle| self.at(label, middle)).filter_map(|found| {
                let over = self.led_over(label, found.middle)?;
                Some(Found { cost: found.cost + LEADER + reach + over, ..found })
            });
            best = led.filter(|found| found.cost < limit).min_by(|one, other| one.cost.total_cmp(&other.cost)).or(best);
        }
        best
    }

    /// What a label costs there, where it may lie there.
    fn at(&self, label: &Label, middle: At) -> Option<Found> {
        let block = label.block(middle, BETWEEN / 2.0);
        let may_lie = self.is_free(&block) && self.suits(label, &block);
        may_lie.then(|| Found { middle, cost: self.crossed(&block) * CROSSED })
    }

    /// What it costs that a leader runs over lines and walls, and out of the room; `None` where it would run over words or cross
    /// another: which name is whose is then hard to see.
    fn led_over(&self, label: &Label, middle: At) -> Option<f64> {
        let leader = label.leader(middle, BETWEEN);
        let is_crossed = self.leaders.iter().any(|other| meet(&other[..], &leader));
        if is_crossed || self.taken.iter().any(|taken| meet(&leader, taken)) {
            return None;
        }
        let lines = || self.minded.iter().chain(&self.barred);
        let over = lines().filter(|line| meet(&line[..], &leader)).count() as f64;
        let along = lines().filter(|line| runs_along(leader, **line)).count() as f64;
        let walls = self.kept_free.iter().filter(|wall| meet(&leader, *wall)).count() as f64;
        let is_in = |at: &At| self.floor.is_empty() || at.is_in(&self.floor);
        let is_out = is_in(&label.of) && !label.block(middle, 0.0).iter().all(is_in);
        let out = if is_out { OUTSIDE } else { 0.0 };
        Some(over * OVER_LINE + along * ALONG_LINE + walls * OVER_WALL + out)
    }

    fn is_free(&self, block: &[At; 4]) -> bool {
        let mut not_free = self.kept_free.iter().chain(&self.taken);
        self.within.holds(&Area::of(*block)) && not_free.all(|taken| !meet(taken, block))
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

    /// A leader, which no later words lie on.
    fn lead(&mut self, label: &Label, middle: At) {
        let leader = label.leader(middle, BETWEEN);
        self.barred.push(leader);
        self.leaders.push(leader);
        self.marks.push(Path::line(leader, Pen::of(hand::FITTINGS, Tone::Grey)).into());
        self.marks.push(Path::circle(label.of, 0.4, None, Fill::Tone(Tone::Grey)).into());
    }

    /// A number in a ring where the label would have been, or as near to it as there is room.
    fn number(&mut self, label: &Label) {
        self.key.push(label.lines.iter().map(|(line, _)| line.as_str()).collect::<Vec<_>>().join(" "));
        let number = Label {
            places: vec![label.of],
            ..Label::new(label.of, Vec::new(), NUMBER, (self.before + self.key.len()).to_string())
        };
        let free = self.best(&number).or_else(|| self.beside(&number, f64::INFINITY));
        let Some(Found { middle, .. }) = free else { return };
        if middle != label.of {
            self.lead(&number, middle);
        }
        self.marks
            .push(Path::circle(middle, NUMBER * 0.75, Some(Pen::ink(hand::FITTINGS)), Fill::Tone(Tone::Paper)).into());
        self.put(&number, middle);
    }
}

#[cfg(test)]
mod tests;
