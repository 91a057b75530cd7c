//! The rules of comfort, each by clipping: what a layout gives of them, and where it may give less.

mod dining;
mod look;
mod screen;
mod seats;
mod walls;

use elbowroom_model::{Brief, Clearance, Rule};
use serde_json::Value;

use super::room::Ground;
use super::stand::Stand;

/// What rounding explains of a rule of comfort, mm.
const ROUNDED: f64 = 1.0;
/// What two sums of the same figures may differ by, mm.
const SAME: f64 = 0.01;

/// Rules that smaller pieces keep too.
const WHEN_SMALLER: [&str; 5] = ["leg_room", "between_seats", "solid_wall", "return_off_wall", "use"];

/// Rules that ask something of one piece, whatever is behind it.
const OF_ONE_PIECE: [&str; 4] = ["solid_wall", "behind_seat", "return_off_wall", "dining_places"];

/// What a layout gives of a rule between two things.
pub(crate) struct Found {
    pub(crate) rule: &'static str,
    /// What is checked first, then what it is checked against.
    pub(crate) between: Vec<String>,
    /// The length that there is, mm; none where the rule is no one length.
    pub(crate) given: Option<f64>,
    /// What is missing, mm.
    pub(crate) short: f64,
}

/// Where a layout may give less than a rule asks for.
pub(crate) struct Eased(Vec<EasedPair>);

struct EasedPair {
    rule: String,
    between: Vec<String>,
    /// So much may be missing, mm.
    short: f64,
}

impl EasedPair {
    fn is(&self, found: &Found) -> bool {
        let named = |name: &String| found.between.contains(name);
        let is_its_piece = found.between.first().is_some_and(|piece| self.between.contains(piece));
        let of_one = OF_ONE_PIECE.contains(&found.rule) && is_its_piece;
        self.rule == found.rule && (of_one || (!self.between.is_empty() && self.between.iter().all(named)))
    }
}

impl Eased {
    /// What an option eases, as far as the layout that was found falls short of it.
    pub(crate) fn as_laid_out(option: &Value, found: &[Found]) -> Self {
        let read = |it: &Value| {
            let names = it["between"].as_array().into_iter().flatten();
            let between = names.filter_map(|name| name.as_str().map(str::to_owned)).collect();
            let mut pair = EasedPair { rule: it["rule"].as_str().unwrap_or_default().to_owned(), between, short: 0.0 };
            pair.short = found.iter().filter(|found| pair.is(found)).map(|found| found.short).fold(0.0, f64::max);
            pair
        };
        Self(option["eased"].as_array().into_iter().flatten().map(read).collect())
    }

    /// What falls shorter than it may.
    pub(crate) fn complaints(&self, found: &[Found]) -> Vec<String> {
        self.shorter_by(found, ROUNDED)
    }

    /// Whether nothing falls shorter than it may, rounding aside or not.
    pub(crate) fn surely_keep(&self, found: &[Found]) -> bool {
        self.shorter_by(found, SAME).is_empty()
    }

    fn shorter_by(&self, found: &[Found], by: f64) -> Vec<String> {
        let may = |found: &&Found| self.0.iter().any(|pair| pair.is(found) && found.short <= pair.short + by);
        let broken = found.iter().filter(|found| found.short > by && !may(found));
        broken.map(|it| format!("comfort {}: {} lacks {:.1}", it.rule, it.between.join(", "), it.short)).collect()
    }
}

/// What is wrong with a layout and with what is told to be eased in it.
pub(crate) fn complaints(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], option: &Value) -> Vec<String> {
    let found = all(brief, ground, stands);
    let eased = Eased::as_laid_out(option, &found);
    let mut wrong = eased.complaints(&found);
    for (pair, it) in eased.0.iter().zip(option["eased"].as_array().into_iter().flatten()) {
        let say = |what: String| format!("eased {} of {}: {what}", pair.rule, pair.between.join(", "));
        if !Rule::all().any(|rule| rule.is_comfort() && rule.key() == pair.rule) {
            wrong.push(say("is no rule of comfort".to_owned()));
        }
        let shortest = found.iter().filter(|found| pair.is(found)).max_by(|a, b| a.short.total_cmp(&b.short));
        let given = shortest.and_then(|found| found.given);
        if let Some(told) = it["given"].as_f64().filter(|told| given.is_none_or(|given| (told - given).abs() > ROUNDED))
        {
            wrong.push(say(format!("gives {given:?}, and {told} is told")));
        }
    }
    wrong
}

/// What a layout gives of every rule in force.
pub(crate) fn all(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<Found> {
    let mut all = seats::leg_room(brief, stands);
    all.extend(seats::front_open(brief, ground, stands));
    all.extend(seats::between(brief, stands));
    all.extend(seats::table_axis(brief, stands));
    all.extend(screen::found(brief, ground, stands));
    all.extend(walls::solid(brief, stands));
    all.extend(walls::openings(brief, stands));
    all.extend(walls::in_use(ground, stands));
    all.extend(dining::places(brief, ground, stands));
    all.extend(walls::behind(brief, ground, stands));
    all.extend(walls::returns(ground, stands));
    all
}

/// What it gives of the rules that smaller pieces keep too.
pub(crate) fn when_smaller(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<Found> {
    all(brief, ground, stands).into_iter().filter(|found| WHEN_SMALLER.contains(&found.rule)).collect()
}

/// The figure of a rule, where it is in force.
fn figure(brief: &Brief, rule: Clearance) -> Option<f64> {
    Some(brief.rules.get(rule)).filter(|figure| *figure > 0.0)
}

/// The seat that a room is laid out about: needed before not, the larger form, the larger at its most, then by name.
pub(super) fn main_seat<'s, 'a>(brief: &Brief, stands: &'s [Stand<'a>]) -> Option<&'s Stand<'a>> {
    use elbowroom_model::PieceKind::{CornerSofa, DayBed, Sofa};
    let form = |kind| match kind {
        CornerSofa => 0,
        Sofa => 1,
        DayBed => 2,
        _ => 3,
    };
    let seats = brief.pieces.iter().filter(|piece| piece.kind.is_seat() && piece.group.is_none());
    let main = seats.min_by(|a, b| {
        (!a.needed, form(a.kind))
            .cmp(&(!b.needed, form(b.kind)))
            .then(b.width.most.total_cmp(&a.width.most))
            .then(b.depth.most.total_cmp(&a.depth.most))
            .then(a.name.cmp(&b.name))
    })?;
    stands.iter().find(|stand| stand.name() == main.name)
}
