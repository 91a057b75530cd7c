//! What came of one room, as one line of JSON: `content`, `units` (that its sentences tell lengths in), `faults`, `result`, and
//! `source` before them once it is told.
//!
//! Nothing on the line differs from run to run: `seconds` is null, and the same content gives the same bytes. Where the
//! room came from is kept apart, so that two rooms of one content are solved once.

use std::panic::{AssertUnwindSafe, catch_unwind};

use elbowroom_model::{Fault, Unit, scenario};
use elbowroom_solver::Unwatched;
use elbowroom_solver::answer::Answer;
use serde::Serialize;

use super::content::{Content, Terms};
use crate::process::failure::Failure;
use crate::render::batch;
use crate::render::report::{self, ReportPage};
use crate::result::rank::RankResult;
use crate::text::json;
use crate::words::batch as words;

/// What came of one room.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Record {
    /// What it came of.
    pub content: Content,
    /// The line, without where the room came from and without its end.
    pub line: String,
    /// A small plan of the first option.
    pub plan: Option<String>,
    /// The report, where it was asked for.
    pub report: Option<String>,
}

#[derive(Serialize)]
struct Line<'a> {
    content: String,
    units: Option<Unit>,
    faults: &'a [Fault],
    result: Option<RankResult<'a>>,
}

/// Solves the room of this scenario. Whatever is wrong with it stands in the record. `report` names the file in a report, where
/// one is wanted.
pub(crate) fn record(text: Result<&str, &Fault>, terms: &Terms, report: Option<&str>) -> Result<Record, Failure> {
    let content = content(text, terms);
    let result = text.map_err(|fault| vec![fault.clone()]).and_then(|text| solved(text, terms));
    let faults = result.as_ref().err().map_or(&[][..], Vec::as_slice);
    let answer = result.as_ref().ok();
    let units = answer.map(|answer| answer.brief.units);
    let line = json::line(&Line { content: content.to_string(), units, faults, result: answer.map(RankResult::of) })?;
    let plan = answer.and_then(|answer| Some(batch::plan(answer, answer.options.first()?)));
    let page = |(answer, file)| report::page(&ReportPage { answer, limits: terms.limits, file });
    let report = answer.zip(report).map(page);
    Ok(Record { content, line, plan, report })
}

/// What a room's record will be kept under.
pub(crate) fn content(text: Result<&str, &Fault>, terms: &Terms) -> Content {
    // A room without a text has none that could be the same the next time: its reason stands for it, after a byte
    // that no text has.
    text.map_or_else(|fault| terms.content(&format!("\0{}", fault.message)), |text| terms.content(text))
}

/// The result of a scenario, or every fault of it.
pub(crate) fn solved(text: &str, terms: &Terms) -> Result<Answer, Vec<Fault>> {
    let solve = || {
        let mut brief = scenario::read(text, terms.table.as_deref())?;
        brief.units = terms.units.unwrap_or(brief.units);
        let mut answer = elbowroom_solver::rank(&brief, &terms.limits, &Unwatched);
        // JSON has no word for it but null, which is what is to stand there.
        answer.work.seconds = f64::NAN;
        Ok(answer)
    };
    guarded(solve).unwrap_or_else(|| Err(vec![words::broke_off()]))
}

/// What `work` gives; `None` where the program itself goes wrong in it, which must not stop the other rooms.
pub(crate) fn guarded<T>(work: impl FnOnce() -> T) -> Option<T> {
    // What the work had in hand is lost with it, so nothing half-done is seen.
    catch_unwind(AssertUnwindSafe(work)).ok()
}

/// The whole line: where the room came from, then the record's own line.
pub(crate) fn told_under(source: Option<&str>, line: &str) -> Result<String, Failure> {
    let source = json::line(&source)?;
    Ok(format!("{{\"source\":{source},{}", line.strip_prefix('{').unwrap_or(line)))
}

/// The record's own line within a whole line, and its content; `None` where this is none.
pub(crate) fn untold(whole: &str) -> Option<(Content, &str)> {
    const SOURCE: &str = "{\"source\":";
    const CONTENT: &str = "\"content\":\"";
    // Within a text every quote has a backslash before it, so this is the first key after the source.
    let start = if whole.starts_with(SOURCE) { whole.find(&format!(",{CONTENT}"))? } else { 0 };
    let line = whole.get(start + 1..)?;
    let name = line.strip_prefix(CONTENT)?.get(..super::content::DIGITS)?;
    serde_json::from_str::<serde::de::IgnoredAny>(whole).ok()?;
    Some((Content::of_name(name)?, line))
}

#[cfg(test)]
mod tests {
    use elbowroom_solver::Limits;

    use super::{guarded, record, told_under, untold};
    use crate::batch::content::Terms;

    #[test]
    fn a_whole_line_gives_its_record_back_whatever_the_source() {
        let record = record(Ok("units: cn"), &Terms::new(Limits::default(), None, None), None).unwrap();
        for source in
            [None, Some("a.yaml"), Some("\",\"content\":\"x"), Some("../\u{1b}[2J\u{202e}\\\",\"content\":\"")]
        {
            let whole = told_under(source, &record.line).unwrap();
            let (content, line) = untold(&whole).unwrap();
            assert_eq!((content, format!("{{{line}")), (record.content, record.line.clone()), "{source:?}");
            let value: serde_json::Value = serde_json::from_str(&whole).unwrap();
            assert_eq!(value["source"].as_str(), source);
            assert!(!whole.contains(char::is_control), "{whole:?}");
            assert!(untold(&whole[..whole.len() - 1]).is_none(), "half a line");
        }
        assert_eq!(untold(&record.line).map(|(content, _)| content), Some(record.content));
    }

    #[test]
    fn a_room_that_breaks_the_program_breaks_itself_alone() {
        assert_eq!(guarded(|| 1), Some(1));
        assert_eq!(guarded(|| -> i32 { panic!("on purpose") }), None);
    }
}
