//! Reads a printed tape sheet as somebody with a tape would, in a frame of its own: the first wall runs from (0, 0) to the
//! right, and the room lies below it.

use std::collections::BTreeMap;

use elbowroom_model::Unit;
use elbowroom_model::length;

/// A place.
type At = (f64, f64);

/// What a sheet says, set out.
pub(super) struct Rebuilt {
    /// The corners of each piece, by its name.
    pub pieces: Vec<(String, Vec<At>)>,
    /// The centre of the circle to turn in.
    pub circle: Option<At>,
}

/// What is known of the room.
struct Ground {
    units: Unit,
    points: BTreeMap<String, At>,
    /// Letter of the left-hand and the right-hand end of each wall.
    walls: BTreeMap<String, (String, String)>,
}

impl Rebuilt {
    /// From the sheet alone; or, where a room is given, from its measures laid out in that room.
    pub(super) fn of(sheet: &str, room: Option<&[At]>) -> Self {
        let unit = sheet.split("Lengths in ").nth(1).unwrap().split(['(', ')']).nth(1).unwrap();
        let units = Unit::of(unit).unwrap();
        let mut ground = Ground { units, points: BTreeMap::new(), walls: BTreeMap::new() };
        let points = part(sheet, "Points to measure from").replace("\n       ", " ");
        ground.set_corners(&points, part(sheet, "Check the room first"));
        if let Some(room) = room {
            ground.points.values_mut().for_each(|point| *point = nearest(room, *point));
        }
        ground.set_jambs(&points);
        let strokes = sheet.split("\nTape lines, in this order\n").nth(1).unwrap().split("\nWalk it\n").next().unwrap();
        let mut pieces: Vec<(String, Vec<At>)> = Vec::new();
        let (mut head, mut circle) = (String::new(), None);
        for line in strokes.lines() {
            let cells = cells(line);
            match line.split_once(". ") {
                Some((number, name)) if number.parse::<usize>().is_ok() => pieces.push((name.to_owned(), Vec::new())),
                _ if line.starts_with("  From ") || line.starts_with("  Where ") => head = line.trim().to_owned(),
                _ if line.starts_with("    ") && cells[0] == "centre" => circle = Some(ground.corner(&head, &cells)),
                _ if line.starts_with("    ") && cells[0].parse::<usize>().is_ok() => {
                    let (_, corners) = pieces.last_mut().unwrap();
                    assert_eq!(cells[0], (corners.len() + 1).to_string(), "{line}");
                    corners.push(ground.corner(&head, &cells));
                    ground.see_cut(&cells);
                }
                _ => {}
            }
        }
        Self { pieces, circle }
    }
}

/// What stands under a heading.
fn part<'a>(sheet: &'a str, heading: &str) -> &'a str {
    sheet.split(&format!("\n{heading}\n")).nth(1).unwrap().split("\n\n").next().unwrap()
}

fn cells(line: &str) -> Vec<String> {
    line.split("  ").map(str::trim).filter(|cell| !cell.is_empty()).map(str::to_owned).collect()
}

/// A name without its article.
fn bare(name: &str) -> &str {
    name.strip_prefix("the ").unwrap_or(name)
}

fn minus(one: At, other: At) -> At {
    (one.0 - other.0, one.1 - other.1)
}

/// The place as far as told from two others, left of the way from the first to the second or right of it.
fn crossing((first, a): (At, f64), (second, b): (At, f64), left: bool) -> At {
    let way = minus(second, first);
    let base = way.0.hypot(way.1);
    let (x, y) = (way.0 / base, way.1 / base);
    let along = (a * a - b * b + base * base) / (2.0 * base);
    let off = (a * a - along * along).max(0.0).sqrt() * if left { 1.0 } else { -1.0 };
    (first.0 + x * along - y * off, first.1 + y * along + x * off)
}

impl Ground {
    fn length(&self, cell: &str) -> f64 {
        length::parse(&format!("{cell} {}", self.units.key()), self.units).unwrap_or_else(|_| panic!("{cell}"))
    }

    /// Corners from the lengths of walls and diagonals; walls by what the corners are called.
    fn set_corners(&mut self, points: &str, checks: &str) {
        let corners: Vec<(String, String, String)> = points
            .lines()
            .filter_map(|line| {
                let cells = cells(line);
                let (ends, starts) = cells[1].strip_prefix("the corner between ")?.split_once(" and ")?;
                Some((cells[0].clone(), ends.to_owned(), starts.to_owned()))
            })
            .collect();
        for (place, (letter, _, starts)) in corners.iter().enumerate() {
            let next = &corners[(place + 1) % corners.len()];
            assert_eq!(starts, &next.1);
            self.walls.insert(bare(starts).to_owned(), (letter.clone(), next.0.clone()));
        }
        let letters: Vec<&str> = corners.iter().map(|corner| corner.0.as_str()).collect();
        let mut lengths: BTreeMap<(usize, usize), f64> = BTreeMap::new();
        for line in checks.lines() {
            let cells = cells(line);
            let Some((from, to)) = cells[0].split_once(" to ") else { continue };
            let at = |letter: &str| letters.iter().position(|known| *known == letter);
            let (Some(from), Some(to)) = (at(from), at(to)) else { continue };
            lengths.insert((from.min(to), from.max(to)), self.length(&cells[1]));
        }
        let far = |one: usize, other: usize| lengths.get(&(one.min(other), one.max(other))).copied();
        let mut placed: BTreeMap<usize, At> = BTreeMap::from([(0, (0.0, 0.0)), (1, (far(0, 1).unwrap(), 0.0))]);
        while placed.len() < letters.len() {
            let next = (0..letters.len()).filter(|place| !placed.contains_key(place)).find_map(|place| {
                let known: Vec<usize> = placed.keys().copied().collect();
                known.iter().enumerate().find_map(|(order, &one)| {
                    known[order + 1..].iter().find_map(|&other| {
                        far(one, other)?;
                        let (a, b) = (far(one, place)?, far(other, place)?);
                        // Corners in the order of the walls run clockwise.
                        let between = one < place && place < other;
                        Some((place, crossing((placed[&one], a), (placed[&other], b), between)))
                    })
                })
            });
            let (place, at) = next.expect("walls and diagonals leave no corner free");
            placed.insert(place, at);
        }
        self.points.extend(placed.into_iter().map(|(place, at)| (letters[place].to_owned(), at)));
    }

    fn set_jambs(&mut self, points: &str) {
        for line in points.lines() {
            let cells = cells(line);
            let Some((_, measure)) = cells[1].split_once(" jamb of ").and_then(|(_, rest)| rest.rsplit_once(": "))
            else {
                continue;
            };
            let (along, rest) = measure.split_once(" from ").unwrap();
            let (from, wall) = rest.split_once(" along ").unwrap();
            let along = length::parse(along, self.units).unwrap();
            let way = self.way(wall);
            let start = self.points[from];
            self.points.insert(cells[0].clone(), (start.0 + way.0 * along, start.1 + way.1 * along));
        }
    }

    /// Along a wall from its left to its right end, of length one.
    fn way(&self, wall: &str) -> At {
        let (left, right) = &self.walls[bare(wall)];
        let way = minus(self.points[right], self.points[left]);
        let length = way.0.hypot(way.1);
        (way.0 / length, way.1 / length)
    }

    fn corner(&self, head: &str, cells: &[String]) -> At {
        match head.strip_prefix("From ") {
            Some(told) => {
                let (from, wall) = told.split_once(" along ").unwrap();
                let wall = wall.strip_suffix(", then square out from it:").unwrap();
                let start = self.points[from];
                let way = self.way(wall);
                let (left, right) = &self.walls[bare(wall)];
                let (left, right) = (self.points[left], self.points[right]);
                let middle = ((left.0 + right.0) / 2.0, (left.1 + right.1) / 2.0);
                let to_middle = minus(middle, start);
                let forward = if to_middle.0 * way.0 + to_middle.1 * way.1 > 0.0 { 1.0 } else { -1.0 };
                let (along, out) = (self.length(&cells[1]) * forward, self.length(&cells[2]));
                // The room lies on the right of each wall.
                (start.0 + way.0 * along + way.1 * out, start.1 + way.1 * along - way.0 * out)
            }
            None => {
                let (points, side) = head.split_once(", on your ").unwrap();
                let points = points.strip_prefix("Where two lengths cross, from ").unwrap();
                let (first, second) = points.split_once(" and from ").unwrap();
                let left = match side.split(' ').next().unwrap() {
                    "left" => true,
                    "right" => false,
                    words => panic!("{words}"),
                };
                let (first, second) = (self.points[first], self.points[second]);
                let (a, b) = (self.length(&cells[1]), self.length(&cells[2]));
                let at = crossing((first, a), (second, b), left);
                let (one, other) = (minus(first, at), minus(second, at));
                let angle = (one.0 * other.0 + one.1 * other.1) / (one.0.hypot(one.1) * other.0.hypot(other.1));
                let told: f64 = cells[3].strip_suffix(" deg").unwrap().parse().unwrap();
                // Half a degree of rounding, and what two rebuilt points, each off by a few tape's steps, turn the lengths by.
                let unsure = 0.5 + (10.0 / a + 10.0 / b).to_degrees();
                assert!((angle.acos().to_degrees() - told).abs() < unsure, "{cells:?}: {}", angle.acos().to_degrees());
                at
            }
        }
    }

    /// A strip is cut at least 5 cm longer than its stroke, and not much more.
    fn see_cut(&self, cells: &[String]) {
        let [.., long, cut] = cells else { panic!("{cells:?}") };
        let over = self.length(cut) - self.length(long);
        assert!((48.0..=64.0).contains(&over), "{cells:?}");
    }
}

fn nearest(corners: &[At], point: At) -> At {
    let far = |at: &At| (at.0 - point.0).hypot(at.1 - point.1);
    *corners.iter().min_by(|a, b| far(a).total_cmp(&far(b))).unwrap()
}
