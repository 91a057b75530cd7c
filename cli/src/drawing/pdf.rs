//! Sheets as PDF, a page each, true to size, their letters as letters.

use krilla::Document;
use krilla::color::rgb;
use krilla::geom::{PathBuilder, Point, Transform};
use krilla::metadata::Metadata;
use krilla::num::NormalizedF32;
use krilla::page::PageSettings;
use krilla::paint::{Fill as Paint, FillRule, LineCap, LineJoin, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::tagging::TagTree;
use krilla::text::{Font, TextDirection};

use super::tagged::PageTags;
use super::tolerance::QUARTER;
use super::{At, Dash, Fill, Mark, Path, Pen, Sheet, Side, Step, Text, Tone, Typeface, Weight, width_of};
use crate::process::failure::Failure;

/// Points of print to the millimetre.
const POINTS: f64 = 72.0 / 25.4;

/// The sheets as one document.
///
/// # Errors
/// It cannot be made, which no sheet of ours should bring about.
pub(crate) fn pdf(sheets: &[Sheet], typeface: &Typeface) -> Result<Vec<u8>, Failure> {
    let failed = || Failure::Drawing("the document cannot be made");
    let fonts = Fonts::of(typeface).ok_or_else(failed)?;
    let mut document = Document::new();
    if let Some(first) = sheets.first() {
        let about = Metadata::new().title(crate::text::safe::safe(&first.title)).language("en".to_owned());
        document.set_metadata(about.creator("elbowroom".to_owned()));
    }
    let mut tree = TagTree::new();
    for sheet in sheets {
        let [width, height] = [sheet.paper.width, sheet.paper.height].map(|length| (length * POINTS) as f32);
        let settings = PageSettings::from_wh(width, height).ok_or_else(failed)?;
        let mut page = document.start_page_with(settings);
        let mut surface = page.surface();
        surface.push_transform(&Transform::from_scale(POINTS as f32, POINTS as f32));
        let mut tags = PageTags::of(sheet);
        for run in sheet.marks.chunk_by(|one, next| is_path(one) && is_path(next)) {
            put_run(&mut surface, run, &fonts, &mut tags);
        }
        tags.put_into(&mut tree);
        surface.pop();
        surface.finish();
        page.finish();
    }
    document.set_tag_tree(tree);
    document.finish().map_err(|_| failed())
}

const fn is_path(mark: &Mark) -> bool {
    matches!(mark, Mark::Path(_))
}

/// Lines and fills with no words between them, or one text.
fn put_run(surface: &mut Surface<'_>, run: &[Mark], fonts: &Fonts<'_>, tags: &mut PageTags) {
    match run {
        [Mark::Text(text)] => tags.words(surface, text.in_table, |surface| put_text(surface, text, fonts)),
        [Mark::Layer(_)] | [] => {}
        paths => tags.lines(surface, |surface| {
            let paths = paths.iter().filter_map(|mark| if let Mark::Path(path) = mark { Some(path) } else { None });
            paths.for_each(|path| put_path(surface, path));
        }),
    }
}

/// The fonts of a document.
struct Fonts<'t> {
    typeface: &'t Typeface,
    book: Font,
    bold: Font,
    given: Option<Font>,
}

impl<'t> Fonts<'t> {
    fn of(typeface: &'t Typeface) -> Option<Self> {
        let ours = |weight: Weight| Font::new(weight.file().into(), 0);
        let given = typeface.given().and_then(|file| Font::new(file.to_vec().into(), 0));
        Some(Self { typeface, book: ours(Weight::Book)?, bold: ours(Weight::Bold)?, given })
    }

    /// The font of a run of letters.
    const fn of_run(&self, is_given: bool, weight: Weight) -> &Font {
        match (&self.given, weight) {
            (Some(given), _) if is_given => given,
            (_, Weight::Bold) => &self.bold,
            (_, Weight::Book) => &self.book,
        }
    }
}

fn put_path(surface: &mut Surface<'_>, path: &Path) {
    let Some(outline) = outline(path) else { return };
    surface.set_fill(match path.fill {
        Fill::None => None,
        Fill::Tone(tone) => Some(paint(tone)),
    });
    surface.set_stroke(path.pen.as_ref().map(stroke));
    if path.fill != Fill::None || path.pen.is_some() {
        surface.draw_path(&outline);
    }
}

fn outline(path: &Path) -> Option<krilla::geom::Path> {
    let mut builder = PathBuilder::new();
    let mut from = At::default();
    for step in &path.steps {
        match step {
            Step::Move(at) => builder.move_to(at.x as f32, at.y as f32),
            Step::Line(at) => builder.line_to(at.x as f32, at.y as f32),
            Step::Arc { radius, clockwise, to } => put_arc(&mut builder, from, *radius, *clockwise, *to),
            Step::Close => builder.close(),
        }
        if let Step::Move(at) | Step::Line(at) | Step::Arc { to: at, .. } = step {
            from = *at;
        }
    }
    builder.finish()
}

/// An arc of at most half a turn as curves of at most a quarter.
fn put_arc(builder: &mut PathBuilder, from: At, radius: f64, clockwise: bool, to: At) {
    let chord = to - from;
    let half = (chord.length() / 2.0).min(radius);
    let off = (radius * radius - half * half).max(0.0).sqrt();
    // The y axis runs down: who goes clockwise has the middle on the right hand.
    let side = if clockwise { chord.unit().right() } else { chord.unit().right() * -1.0 };
    let middle = from.middle(to) + side * off;
    let start = (from - middle).y.atan2((from - middle).x);
    let turn = 2.0 * (half / radius).clamp(-1.0, 1.0).asin() * if clockwise { 1.0 } else { -1.0 };
    let pieces = if turn.abs() > std::f64::consts::FRAC_PI_2 + QUARTER { 2 } else { 1 };
    let step = turn / f64::from(pieces);
    let reach = radius * 4.0 / 3.0 * (step / 4.0).tan();
    for piece in 0..pieces {
        let [a, b] = [f64::from(piece), f64::from(piece + 1)].map(|end| start + step * end);
        let [on_a, on_b] = [a, b].map(|angle| At::new(angle.cos(), angle.sin()));
        let one = middle + on_a * radius + on_a.right() * reach;
        let other = middle + on_b * radius - on_b.right() * reach;
        let end = middle + on_b * radius;
        builder.cubic_to(one.x as f32, one.y as f32, other.x as f32, other.y as f32, end.x as f32, end.y as f32);
    }
}

fn put_text(surface: &mut Surface<'_>, text: &Text, fonts: &Fonts<'_>) {
    let said = crate::text::safe::safe(&text.text);
    let shift = match text.side {
        Side::Start => 0.0,
        Side::Middle => -width_of(&said, text.size, text.weight) / 2.0,
    };
    surface.set_fill(Some(paint(text.tone)));
    surface.set_stroke(None);
    let (x, y) = (text.at.x as f32, text.at.y as f32);
    surface.push_transform(&Transform::from_rotate_at(text.turned as f32, x, y));
    let mut from = shift;
    let mut runs = fonts.typeface.runs(&said).into_iter().peekable();
    while let Some(run) = runs.next() {
        let font = fonts.of_run(run.is_given, text.weight).clone();
        let start = Point::from_xy(x + from as f32, y);
        surface.draw_text(start, font, text.size as f32, &run.text, false, TextDirection::Auto);
        if runs.peek().is_some() {
            from += fonts.typeface.width_of(&run, text.size, text.weight);
        }
    }
    surface.pop();
}

fn paint(tone: Tone) -> Paint {
    Paint { paint: colour(tone).into(), opacity: NormalizedF32::ONE, rule: FillRule::EvenOdd }
}

fn stroke(pen: &Pen) -> Stroke {
    let dashes = pen.dash.lengths();
    Stroke {
        paint: colour(pen.tone).into(),
        width: pen.width as f32,
        line_cap: if pen.dash == Dash::Dotted { LineCap::Round } else { LineCap::Butt },
        line_join: LineJoin::Round,
        dash: (!dashes.is_empty())
            .then(|| StrokeDash { array: dashes.iter().map(|length| *length as f32).collect(), offset: 0.0 }),
        ..Stroke::default()
    }
}

fn colour(tone: Tone) -> rgb::Color {
    let [red, green, blue] = tone.shares();
    rgb::Color::new(red, green, blue)
}
