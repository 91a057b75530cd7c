//! What can be put on a sheet.

use strum::VariantArray;

use super::{At, Paper, Weight};

/// A sheet with all that is on it, the lowest marks first.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Sheet {
    /// Its size.
    pub paper: Paper,
    /// What it is, for whoever cannot see it.
    pub title: String,
    /// What it shows, in a few sentences, for whoever cannot see it.
    pub description: String,
    /// Marks.
    pub marks: Vec<Mark>,
}

/// A mark.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Mark {
    /// A line or an outline.
    Path(Path),
    /// A line of lettering.
    Text(Text),
    /// What follows belongs together; the name is ours.
    Layer(&'static str),
}

impl Mark {
    /// The same elsewhere.
    pub(crate) fn moved(self, by: At) -> Self {
        let step = |step: Step| match step {
            Step::Move(at) => Step::Move(at + by),
            Step::Line(at) => Step::Line(at + by),
            Step::Arc { radius, clockwise, to } => Step::Arc { radius, clockwise, to: to + by },
            Step::Close => Step::Close,
        };
        match self {
            Self::Text(text) => Self::Text(Text { at: text.at + by, ..text }),
            Self::Path(path) => Self::Path(Path { steps: path.steps.into_iter().map(step).collect(), ..path }),
            layer @ Self::Layer(_) => layer,
        }
    }
}

/// A step of a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Step {
    /// Starts a line.
    Move(At),
    /// A straight line to there.
    Line(At),
    /// An arc of a circle to there, clockwise as one sees the sheet or the other way; never more than half a turn.
    Arc {
        /// Of the circle.
        radius: f64,
        /// Which way round.
        clockwise: bool,
        /// Where it ends.
        to: At,
    },
    /// Back to where it started.
    Close,
}

/// A path with how it is drawn.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Path {
    /// Its steps.
    pub steps: Vec<Step>,
    /// Its line.
    pub pen: Option<Pen>,
    /// What is within.
    pub fill: Fill,
}

/// A line's look.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Pen {
    /// mm.
    pub width: f64,
    /// Its colour.
    pub tone: Tone,
    /// Its breaks.
    pub dash: Dash,
}

/// How a line is broken. Lines that mean different things differ in this, never in colour alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Dash {
    /// It is not.
    Solid,
    /// Dashes.
    Dashed,
    /// Dots.
    Dotted,
    /// Dashes and dots in turn.
    Chain,
}

impl Dash {
    /// Lengths drawn and left out in turn, mm; none where the line is whole.
    pub(crate) const fn lengths(self) -> &'static [f64] {
        match self {
            Self::Solid => &[],
            Self::Dashed => &[2.0, 1.0],
            Self::Dotted => &[0.01, 0.9],
            Self::Chain => &[3.0, 0.8, 0.4, 0.8],
        }
    }
}

/// What is within a path.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Fill {
    /// Whatever lies below.
    None,
    /// A colour.
    Tone(Tone),
}

/// The colours: greys, and of the colours those of Okabe and Ito 2008, which most colour-blind eyes tell apart (from
/// memory of the publication).
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
pub(crate) enum Tone {
    /// Lines and lettering.
    Ink,
    /// Walls.
    Wall,
    /// Lines that stand back.
    Grey,
    /// Hatches.
    Pale,
    /// Pieces.
    Piece,
    /// What one sits on: so dark that it stands out from the floor in grey too (3:1, WCAG 2.2, 1.4.11, published).
    Seat,
    /// Rugs.
    Rug,
    /// The floor.
    Floor,
    /// Fixed things.
    Fixed,
    /// Paper.
    Paper,
    /// Ways.
    Blue,
    /// Pinches.
    Vermilion,
    /// Sight lines.
    Green,
}

impl Tone {
    /// Every tone.
    pub(crate) const ALL: &[Self] = Self::VARIANTS;

    /// Red, green and blue.
    pub(crate) const fn shares(self) -> [u8; 3] {
        match self {
            Self::Ink => [0x1a, 0x1a, 0x1a],
            Self::Wall => [0x3a, 0x3a, 0x3a],
            Self::Grey => [0x5f, 0x5f, 0x5f],
            Self::Pale => [0xa8, 0xa8, 0xa8],
            Self::Piece => [0xff, 0xfe, 0xfb],
            Self::Seat => [0x93, 0x8b, 0x7f],
            Self::Rug => [0xe9, 0xe4, 0xd9],
            Self::Floor => [0xf7, 0xf5, 0xf0],
            Self::Fixed => [0xdc, 0xdc, 0xdc],
            Self::Paper => [0xff, 0xff, 0xff],
            Self::Blue => [0x00, 0x72, 0xb2],
            Self::Vermilion => [0xb8, 0x4a, 0x00],
            Self::Green => [0x00, 0x7a, 0x59],
        }
    }

    /// As SVG and CSS write it.
    pub(crate) fn code(self) -> String {
        let [red, green, blue] = self.shares();
        format!("#{red:02x}{green:02x}{blue:02x}")
    }
}

/// Where a line of lettering stands by its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Side {
    /// It starts there.
    Start,
    /// Its middle is there.
    Middle,
}

/// A line of lettering.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Text {
    /// On the line that the letters stand on.
    pub at: At,
    /// Which part of it is there.
    pub side: Side,
    /// Size of the type, mm.
    pub size: f64,
    /// Book or bold.
    pub weight: Weight,
    /// Its colour.
    pub tone: Tone,
    /// Turned clockwise about its place, degrees.
    pub turned: f64,
    /// What it says.
    pub text: String,
    /// Where it stands in a table, for whoever has that read aloud.
    pub in_table: Option<InTable>,
}

/// A cell of a table, by its place; row 0 is that of the heads, where there are any.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct InTable {
    /// From the top.
    pub row: usize,
    /// From the left.
    pub column: usize,
    /// It heads its column.
    pub is_head: bool,
}

impl Pen {
    /// A whole line in ink.
    pub(crate) const fn ink(width: f64) -> Self {
        Self { width, tone: Tone::Ink, dash: Dash::Solid }
    }

    /// A whole line in another tone.
    pub(crate) const fn of(width: f64, tone: Tone) -> Self {
        Self { width, tone, dash: Dash::Solid }
    }

    /// The same with breaks.
    pub(crate) const fn broken(self, dash: Dash) -> Self {
        Self { dash, ..self }
    }
}

impl Text {
    /// A level line of book lettering in ink that starts at `at`.
    pub(crate) fn new(at: At, size: f64, text: impl Into<String>) -> Self {
        let text = text.into();
        Self { at, side: Side::Start, size, weight: Weight::Book, tone: Tone::Ink, turned: 0.0, text, in_table: None }
    }

    /// The same about its middle.
    pub(crate) fn centred(self) -> Self {
        Self { side: Side::Middle, ..self }
    }

    /// The same in bold.
    pub(crate) fn bold(self) -> Self {
        Self { weight: Weight::Bold, ..self }
    }

    /// The same in another tone.
    pub(crate) fn toned(self, tone: Tone) -> Self {
        Self { tone, ..self }
    }

    /// The same turned clockwise by so many degrees.
    pub(crate) fn turned(self, turned: f64) -> Self {
        Self { turned, ..self }
    }
}

impl From<Path> for Mark {
    fn from(path: Path) -> Self {
        Self::Path(path)
    }
}

impl From<Text> for Mark {
    fn from(text: Text) -> Self {
        Self::Text(text)
    }
}
