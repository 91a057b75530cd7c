//! What a piece looks like from its end lies within its height and its depth.

use super::reading::Reading;
use crate::listing::Section;
use crate::listing::columns::Column;
use crate::listing::grid::GridRow;
use crate::quote::quoted;

impl Reading<'_> {
    /// Tells of each figure of a section that is more than what it is a part of.
    pub(super) fn section_is_within(
        &mut self,
        row: &GridRow,
        name: &str,
        depth: Option<f64>,
        height: Option<f64>,
        section: Section,
    ) {
        let Section { seat_height, arm_height, back_thickness, leg_height } = section;
        let all = [
            (Column::SeatHeight, seat_height, Column::Height, height),
            (Column::ArmHeight, arm_height, Column::Height, height),
            (Column::LegHeight, leg_height, Column::Height, height),
            (Column::LegHeight, leg_height, Column::SeatHeight, seat_height),
            (Column::BackThickness, back_thickness, Column::Depth, depth),
        ];
        for (column, figure, whole, most) in all {
            if figure.zip(most).is_some_and(|(figure, most)| figure > most) {
                let (of, from) = (self.usual(row, column).to_owned(), self.usual(row, whole).to_owned());
                let message = format!(
                    "The {} of {}, `{}`, is more than its {}, `{}`.",
                    column.key(),
                    quoted(name),
                    quoted(&of),
                    whole.key(),
                    quoted(&from)
                );
                let remedy = format!("Measure both again: the {} is a part of the {}.", column.key(), whole.key());
                self.tell(row, column, "more_than_its_whole", name, message, remedy);
            }
        }
    }
}
