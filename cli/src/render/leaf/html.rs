//! A sheet as one page of HTML that needs nothing beside itself, and prints.

use std::fmt::Write;

use super::{Block, Grid, Leaf, Picture, Set};
use crate::drawing::{Sheet, faces_of, style_in_page, svg_in_page};
use crate::text::markup::escaped as shown;
use crate::text::table::Stand;

/// What the page may load: nothing but its own style, and the letters of a drawing that lie within it.
const POLICY: &str =
    "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";

/// The page.
pub(crate) fn html(leaf: &Leaf) -> String {
    let title = shown(&leaf.title);
    let mut drawn = Vec::new();
    sheets(&leaf.blocks, &mut drawn);
    let mut body = format!("<h1>{title}</h1>\n");
    leaf.blocks.iter().for_each(|block| put(&mut body, block, Host::Own));
    format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta http-equiv=\"Content-Security-Policy\" content=\"{POLICY}\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{title}</title>\n<style>\n{}\n{}{}</style>\n</head>\n<body{}>\n<main>\n{body}</main>\n</body>\n</html>\n",
        faces_of(drawn.into_iter(), &body),
        include_str!("leaf.css"),
        style_in_page(),
        class(leaf.set)
    )
}

/// What the sheet says, as a part of another page, which has a style for it and takes none of its own.
pub(crate) fn within(leaf: &Leaf) -> String {
    let mut body = String::new();
    leaf.blocks.iter().for_each(|block| put(&mut body, block, Host::Another));
    body
}

/// Which page a sheet stands on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Host {
    /// One of its own: drawings know how wide they are on paper.
    Own,
    /// Another, whose policy may forbid styles that stand at what they style.
    Another,
}

/// What the style knows a way of printing by.
const fn class(set: Set) -> &'static str {
    match set {
        Set::Upright => "",
        Set::OnItsSide => " class=\"lies\"",
        Set::Folding => " class=\"folds\"",
    }
}

/// Every drawing of a sheet.
fn sheets<'a>(blocks: &'a [Block], found: &mut Vec<&'a Sheet>) {
    for block in blocks {
        match block {
            Block::Drawing(picture) => found.push(&picture.sheet),
            Block::Row(pictures) => found.extend(pictures.iter().map(|picture| &picture.sheet)),
            Block::Beside(beside) => {
                found.push(&beside.picture.sheet);
                sheets(&beside.blocks, found);
            }
            _ => {}
        }
    }
}

fn put(page: &mut String, block: &Block, host: Host) {
    let _ = match block {
        Block::Beside(beside) => {
            page.push_str("<div class=\"beside\">\n");
            drawing(page, &beside.picture, host);
            page.push_str("<div>\n");
            beside.blocks.iter().for_each(|block| put(page, block, host));
            writeln!(page, "</div>\n</div>")
        }
        Block::Write(words) => {
            let lines: String = words.iter().map(|word| format!("<span>{}</span>", shown(word))).collect();
            writeln!(page, "<p class=\"write\">{lines}</p>")
        }
        Block::Heading(words) => writeln!(page, "<h2>{}</h2>", shown(words)),
        Block::Part(words) => writeln!(page, "<h3>{}</h3>", shown(words)),
        Block::Strong(words) => writeln!(page, "<p><strong>{}</strong></p>", shown(words)),
        Block::Words(words) => writeln!(page, "<p>{}</p>", shown(words)),
        Block::List(entries) => list(page, entries, "list"),
        Block::Ticks(entries) => list(page, entries, "ticks"),
        Block::Grid(grid) => table(page, grid),
        Block::Row(pictures) => {
            page.push_str("<div class=\"row\">\n");
            pictures.iter().for_each(|picture| drawing(page, picture, host));
            writeln!(page, "</div>")
        }
        Block::Drawing(picture) => {
            drawing(page, picture, host);
            Ok(())
        }
    };
}

/// A drawing, as wide on paper as it is drawn, larger on a screen.
fn drawing(page: &mut String, picture: &Picture, host: Host) {
    let (drawing, wide) = (svg_in_page(&picture.sheet), picture.sheet.paper.width);
    let _ = match host {
        Host::Own => writeln!(page, "<figure style=\"--wide:{wide:.1}\">\n{drawing}"),
        Host::Another => writeln!(page, "<figure>\n{drawing}"),
    };
    if !picture.caption.is_empty() {
        let _ = writeln!(page, "<figcaption>{}</figcaption>", shown(&picture.caption));
    }
    page.push_str("</figure>\n");
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
            Some((Stand::Right, false)) if !head.is_some_and(|head| head.bars) => " class=\"figure\"",
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
                0 => write!(page, "<th scope=\"row\"{}>{}</th>", class(place), lines(cell))?,
                _ if grid.heads.get(place).is_some_and(|head| head.bars) => bar(page, cell)?,
                _ => write!(page, "<td{}>{}</td>", class(place), lines(cell))?,
            }
        }
        writeln!(page, "</tr>")?;
    }
    writeln!(page, "</tbody>\n</table></div>")
}

/// A figure of 100 with its bar; any other text as it is.
fn bar(page: &mut String, cell: &str) -> std::fmt::Result {
    match cell.parse::<f64>() {
        Ok(share) => write!(
            page,
            "<td class=\"bar\"><span>{}<svg viewBox=\"0 0 100 2\" preserveAspectRatio=\"none\" aria-hidden=\"true\">\
             <path class=\"whole\" d=\"M0 1H100\"/><path d=\"M0 1H{:.0}\"/></svg></span></td>",
            shown(cell),
            share.clamp(0.0, 100.0)
        ),
        Err(_) => write!(page, "<td>{}</td>", shown(cell)),
    }
}

/// A cell, its further lines smaller under the first.
fn lines(cell: &str) -> String {
    let (first, further) = cell.split_once('\n').unwrap_or((cell, ""));
    let further: String = further.lines().map(|line| format!("<br><small>{}</small>", shown(line))).collect();
    format!("{}{further}", shown(first))
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
