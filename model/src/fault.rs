//! What is wrong with a scenario, as a value.

use serde::Serialize;

/// One fault of a scenario: where, what is wrong, by how much, and the remedy. A reader collects all of them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, thiserror::Error)]
#[error("{message}")]
pub struct Fault {
    /// Stable name of the kind of fault: `unknown_key`, `walls_cross`, `item_past_wall_end`, ...
    pub code: &'static str,
    /// The item in the room's own words: `hall door`, `canal wall`; `None` where the fault is the file's as a whole.
    pub item: Option<String>,
    /// What is wrong and by how much, one sentence.
    pub message: String,
    /// What to do about it, one sentence.
    pub remedy: String,
    /// Where in the text, where it can be had.
    pub place: Option<Place>,
}

/// A place in the text of a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub struct Place {
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// Byte offset into the text.
    pub offset: usize,
    /// Length in bytes of what is at fault.
    pub length: usize,
}

impl Fault {
    /// The code of every fault that a scenario or table may have, sorted.
    pub const CODES: &[&str] = &[
        "aim_beside_fixed_size",
        "aim_out_of_range",
        "bearing_out_of_range",
        "binary_file",
        "ceiling_not_falling",
        "compound_in_range",
        "control_character",
        "corner_out_of_range",
        "corners_do_not_add_up",
        "diagonal_to_itself",
        "does_not_close",
        "empty_file",
        "empty_name",
        "facing_out_of_range",
        "file_too_large",
        "fixed_not_convex",
        "fixed_without_area",
        "group_without_seat",
        "hangs_off_its_wall",
        "hold_without_place",
        "item_past_wall_end",
        "items_overlap",
        "key_of_another_kind",
        "key_twice",
        "latitude_out_of_range",
        "measured_within_too_large",
        "missing_key",
        "missing_value",
        "mixed_walls",
        "name_twice",
        "no_outline_fits",
        "no_seat",
        "not_a_choice",
        "not_a_length",
        "not_a_setting",
        "not_finite",
        "not_positive",
        "not_understood",
        "not_yaml",
        "opening_past_breast",
        "opens_to_out_of_range",
        "pair_left_out",
        "pair_not_of_two",
        "pitch_out_of_range",
        "place_mixed",
        "place_of_several",
        "place_outside_room",
        "range_backward",
        "run_too_short",
        "runs_counter_clockwise",
        "screen_in_doubt",
        "several_documents",
        "sill_above_head",
        "stand_in_for_held",
        "stand_in_no_seat",
        "stand_in_of_its_kind",
        "stand_in_of_open_floor",
        "stand_in_twice",
        "swing_hits_wall",
        "too_few_walls",
        "too_large",
        "too_many",
        "too_many_seats",
        "too_much",
        "too_small",
        "two_bearings",
        "unknown_choice",
        "unknown_key",
        "unknown_kind",
        "unknown_name",
        "unknown_seat",
        "unknown_setting",
        "unknown_unit",
        "unknown_wall",
        "wall_without_length",
        "walls_cross",
        "weight_out_of_range",
        "wish_out_of_range",
        "wrong_count",
        "wrong_type",
    ];

    /// The order in which faults are told: as they stand in the file, then by code; those without a place first.
    #[must_use]
    pub fn before(&self, other: &Self) -> std::cmp::Ordering {
        self.place
            .cmp(&other.place)
            .then_with(|| self.code.cmp(other.code))
            .then_with(|| self.message.cmp(&other.message))
    }
}
