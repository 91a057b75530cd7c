//! The shortest walk of a disc's centre from one mouth to another: a taut cord round the corners that stand in its way.

use std::f64::consts::PI;

use elbowroom_model::Point;

use super::corner::{Corner, corners};
use super::free::{Doorstep, FreeFloor};
use super::lead::{About, Lead, Leads, Reached, Round, Walked};
use super::mouth::{FromMouth, Mouth};
use super::stop::Stop;
use super::tolerance::{CHORD, LOOK, NO_LONGER, ROUNDING};
use crate::geometry::{Bend, Segment, Turn, corner_to_corner, corner_to_place, place_to_corner};

/// A walk as found.
#[derive(Debug, Clone, PartialEq)]
pub struct Walk {
    /// Its length, mm.
    pub length: f64,
    /// The line that the centre walks, from mouth to mouth; arcs as chords.
    pub line: Vec<Point>,
}

/// The shortest walk of the centre of a disc between two mouths as widened; `None` where the disc cannot get there.
#[must_use]
pub fn walk_between(walls: &[Stop], mouths: &[Mouth; 2], things: &[Stop], diameter: f64) -> Option<Walk> {
    let floor = &FreeFloor::new(walls, mouths, things, diameter);
    let corners = corners(walls, &floor.stops);
    let search = Search { floor, steps: [floor.doorsteps(0), floor.doorsteps(1)], corners };
    search.run()
}

struct Search<'a> {
    floor: &'a FreeFloor<'a>,
    /// Free parts of the two mouths' stretches.
    steps: [Vec<Doorstep>; 2],
    corners: Vec<Corner>,
}

impl Search<'_> {
    fn run(&self) -> Option<Walk> {
        let mut open = Leads::default();
        let mut reached: Vec<Reached> = Vec::new();
        self.leads_from_mouth(&mut open);
        while let Some(lead) = open.pop() {
            if !self.is_free(&lead) {
                continue;
            }
            let Some(round) = lead.next else {
                return Some(Walk { length: lead.length, line: self.line(&reached, lead) });
            };
            if self.is_beaten(&reached, round, lead.length) {
                continue;
            }
            let walked = Walked { round, length: lead.length, place: reached.len() };
            reached.push(Reached { round, length: lead.length, lead });
            self.leads_from(walked, &mut open);
        }
        None
    }

    /// The line walked up to the end of `last`: its legs, and the arcs between them.
    fn line(&self, reached: &[Reached], last: Lead) -> Vec<Point> {
        let mut leads = vec![last];
        let mut after = last.after;
        while let Some(before) = after.and_then(|place| reached.get(place)) {
            leads.push(before.lead);
            after = before.lead.after;
        }
        let mut line: Vec<Point> = Vec::new();
        for lead in leads.iter().rev() {
            if let Some(round) = lead.earlier {
                line.extend(self.arc(round, self.contact(round, lead.from)));
            }
            line.extend([lead.from, lead.to]);
        }
        line.dedup_by(|later, earlier| (*later - *earlier).norm() < ROUNDING);
        line
    }

    /// Places on the arc round a corner up to where it is left, its two ends left out.
    fn arc(&self, round: Round, last: Point) -> impl Iterator<Item = Point> {
        let at = self.corner(round.about).at;
        let angle = round.about.turn.angle(round.contact, last);
        let signed = if round.about.turn == Turn::Left { angle } else { -angle };
        // An angle is at most a half turn here.
        let chords = (angle / CHORD).ceil() as usize;
        (1..chords)
            .map(move |place| at + round.contact.turned(signed * place as f64 / chords as f64) * self.floor.radius)
    }

    fn is_free(&self, lead: &Lead) -> bool {
        let leg = || self.floor.leg_is_free(Segment::new(lead.from, lead.to));
        leg() && lead.earlier.is_none_or(|round| self.arc_is_free(round, self.contact(round, lead.from)))
    }

    /// Whether the corner was reached before, no later on its arc and by no longer a walk.
    fn is_beaten(&self, reached: &[Reached], round: Round, length: f64) -> bool {
        reached.iter().any(|Reached { round: before, length: earlier, .. }| {
            let same = before.about == round.about;
            let angle = round.about.turn.angle(before.contact, round.contact);
            let shorter = earlier + angle * self.floor.radius <= length + NO_LONGER;
            same && angle <= PI && shorter && self.arc_is_free(*before, round.contact)
        })
    }

    /// Direction from the corner to a place on its arc.
    fn contact(&self, round: Round, on_arc: Point) -> Point {
        (on_arc - self.corner(round.about).at).unit().unwrap_or(round.contact)
    }

    /// Whether the centre can go round a corner from where it first touches its arc to where it leaves it.
    fn arc_is_free(&self, round: Round, last: Point) -> bool {
        let at = self.corner(round.about).at;
        let angle = round.about.turn.angle(round.contact, last);
        // An angle is at most a half turn here.
        let looks = (angle / LOOK).ceil() as usize;
        let (sine, cosine) = (angle / looks.max(1) as f64).sin_cos();
        let turned = |contact: &Point| {
            let side = match round.about.turn {
                Turn::Left => contact.left(),
                Turn::Right => contact.right(),
            };
            Some(*contact * cosine + side * sine)
        };
        let contacts = std::iter::successors(turned(&round.contact), turned).take(looks);
        self.floor.arc_is_free(at, contacts.map(|contact| at + contact * self.floor.radius))
    }

    fn leads_from_mouth(&self, open: &mut Leads) {
        for &step in &self.steps[0] {
            let own = self.segment(0, step);
            for &far in &self.steps[1] {
                let across = nearest(own, self.segment(1, far));
                self.push(open, Lead { from: across.start, to: across.end, ..Lead::start() });
            }
            for about in self.rounds() {
                let (bend, radius) = (self.bend(about), self.floor.radius);
                let square = self.floor.mouths[0].before;
                let foot = self.foot(0, step, bend.at + bend.turn.contact(square) * radius);
                self.push_to(open, foot, about, Some(square));
                for end in [own.start, own.end] {
                    self.push_to(open, Some(end), about, place_to_corner(end, bend, radius));
                }
            }
        }
    }

    fn leads_from(&self, walked: Walked, open: &mut Leads) {
        let (bend, radius) = (self.bend(walked.round.about), self.floor.radius);
        for about in self.rounds() {
            let to = self.bend(about);
            if let Some(along) = corner_to_corner(bend, to, radius) {
                let next = Round { about, contact: to.turn.contact(along) };
                let target = to.at + next.contact * radius;
                if self.corner(about).faces(next.contact) {
                    self.leave(open, walked, along, target, Some(next));
                }
            }
        }
        for &step in &self.steps[1] {
            let square = -self.floor.mouths[1].before;
            if let Some(foot) = self.foot(1, step, bend.at + bend.turn.contact(square) * radius) {
                self.leave(open, walked, square, foot, None);
            }
            let own = self.segment(1, step);
            for end in [own.start, own.end] {
                if let Some(along) = corner_to_place(bend, end, radius) {
                    self.leave(open, walked, along, end, None);
                }
            }
        }
    }

    /// A leg from the arc that the walk has come to, in the direction `along`.
    fn leave(&self, open: &mut Leads, walked: Walked, along: Point, to: Point, next: Option<Round>) {
        let Walked { round, length, place } = walked;
        let contact = round.about.turn.contact(along);
        let corner = self.corner(round.about);
        let angle = round.about.turn.angle(round.contact, contact);
        let from = corner.at + contact * self.floor.radius;
        if !corner.faces(contact) || angle > PI || along.dot(to - from) < -ROUNDING {
            return;
        }
        let length = length + angle * self.floor.radius;
        self.push(open, Lead { length, earlier: Some(round), from, to, next, after: Some(place), ..Lead::start() });
    }

    /// A leg from a place on the first mouth to a corner.
    fn push_to(&self, open: &mut Leads, from: Option<Point>, about: About, along: Option<Point>) {
        let (Some(from), Some(along)) = (from, along) else { return };
        let (corner, contact) = (self.corner(about), about.turn.contact(along));
        let to = corner.at + contact * self.floor.radius;
        if corner.faces(contact) && along.dot(to - from) >= -ROUNDING {
            self.push(open, Lead { from, to, next: Some(Round { about, contact }), ..Lead::start() });
        }
    }

    fn push(&self, open: &mut Leads, lead: Lead) {
        open.push(lead, self.straight_ahead(lead.to));
    }

    /// The straight way from a place to the far mouth, mm.
    fn straight_ahead(&self, from: Point) -> f64 {
        let [start, end] = self.floor.mouths[1].stretch;
        Segment::new(start, end).distance_to(from)
    }

    fn rounds(&self) -> impl Iterator<Item = About> + '_ {
        (0..self.corners.len()).flat_map(|corner| Turn::BOTH.map(|turn| About { corner, turn }))
    }

    fn corner(&self, about: About) -> &Corner {
        &self.corners[about.corner]
    }

    fn bend(&self, about: About) -> Bend {
        Bend { at: self.corner(about).at, turn: about.turn }
    }

    fn on(&self, mouth: usize, off: f64) -> Point {
        let mouth = &self.floor.mouths[mouth];
        mouth.stretch[0] + mouth.along() * off
    }

    fn segment(&self, mouth: usize, step: Doorstep) -> Segment {
        Segment::new(self.on(mouth, step.from), self.on(mouth, step.to))
    }

    /// Foot of the perpendicular from a place before a mouth on a free part of its stretch.
    fn foot(&self, mouth: usize, step: Doorstep, place: Point) -> Option<Point> {
        let own = &self.floor.mouths[mouth];
        let FromMouth { along, before } = own.place(own.along(), place);
        let on_step = along >= step.from - 2.0 * ROUNDING && along <= step.to + 2.0 * ROUNDING;
        (on_step && before >= -ROUNDING).then(|| self.on(mouth, along))
    }
}

/// The nearest places of two segments that do not cross.
fn nearest(first: Segment, second: Segment) -> Segment {
    let onto_second = [first.start, first.end].map(|from| Segment::new(from, second.nearest_to(from)));
    let onto_first = [second.start, second.end].map(|to| Segment::new(first.nearest_to(to), to));
    let all = onto_second.into_iter().chain(onto_first);
    all.min_by(|a, b| a.length().total_cmp(&b.length())).unwrap_or(first)
}
