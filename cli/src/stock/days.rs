//! Days as people write them (ISO 8601, `2026-03-14`; or with points, day first, `14.3.2026`), and as numbers.

use elbowroom_solver::stock::{Away, Days};
use time::format_description::well_known::Iso8601;
use time::{Date, Month};

/// How long a day is as written, characters.
const WRITTEN: usize = 10;

/// The number of a day; `None` where it is none. Weeks and days of the year are not taken, though the standard has them.
pub(crate) fn day(text: &str) -> Option<i32> {
    let text = text.trim();
    let plain = text.len() == WRITTEN && !text.contains('W');
    let date = Date::parse(text, &Iso8601::DATE).ok().filter(|_| plain).or_else(|| with_points(text));
    date.map(Date::to_julian_day)
}

/// `14.3.2026` and `03.05.2026`: who parts a day by points puts the day first and the month second, so there is one reading.
fn with_points(text: &str) -> Option<Date> {
    let parts: Vec<&str> = text.split('.').collect();
    let [day, month, year] = parts.as_slice() else { return None };
    let is_number = |part: &str, most: usize| part.len() <= most && part.bytes().all(|digit| digit.is_ascii_digit());
    if !(is_number(day, 2) && is_number(month, 2) && is_number(year, 4) && year.len() == 4) {
        return None;
    }
    let month = Month::try_from(month.parse::<u8>().ok()?).ok()?;
    Date::from_calendar_date(year.parse().ok()?, month, day.parse().ok()?).ok()
}

/// A day as it is written.
pub(crate) fn written(day: i32) -> String {
    Date::from_julian_day(day).map(|date| date.to_string()).unwrap_or_default()
}

/// `2026-03-01..2026-03-14`, or one day; `None` where it is neither, or runs backward.
pub(crate) fn days(text: &str) -> Option<Days> {
    let (from, to) = text.split_once("..").unwrap_or((text, text));
    let days = Days { from: day(from)?, to: day(to)? };
    (days.from <= days.to).then_some(days)
}

/// Why a text tells no days on which pieces are out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum NotAway<'a> {
    /// This is no span of days.
    NoSpan(&'a str),
    /// By this span more are out than there are, or none.
    WrongCount(&'a str),
}

/// Spans parted by `;` or `|`, each for all `count` pieces, or for so many as stand in brackets after it: `2026-03-01..2026-03-14 (2)`.
///
/// # Errors
/// The span at fault.
pub(crate) fn away(text: &str, count: u32) -> Result<Vec<Away>, NotAway<'_>> {
    let spans = text.split([';', '|']).map(str::trim).filter(|span| !span.is_empty());
    let away = |span| match one_away(span, count) {
        None => Err(NotAway::NoSpan(span)),
        Some(away) if !(1..=count).contains(&away.count) => Err(NotAway::WrongCount(span)),
        Some(away) => Ok(away),
    };
    spans.map(away).collect()
}

fn one_away(span: &str, count: u32) -> Option<Away> {
    match span.strip_suffix(')').and_then(|span| span.split_once('(')) {
        Some((span, count)) => Some(Away { days: days(span)?, count: count.trim().parse().ok()? }),
        None => Some(Away { days: days(span)?, count }),
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_solver::stock::{Away, Days};

    use super::{NotAway, away, day, days, written};

    #[test]
    fn days_are_read_and_written_alike() {
        // 2000-01-01 is Julian day 2 451 545 (P: Explanatory Supplement to the Astronomical Almanac, epoch J2000.0).
        assert_eq!(day("2000-01-01"), Some(2_451_545));
        assert_eq!(written(2_451_545), "2000-01-01");
        assert_eq!(day("2024-03-01").unwrap() - day("2024-02-28").unwrap(), 2, "2024 is a leap year");
        for bad in [
            "",
            "2026-02-29",
            "2026-13-01",
            "14.3.26",
            "14.3.",
            "31.2.2026",
            "3.14.2026",
            "14/3/2026",
            "2026-W10-1",
            "20260314",
            "2026-074",
            "tomorrow",
        ] {
            assert_eq!(day(bad), None, "{bad}");
        }
    }

    #[test]
    fn days_with_points_have_the_day_first() {
        for (pointed, plain) in
            [("3.5.2026", "2026-05-03"), ("03.05.2026", "2026-05-03"), (" 14.3.2026 ", "2026-03-14")]
        {
            assert_eq!(day(pointed), day(plain), "{pointed}");
        }
        assert_eq!(days("3.5.2026..10.5.2026"), days("2026-05-03..2026-05-10"));
    }

    #[test]
    fn spans_run_forward() {
        let first = day("2026-03-01").unwrap();
        assert_eq!(days("2026-03-01..2026-03-04"), Some(Days { from: first, to: first + 3 }));
        assert_eq!(days(" 2026-03-01 "), Some(Days { from: first, to: first }));
        assert_eq!(days("2026-03-04..2026-03-01"), None);
        let one = |days, count| Away { days, count };
        let told = away("2026-03-01; 2026-03-01..2026-03-02 (2)", 5).unwrap();
        assert_eq!(told, [one(Days { from: first, to: first }, 5), one(Days { from: first, to: first + 1 }, 2)]);
        assert_eq!(away("2026-03-01; soon", 1), Err(NotAway::NoSpan("soon")));
        for span in ["2026-03-01 (9)", "2026-03-01 (0)"] {
            assert_eq!(away(span, 1), Err(NotAway::WrongCount(span)));
        }
        assert_eq!(away("", 1), Ok(Vec::new()));
    }
}
