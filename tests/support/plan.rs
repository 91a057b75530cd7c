//! A scenario under construction: what a test says about a room, written out as the text of a scenario file.
//!
//! Numbers are in the unit that the text is written in; walls give coordinates, clockwise.
#![allow(dead_code, reason = "each suite uses its own part of the vocabulary")]

pub(crate) mod text;

/// A place on the plan.
pub(crate) type At = (f64, f64);

/// A room and what should stand in it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Plan {
    /// Clockwise seen from above.
    pub(crate) walls: Vec<PlanWall>,
    /// Fixed things: a name and a convex outline.
    pub(crate) fixed: Vec<(String, Vec<At>)>,
    /// Rows of `pieces`.
    pub(crate) pieces: Vec<PlanPiece>,
    /// Name of the profile the clearances start from.
    pub(crate) profile: &'static str,
    /// Clearances set one by one.
    pub(crate) clearances: Vec<(&'static str, f64)>,
    /// Wishes set one by one.
    pub(crate) wishes: Vec<(&'static str, f64)>,
    /// How far off a measured length may be.
    pub(crate) measured_within: f64,
}

/// A wall by its left-hand end, as one faces it from inside.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct PlanWall {
    pub(crate) name: String,
    pub(crate) start: At,
    pub(crate) holds: Vec<Held>,
    /// Lengths by other keys of its row, such as `ceiling_from`.
    pub(crate) also: Vec<(&'static str, f64)>,
}

/// Something on a wall.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Held {
    pub(crate) name: String,
    pub(crate) at: f64,
    pub(crate) width: f64,
    pub(crate) what: What,
}

/// What a wall holds.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum What {
    /// A door that swings in about the jamb on this side, or leads out of the way where it is `None`.
    Door { hinge: Option<Side>, leads_to: &'static str },
    /// A door that swings in and opens so far, degrees.
    WideDoor { hinge: Side, opens_to: f64, leads_to: &'static str },
    /// A doorway with no door.
    Opening { leads_to: &'static str, stance: &'static str },
    /// A window with its sill and head.
    Window { sill: f64, head: f64, view: &'static str, must_reach: bool },
    /// A radiator.
    Radiator { depth: f64, keep_clear: f64 },
    /// A fireplace.
    Fireplace { depth: f64, keep_clear: f64 },
}

/// Side of a hinge, as one faces the door from inside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Side {
    Left,
    Right,
}

impl Side {
    fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }

    fn key(self) -> &'static str {
        match self {
            Self::Left => "left",
            Self::Right => "right",
        }
    }
}

/// One row of `pieces`.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct PlanPiece {
    pub(crate) kind: &'static str,
    /// Ranges by dimension.
    pub(crate) sizes: Vec<(&'static str, f64, f64)>,
    /// Anything else: `count: 2`, `needed: false`.
    pub(crate) also: Vec<(&'static str, String)>,
}

impl PlanPiece {
    /// A piece of `kind` whose sizes come from the table.
    pub(crate) fn of(kind: &'static str) -> Self {
        Self { kind, sizes: Vec::new(), also: Vec::new() }
    }

    /// With a range of its own in one dimension.
    pub(crate) fn range(mut self, dimension: &'static str, least: f64, most: f64) -> Self {
        self.sizes.push((dimension, least, most));
        self
    }

    /// With one width and one depth.
    pub(crate) fn fixed(self, width: f64, depth: f64) -> Self {
        self.range("width", width, width).range("depth", depth, depth)
    }

    /// With another key of its row.
    pub(crate) fn also(mut self, key: &'static str, value: impl ToString) -> Self {
        self.also.push((key, value.to_string()));
        self
    }
}

impl Plan {
    /// A room of these corners, clockwise; walls `a`, `b`, ... from the first corner on; nothing in it, every clearance
    /// as the easy profile has it, measured without error.
    pub(crate) fn of(corners: &[At]) -> Self {
        let wall = |(place, start): (usize, &At)| PlanWall {
            name: format!("wall {}", char::from(b'a' + u8::try_from(place).unwrap())),
            start: *start,
            holds: Vec::new(),
            also: Vec::new(),
        };
        Self {
            walls: corners.iter().enumerate().map(wall).collect(),
            fixed: Vec::new(),
            pieces: Vec::new(),
            profile: "easy",
            clearances: Vec::new(),
            wishes: Vec::new(),
            measured_within: 0.0,
        }
    }

    /// A rectangle: wall `a` along the top, `width` long, `depth` from wall `a` to wall `c`.
    pub(crate) fn rectangle(width: f64, depth: f64) -> Self {
        Self::of(&[(0.0, 0.0), (width, 0.0), (width, -depth), (0.0, -depth)])
    }

    /// With something on a wall.
    pub(crate) fn hold(mut self, wall: usize, name: &str, at: f64, width: f64, what: What) -> Self {
        self.walls[wall].holds.push(Held { name: name.to_owned(), at, width, what });
        self
    }

    /// With a doorway that sweeps nothing.
    pub(crate) fn doorway(self, wall: usize, name: &str, at: f64, width: f64, leads_to: &'static str) -> Self {
        self.hold(wall, name, at, width, What::Door { hinge: None, leads_to })
    }

    /// With a fixed thing from one corner to the opposite one.
    pub(crate) fn block(mut self, name: &str, low: At, high: At) -> Self {
        let ring = vec![low, (high.0, low.1), high, (low.0, high.1)];
        self.fixed.push((name.to_owned(), ring));
        self
    }

    /// With a piece.
    pub(crate) fn piece(mut self, piece: PlanPiece) -> Self {
        self.pieces.push(piece);
        self
    }

    /// With a clearance set (and not what an earlier call said of it).
    pub(crate) fn clear(mut self, key: &'static str, figure: f64) -> Self {
        self.clearances.retain(|(other, _)| *other != key);
        self.clearances.push((key, figure));
        self
    }

    /// With every gap that a published figure does not name taken away, so that the one it names decides.
    pub(crate) fn bare(mut self) -> Self {
        for key in ["seat_off_wall", "storage_off_wall", "media_off_wall", "door_landing", "window_front"] {
            self = self.clear(key, 0.0);
        }
        for key in ["walkway", "passage", "storage_front", "facing_seats", "screen_to_seat", "desk_front"] {
            self = self.clear(key, 0.0);
        }
        self
    }

    /// Length of a wall.
    pub(crate) fn length(&self, wall: usize) -> f64 {
        let (start, end) = (self.walls[wall].start, self.walls[(wall + 1) % self.walls.len()].start);
        (end.0 - start.0).hypot(end.1 - start.1)
    }

    /// The mirror image: left is right and hinges change sides.
    pub(crate) fn mirrored(&self) -> Self {
        let count = self.walls.len();
        let flip = |(x, y): At| (-x, y);
        let mut plan = self.clone();
        plan.walls = (0..count)
            .rev()
            .map(|wall| {
                let held = |held: &Held| Held {
                    at: self.length(wall) - held.at - held.width,
                    what: match &held.what {
                        What::Door { hinge, leads_to } => What::Door { hinge: hinge.map(Side::other), leads_to },
                        &What::WideDoor { hinge, opens_to, leads_to } => {
                            What::WideDoor { hinge: hinge.other(), opens_to, leads_to }
                        }
                        what => what.clone(),
                    },
                    ..held.clone()
                };
                PlanWall {
                    name: self.walls[wall].name.clone(),
                    start: flip(self.walls[(wall + 1) % count].start),
                    holds: self.walls[wall].holds.iter().map(held).collect(),
                    also: self.walls[wall].also.clone(),
                }
            })
            .collect();
        for (_, ring) in &mut plan.fixed {
            *ring = ring.iter().rev().map(|at| flip(*at)).collect();
        }
        plan
    }

    /// Turned about the origin, counter-clockwise.
    pub(crate) fn turned(&self, degrees: f64) -> Self {
        let (sine, cosine) = degrees.to_radians().sin_cos();
        let turn = |(x, y): At| (x * cosine - y * sine, x * sine + y * cosine);
        let mut plan = self.clone();
        for wall in &mut plan.walls {
            wall.start = turn(wall.start);
        }
        for (_, ring) in &mut plan.fixed {
            *ring = ring.iter().map(|at| turn(*at)).collect();
        }
        plan
    }

    /// The same plan told in another order: walls from another one on, items, fixed things and pieces turned about.
    pub(crate) fn shuffled(&self, by: usize) -> Self {
        let mut plan = self.clone();
        let count = plan.walls.len();
        plan.walls.rotate_left(by % count);
        for wall in &mut plan.walls {
            wall.holds.reverse();
        }
        plan.fixed.reverse();
        if !plan.pieces.is_empty() {
            let count = plan.pieces.len();
            plan.pieces.rotate_left(by % count);
            plan.pieces.reverse();
        }
        plan
    }
}
