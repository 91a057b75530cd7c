//! What `judge` tells: what is broken, what option 1 would gain, what stands oddly, why each score, the ways and the gaps.

use elbowroom_solver::answer::Answer;
use elbowroom_solver::judge::{Gain, JudgedRoom, gains};

use super::rank::{gaps, routes};
use crate::text::look::Look;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::answer::{broken, gives_up, notices_as_it_stands, reason, title};
use crate::words::criteria;
use crate::words::judge as words;
use crate::words::lengths::{shop_unit, sign};

/// All that the page is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct JudgePage<'a> {
    /// The room as it stands.
    pub room: &'a JudgedRoom,
    /// What the same file is ranked to.
    pub answer: &'a Answer,
}

/// The page of a room as it stands.
pub(crate) fn text(told: &JudgePage<'_>, look: Look) -> String {
    let (mut page, room) = (Page::new(look), told.room);
    let brief = &room.brief;
    page.strong(&words::summary(&brief.room, room.broken.len()));
    for line in crate::words::order::lines(brief) {
        page.entry(0, &line);
    }
    page.paragraph(2, &words::stands(&title(brief, room)));
    if !room.broken.is_empty() {
        page.heading(words::BROKEN);
        for (place, breach) in room.broken.iter().enumerate() {
            page.entry(2, &words::numbered(place + 1, &broken(brief, breach)));
        }
    }
    scores(&mut page, told);
    let odd = gives_up(brief, &room.composition);
    if !odd.is_empty() {
        page.heading(words::ODD);
        odd.iter().for_each(|said| page.entry(2, said));
    }
    page.heading(words::WHY);
    for judgement in &room.judgements {
        page.entry(2, &format!("{}: {}", criteria::name(judgement.criterion), reason(brief, &judgement.finding)));
    }
    let unit = sign(shop_unit(brief.units));
    routes(&mut page, brief, &words::ways(unit), &room.routes);
    gaps(&mut page, brief, &words::gaps(unit), &room.gaps);
    page.heading(crate::words::NOTICES);
    for notice in notices_as_it_stands(room, told.answer) {
        page.entry(2, &notice);
    }
    page.into_text()
}

/// Each criterion's score beside that of option 1.
fn scores(page: &mut Page, told: &JudgePage<'_>) {
    page.heading(words::SCORES);
    let first = told.answer.options.first();
    let gained: Vec<Gain> = first.map_or_else(Vec::new, |first| gains(told.room, first));
    let mut heads = vec![("", Stand::Left), (words::WISH, Stand::Right), (words::NOW, Stand::Right)];
    if first.is_some() {
        heads.extend([(words::THEN, Stand::Right), (words::GAIN, Stand::Right)]);
    }
    let mut table = Table::new(&heads);
    for judgement in &told.room.judgements {
        let criterion = judgement.criterion;
        let wish = words::wish(told.room.brief.wishes.get(criterion));
        let mut cells = vec![criteria::name(criterion).to_owned(), wish, words::score(judgement.score)];
        if first.is_some() {
            let gain = gained.iter().find(|gain| gain.criterion == criterion);
            cells.extend([
                gain.map_or_else(String::new, |gain| words::score(gain.then)),
                gain.map_or_else(String::new, |gain| words::gain(judgement.score, gain.then)),
            ]);
        }
        table.cells(cells);
    }
    let mut whole = vec![words::WHOLE.to_owned(), String::new(), words::score(told.room.score)];
    whole.extend(first.iter().flat_map(|first| [words::score(first.score), words::gain(told.room.score, first.score)]));
    table.cells(whole);
    page.table(2, &table);
    match first {
        Some(first) => page.paragraph(2, &words::first(&title(&told.answer.brief, first))),
        None => page.paragraph(2, words::NO_OPTION),
    }
}
