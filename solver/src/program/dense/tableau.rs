//! Which variables are where, and how the ones inside their bounds move with those that stand at a limit.

use super::line::{Line, eliminate, subtract};
use super::statement::Statement;

/// Columns that lines have room for besides those that they have: each piece that comes to stand brings some.
const MORE_COLUMNS: usize = 16;

/// Where a variable of the program is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Place {
    /// At its better bound, and no row can move it from there: none names it, or its bounds are one.
    Apart,
    /// At a bound, in this column.
    Column(usize),
    /// Inside its bounds, in this line.
    Line(usize),
}

/// What gives way in a step: the one that breaks its limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Leaving {
    /// The variable of a line, which goes to its lower or (`true`) its upper bound.
    Line(usize, bool),
    /// The slack of a row, which goes to zero.
    Row(usize),
}

/// The basis. A column stands for a variable at a bound or a tight row; index `variable` for a variable and
/// `variables + row` for the slack of a row. A variable has a column from the first row on that can move it: most variables
/// are of pieces or terms that no row names yet, and would be carried along for nothing.
#[derive(Debug)]
pub(super) struct Tableau {
    /// What stands in each column; always as many columns as variables that rows can move.
    pub(super) columns: Vec<usize>,
    /// Whether a column stands at its upper bound.
    pub(super) high: Vec<bool>,
    /// How the objective moves with each column: not positive at a lower bound, not negative at an upper.
    pub(super) reduced: Vec<f64>,
    /// The variable of each line.
    pub(super) lines: Vec<usize>,
    /// How each line's variable moves with each column: line after line, each with room for columns to come.
    cells: Vec<f64>,
    /// Cells of a line, those to come too.
    stride: usize,
    /// Where each variable is.
    pub(super) place: Vec<Place>,
    /// Whether a row is tight: its slack stands in a column.
    pub(super) tight: Vec<bool>,
    /// Present value of each variable.
    pub(super) values: Vec<f64>,
}

impl Clone for Tableau {
    fn clone(&self) -> Self {
        Self {
            columns: self.columns.clone(),
            high: self.high.clone(),
            reduced: self.reduced.clone(),
            lines: self.lines.clone(),
            cells: self.cells.clone(),
            stride: self.stride,
            place: self.place.clone(),
            tight: self.tight.clone(),
            values: self.values.clone(),
        }
    }

    fn clone_from(&mut self, source: &Self) {
        self.columns.clone_from(&source.columns);
        self.high.clone_from(&source.high);
        self.reduced.clone_from(&source.reduced);
        self.lines.clone_from(&source.lines);
        self.cells.clone_from(&source.cells);
        self.stride = source.stride;
        self.place.clone_from(&source.place);
        self.tight.clone_from(&source.tight);
        self.values.clone_from(&source.values);
    }
}

impl Tableau {
    /// Each variable at its better bound; no row tight.
    pub(super) fn start(statement: &Statement) -> Self {
        let variables = statement.variables();
        let mut tableau = Self {
            columns: Vec::new(),
            high: Vec::new(),
            reduced: Vec::new(),
            lines: Vec::new(),
            cells: Vec::new(),
            stride: 0,
            place: vec![Place::Apart; variables],
            tight: Vec::new(),
            values: (0..variables).map(|variable| statement.better(variable)).collect(),
        };
        (0..statement.rows()).for_each(|row| tableau.take(statement, row));
        tableau
    }

    /// Takes a row of the statement, which is not tight, and gives a column to each variable that it is the first to move.
    pub(super) fn take(&mut self, statement: &Statement, row: usize) {
        self.tight.push(false);
        for (variable, _) in statement.terms(row) {
            if self.place[*variable] == Place::Apart && statement.room(*variable) > 0.0 {
                self.place[*variable] = Place::Column(self.columns.len());
                self.columns.push(*variable);
                self.high.push(statement.is_better_high(*variable));
                self.reduced.push(statement.objective[*variable]);
            }
        }
        self.make_room();
    }

    /// Sees to it that each line has a cell for each column. Cells that no column had yet are zero.
    fn make_room(&mut self) {
        let width = self.columns.len();
        if width <= self.stride {
            return;
        }
        let stride = width + MORE_COLUMNS;
        let mut cells = vec![0.0; self.lines.len() * stride];
        if self.stride > 0 {
            for (to, from) in cells.chunks_exact_mut(stride).zip(self.cells.chunks_exact(self.stride)) {
                to[..self.stride].copy_from_slice(from);
            }
        }
        (self.cells, self.stride) = (cells, stride);
    }

    pub(super) fn line(&self, line: usize) -> &[f64] {
        let start = line * self.stride;
        &self.cells[start..start + self.columns.len()]
    }

    /// Distance between the limits of what stands in a column: a slack has no upper one.
    pub(super) fn room(&self, statement: &Statement, column: usize) -> f64 {
        let index = self.columns[column];
        if index < statement.variables() { statement.room(index) } else { f64::INFINITY }
    }

    /// How the one that leaves moves, in the direction that mends it, with each column.
    pub(super) fn gradient(&self, statement: &Statement, leaving: Leaving, gradient: &mut [f64]) {
        match leaving {
            Leaving::Line(line, false) => gradient.copy_from_slice(self.line(line)),
            Leaving::Line(line, true) => {
                for (entry, cell) in gradient.iter_mut().zip(self.line(line)) {
                    *entry = -cell;
                }
            }
            Leaving::Row(row) => self.gradient_of(statement.terms(row), gradient),
        }
    }

    /// How the slack of a row with these terms moves with each column.
    pub(super) fn gradient_of(&self, terms: &[(usize, f64)], gradient: &mut [f64]) {
        gradient.fill(0.0);
        for (variable, coefficient) in terms {
            match self.place[*variable] {
                Place::Column(column) => gradient[column] -= coefficient,
                Place::Line(line) => subtract(gradient, *coefficient, self.line(line)),
                Place::Apart => {}
            }
        }
    }

    /// Moves what stands in a column by `step`, and every line with it.
    pub(super) fn shift(&mut self, column: usize, step: f64) {
        let index = self.columns[column];
        if let Some(value) = self.values.get_mut(index) {
            *value += step;
        }
        for (variable, cells) in self.lines.iter().zip(self.cells.chunks_exact(self.stride)) {
            self.values[*variable] += cells[column] * step;
        }
    }

    /// Moves a column's variable to its other bound.
    pub(super) fn flip(&mut self, statement: &Statement, column: usize) {
        let index = self.columns[column];
        let (from, to) = if self.high[column] {
            (statement.upper[index], statement.lower[index])
        } else {
            (statement.lower[index], statement.upper[index])
        };
        self.shift(column, to - from);
        self.values[index] = to;
        self.high[column] = !self.high[column];
    }

    /// The one that leaves takes the place of what stands in `column`, which goes inside its limits. `gradient` is that of
    /// [`Self::gradient`].
    pub(super) fn pivot(&mut self, statement: &Statement, leaving: Leaving, column: usize, gradient: &[f64]) {
        let entering = self.columns[column];
        let pivot = gradient[column];
        let sign = if matches!(leaving, Leaving::Line(_, true)) { -1.0 } else { 1.0 };
        let out = match leaving {
            Leaving::Line(line, _) => Some(line),
            Leaving::Row(_) => None,
        };
        eliminate(&mut self.reduced, column, pivot, sign, gradient);
        let width = self.columns.len();
        for (line, cells) in self.cells.chunks_exact_mut(self.stride).enumerate() {
            if Some(line) != out {
                eliminate(&mut cells[..width], column, pivot, sign, gradient);
            }
        }
        self.settle(statement, leaving, column);
        if let Some(row) = entering.checked_sub(statement.variables()) {
            self.tight[row] = false;
            if let Some(line) = out {
                self.drop_line(line);
            }
        } else {
            let line = out.unwrap_or(self.lines.len());
            self.write_line(line, entering, column, pivot, sign, gradient);
        }
    }

    /// Puts the one that leaves at its limit and into the column.
    fn settle(&mut self, statement: &Statement, leaving: Leaving, column: usize) {
        match leaving {
            Leaving::Line(line, high) => {
                let variable = self.lines[line];
                self.values[variable] = if high { statement.upper[variable] } else { statement.lower[variable] };
                self.place[variable] = Place::Column(column);
                self.columns[column] = variable;
                self.high[column] = high;
            }
            Leaving::Row(row) => {
                self.tight[row] = true;
                self.columns[column] = statement.variables() + row;
                self.high[column] = false;
            }
        }
    }

    fn write_line(&mut self, line: usize, variable: usize, column: usize, pivot: f64, sign: f64, gradient: &[f64]) {
        if line == self.lines.len() {
            self.lines.push(variable);
            self.cells.resize((line + 1) * self.stride, 0.0);
        }
        self.lines[line] = variable;
        self.place[variable] = Place::Line(line);
        let cells = &mut self.cells[line * self.stride..(line + 1) * self.stride];
        for (cell, entry) in cells.iter_mut().zip(gradient) {
            *cell = -entry / pivot;
        }
        cells[column] = sign / pivot;
    }

    /// Removes a line; the last one takes its place.
    fn drop_line(&mut self, line: usize) {
        let last = self.lines.len() - 1;
        self.lines.swap_remove(line);
        if line != last {
            self.cells.copy_within(last * self.stride..(last + 1) * self.stride, line * self.stride);
            self.place[self.lines[line]] = Place::Line(line);
        }
        self.cells.truncate(last * self.stride);
    }

    /// Weight of each tight row at this basis, for [`Statement::bound`].
    pub(super) fn row_weights(&self) -> Line<(usize, f64)> {
        self.weigh(self.reduced.iter().copied())
    }

    /// The same from any gradient over the columns.
    pub(super) fn weigh(&self, gradient: impl Iterator<Item = f64>) -> Line<(usize, f64)> {
        let variables = self.place.len();
        let columns = self.columns.iter().zip(gradient);
        columns
            .filter_map(|(index, entry)| Some((index.checked_sub(variables)?, -entry)))
            .filter(|(_, weight)| *weight > 0.0)
            .collect()
    }

    /// Corrects the lines by what the tight rows miss: one step of iterative refinement.
    pub(super) fn refine(&mut self, statement: &Statement) {
        for column in 0..self.columns.len() {
            if let Some(row) = self.columns[column].checked_sub(statement.variables()) {
                let miss = statement.slack(row, &self.values);
                self.shift(column, -miss);
            }
        }
    }

    /// The most that a tight row misses being met exactly.
    pub(super) fn drift(&self, statement: &Statement) -> f64 {
        let rows = self.columns.iter().filter_map(|index| index.checked_sub(statement.variables()));
        rows.map(|row| statement.slack(row, &self.values).abs()).fold(0.0, f64::max)
    }
}
