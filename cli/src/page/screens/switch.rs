//! In which unit lengths are told and typed. The file keeps its own.

use elbowroom_model::Unit;
use maud::{Markup, html};

use crate::words::page as words;

/// The switch; `file`: the unit of the file, where one is open.
pub(super) fn switch(told: Option<Unit>, file: Option<Unit>) -> Markup {
    html! {
        label.units for="told-in" {
            (words::UNITS)
            select id="told-in" title=(words::UNITS_ABOUT) {
                option value="" selected[told.is_none()] { (words::as_the_file(file)) }
                @for unit in Unit::ALL { option value=(unit.key()) selected[told == Some(*unit)] { (unit.key()) } }
            }
        }
    }
}
