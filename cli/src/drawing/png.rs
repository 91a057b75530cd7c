//! A sheet as PNG.

use std::sync::Arc;

use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{self, Options, Tree, fontdb};

use super::svg::{Font, svg};
use super::web_font::GIVEN;
use super::{Sheet, Typeface, Weight};
use crate::process::failure::Failure;

/// Dots to the inch: fine enough for a printed A4.
const DOTS: f64 = 150.0;
const INCH: f64 = 25.4;

/// The sheet as a picture of 150 dots to the inch.
///
/// # Errors
/// It cannot be drawn, which no sheet of ours should bring about.
pub(crate) fn png(sheet: &Sheet, typeface: &Typeface) -> Result<Vec<u8>, Failure> {
    let tree = tree(sheet, typeface)?;
    let dots = |length: f64| (length / INCH * DOTS).round().clamp(1.0, 20_000.0);
    let (width, height) = (dots(sheet.paper.width), dots(sheet.paper.height));
    // Both lie in 1..=20000.
    let mut picture = Pixmap::new(width as u32, height as u32).ok_or(Failure::Drawing("the picture is too large"))?;
    let size = tree.size();
    let scale = Transform::from_scale(width as f32 / size.width(), height as f32 / size.height());
    resvg::render(&tree, scale, &mut picture.as_mut());
    encoded(&picture).map_err(|_| Failure::Drawing("the picture cannot be encoded"))
}

/// The picture as a file. Paper lies under everything, so no dot of it shows through and its fourth share is left off.
fn encoded(picture: &Pixmap) -> Result<Vec<u8>, png::EncodingError> {
    let dots: Vec<u8> = picture.pixels().iter().flat_map(|dot| [dot.red(), dot.green(), dot.blue()]).collect();
    let mut file = Vec::new();
    let mut encoder = png::Encoder::new(&mut file, picture.width(), picture.height());
    encoder.set_color(png::ColorType::Rgb);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.set_compression(png::Compression::Fast);
    encoder.set_filter(png::FilterType::Up);
    let to_metre = (DOTS / INCH * 1000.0).round() as u32;
    encoder.set_pixel_dims(Some(png::PixelDimensions { xppu: to_metre, yppu: to_metre, unit: png::Unit::Meter }));
    let mut writer = encoder.write_header()?;
    writer.write_image_data(&dots)?;
    writer.finish()?;
    Ok(file)
}

/// The sheet as a drawing library reads it, its letters from our font, or else from the one that was given.
pub(super) fn tree(sheet: &Sheet, typeface: &Typeface) -> Result<Tree, Failure> {
    let mut fonts = fontdb::Database::new();
    for weight in [Weight::Book, Weight::Bold] {
        fonts.load_font_source(fontdb::Source::Binary(Arc::new(weight.file())));
    }
    if let Some(given) = typeface.given() {
        fonts.load_font_source(fontdb::Source::Binary(Arc::new(given.to_vec())));
    }
    let [book, bold, given] = [0, 1, 2].map(|place| fonts.faces().nth(place).map(|face| face.id));
    let select_font = move |font: &usvg::Font, _: &mut Arc<fontdb::Database>| {
        let is_given =
            font.families().iter().any(|family| matches!(family, usvg::FontFamily::Named(name) if name == GIVEN));
        if is_given {
            given
        } else if font.weight() >= 600 {
            bold
        } else {
            book
        }
    };
    let options = Options {
        fontdb: Arc::new(fonts),
        font_resolver: usvg::FontResolver {
            select_font: Box::new(select_font),
            select_fallback: Box::new(|_, _, _| None),
        },
        // 72 to the inch: a unit of the tree is a point of print.
        dpi: 72.0,
        ..Options::default()
    };
    Tree::from_str(&svg(sheet, Font::Beside, typeface), &options)
        .map_err(|_| Failure::Drawing("the sheet cannot be read back"))
}
