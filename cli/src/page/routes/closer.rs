//! One option from near: its plan with what is chosen to be shown, and what is touched of it.

use axum::extract::{Path, State};
use axum::response::Response;
use elbowroom_solver::Watch;

use super::asked::Asked;
use super::beside::{beside, missing, while_waited_for};
use crate::drawing::At;
use crate::page::desk::Desk;
use crate::page::reply;
use crate::page::room::{Form, Solved};
use crate::page::screens::{self, OnScreen};
use crate::page::touched::Touched;
use crate::render::plan::Layers;

/// The plan of an option with what is chosen, what its numbers stand for, and what is told of what was touched.
pub(super) async fn plan(State(desk): State<Desk>, Path(name): Path<String>, asked: Asked) -> Response {
    while_waited_for(move |watch| {
        let solved = desk.room(&name).and_then(|room| room.seen().ok()?.told_in(asked.units).solved);
        solved.and_then(|solved| drawn(&solved, &asked, watch)).unwrap_or_else(missing)
    })
    .await
}

fn drawn(solved: &Solved, asked: &Asked, watch: &dyn Watch) -> Option<Response> {
    let key = asked.one("option")?;
    let option = solved.answer.keyed(key)?;
    let form = if asked.one("phone").is_some() { Form::Phone } else { Form::Desk };
    let touched = match asked.one("at") {
        Some(at) => solved.piece_at(key, place(at)?, form, asked.one("hand").is_some()).map(Touched::Size),
        None => asked.one("touched").and_then(Touched::of),
    };
    let sizes = match touched {
        Some(Touched::Size(_)) => Some(solved.sizes_in_full(key, watch)?),
        _ => None,
    };
    let sizes = sizes.as_deref().unwrap_or(&option.sizes);
    let marked = touched.map(|touched| touched.marked(option, sizes)).unwrap_or_default();
    let layers = Layers::of(&asked.all("show"));
    let (svg, key) = solved.on_screen(key, form, layers, &marked)?;
    Some(reply::html(screens::on_screen(&OnScreen { solved, option, svg, key, layers, touched, sizes })))
}

/// A place on the sheet, mm.
fn place(at: &str) -> Option<At> {
    let (x, y) = at.split_once(',')?;
    Some(At::new(x.parse().ok()?, y.parse().ok()?))
}

/// The ways and the reasons of an option, each to be touched.
pub(super) async fn list(State(desk): State<Desk>, Path(name): Path<String>, asked: Asked) -> Response {
    beside(move || {
        let solved = desk.room(&name).and_then(|room| room.seen().ok()?.told_in(asked.units).solved);
        let list = solved.zip(asked.one("option")).and_then(|(solved, key)| {
            let option = solved.answer.keyed(key)?;
            Some(screens::closer(&solved, option))
        });
        list.map_or_else(missing, reply::html)
    })
    .await
}
