//! A sheet as one page of HTML that needs nothing beside itself, and prints.

use std::fmt::Write;

use super::{Block, Grid, Leaf};
use crate::drawing::{Font, svg};
use crate::text::safe::safe;
use crate::text::table::Stand;

/// What the page may load: nothing but its own style, and the letters of a drawing that lie within it.
const POLICY: &str =
    "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";

/// A page that folds is long from so many blocks on: about what one side of A4 holds in plain type.
const LONG: usize = 32;

/// The page.
pub(crate) fn html(leaf: &Leaf) -> String {
    let title = shown(&leaf.title);
    let mut page = format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta http-equiv=\"Content-Security-Policy\" content=\"{POLICY}\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{title}</title>\n<style>\n{}</style>\n</head>\n<body{}>\n<main>\n<h1>{title}</h1>\n",
        include_str!("leaf.css"),
        class(leaf)
    );
    for block in &leaf.blocks {
        put(&mut page, block);
    }
    page.push_str("</main>\n</body>\n</html>\n");
    page
}

/// How the page is set when it is printed: one that folds must be one page, so a long one is set close.
const fn class(leaf: &Leaf) -> &'static str {
    match (leaf.folds, leaf.blocks.len() > LONG) {
        (false, _) => "",
        (true, false) => " class=\"folds\"",
        (true, true) => " class=\"folds close\"",
    }
}

fn put(page: &mut String, block: &Block) {
    let _ = match block {
        Block::Heading(words) => writeln!(page, "<h2>{}</h2>", shown(words)),
        Block::Part(words) => writeln!(page, "<h3>{}</h3>", shown(words)),
        Block::Strong(words) => writeln!(page, "<p><strong>{}</strong></p>", shown(words)),
        Block::Words(words) => writeln!(page, "<p>{}</p>", shown(words)),
        Block::List(entries) => list(page, entries, "list"),
        Block::Ticks(entries) => list(page, entries, "ticks"),
        Block::Grid(grid) => table(page, grid),
        Block::Drawing(picture) => {
            let (drawing, caption) = (svg(&picture.sheet, Font::Within), shown(&picture.caption));
            writeln!(page, "<figure>\n{drawing}<figcaption>{caption}</figcaption>\n</figure>")
        }
    };
}

fn list(page: &mut String, entries: &[String], class: &str) -> std::fmt::Result {
    writeln!(page, "<ul class=\"{class}\">")?;
    for entry in entries {
        writeln!(page, "<li>{}</li>", shown(entry))?;
    }
    writeln!(page, "</ul>")
}

/// A table; one wider than the screen moves by itself, and can be reached by keyboard for that.
fn table(page: &mut String, grid: &Grid) -> std::fmt::Result {
    let class = |place: usize| {
        let head = grid.heads.get(place);
        match head.map(|head| (head.stand, head.blank)) {
            Some((_, true)) => " class=\"blank\"",
            Some((Stand::Right, false)) => " class=\"figure\"",
            _ => "",
        }
    };
    writeln!(page, "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"table\"><table>\n<thead><tr>")?;
    for (place, head) in grid.heads.iter().enumerate() {
        match head.words.as_str() {
            "" => writeln!(page, "<td></td>")?,
            words => writeln!(page, "<th scope=\"col\"{}>{}</th>", class(place), shown(words))?,
        }
    }
    writeln!(page, "</tr></thead>\n<tbody>")?;
    for row in &grid.rows {
        write!(page, "<tr>")?;
        for (place, cell) in row.iter().enumerate() {
            match place {
                0 => write!(page, "<th scope=\"row\"{}>{}</th>", class(place), shown(cell))?,
                _ => write!(page, "<td{}>{}</td>", class(place), shown(cell))?,
            }
        }
        writeln!(page, "</tr>")?;
    }
    writeln!(page, "</tbody>\n</table></div>")
}

/// Text as a page shows it, never as markup.
fn shown(text: &str) -> String {
    let mut shown = String::new();
    for character in safe(text).chars() {
        match character {
            '&' => shown.push_str("&amp;"),
            '<' => shown.push_str("&lt;"),
            '>' => shown.push_str("&gt;"),
            '"' => shown.push_str("&quot;"),
            '\'' => shown.push_str("&#39;"),
            plain => shown.push(plain),
        }
    }
    shown
}

#[cfg(test)]
mod tests {
    use super::super::{Block, Leaf};
    use super::html;

    #[test]
    fn names_are_shown_and_never_run() {
        let mut leaf = Leaf::new("<script>alert(1)</script>");
        leaf.put(Block::Ticks(vec!["\"><img src=x onerror=alert(1)>".to_owned()]));
        let page = html(&leaf);
        assert!(!page.contains("<script") && !page.contains("<img"), "{page}");
        assert!(page.contains("&lt;script&gt;"), "{page}");
    }
}
