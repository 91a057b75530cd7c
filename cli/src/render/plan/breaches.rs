//! What breaks a rule in the room as it stands: where, and by which number the list tells it.

use elbowroom_solver::judge::spot;

use super::figure::Figure;
use super::{Shown, signs};
use crate::drawing::{At, Label, Mark, Tone, Weight};

/// Type of a number, mm.
const TYPE: f64 = 2.8;

/// The places, each between what breaks the rule and what it is broken against.
pub(super) fn draw(figure: &mut Figure<'_>) {
    let spots = on_sheet(figure);
    if spots.is_empty() {
        return;
    }
    figure.put(Mark::Layer("broken"));
    for (_, ends) in spots {
        signs::broken(ends).into_iter().for_each(|mark| figure.put(mark));
    }
}

/// The number of each, light on dark: no other number is.
pub(super) fn name(figure: &mut Figure<'_>) {
    for (number, [from, to]) in on_sheet(figure) {
        let of = from.middle(to);
        let steps = [3.2, 4.8, 6.4];
        let ways =
            [(1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0), (0.7, 0.7), (-0.7, 0.7), (0.7, -0.7), (-0.7, -0.7)];
        let places = steps.iter().flat_map(|step| ways.map(|(x, y)| of + At::new(x, y) * *step)).collect();
        let label = Label { tone: Tone::Paper, ground: Some(Tone::Vermilion), ..Label::new(of, places, TYPE, "") };
        figure.labels.place(&Label { lines: vec![(format!(" {number} "), Weight::Bold)], ..label });
    }
}

/// The number of each thing that is broken somewhere, with that place.
fn on_sheet(figure: &Figure<'_>) -> Vec<(usize, [At; 2])> {
    let Shown::AsItStands { room, .. } = figure.shown else { return Vec::new() };
    let spots = room.broken.iter().enumerate().filter_map(|(place, breach)| Some((place + 1, spot(room, breach)?)));
    spots.map(|(number, ends)| (number, ends.map(|at| figure.frame.at(at)))).collect()
}
