//! Cautions in words.

use elbowroom_solver::cautions::Caution;

/// The caution as one or two sentences.
pub(crate) const fn caution(caution: Caution) -> &'static str {
    match caution {
        Caution::Exits => {
            "Keep exits and escape windows free. What is required is local: ask the code official, the fire service or \
             the landlord."
        }
        Caution::Heat => {
            "Keep anything that burns 3 ft (91 cm) from fires, stoves and electric or gas heaters, portable ones too (CPSC, \
             NFPA), or further where the maker says so."
        }
        Caution::Radiator => {
            "A radiator is taken as one that water heats, so furniture may stand nearer to it than 3 ft: keep what its maker asks \
             for. If it is an electric or gas heater, the 3 ft hold for it too."
        }
        Caution::TipOver => "Fix tall storage and televisions to the wall: they tip over (CPSC).",
        Caution::Hung => {
            "A screen on a wall hangs from a bracket made for its weight, fixed to what bears it: find studs, cables and \
             pipes first, and ask a licensed person where the wall is not sound masonry or timber."
        }
        Caution::OverFire => {
            "Over a fire a screen gets hot and usually hangs too high: keep to what the makers of both ask, and try the heat \
             on the wall with the fire lit before you drill."
        }
        Caution::AcrossOpening => {
            "What stands across an opening has no wall behind it to be fixed to: keep tall storage and televisions \
             beside it."
        }
        Caution::Children => {
            "Where children live, keep what they can climb away from windows, and blind cords out of reach (CPSC, WCSC)."
        }
        Caution::LicensedWork => {
            "Wiring, gas, structure and heavy weights on a floor are for a licensed person to judge; keep cords out of \
             the walkways."
        }
        Caution::Wheelchair => {
            "The wheelchair figures are guidance; the person who lives there decides, and local codes hold."
        }
        Caution::RugUnderDoor => {
            "A rug may lie under a door that swings in: see that the leaf clears it and that its edge trips nobody."
        }
        Caution::Boxes => {
            "Each piece is taken as a box, a seat as its outline from the end where that is known, and each point of the \
             way by itself: handles, skirtings, banisters, slopes, the swing of leaves, wrapping and the carriers' hands \
             are not counted. What has less than 3 cm to spare is likely to scrape."
        }
        Caution::MeasureTwice => {
            "Measure both the piece and the way twice, the narrowest place of each, and ask who carries it before you buy."
        }
        Caution::Carriers => {
            "Heavy pieces take two or more people who are used to it: a lift on stairs or over a rail is for trained \
             carriers, and the building may have rules of its own for lifts and stairs."
        }
    }
}
