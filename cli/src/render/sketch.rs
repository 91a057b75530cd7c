//! A plan in letters, for a terminal: walls, what they hold, and the pieces as boxes.

use elbowroom_model::{Brief, ItemKind, Point, ring};
use elbowroom_solver::answer::{OptionPiece, RankedOption};
use textwrap::core::display_width;

use crate::text::safe::safe;
use crate::words::rank as words;

/// Columns that a room takes at most.
const WIDEST: usize = 72;
/// Rows that it takes at most.
const HIGHEST: usize = 36;
/// A row of a terminal is about as high as so many columns are wide.
const ROW: f64 = 2.0;

/// The lines of a sketch no wider than `width` columns, and what its signs mean.
pub(crate) fn lines(brief: &Brief, option: &RankedOption, width: usize) -> Vec<String> {
    let grid = Grid::of(brief, width.min(WIDEST));
    let standing: Vec<OptionPiece<'_>> = option.pieces(brief).collect();
    let parts: Vec<Parts> = standing.iter().map(|one| (one.parts(), one.piece.kind.lies_under())).collect();
    let outline = brief.room.outline();
    let cells =
        Cells { inside: grid.rows(|at| ring::holds(&outline, at)), pieces: grid.rows(|at| piece_at(&parts, at)) };
    let mut letters: Vec<Vec<char>> = (0..grid.down)
        .map(|row| (0..grid.across).map(|column| letter(brief, &grid, &cells, row, column)).collect())
        .collect();
    let mut numbered = Vec::new();
    for (place, one) in standing.iter().enumerate() {
        let name = safe(&one.piece.name);
        if !written(&mut letters, &cells.pieces, place, &name) {
            let number = (numbered.len() + 1).to_string();
            written(&mut letters, &cells.pieces, place, &number);
            numbered.push(format!("{number} {name}"));
        }
    }
    let mut lines: Vec<String> =
        letters.into_iter().map(|row| row.into_iter().collect::<String>().trim_end().to_owned()).collect();
    // The row of cells above the room, or below it, may hold nothing.
    lines.retain(|line| !line.is_empty());
    lines.push(words::sketch_signs(&numbered));
    lines
}

/// Cells over the room, a cell more on every side for the walls.
struct Grid {
    left: f64,
    top: f64,
    cell: f64,
    across: usize,
    down: usize,
}

impl Grid {
    fn of(brief: &Brief, width: usize) -> Self {
        let outline = brief.room.outline();
        let reach = |of: fn(&Point) -> f64| {
            let all = outline.iter().map(of);
            all.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)))
        };
        let ((left, right), (bottom, top)) = (reach(|at| at.x), reach(|at| at.y));
        let columns = width.saturating_sub(2).max(8) as f64;
        let rows = (HIGHEST - 2) as f64;
        let cell = ((right - left) / columns).max((top - bottom) / (rows * ROW)).max(1.0);
        // Both are small: the room over its own cell.
        let across = ((right - left) / cell).ceil() as usize + 2;
        let down = ((top - bottom) / (cell * ROW)).ceil() as usize + 2;
        Self { left: left - cell, top: top + cell * ROW, cell, across, down }
    }

    /// The middle of a cell on the plan.
    fn middle(&self, row: usize, column: usize) -> Point {
        let (down, across) = (row as f64 + 0.5, column as f64 + 0.5);
        Point::new(self.left + across * self.cell, self.top - down * self.cell * ROW)
    }

    fn rows<T>(&self, at: impl Fn(Point) -> T) -> Vec<Vec<T>> {
        (0..self.down).map(|row| (0..self.across).map(|column| at(self.middle(row, column))).collect()).collect()
    }
}

/// What lies in each cell, row by row.
struct Cells {
    /// It is within the room.
    inside: Vec<Vec<bool>>,
    /// The piece that stands in it.
    pieces: Vec<Vec<Option<usize>>>,
}

/// What stands in a cell.
fn letter(brief: &Brief, grid: &Grid, cells: &Cells, row: usize, column: usize) -> char {
    let Cells { inside, pieces } = cells;
    match pieces[row][column] {
        Some(piece) => edge(pieces, piece, row, column),
        None if inside[row][column] => ' ',
        None if (0..3).any(|down| (0..3).any(|across| is_at(inside, row + down, column + across))) => {
            wall_sign(brief, grid.middle(row, column))
        }
        None => ' ',
    }
}

/// Whether the cell one up and one left of these is within the room.
fn is_at(inside: &[Vec<bool>], row: usize, column: usize) -> bool {
    let cell = row.checked_sub(1).zip(column.checked_sub(1));
    cell.and_then(|(row, column)| inside.get(row)?.get(column)).copied().unwrap_or(false)
}

/// The sign of a wall, or of what it holds there.
fn wall_sign(brief: &Brief, at: Point) -> char {
    let nearest = brief.room.walls().map(|(id, wall)| {
        let along = (at - wall.start).dot(wall.along()).clamp(0.0, wall.length());
        ((at - wall.point_at(along)).norm(), along, id)
    });
    let Some((_, along, id)) = nearest.min_by(|one, other| one.0.total_cmp(&other.0)) else { return '\u{2588}' };
    let holds = |kind: fn(&ItemKind) -> bool| {
        brief
            .room
            .items
            .iter()
            .any(|item| item.wall == id && kind(&item.kind) && (item.at..=item.at + item.width).contains(&along))
    };
    match () {
        () if holds(|kind| matches!(kind, ItemKind::Door(_))) => '\u{2592}',
        () if holds(|kind| matches!(kind, ItemKind::Opening(_))) => '\u{b7}',
        () if holds(|kind| matches!(kind, ItemKind::Window(_))) => '\u{2591}',
        () => '\u{2588}',
    }
}

/// The part of a box that a cell of a piece shows: two cells are joined where they lie along one side of it.
fn edge(pieces: &[Vec<Option<usize>>], piece: usize, row: usize, column: usize) -> char {
    let own = |down: isize, across: isize| {
        let cell = row.checked_add_signed(down).zip(column.checked_add_signed(across));
        cell.and_then(|(row, column)| pieces.get(row)?.get(column)) == Some(&Some(piece))
    };
    let level = |across: isize| own(0, across) && (!own(-1, 0) && !own(-1, across) || !own(1, 0) && !own(1, across));
    let upright = |down: isize| own(down, 0) && (!own(0, -1) && !own(down, -1) || !own(0, 1) && !own(down, 1));
    match (upright(-1), upright(1), level(-1), level(1)) {
        // Within the piece: the corner of a part that is cut out of it, or nothing.
        (false, false, false, false) => match (own(-1, -1), own(-1, 1), own(1, -1), own(1, 1)) {
            (false, true, true, true) => '\u{2518}',
            (true, false, true, true) => '\u{2514}',
            (true, true, false, true) => '\u{2510}',
            (true, true, true, false) => '\u{250c}',
            _ => ' ',
        },
        (true, true, false, false) | (true, false, false, false) | (false, true, false, false) => '\u{2502}',
        (false, true, false, true) => '\u{250c}',
        (false, true, true, false) => '\u{2510}',
        (true, false, false, true) => '\u{2514}',
        (true, false, true, false) => '\u{2518}',
        (false, false, ..) => '\u{2500}',
        (true, true, ..) | (true, false, true, true) | (false, true, true, true) => '\u{253c}',
    }
}

/// Writes a name into the widest run of a piece's inner cells; whether it had room.
fn written(letters: &mut [Vec<char>], pieces: &[Vec<Option<usize>>], piece: usize, name: &str) -> bool {
    let width = display_width(name);
    let rows: Vec<usize> = (0..pieces.len()).filter(|row| pieces[*row].contains(&Some(piece))).collect();
    let Some(middle) = rows.get(rows.len() / 2) else { return true };
    let mut by_nearness = rows.clone();
    by_nearness.sort_by_key(|row| row.abs_diff(*middle));
    for row in by_nearness {
        let cells: Vec<usize> = (0..pieces[row].len())
            .filter(|column| letters[row][*column] == ' ' && pieces[row][*column] == Some(piece))
            .collect();
        let runs = cells.chunk_by(|one, next| one + 1 == *next);
        let Some(run) = runs.max_by_key(|run| run.len()).filter(|run| run.len() >= width) else { continue };
        let start = run[(run.len() - width) / 2];
        // A letter of two columns takes two cells: the second stays empty.
        let mut column = start;
        for letter in name.chars() {
            letters[row][column] = letter;
            column += display_width(letter.encode_utf8(&mut [0; 4])).max(1);
        }
        return true;
    }
    false
}

/// The parts of a piece, and whether it lies flat.
type Parts = (Vec<Vec<Point>>, bool);

/// The piece that lies there; rugs lie under all others.
fn piece_at(pieces: &[Parts], at: Point) -> Option<usize> {
    let holds = |part: &Vec<Point>| {
        part.iter().zip(part.iter().cycle().skip(1)).all(|(start, end)| (*end - *start).cross(at - *start) >= 0.0)
    };
    pieces.iter().position(|(parts, is_flat)| !is_flat && parts.iter().any(holds))
}
