//! View: how much of what is worth facing the seats have before them.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Criterion, View, WallItem};

use super::curve::{mean, through};
use super::setting::{Setting, listed, windows};
use super::sight::{Seen, Target};
use super::{Judgement, obstacles::Whose};

const BASIS: &str = "EN 17037 view out: a sight angle of 14, 28 and 54 degrees is minimum, medium and high (published, read \
                     second-hand); what lies over 60 degrees aside counts half (common practice)";

/// Plan angle to score: none, and the three grades of EN 17037 (published, second-hand).
const GRADES: [(f64, f64); 4] = [(0.0, 0.0), (14.0, 50.0), (28.0, 75.0), (54.0, 100.0)];

/// What of a window must be hidden to be said, share.
const WORTH_SAYING: f64 = 0.03;

/// Score of a plan angle in degrees.
#[must_use]
pub fn grade(angle: f64) -> f64 {
    through(&GRADES, angle)
}

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let liked = Sights::of(setting, View::Liked);
    let avoided = Sights::of(setting, View::Avoided);
    let (score, told) = match (&liked, &avoided) {
        (None, None) => return None,
        (Some(liked), None) => (liked.grade(), liked),
        (None, Some(avoided)) => (100.0 - avoided.grade(), avoided),
        (Some(liked), Some(avoided)) => ((2.0 * liked.grade() + 100.0 - avoided.grade()) / 3.0, liked),
    };
    let mut reason = told.reason(setting);
    if let (Some(_), Some(avoided)) = (&liked, &avoided) {
        reason += &format!("; {} {:.0}", avoided.subject(), avoided.angle);
    }
    let reason = capital(&reason) + ".";
    Some(Judgement::new(Criterion::View, score, (told.angle, "deg"), reason, BASIS))
}

pub(super) fn left_out(brief: &Brief) -> Option<String> {
    let turns = windows(brief).any(|(_, window)| window.view != View::Plain);
    (!turns).then(|| "View is left out: no window is marked liked or avoided (view: liked, view: avoided).".to_owned())
}

/// All windows of one kind of view, from all seat places.
struct Sights<'a> {
    windows: Vec<(&'a WallItem, Target)>,
    /// Mean over the places of the angle that the windows fill together, degrees.
    angle: f64,
    /// Mean of the angle as it counts.
    counted: f64,
    /// Mean share hidden of what lies before the places, and what hides the most of one window.
    hidden: f64,
    hidden_by: Option<(Whose, &'a WallItem)>,
}

impl<'a> Sights<'a> {
    fn of(setting: &Setting<'a>, view: View) -> Option<Self> {
        let wanted = windows(setting.brief()).filter(|(_, window)| window.view == view);
        let windows: Vec<(&WallItem, Target)> =
            wanted.filter_map(|(item, _)| Some((item, Target::of(setting.brief(), item)?))).collect();
        if windows.is_empty() || setting.places.is_empty() {
            return None;
        }
        let mut worst = (0.0, None);
        let sights = setting.places.iter().map(|place| {
            let mut sum = Seen::default();
            for (item, target) in &windows {
                let one = setting.seen_from(place, target);
                let lost = one.counted_unhidden - one.counted;
                if lost > worst.0 {
                    worst = (lost, one.hidden_by.map(|whose| (whose, *item)));
                }
                sum.angle += one.angle;
                sum.counted += one.counted;
                sum.counted_unhidden += one.counted_unhidden;
            }
            sum
        });
        let sights: Vec<Seen> = sights.collect();
        let counted = mean(sights.iter().map(|seen| seen.counted))?;
        let unhidden = mean(sights.iter().map(|seen| seen.counted_unhidden))?;
        let hidden = if unhidden > 0.0 { 1.0 - counted / unhidden } else { 0.0 };
        let angle = mean(sights.iter().map(|seen| seen.angle))?;
        Some(Self { windows, angle, counted, hidden, hidden_by: worst.1 })
    }

    fn grade(&self) -> f64 {
        grade(self.counted)
    }

    /// `the bay fills`.
    fn subject(&self) -> String {
        let fills = if self.windows.len() == 1 { "fills" } else { "fill" };
        format!("{} {fills}", self.names())
    }

    fn names(&self) -> String {
        listed(self.windows.iter().map(|(item, _)| item.name.as_str()))
    }

    fn reason(&self, setting: &Setting) -> String {
        let middle: f64 = self.windows.iter().map(|(_, target)| setting.seen_from_middle(target).angle).sum();
        let seat = setting.main_seat().map_or_else(String::new, |(piece, _)| the(&piece.name));
        let aside = self.aside(setting);
        let mut reason = if self.angle < 0.5 {
            format!("{} before none of the seats", self.lies())
        } else {
            match setting.places.len() {
                1 => format!("from the seat {} {:.0} degrees", self.subject(), self.angle),
                count => format!(
                    "from the {count} seat places {} {:.0} degrees on the mean, {middle:.0} from the middle of {seat}{aside}",
                    self.subject(),
                    self.angle
                ),
            }
        };
        if let Some((whose, item)) = self.hidden_by.filter(|_| self.hidden > WORTH_SAYING) {
            let of = if self.windows.len() == 1 { "it".to_owned() } else { the(&item.name) };
            let whose = whose.words(setting.brief());
            reason += &format!("; {whose} stands before {of} and {:.0} % is hidden", 100.0 * self.hidden);
        }
        reason
    }

    fn lies(&self) -> String {
        format!("{} {}", self.names(), if self.windows.len() == 1 { "lies" } else { "lie" })
    }

    /// How far aside of straight ahead the one window lies, where it is to one side.
    fn aside(&self, setting: &Setting) -> String {
        let [(_, target)] = self.windows.as_slice() else { return String::new() };
        let Some((_, placed)) = setting.main_seat() else { return String::new() };
        let way = target.middle() - super::seat_places::middle_eye(placed);
        let turn = super::sight::angle_between(placed.facing, way);
        let side = if placed.facing.cross(way) > 0.0 { "left" } else { "right" };
        if turn < 30.0 { String::new() } else { format!(", {turn:.0} degrees to the {side}") }
    }
}
