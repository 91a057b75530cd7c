//! View: how much of what is worth facing the seats have before them.
//!
//! Rests on the view out of EN 17037: the plan angle that a window fills before the eye, in three grades (read second-hand).

use elbowroom_model::{Brief, Hand, ItemId, PieceId, View as Marked};

use super::criteria_context::{CriteriaContext, Group};
use super::curve::Curve;
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::obstacles::Whose;
use super::on_wall::{Outlook, windows};
use super::one_or_more::{OneOrBoth, OneOrMore};
use super::seat_places::{SeatPlace, middle_eye};
use super::sight::{Seen, angle_between};
use super::yardstick::Yardstick;

/// Plan angle to score: none, and the three grades of EN 17037 (published, second-hand).
const GRADES: Curve = Curve(&[(0.0, 0.0), (14.0, 50.0), (28.0, 75.0), (54.0, 100.0)]);

/// What the liked windows count against the avoided ones (ours, no source).
const LIKED: f64 = 2.0;
const AVOIDED: f64 = 1.0;

/// What of a window must be hidden to be worth saying, share (ours, no source).
const WORTH_SAYING: f64 = 0.03;

/// A window that lies less than this aside of straight ahead is ahead, degrees (ours, no source).
const AHEAD: f64 = 30.0;

/// Score of a plan angle in degrees.
#[must_use]
pub fn grade(angle: f64) -> f64 {
    GRADES.at(angle)
}

/// What view is made of: the liked windows, or the avoided ones where none is liked.
#[derive(Debug, Clone, PartialEq)]
pub struct ViewFinding {
    /// The windows.
    pub windows: Vec<ItemId>,
    /// Mean over the seat places of the plan angle that they fill together, degrees.
    pub angle: f64,
    /// Seat places.
    pub places: usize,
    /// The seat whose middle they are looked at from.
    pub seat: PieceId,
    /// Plan angle that they fill from there, degrees.
    pub from_middle: f64,
    /// Where the one window lies from there; `None` for several, and straight ahead.
    pub aside: Option<Aside>,
    /// What stands before them; `None` where hardly anything is hidden.
    pub hidden: Option<Hidden>,
    /// The avoided windows beside liked ones.
    pub avoided: Option<AvoidedFinding>,
}

/// Which way one turns to a window.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Aside {
    /// From straight ahead, degrees.
    pub degrees: f64,
    /// To the sitter's left or right.
    pub side: Hand,
}

/// What is hidden of some windows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hidden {
    /// What hides the most.
    pub by: Whose,
    /// Of which window.
    pub window: ItemId,
    /// Share of all the windows that is hidden, 0 to 1.
    pub share: f64,
}

/// Avoided windows beside liked ones.
#[derive(Debug, Clone, PartialEq)]
pub struct AvoidedFinding {
    /// The windows.
    pub windows: Vec<ItemId>,
    /// Mean over the seat places of the plan angle that they fill together, degrees.
    pub angle: f64,
}

/// The yardstick. Where no seat stands nobody has the view, nor is anybody spared what is avoided.
pub(super) struct View;

/// The liked windows, the avoided ones, or both.
type MarkedWindows<'a> = OneOrBoth<OneOrMore<Outlook<'a>>, OneOrMore<Outlook<'a>>>;

impl Yardstick for View {
    type Subject<'a> = MarkedWindows<'a>;
    type Finding = ViewFinding;

    fn subject(brief: &Brief) -> Result<Self::Subject<'_>, Missing> {
        let marked = |view| {
            OneOrMore::of(windows(brief).filter(move |(_, window)| window.view == view).map(|(outlook, _)| outlook))
        };
        OneOrBoth::of(marked(Marked::Liked), marked(Marked::Avoided)).ok_or(Missing::MarkedWindow)
    }

    fn judge<'a>(context: &CriteriaContext<'a>, marked: &Self::Subject<'a>) -> Judged<Self::Finding> {
        let Some(group) = &context.group else { return Judged::absent(Absent::Seats) };
        let spared = |avoided: &Sights| 100.0 - avoided.grade();
        let (score, finding) = match marked {
            OneOrBoth::One(liked) => {
                let liked = Sights::of(context, group, liked);
                (liked.grade(), liked.finding(context, group))
            }
            OneOrBoth::Other(avoided) => {
                let avoided = Sights::of(context, group, avoided);
                (spared(&avoided), avoided.finding(context, group))
            }
            OneOrBoth::Both(liked, avoided) => {
                let (liked, avoided) = (Sights::of(context, group, liked), Sights::of(context, group, avoided));
                let score = (LIKED * liked.grade() + AVOIDED * spared(&avoided)) / (LIKED + AVOIDED);
                let beside = AvoidedFinding { windows: avoided.ids(), angle: avoided.angle };
                (score, ViewFinding { avoided: Some(beside), ..liked.finding(context, group) })
            }
        };
        let angle = finding.angle;
        Judged::new(score, angle, FigureUnit::Degrees, finding)
    }
}

/// All windows of one mark, from all seat places.
struct Sights<'w, 'a> {
    windows: &'w OneOrMore<Outlook<'a>>,
    /// Mean over the places of the angle that the windows fill together, degrees.
    angle: f64,
    /// Mean of the angle as it counts.
    counted: f64,
    hidden: Option<Hidden>,
}

impl<'w, 'a> Sights<'w, 'a> {
    fn of(context: &CriteriaContext<'a>, group: &Group, windows: &'w OneOrMore<Outlook<'a>>) -> Self {
        let sights = group.places.map(|place| Sight::of(context, place, windows));
        let (counted, unhidden) =
            (sights.mean(|sight| sight.sum.counted), sights.mean(|sight| sight.sum.counted_unhidden));
        let share = if unhidden > 0.0 { 1.0 - counted / unhidden } else { 0.0 };
        let worst = sights.iter().filter_map(|sight| sight.most_hidden).reduce(Loss::larger);
        let hidden = worst.filter(|_| share > WORTH_SAYING);
        let hidden = hidden.and_then(|worst| Some(Hidden { by: worst.by?, window: worst.window, share }));
        Self { windows, angle: sights.mean(|sight| sight.sum.angle), counted, hidden }
    }

    fn grade(&self) -> f64 {
        grade(self.counted)
    }

    fn ids(&self) -> Vec<ItemId> {
        self.windows.iter().map(|window| window.on_wall.id).collect()
    }

    fn finding(&self, context: &CriteriaContext, group: &Group) -> ViewFinding {
        let from_middle = |window: &Outlook| context.seen_from_middle(group.main, &window.target).angle;
        ViewFinding {
            windows: self.ids(),
            angle: self.angle,
            places: group.places.count(),
            seat: group.main.piece,
            from_middle: self.windows.iter().map(from_middle).sum(),
            aside: self.aside(group),
            hidden: self.hidden,
            avoided: None,
        }
    }

    /// How far aside of straight ahead the one window lies, where it is to one side.
    fn aside(&self, group: &Group) -> Option<Aside> {
        let way = self.windows.first().target.middle() - middle_eye(group.main);
        let degrees = angle_between(group.main.facing, way);
        let side = if group.main.facing.cross(way) > 0.0 { Hand::Left } else { Hand::Right };
        (self.windows.count() == 1 && degrees >= AHEAD).then_some(Aside { degrees, side })
    }
}

/// All the windows from one place.
struct Sight {
    sum: Seen,
    most_hidden: Option<Loss>,
}

/// What a place loses of a window to what hides it.
#[derive(Clone, Copy)]
struct Loss {
    window: ItemId,
    /// As it counts, degrees.
    angle: f64,
    by: Option<Whose>,
}

impl Loss {
    fn larger(self, next: Self) -> Self {
        if next.angle > self.angle { next } else { self }
    }
}

impl Sight {
    fn of(context: &CriteriaContext, place: &SeatPlace, windows: &OneOrMore<Outlook>) -> Self {
        let mut all = Self { sum: Seen::default(), most_hidden: None };
        for Outlook { on_wall, target } in windows.iter() {
            let one = context.seen_from(place, target);
            all.sum.angle += one.angle;
            all.sum.counted += one.counted;
            all.sum.counted_unhidden += one.counted_unhidden;
            let loss = Loss { window: on_wall.id, angle: one.counted_unhidden - one.counted, by: one.hidden_by };
            if loss.angle > 0.0 {
                all.most_hidden = Some(all.most_hidden.map_or(loss, |worst| worst.larger(loss)));
            }
        }
        all
    }
}
