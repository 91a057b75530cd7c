//! How many sit on a sofa of one run, by what the file says or by its width.

/// A sofa of one run is as wide as its table says but for rounding, mm.
const ROUNDING: f64 = 0.5;

/// How many sit on it from which width on, fewest first; nothing of what is not sold by how many sit on it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Sits(pub Vec<SitsFrom>);

/// So many sit on a sofa from this width on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SitsFrom {
    /// How many.
    pub seats: u32,
    /// Along its back, mm.
    pub width: f64,
}

impl Sits {
    /// How many sit on a sofa that is so wide along its back, mm: as many as the file says, or as sofas of that width are sold
    /// for (`by_places` of `model/data/sizes.yaml`), and one at least; `None` of what is not sold so.
    ///
    /// ```
    /// use elbowroom_model::scenario;
    /// let room = "units: cm\nwalls: [{ length: 500 }, { length: 400 }, { length: 500 }, { length: 400 }]\n";
    /// let sits = |row: &str| {
    ///     scenario::read(&format!("{room}pieces: [{row}]\n"), None).expect("a sound room").pieces[0].sits.clone()
    /// };
    /// assert_eq!(sits("{ kind: sofa }").at(2100.0), Some(3));
    /// assert_eq!(sits("{ kind: sofa, seats: 2 }").at(2100.0), Some(2));
    /// assert_eq!(sits("{ kind: armchair }").at(900.0), None);
    /// ```
    #[must_use]
    pub fn at(&self, width: f64) -> Option<u32> {
        let wide_enough = |row: &&SitsFrom| row.width <= width + ROUNDING;
        let most = self.0.iter().filter(wide_enough).map(|row| row.seats).max();
        (!self.0.is_empty()).then(|| most.unwrap_or(1))
    }
}
