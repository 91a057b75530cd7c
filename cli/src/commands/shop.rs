//! `shop`: which candidates fit, and the best sets of them.

use std::io::Read;

use elbowroom_model::listing::{Asked, UNCOUNTED};
use elbowroom_solver::cautions::cautions;
use elbowroom_solver::shop::{self, CandidateFound, Effort, SetsAsked, ShopFound, Unwatched, Watch};

use super::form;
use crate::args::{RowsForm, ShopArgs};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::process::{listed, source};
use crate::render::shop as page;
use crate::result::shop::ShopResult;
use crate::text::cells::{Cell, file, lines};
use crate::text::json;
use crate::text::workbook::workbook;
use crate::watch::CountBar;
use crate::words::shop::Names;
use crate::{ranked, words};

/// Most candidates of one list: each is solved.
pub(super) const MOST_ROWS: usize = 500;

/// Reads, tries, prints.
pub(super) fn run(
    args: &ShopArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &Outlet<'_>,
) -> Result<Exit, Failure> {
    let scenario = &args.room.scenario;
    let named = [Some(&scenario.file), scenario.table.as_ref(), Some(&args.candidates)];
    if named.into_iter().flatten().filter(|path| source::is_standard_input(path)).count() > 1 {
        return Err(Failure::StandardInputTwice);
    }
    let rows = args.destination_of_rows()?;
    let rows = rows
        .map(|destination| Ok::<_, Failure>((form::form_of_file::<RowsForm>(&destination)?, destination)))
        .transpose()?;
    let (_, brief) = ranked::brief(scenario, stdin)?;
    let asked =
        Asked { decimals: args.decimals.mark(), most_rows: MOST_ROWS, uncounted: UNCOUNTED, ..Asked::default() };
    let list = listed::read(&args.candidates, stdin, &asked)?;
    let sets = args.sets.then(|| SetsAsked { order: args.by.order(), budget: args.budget, top: args.top });
    let bar = stderr.is_terminal().then(CountBar::new);
    let watch: &dyn Watch = bar.as_ref().map_or(&Unwatched, |bar| bar);
    let work = || shop::shop(&brief, &list.listing.pieces, sets.as_ref(), Effort::default(), watch);
    let found = match args.room.threads {
        Some(threads) => rayon::ThreadPoolBuilder::new().num_threads(threads).build()?.install(work),
        None => work(),
    };
    if let Some(bar) = &bar {
        bar.clear();
    }
    let passed_over = &list.listing.passed_over;
    let passed_over = (!passed_over.is_empty()).then(|| words::list::passed_over(&list.name, passed_over));
    let cautions = cautions(&brief).into_iter().map(|one| words::answer::caution(one).to_owned());
    let odd = list.listing.odd.iter().map(|odd| words::list::odd_size(odd, brief.units));
    let notices: Vec<String> = passed_over.into_iter().chain(odd).chain(cautions).collect();
    let names = Names { brief: &brief, listed: &list.listing.pieces, rows: &found.rows };
    let told = page::ShopPage { names, found: &found, notices: &notices, currency: list.listing.currency.as_deref() };
    let text = match (args.json, args.csv) {
        (true, _) => json::text(&ShopResult::of(names, &found, &notices))?,
        (_, true) => lines(&page::candidate_rows(&told)).map_err(Failure::Unwritable)?,
        _ => page::text(&told, args.budget, stdout.look()),
    };
    if let Some((form, destination)) = rows {
        destination.write(&in_form(form, &page::candidate_rows(&told))?, stdout)?;
    }
    stdout.write(&text)?;
    Ok(exit(&found))
}

/// Rows as the bytes of a file.
fn in_form(form: RowsForm, rows: &[Vec<Cell>]) -> Result<Vec<u8>, Failure> {
    let bytes = match form {
        RowsForm::Csv => file(rows).map(String::into_bytes),
        RowsForm::Xlsx => workbook(rows),
    };
    bytes.map_err(Failure::Unwritable)
}

/// Something fits: of sets where they were asked for, else of the candidates.
fn exit(found: &ShopFound) -> Exit {
    let fits = match &found.sets {
        Some(sets) => !sets.sets.is_empty(),
        None => found.candidates.iter().any(CandidateFound::goes),
    };
    if fits { Exit::Done } else { Exit::NothingFits }
}
