//! Rules of comfort that a plan keeps in part, in words: what is wanted, and what there is.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Clearance, Rule};
use elbowroom_solver::answer::{Eased, RankedOption, Thing};

use crate::words::lengths::given_and_wanted;

/// Everything that an option keeps in part, a sentence each, in the order in which it is told.
pub(crate) fn all_eased(brief: &Brief, option: &RankedOption) -> Vec<String> {
    option.eased.iter().map(|one| eased(brief, one)).collect()
}

/// One rule that is kept in part: `35 cm is wanted before the armchair; this room gives 31, up to the coffee table.`
fn eased(brief: &Brief, eased: &Eased) -> String {
    let [one, other] = eased.between.map(|thing| the(thing.name(brief)));
    let between = Between { one, other, to: eased.between[1] };
    let said = match figures(brief, eased) {
        Some(figures) => in_figures(eased.rule, &between, &figures),
        None => in_words(eased.rule, &between),
    };
    format!("{}.", capital(&said))
}

/// The two that a rule is about.
struct Between {
    /// The piece that the rule is asked of.
    one: String,
    /// What it stands to.
    other: String,
    /// The same by what it is.
    to: Thing,
}

impl Between {
    /// What stands in the view of a screen, and the seat that one looks from: the seat itself is named first where walls or
    /// fixed things are in its way.
    fn view(&self) -> [&str; 2] {
        match self.to {
            Thing::Piece(_) => [&self.one, &self.other],
            Thing::Wall(_) | Thing::Item(_) | Thing::Fixed(_) => [&self.other, &self.one],
        }
    }

    /// What no wall is behind: `before the hall door`, `past the end of the stair wall`.
    fn no_wall(&self) -> String {
        match self.to {
            Thing::Wall(_) => format!("past the end of {}", self.other),
            Thing::Item(_) | Thing::Fixed(_) | Thing::Piece(_) => format!("before {}", self.other),
        }
    }
}

/// What a rule asks for, and what there is of it.
struct Figures {
    wanted: String,
    given: String,
}

fn figures(brief: &Brief, eased: &Eased) -> Option<Figures> {
    let is_length = |length: &f64| length.is_finite();
    let (wanted, given) = eased.wanted.filter(is_length).zip(eased.given.filter(is_length))?;
    let [given, wanted] = given_and_wanted(brief.units, given.max(0.0), wanted);
    Some(Figures { wanted, given })
}

fn in_figures(rule: Rule, between: &Between, Figures { wanted, given }: &Figures) -> String {
    let Between { one, other, .. } = between;
    match rule {
        Rule::Clearance(Clearance::LegRoom) => {
            format!("{wanted} is wanted before {one}; this room gives {given}, up to {other}")
        }
        Rule::Clearance(Clearance::FrontOpen) => {
            format!("{wanted} of open floor is wanted before {one}; this room gives {given}, up to {other}")
        }
        Rule::Clearance(Clearance::BetweenSeats) => {
            format!("{wanted} is wanted between {one} and {other}; this room gives {given}")
        }
        Rule::Clearance(Clearance::TableAxis) => {
            format!("{one} is wanted within {wanted} of the middle of the front of {other}; here it lies {given} off")
        }
        Rule::Clearance(Clearance::ScreenAxis) => {
            format!(
                "{one} is wanted within {wanted} of straight before the middle of {other}; here it stands {given} off"
            )
        }
        Rule::Clearance(Clearance::ScreenSight) => {
            let [what, seat] = between.view();
            format!(
                "{wanted} is wanted clear on each side of the line from {seat} to the screen; {what} leaves {given}"
            )
        }
        Rule::Clearance(Clearance::SolidWall) => {
            format!("no more than {wanted} of {one} is wanted {}; here it is {given}", between.no_wall())
        }
        Rule::Clearance(Clearance::BeforeOpening) => {
            format!("{wanted} is wanted free before {other}; {one} leaves {given}")
        }
        Rule::Use => format!("{wanted} is wanted free before {other}, to use it; {one} leaves {given}"),
        Rule::Clearance(Clearance::BehindSeat) => {
            format!("{wanted} is wanted behind {one} where nothing closes its back; this room gives {given}")
        }
        Rule::ReturnOffWall => {
            format!("{wanted} is wanted between the return of {one} and its wall; this room gives {given}")
        }
        rule => format!("{wanted} is wanted of {one} and {other} ({}); this room gives {given}", plain(rule)),
    }
}

fn in_words(rule: Rule, between: &Between) -> String {
    let Between { one, other, .. } = between;
    match rule {
        Rule::Clearance(Clearance::LegRoom) => {
            format!("there is less room for legs before {one}, up to {other}, than is wanted")
        }
        Rule::Clearance(Clearance::FrontOpen) => format!("{one} looks at {other} from nearer than is wanted"),
        Rule::Clearance(Clearance::BetweenSeats) => {
            format!("{one} and {other} stand nearer to each other than is wanted")
        }
        Rule::Clearance(Clearance::TableAxis) => {
            format!("{one} lies further off the middle of the front of {other} than is wanted")
        }
        Rule::Clearance(Clearance::ScreenAxis) => {
            format!("{one} stands further from straight before the middle of {other} than is wanted")
        }
        Rule::ScreenTurn => format!("from {other} one turns the head further to {one} than is wanted"),
        Rule::Clearance(Clearance::ScreenSight) => {
            let [what, seat] = between.view();
            format!("{what} stands in the view from {seat} to the screen")
        }
        Rule::Clearance(Clearance::SolidWall) => {
            format!("more of {one} stands {} than is wanted", between.no_wall())
        }
        Rule::Clearance(Clearance::BeforeOpening) => format!("{one} stands nearer before {other} than is wanted"),
        Rule::Use => format!("{one} stands nearer before {other} than its use wants"),
        Rule::Clearance(Clearance::BehindSeat) => {
            format!("the floor behind {one} is neither closed nor as wide as is wanted")
        }
        Rule::ReturnOffWall => format!("the return of {one} stands nearer to its wall than is wanted"),
        rule => format!("{one} and {other} give less than is wanted ({})", plain(rule)),
    }
}

/// A rule's name in words, for one that is no rule of comfort.
fn plain(rule: Rule) -> String {
    rule.key().replace('_', " ")
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Brief, Clearance, ItemId, PieceId, Rule, WallId, scenario};
    use elbowroom_solver::answer::{Eased, Thing};

    use super::eased;

    const SOFA: Thing = Thing::Piece(PieceId(0));
    const CHAIR: Thing = Thing::Piece(PieceId(1));
    const UNIT: Thing = Thing::Piece(PieceId(2));
    const DOOR: Thing = Thing::Item(ItemId(0));
    const WALL: Thing = Thing::Wall(WallId(1));

    fn brief(units: &str) -> Brief {
        let text = "
walls:
  - name: hall wall
    length: 5000 mm
    holds:
      - { kind: door, name: hall door, at: 100 mm, width: 800 mm, hinge: left, swings: in, leads_to: entrance }
  - { name: stair wall, length: 4000 mm }
  - { name: back wall, length: 5000 mm }
  - { name: yard wall, length: 4000 mm }
pieces: [{ kind: sofa }, { kind: armchair }, { kind: media-unit, screen: 1397 mm }]
";
        scenario::read(&format!("units: {units}\n{text}"), None).unwrap()
    }

    fn told(rule: impl Into<Rule>, between: [Thing; 2], figures: Option<[f64; 2]>) -> String {
        let rule = rule.into();
        let [wanted, given] = [0, 1].map(|place| figures.map(|figures| figures[place]));
        eased(&brief("cm"), &Eased { rule, between, wanted, given })
    }

    #[test]
    fn what_is_wanted_stands_beside_what_there_is() {
        let cases = [
            (
                told(Clearance::LegRoom, [CHAIR, UNIT], Some([350.0, 312.0])),
                "35 cm is wanted before the armchair; this room gives 31, up to the media unit.",
            ),
            (
                told(Clearance::BetweenSeats, [SOFA, CHAIR], Some([150.0, -4.0])),
                "15 cm is wanted between the sofa and the armchair; this room gives 0.",
            ),
            (
                told(Clearance::ScreenSight, [SOFA, WALL], Some([400.0, 220.0])),
                "40 cm is wanted clear on each side of the line from the sofa to the screen; the stair wall leaves 22.",
            ),
            (
                told(Clearance::ScreenSight, [CHAIR, SOFA], None),
                "The armchair stands in the view from the sofa to the screen.",
            ),
            (
                told(Clearance::SolidWall, [UNIT, DOOR], Some([50.0, 200.0])),
                "No more than 5 cm of the media unit is wanted before the hall door; here it is 20.",
            ),
            (
                told(Rule::ScreenTurn, [UNIT, SOFA], None),
                "From the sofa one turns the head further to the media unit than is wanted.",
            ),
            (
                told(Clearance::BehindSeat, [SOFA, WALL], Some([610.0, f64::INFINITY])),
                "The floor behind the sofa is neither closed nor as wide as is wanted.",
            ),
        ];
        for (told, expected) in cases {
            assert_eq!(told, expected);
        }
    }

    #[test]
    fn it_is_told_in_the_unit_asked_for() {
        let rule = Clearance::FrontOpen.into();
        let one = Eased { rule, between: [SOFA, WALL], wanted: Some(914.4), given: Some(762.0) };
        assert_eq!(
            eased(&brief("ft"), &one),
            "36 in of open floor is wanted before the sofa; this room gives 30, up to the stair wall."
        );
    }

    #[test]
    fn every_rule_of_comfort_has_its_sentences() {
        for rule in Rule::all().filter(|rule| rule.is_comfort()) {
            // How far one turns the head is no one length.
            let figures = (rule != Rule::ScreenTurn).then_some([350.0, 310.0]);
            for figures in [figures, None] {
                let told = told(rule, [CHAIR, WALL], figures);
                assert!(told.ends_with('.') && !told.contains(['_', '(']), "{rule}: {told}");
                assert_eq!(figures.is_some(), told.contains("35 cm") && told.contains("31"), "{rule}: {told}");
            }
        }
    }
}
