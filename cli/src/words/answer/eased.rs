//! Rules of comfort that a plan keeps in part, in words: what is wanted, and what there is.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Clearance, Rule};
use elbowroom_solver::answer::{Eased, RankedOption};

use crate::words::lengths::given_and_wanted;

/// Every rule that an option keeps in part, a sentence each; of one rule and one piece what falls shortest is told.
pub(crate) fn all_eased(brief: &Brief, option: &RankedOption) -> Vec<String> {
    shortest(&option.eased).into_iter().map(|one| eased(brief, one)).collect()
}

/// What falls shortest of each rule and the piece that it is asked of, in the order in which they are told.
fn shortest(all: &[Eased]) -> Vec<&Eased> {
    let mut kept: Vec<&Eased> = Vec::new();
    for one in all {
        match kept.iter_mut().find(|known| (known.rule, known.between[0]) == (one.rule, one.between[0])) {
            Some(known) if short_by(one) > short_by(known) => *known = one,
            Some(_) => {}
            None => kept.push(one),
        }
    }
    kept
}

/// What is missing, or too much, mm; 0 where that is no one length.
fn short_by(eased: &Eased) -> f64 {
    let missing = eased.wanted.zip(eased.given).map(|(wanted, given)| (wanted - given).abs());
    missing.filter(|missing| missing.is_finite()).unwrap_or_default()
}

/// One rule that is kept in part: `35 cm is wanted before the armchair; this room gives 31, up to the coffee table.`
pub(crate) fn eased(brief: &Brief, eased: &Eased) -> String {
    let [one, other] = eased.between.map(|thing| the(thing.name(brief)));
    let between = Between { one, other };
    let said = match figures(brief, eased) {
        Some(figures) => in_figures(eased.rule, &between, &figures),
        None => in_words(eased.rule, &between),
    };
    format!("{}.", capital(&said))
}

/// The two that a rule is about.
struct Between {
    /// What lacks it, or stands in its way.
    one: String,
    /// What it lacks it from.
    other: String,
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
    let Between { one, other } = between;
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
            format!(
                "{wanted} is wanted clear on each side of the line from {other} to the screen; {one} leaves {given}"
            )
        }
        Rule::Clearance(Clearance::SolidWall) => {
            format!(
                "{one} is wanted with solid wall behind all but {wanted} of it; at {other} there is none behind {given}"
            )
        }
        Rule::Clearance(Clearance::BeforeOpening) => {
            format!("{wanted} is wanted free before {other}; {one} leaves {given}")
        }
        Rule::Use => format!("{wanted} is wanted free before {other}, to use it; {one} leaves {given}"),
        Rule::Clearance(Clearance::BehindSeat) => {
            format!("{wanted} is wanted behind {one} where nothing closes its back; this room gives {given}")
        }
        Rule::Clearance(Clearance::DiningPlaces) => {
            format!("{wanted} is wanted for the chair at the end of {one}; this room gives {given}, up to {other}")
        }
        Rule::ReturnOffWall => {
            format!("{wanted} is wanted between the return of {one} and its wall; this room gives {given}")
        }
        rule => format!("{wanted} is wanted of {one} and {other} ({}); this room gives {given}", plain(rule)),
    }
}

fn in_words(rule: Rule, between: &Between) -> String {
    let Between { one, other } = between;
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
            format!("{one} stands in the view from {other} to the screen")
        }
        Rule::Clearance(Clearance::SolidWall) => {
            format!("{one} has less solid wall behind it at {other} than is wanted")
        }
        Rule::Clearance(Clearance::BeforeOpening) => format!("{one} stands nearer before {other} than is wanted"),
        Rule::Use => format!("{one} stands nearer before {other} than its use wants"),
        Rule::Clearance(Clearance::BehindSeat) => {
            format!("the floor behind {one} is neither closed nor as wide as is wanted")
        }
        Rule::Clearance(Clearance::DiningPlaces) => {
            format!("{one} has fewer places to sit at, as it stands, than it is to seat")
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
    use elbowroom_model::{Brief, Clearance, PieceId, Rule, WallId, scenario};
    use elbowroom_solver::answer::{Eased, Thing};

    use super::{eased, shortest};

    const SOFA: Thing = Thing::Piece(PieceId(0));
    const CHAIR: Thing = Thing::Piece(PieceId(1));
    const UNIT: Thing = Thing::Piece(PieceId(2));
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
                told(Clearance::ScreenSight, [WALL, SOFA], Some([400.0, 220.0])),
                "40 cm is wanted clear on each side of the line from the sofa to the screen; the stair wall leaves 22.",
            ),
            (
                told(Clearance::ScreenSight, [CHAIR, SOFA], None),
                "The armchair stands in the view from the sofa to the screen.",
            ),
            (
                told(Clearance::SolidWall, [UNIT, WALL], Some([50.0, 200.0])),
                "The media unit is wanted with solid wall behind all but 5 cm of it; at the stair wall there is none behind 20.",
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
    fn of_one_rule_and_one_piece_what_falls_shortest_is_told() {
        let rule = Clearance::LegRoom.into();
        let one = |between, given| Eased { rule, between, wanted: Some(350.0), given: Some(given) };
        let all = [one([CHAIR, UNIT], 320.0), one([SOFA, UNIT], 340.0), one([CHAIR, SOFA], 310.0)];
        assert_eq!(shortest(&all), [&all[2], &all[1]]);
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
