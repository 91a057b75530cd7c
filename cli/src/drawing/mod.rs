//! A sheet of paper with marks on it, in paper millimetres, and the ways to write it down: SVG, PNG, PDF.
//!
//! Here live lines, fills, hatches, lettering, labels that find a free place, paper and scales. What is drawn on a sheet
//! (walls, pieces, ways) is `render`'s; nothing here knows a room. The x axis runs right and the y axis down.

pub(crate) mod hand;
mod hatch;
mod label;
mod labels;
mod lettering;
mod lighter;
mod mark;
mod meets;
mod paper;
mod path;
mod pdf;
mod place;
mod png;
mod svg;
mod svg_in_page;
mod table_tags;
mod tagged;
mod tolerance;
mod typeface;
mod web_font;

pub(crate) use hatch::hatch;
pub(crate) use label::Label;
pub(crate) use labels::Labels;
pub(crate) use lettering::{Weight, clipped, width_of, wrapped};
pub(crate) use lighter::lighter;
pub(crate) use mark::{Dash, Fill, InTable, Mark, Path, Pen, Sheet, Side, Step, Text, Tone};
pub(crate) use meets::meet;
pub(crate) use paper::{Paper, Scale, Stock};
pub(crate) use pdf::pdf;
pub(crate) use place::{Area, At, edges};
pub(crate) use png::png;
pub(crate) use svg::{Font, svg};
pub(crate) use svg_in_page::{plain_tones, style_in_page, svg_in_page, svg_with_tones};
pub(crate) use typeface::Typeface;
pub(crate) use web_font::{Letters, faces_of, letters_of};
