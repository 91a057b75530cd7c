//! Marks counted over many rooms, as a table to read and as shares to hold to.

use std::fmt::Write as _;

use super::judged::{Chairs, First, Judged};
use super::rooms::Group;
use crate::support::judge::Mark;

/// So many of so many.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(super) struct Share {
    pub(super) some: usize,
    pub(super) all: usize,
}

impl Share {
    fn of<'a>(firsts: impl IntoIterator<Item = &'a First>, holds: impl Fn(&First) -> bool) -> Self {
        let mut share = Self::default();
        for first in firsts {
            share.all += 1;
            share.some += usize::from(holds(first));
        }
        share
    }

    /// In a hundred; `None` of none.
    pub(super) fn percent(self) -> Option<f64> {
        (self.all > 0).then(|| 100.0 * self.some as f64 / self.all as f64)
    }

    fn told(self) -> String {
        let percent = self.percent().map_or_else(|| "-".to_owned(), |percent| format!("{percent:.0} %"));
        format!("{}/{} {percent:>5}", self.some, self.all)
    }
}

/// What came of many scenarios.
pub(super) struct Tally<'a>(pub(super) &'a [Judged]);

impl<'a> Tally<'a> {
    fn firsts(&self, of: impl Fn(Group) -> bool) -> Vec<&'a First> {
        self.0.iter().filter(|judged| of(judged.group)).filter_map(|judged| judged.first.as_ref()).collect()
    }

    /// First options odd in nothing.
    pub(super) fn clean(&self, of: impl Fn(Group) -> bool) -> Share {
        Share::of(self.firsts(of), First::is_clean)
    }

    /// The same where nothing is eased.
    pub(super) fn clean_uneased(&self, of: impl Fn(Group) -> bool) -> Share {
        Share::of(self.firsts(of).into_iter().filter(|first| !first.eased), First::is_clean)
    }

    /// First options with a mark.
    pub(super) fn with(&self, mark: Mark) -> Share {
        Share::of(self.firsts(|_| true), |first| first.has(mark))
    }

    /// Optional armchairs that stand.
    pub(super) fn chairs(&self, of: impl Fn(Group) -> bool) -> Share {
        let chairs = self.firsts(of).into_iter().map(|first| first.chairs);
        let sum = |sum: Chairs, one: Chairs| Chairs { stand: sum.stand + one.stand, asked: sum.asked + one.asked };
        let Chairs { stand, asked } = chairs.fold(Chairs::default(), sum);
        Share { some: stand, all: asked }
    }

    /// Plans proven, of those of which the result says.
    pub(super) fn proven(&self, of: impl Fn(Group) -> bool) -> Share {
        let firsts = self.firsts(of).into_iter().filter(|first| first.proven.is_some());
        Share::of(firsts, |first| first.proven == Some(true))
    }

    /// Scenarios in which something fits.
    fn fitting(&self, of: impl Fn(Group) -> bool) -> Share {
        let judged: Vec<_> = self.0.iter().filter(|judged| of(judged.group)).collect();
        Share { some: judged.iter().filter(|judged| judged.first.is_some()).count(), all: judged.len() }
    }

    /// Groups, then marks with their rooms, then each room that is not clean.
    pub(super) fn table(&self) -> String {
        let mut text = String::new();
        let heads = ["something fits", "odd in nothing", "where not eased", "armchairs", "plans proven"];
        let _ = writeln!(text, "{:<18}{}", "", heads.map(|head| format!("{head:>17}")).concat());
        for group in Group::ALL {
            self.row(&mut text, group.words(), |other| other == group);
        }
        self.row(&mut text, "all", |_| true);
        let _ = writeln!(text);
        for mark in Mark::ALL {
            self.mark(&mut text, mark);
        }
        let _ = writeln!(text);
        for judged in self.0 {
            let _ = writeln!(text, "{}", line(judged));
        }
        text
    }

    fn row(&self, text: &mut String, name: &str, of: impl Fn(Group) -> bool + Copy) {
        let shares = [self.fitting(of), self.clean(of), self.clean_uneased(of), self.chairs(of), self.proven(of)];
        let _ = writeln!(text, "{name:<18}{}", shares.map(|share| format!("{:>17}", share.told())).concat());
    }

    /// A mark with its share, by group how often, and the rooms.
    fn mark(&self, text: &mut String, mark: Mark) {
        let met: Vec<&Judged> =
            self.0.iter().filter(|judged| judged.first.as_ref().is_some_and(|first| first.has(mark))).collect();
        let counts = Group::ALL.map(|group| met.iter().filter(|judged| judged.group == group).count());
        let [real, demo, own, drawn] = counts;
        let names: Vec<&str> = met.iter().map(|judged| judged.name.as_str()).collect();
        let share = self.with(mark).told();
        let mark = format!("{mark:?}");
        let _ = writeln!(
            text,
            "{mark:<15}{share:>14}  real {real}, demo {demo} + {own}, drawn {drawn}: {}",
            names.join(", ")
        );
    }
}

/// What came of one scenario.
fn line(judged: &Judged) -> String {
    let Some(first) = &judged.first else { return format!("{:<28} nothing fits", judged.name) };
    let odd = first.odd.iter().map(|odd| format!("{:?} {} ({:.0})", odd.mark, odd.who.join(" + "), odd.figure));
    let odd = if first.is_clean() { "odd in nothing".to_owned() } else { odd.collect::<Vec<_>>().join("; ") };
    let eased = if first.eased { ", eased" } else { "" };
    let chairs = format!("{}/{} chairs", first.chairs.stand, first.chairs.asked);
    format!("{:<28} {chairs}{eased}: {odd}", judged.name)
}
