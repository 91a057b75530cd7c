//! Lengths of the file, told in the unit that the page is read in: the file keeps its own.

use elbowroom_model::Unit;
use elbowroom_model::length::{Extent, bare, parse_extent};
use serde_json::Value;

use super::shown::shown;
use crate::words::lengths::{shop_unit, sign, taped};

/// The unit that the file is in, and the one that the page is read in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Units {
    /// What a figure of the file has where none stands behind it.
    pub(super) file: Unit,
    /// What the page tells lengths in.
    pub(super) told: Unit,
}

impl Units {
    /// Those of a file, read in `told` where somebody chose so.
    pub(super) fn of(values: &Value, told: Option<Unit>) -> Self {
        let file = values["units"].as_str().and_then(Unit::of).unwrap_or_default();
        Self { file, told: told.unwrap_or(file) }
    }

    /// The unit that a figure typed without one is in, where that is not the file's.
    pub(super) fn typed(self) -> Option<&'static str> {
        (self.file != self.told).then(|| self.told.key())
    }

    /// A length of the file, mm; nothing where the text is none, or a range.
    pub(super) fn length(self, value: &Value) -> Option<f64> {
        match self.extent(value)? {
            Extent::One(length) => Some(length),
            Extent::Between { .. } => None,
        }
    }

    /// A value of the file as a field shows it: as it stands there, or in the other unit.
    pub(super) fn shown(self, value: &Value) -> String {
        let Some(extent) = self.extent(value).filter(|_| self.file != self.told) else { return shown(value) };
        match extent {
            Extent::One(length) => taped(self.told, length),
            Extent::Between { least, most } => {
                let unit = shop_unit(self.told);
                let end = |end: Option<f64>| end.map(|end| taped(unit, end)).unwrap_or_default();
                let (least, most) = (end(least), end(most));
                // The unit of the upper end is that of both.
                let sign = format!(" {}", sign(unit));
                let bare = if most.ends_with(&sign) { least.trim_end_matches(&sign) } else { &least };
                format!("{bare}..{most}")
            }
        }
    }

    fn extent(self, value: &Value) -> Option<Extent> {
        match value {
            Value::Number(number) => bare(number.as_f64()?, self.file).ok().map(Extent::One),
            Value::String(text) => parse_extent(text, self.file).ok(),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Unit;
    use elbowroom_model::length::{Extent, parse_extent};
    use serde_json::{Value, json};

    use super::Units;

    /// 254 mm are ten inches and 3048 mm ten feet by the inch of exactly 25.4 mm (international yard and pound, 1959).
    #[test]
    fn lengths_are_told_in_the_other_unit_and_read_back_as_they_were() {
        let read = |text: &str| parse_extent(text, Unit::Millimetre).unwrap();
        let told = |file: Unit, told: Unit, value: Value| Units { file, told }.shown(&value);
        assert_eq!(read(&told(Unit::Centimetre, Unit::Inch, json!(25.4))), Extent::One(254.0));
        assert_eq!(read(&told(Unit::Centimetre, Unit::Foot, json!("3.048 m"))), Extent::One(3048.0));
        assert_eq!(read(&told(Unit::Inch, Unit::Centimetre, json!("5 1/2"))), Extent::One(140.0));
        let range = Extent::Between { least: Some(2540.0), most: Some(3048.0) };
        assert_eq!(read(&told(Unit::Centimetre, Unit::Foot, json!("254..304.8"))), range);
        let open = Extent::Between { least: None, most: Some(254.0) };
        assert_eq!(read(&told(Unit::Centimetre, Unit::Inch, json!("..25.4"))), open);
        // What is no length, and what is read in its own unit, stays as it stands.
        assert_eq!(told(Unit::Centimetre, Unit::Inch, json!("wide")), "wide");
        assert_eq!(told(Unit::Centimetre, Unit::Centimetre, json!("210..280")), "210..280");
    }
}
