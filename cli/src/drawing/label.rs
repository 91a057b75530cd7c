//! A label: words that belong to a place, how large they are and where they may lie.

use super::lettering::{FALL, RISE, clipped};
use super::{Area, At, Fill, Mark, Path, Text, Tone, Weight, width_of};

/// From one line's foot to the next one's, in sizes of the type.
const LINE: f64 = 1.22;

/// Words that belong to a place.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Label {
    /// What is named; a leader ends there.
    pub of: At,
    /// Where the middle of the label may be, the best first.
    pub places: Vec<At>,
    /// Lines with their weights.
    pub lines: Vec<(String, Weight)>,
    /// Size of the type, mm.
    pub size: f64,
    /// Its colour.
    pub tone: Tone,
    /// Turned clockwise, degrees.
    pub turned: f64,
    /// What it lies on, which hides what is below; `None`: whatever is there.
    pub ground: Option<Tone>,
    /// It may lie on bodies: it names what it lies on.
    pub over: bool,
    /// It names what is outside the room, and stays outside.
    pub outside: bool,
}

impl Label {
    /// A label of one line.
    pub(crate) fn new(of: At, places: Vec<At>, size: f64, text: impl AsRef<str>) -> Self {
        let lines = vec![(clipped(text.as_ref()), Weight::Book)];
        Self { of, places, lines, size, tone: Tone::Ink, turned: 0.0, ground: None, over: false, outside: false }
    }

    /// How wide and high the block of lines is before it is turned.
    pub(crate) fn size(&self) -> (f64, f64) {
        let widths = self.lines.iter().map(|(text, weight)| width_of(text, self.size, *weight));
        let height = (self.lines.len().saturating_sub(1) as f64).mul_add(LINE, RISE + FALL) * self.size;
        (widths.fold(0.0, f64::max), height)
    }

    /// From its middle to its edge that way (a unit vector), before it is turned.
    pub(crate) fn half(&self, way: At) -> f64 {
        let (width, height) = self.size();
        (way.x.abs() * width + way.y.abs() * height) / 2.0
    }

    /// Its corners with its middle there, `spare` further out.
    pub(crate) fn block(&self, middle: At, spare: f64) -> [At; 4] {
        let (width, height) = self.size();
        let block = Area::round(At::default(), width, height).grown(spare);
        block.corners().map(|corner| middle + self.turned(corner))
    }

    /// From `spare` outside its nearest edge, with its middle there, to what it names.
    pub(super) fn leader(&self, middle: At, spare: f64) -> [At; 2] {
        let area = Area::of(self.block(middle, spare));
        [At::new(self.of.x.clamp(area.at.x, area.right()), self.of.y.clamp(area.at.y, area.bottom())), self.of]
    }

    fn turned(&self, off: At) -> At {
        let (sine, cosine) = self.turned.to_radians().sin_cos();
        At::new(off.x * cosine - off.y * sine, off.x * sine + off.y * cosine)
    }

    /// Its lettering with its middle there, on its ground.
    pub(super) fn marks(&self, middle: At) -> Vec<Mark> {
        let (width, height) = self.size();
        let turn = |off: At| middle + self.turned(off);
        let mut marks = Vec::new();
        if let Some(ground) = self.ground {
            let block = Area::round(At::default(), width + 0.3, height);
            marks.push(Path::ring(block.corners().map(turn), None, Fill::Tone(ground)).into());
        }
        for (place, (text, weight)) in self.lines.iter().enumerate() {
            let foot = -height / 2.0 + (RISE + LINE * place as f64) * self.size;
            let text = Text::new(turn(At::new(0.0, foot)), self.size, text.clone());
            marks.push(Text { weight: *weight, ..text }.centred().toned(self.tone).turned(self.turned).into());
        }
        marks
    }
}
