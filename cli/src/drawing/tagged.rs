//! What a PDF says of its pages to whoever has them read aloud: the drawing as a figure with its description, each line of words
//! as a paragraph or as a cell of its table, in the order in which they are written.

use krilla::surface::Surface;
use krilla::tagging::{Artifact, ContentTag, Identifier, Tag, TagGroup, TagTree};

use super::table_tags::TableTags;
use super::{InTable, Mark, Sheet};
use crate::text::safe::safe;

/// The parts of one page.
pub(super) struct PageTags {
    /// The drawing; `None` where lines only part words.
    figure: Option<TagGroup>,
    words: Vec<Words>,
}

/// Words of a page.
enum Words {
    Paragraph(TagGroup),
    Table(TableTags),
}

impl PageTags {
    /// Of a page with nothing on it yet. Sheets with layers are drawings.
    pub(super) fn of(sheet: &Sheet) -> Self {
        let is_drawing = sheet.marks.iter().any(|mark| matches!(mark, Mark::Layer(_)));
        let figure = is_drawing.then(|| TagGroup::new(Tag::Figure(Some(safe(&sheet.description)))));
        Self { figure, words: Vec::new() }
    }

    /// Draws lines and fills.
    pub(super) fn lines(&mut self, surface: &mut Surface<'_>, draw: impl FnOnce(&mut Surface<'_>)) {
        let tag = if self.figure.is_some() { ContentTag::Other } else { ContentTag::Artifact(Artifact::default()) };
        let place = surface.start_tagged(tag);
        draw(surface);
        surface.end_tagged();
        if let Some(figure) = &mut self.figure {
            figure.push(place);
        }
    }

    /// Writes a line of words.
    pub(super) fn words(
        &mut self,
        surface: &mut Surface<'_>,
        in_table: Option<InTable>,
        write: impl FnOnce(&mut Surface<'_>),
    ) {
        let place = surface.start_tagged(ContentTag::Other);
        write(surface);
        surface.end_tagged();
        match in_table {
            Some(cell) => self.put_cell(cell, place),
            None => {
                let mut paragraph = TagGroup::new(Tag::P);
                paragraph.push(place);
                self.words.push(Words::Paragraph(paragraph));
            }
        }
    }

    /// A cell of the table that comes last, or of a new one where that is past it.
    fn put_cell(&mut self, cell: InTable, place: Identifier) {
        match self.words.last_mut() {
            Some(Words::Table(table)) if table.goes_on_to(cell) => table.put(cell, place),
            _ => self.words.push(Words::Table(TableTags::from(cell, place))),
        }
    }

    /// The page as a section of the document.
    pub(super) fn put_into(self, tree: &mut TagTree) {
        let mut section = TagGroup::new(Tag::Section);
        self.figure.into_iter().for_each(|figure| section.push(figure));
        for words in self.words {
            section.push(match words {
                Words::Paragraph(paragraph) => paragraph,
                Words::Table(table) => table.whole(),
            });
        }
        tree.push(section);
    }
}
