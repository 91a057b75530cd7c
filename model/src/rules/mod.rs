//! The rules, and the clearances in force.

mod clearance;
mod rule;

use enum_map::EnumMap;

pub use clearance::Clearance;
pub use rule::Rule;

/// The clearances in force, mm; 0 switches a clearance off.
#[derive(Debug, Clone, PartialEq)]
pub struct Rules {
    /// Name of the profile they start from: `snug`, `easy`, `wheelchair`.
    pub profile: String,
    /// The wheelchair profile: each window that opens must be reached.
    pub reach_opening_windows: bool,
    figures: EnumMap<Clearance, ClearanceFigure>,
}

/// One clearance and where its figure comes from.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ClearanceFigure {
    /// The clearance, mm; `None`: the rule is not in force (a turning circle that nobody asked for).
    pub figure: Option<f64>,
    /// The source, or `"the scenario"`.
    pub source: String,
}

impl Rules {
    /// Rules of `profile`, with what `figure` says of each clearance.
    #[must_use]
    pub fn new(profile: impl Into<String>, figure: impl FnMut(Clearance) -> ClearanceFigure) -> Self {
        let profile = profile.into();
        let reach_opening_windows = profile == "wheelchair";
        Self { profile, reach_opening_windows, figures: EnumMap::from_fn(figure) }
    }

    /// Whether the rules are for who comes in a wheelchair: no step is crossed.
    #[must_use]
    pub fn are_for_a_wheelchair(&self) -> bool {
        self.profile == "wheelchair"
    }

    /// The clearance, mm; 0 where it is not in force.
    #[must_use]
    pub fn get(&self, clearance: Clearance) -> f64 {
        self.figures[clearance].figure.unwrap_or(0.0)
    }

    /// The clearance with its source.
    #[must_use]
    pub fn figure(&self, clearance: Clearance) -> &ClearanceFigure {
        &self.figures[clearance]
    }

    /// Diameter of the turning circle, where one is asked for.
    #[must_use]
    pub fn turning_circle(&self) -> Option<f64> {
        self.figure(Clearance::TurningCircle).figure.filter(|diameter| *diameter > 0.0)
    }

    /// The same rules with one clearance changed; `source` says by whom.
    #[must_use]
    pub fn with(mut self, clearance: Clearance, figure: f64, source: &str) -> Self {
        self.figures[clearance] = ClearanceFigure { figure: Some(figure), source: source.to_owned() };
        self
    }
}
