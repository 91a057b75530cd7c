//! A sheet as SVG. The other forms are made from this one, so there is one look.

use std::fmt::Write;

use super::web_font::{FAMILY, GIVEN, faces};
use super::{Dash, Fill, Mark, Path, Pen, Sheet, Side, Step, Text, Typeface, Weight, clipped};
use crate::text::markup::escaped;

/// Whether the font goes along.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Font {
    /// In the file, as far as it is used: a picture by itself.
    Within,
    /// The reader has it.
    Beside,
}

/// The sheet, true to size where it is opened as a file.
pub(crate) fn svg(sheet: &Sheet, font: Font, typeface: &Typeface) -> String {
    let (width, height) = (number(sheet.paper.width), number(sheet.paper.height));
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" \
         role=\"img\" aria-label=\"{0}\">\n<title>{0}</title>\n<desc>{1}</desc>\n",
        escaped(&clipped(&sheet.title)),
        escaped(&clipped(&sheet.description))
    );
    if font == Font::Within {
        let _ = writeln!(svg, "<style>{}</style>", faces(sheet, typeface));
    }
    let _ = writeln!(svg, "<rect width=\"{width}\" height=\"{height}\" fill=\"{}\"/>", super::Tone::Paper.code());
    let _ = writeln!(svg, "<g font-family=\"'{FAMILY}', sans-serif\" stroke-linejoin=\"round\">");
    let mut open = false;
    for mark in &sheet.marks {
        match mark {
            Mark::Layer(name) => {
                let _ = writeln!(svg, "{}<g class=\"{name}\">", if open { "</g>\n" } else { "" });
                open = true;
            }
            Mark::Path(path) => put_path(&mut svg, path),
            Mark::Text(text) => put_text(&mut svg, text, typeface),
        }
    }
    svg.push_str(if open { "</g>\n</g>\n</svg>\n" } else { "</g>\n</svg>\n" });
    svg
}

fn put_path(svg: &mut String, path: &Path) {
    svg.push_str("<path d=\"");
    for step in &path.steps {
        let _ = match step {
            Step::Move(at) => write!(svg, "M{} {}", number(at.x), number(at.y)),
            Step::Line(at) => write!(svg, "L{} {}", number(at.x), number(at.y)),
            Step::Arc { radius, clockwise, to } => {
                let (radius, sweep) = (number(*radius), u8::from(*clockwise));
                write!(svg, "A{radius} {radius} 0 0 {sweep} {} {}", number(to.x), number(to.y))
            }
            Step::Close => write!(svg, "Z"),
        };
    }
    let fill = match path.fill {
        Fill::None => "none".to_owned(),
        Fill::Tone(tone) => tone.code(),
    };
    let _ = write!(svg, "\" fill=\"{fill}\"");
    if let Some(pen) = &path.pen {
        put_pen(svg, pen);
    }
    svg.push_str("/>\n");
}

fn put_pen(svg: &mut String, pen: &Pen) {
    let _ = write!(svg, " stroke=\"{}\" stroke-width=\"{}\"", pen.tone.code(), number(pen.width));
    if pen.dash == Dash::Solid {
        return;
    }
    let dashes: Vec<String> = pen.dash.lengths().iter().map(|dash| number(*dash)).collect();
    let _ = write!(svg, " stroke-dasharray=\"{}\"", dashes.join(" "));
    if pen.dash == Dash::Dotted {
        svg.push_str(" stroke-linecap=\"round\"");
    }
}

fn put_text(svg: &mut String, text: &Text, typeface: &Typeface) {
    let (x, y) = (number(text.at.x), number(text.at.y));
    let _ = write!(svg, "<text x=\"{x}\" y=\"{y}\" font-size=\"{}\" fill=\"{}\"", number(text.size), text.tone.code());
    if text.weight == Weight::Bold {
        svg.push_str(" font-weight=\"bold\"");
    }
    match text.side {
        Side::Start => {}
        Side::Middle => svg.push_str(" text-anchor=\"middle\""),
    }
    if text.turned != 0.0 {
        let _ = write!(svg, " transform=\"rotate({} {x} {y})\"", number(text.turned));
    }
    svg.push('>');
    for run in typeface.runs(&text.text) {
        let said = escaped(&run.text);
        let _ = match run.is_given {
            true => write!(svg, "<tspan font-family=\"'{GIVEN}'\">{said}</tspan>"),
            false => write!(svg, "{said}"),
        };
    }
    svg.push_str("</text>\n");
}

/// A figure to a thousandth of a millimetre, zeros at its end left off.
fn number(figure: f64) -> String {
    let text = format!("{figure:.3}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}
