//! Paper and scales.

use strum::{EnumString, IntoStaticStr, VariantArray};

use super::{Area, At};

/// What printers take: ISO 216 for A4 and A3, ANSI/ASME Y14.1 for Letter (published).
#[derive(Debug, Clone, Copy, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "lowercase")]
pub(crate) enum Stock {
    /// 210 x 297 mm.
    A4,
    /// 297 x 420 mm.
    A3,
    /// 215.9 x 279.4 mm.
    Letter,
}

impl Stock {
    /// Every stock.
    pub(crate) const ALL: &[Self] = Self::VARIANTS;

    /// Its name on the command line.
    pub(crate) fn key(self) -> &'static str {
        self.into()
    }

    /// Its name.
    pub(crate) const fn name(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::A3 => "A3",
            Self::Letter => "Letter",
        }
    }

    /// Upright.
    pub(crate) const fn portrait(self) -> Paper {
        let (width, height) = match self {
            Self::A4 => (210.0, 297.0),
            Self::A3 => (297.0, 420.0),
            Self::Letter => (215.9, 279.4),
        };
        Paper { width, height }
    }

    /// On its side.
    pub(crate) const fn landscape(self) -> Paper {
        let Paper { width, height } = self.portrait();
        Paper { width: height, height: width }
    }
}

/// A sheet's size, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Paper {
    /// From left to right.
    pub width: f64,
    /// From top to bottom.
    pub height: f64,
}

impl Paper {
    /// What is left for marks, `margin` from every edge.
    pub(crate) const fn within(&self, margin: f64) -> Area {
        Area { at: At::new(margin, margin), width: self.width - 2.0 * margin, height: self.height - 2.0 * margin }
    }
}

/// A scale of reduction: so many millimetres of the room to one on paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Scale(pub u32);

impl Scale {
    /// The reductions that ISO 5455 recommends (published) and a room may need, the largest first.
    pub(crate) const LISTED: [Self; 6] = [Self(10), Self(20), Self(50), Self(100), Self(200), Self(500)];

    /// The largest listed scale that `fits`; the smallest where none does.
    pub(crate) fn largest(fits: impl Fn(Self) -> bool) -> Self {
        Self::LISTED.into_iter().find(|scale| fits(*scale)).unwrap_or(Self(500))
    }

    /// A length of the room on paper, mm.
    pub(crate) fn on_paper(self, length: f64) -> f64 {
        length / f64::from(self.0)
    }
}

impl std::fmt::Display for Scale {
    fn fmt(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(formatter, "1:{}", self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::{Scale, Stock};

    /// ISO 5455: 1:20, 1:50 and 1:100 are listed, 1:30 is not (P); 1:50 draws 3600 mm as 72 mm (P).
    #[test]
    fn scales_are_those_of_the_standard() {
        for listed in [20, 50, 100] {
            assert!(Scale::LISTED.contains(&Scale(listed)));
        }
        assert!(!Scale::LISTED.contains(&Scale(30)));
        assert_eq!(Scale(50).on_paper(3600.0), 72.0);
    }

    /// ISO 216: A4 is 210 x 297 mm, A3 297 x 420 mm (P); Letter 215.9 x 279.4 mm (P).
    #[test]
    fn paper_is_that_of_the_standard() {
        let sizes: Vec<_> = Stock::ALL.iter().map(|stock| (stock.portrait().width, stock.portrait().height)).collect();
        assert_eq!(sizes, [(210.0, 297.0), (297.0, 420.0), (215.9, 279.4)]);
    }

    /// A4 on its side less 10 mm holds 5.54 x 3.80 m at 1:20 (D).
    #[test]
    fn the_largest_scale_that_fits_is_taken() {
        let area = Stock::A4.landscape().within(10.0);
        let largest = |width: f64, height: f64| {
            Scale::largest(|scale| scale.on_paper(width) <= area.width && scale.on_paper(height) <= area.height)
        };
        assert_eq!(largest(5540.0, 3800.0), Scale(20));
        assert_eq!(largest(5541.0, 3800.0), Scale(50));
        assert_eq!(largest(5540.0, 3801.0), Scale(50));
    }
}
