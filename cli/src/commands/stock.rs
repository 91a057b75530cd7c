//! `batch --stock`: one stock for many rooms.

use std::fs;
use std::io::Read;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use elbowroom_model::{Fault, PieceId, Unit};
use elbowroom_solver::Limits;
use elbowroom_solver::answer::Answer;
use elbowroom_solver::stock::{Asking, Effort, Staged, StockRoom, assign_by_fit, more, moves};

use super::crew::Crew;
use super::rows::put_rows;
use crate::args::{BatchArgs, FontArgs};
use crate::batch::content::Terms;
use crate::batch::given::Given;
use crate::batch::left::{self, CREW, PICKS, STOCK};
use crate::batch::rooms;
use crate::batch::worker_pool::work;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::process::source;
use crate::process::whole::Whole;
use crate::render::stock as page;
use crate::result::stock::{BookingResult, StockResult};
use crate::stock::bookings::{self, ANY_DAY, Booking, Bookings, Must};
use crate::stock::named::under_names_of_stock;
use crate::stock::solved::solved;
use crate::stock::store::{self, Store};
use crate::stock::told::{BookedRoom, Found, told, written_days};
use crate::text::json;
use crate::watch::RoomsBar;
use crate::words::{crew, list, stock_faults};

/// Work for each step of each part of the program, at most: some seconds each.
const WORK: u64 = 2_000_000_000;
/// Work for all tries of one piece more.
const WORK_ON_MORE: u64 = WORK / 4;
/// Sets that are solved in their rooms where what an option has the sizes for does not fit, or none has a place for a must-have:
/// some tenths of a second each.
const MOST_SETS: usize = 200;
/// How the names of tables of bookings end.
const TABLES: [&str; 4] = ["csv", "tsv", "tab", "xlsx"];

/// A booking with its room as solved.
struct Booked {
    booking: Booking,
    room: Result<Arc<StockRoom>, Vec<Fault>>,
}

/// Assigns the pieces of the stock to the rooms.
pub(super) fn run(
    args: &BatchArgs,
    stock: &Path,
    stdin: &mut (dyn Read + Send),
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    if source::is_standard_input(stock) && source::is_standard_input(&args.rooms) {
        return Err(Failure::StandardInputTwice);
    }
    let typeface = FontArgs { font: args.font.clone() }.typeface()?;
    let store = store::read(stock, stdin)?;
    let table = if is_table(&args.rooms) { Some(bookings::read(&args.rooms)?) } else { None };
    let unread = table.as_ref().map_or_else(Vec::new, |table| table.passed_over.clone());
    let booked = booked(args, table, &store, stdin, stderr)?;
    let unit = args.units.unwrap_or_else(|| units(&booked));
    let (mut told, plans) = assigned(&booked, &store, unit);
    told.notices = notices(&store, unit);
    told.notices.extend((!unread.is_empty()).then(|| list::passed_over(&args.rooms.display().to_string(), &unread)));
    stdout.write(&page::text(&told, unit, stdout.look()))?;
    if let Some(folder) = &args.output {
        write(folder, &told, unit, args.xlsx)?;
        let plans: Vec<Option<&Answer>> = plans.iter().map(Option::as_ref).collect();
        let crew = Crew { told: &told, plans: &plans, unit, typeface: &typeface, xlsx: args.xlsx };
        let days = super::crew::write(folder, &crew, stderr)?;
        if days > 0 {
            let folder = folder.join(CREW).display().to_string();
            stdout.write(&page::paragraph(&crew::files_in(&folder, days), stdout.look()))?;
        }
    }
    Ok(Exit::Done)
}

/// What must be told of the store's list.
fn notices(store: &Store, unit: Unit) -> Vec<String> {
    let columns = &store.passed_over;
    let passed_over = (!columns.is_empty()).then(|| list::passed_over(&store.name, columns));
    passed_over.into_iter().chain(store.odd.iter().map(|odd| list::odd_size(odd, unit))).collect()
}

/// The unit that the whole is told in: that of the first room whose file is sound.
fn units(booked: &[Booked]) -> Unit {
    let first = booked.iter().find_map(|booked| booked.room.as_ref().ok());
    first.map(|room| room.answer.brief.units).unwrap_or_default()
}

/// Whether the rooms are named by a table of bookings.
fn is_table(path: &Path) -> bool {
    path.extension().is_some_and(|it| TABLES.contains(&it.to_string_lossy().to_lowercase().as_str()))
}

/// The bookings of the `table`, or of a folder or list of rooms, each room solved once.
fn booked(
    args: &BatchArgs,
    table: Option<Bookings>,
    store: &Store,
    stdin: &mut (dyn Read + Send),
    stderr: &Outlet<'_>,
) -> Result<Vec<Booked>, Failure> {
    let limits = Limits { shown: 0, by: args.by, ..Limits::default() };
    let terms = Terms::read(args.table.as_deref(), limits, args.units)?;
    let is_table = table.is_some();
    let table = table.map_or_else(Vec::new, |table| table.rows);
    let mut paths: Vec<PathBuf> = table.iter().map(|booking| booking.path.clone()).collect();
    paths.sort();
    paths.dedup();
    let rooms = if is_table { rooms::of_paths(paths.clone()) } else { rooms::rooms(&args.rooms, stdin)? };
    if rooms.count == Some(0) {
        return Err(Failure::NoRooms { name: args.rooms.display().to_string() });
    }
    if let Some(folder) = &args.output {
        left::see(&left::of_stock(folder, args.xlsx), rooms.inputs(args), args.force)?;
    }
    let bar = RoomsBar::new(rooms.count, stderr);
    let mut found = Vec::new();
    let solve = |given: Given| {
        let room =
            given.scenario().map_err(|fault| vec![fault.clone()]).and_then(|text| solved(text, &terms, &store.owned));
        (given.source, room.map(Arc::new))
    };
    work(args.threads(), rooms.given, solve, |one| {
        found.push(one);
        bar.one_more();
        Ok(())
    })?;
    bar.clear();
    if is_table {
        let of = |booking: Booking| {
            let place = paths.binary_search(&booking.path).ok();
            let room = place.and_then(|place| found.get(place)).map_or(Err(Vec::new()), |(_, room)| room.clone());
            Booked { booking, room }
        };
        return Ok(table.into_iter().map(of).collect());
    }
    let at_once = |(source, room): (Option<String>, _)| {
        let source = crate::words::batch::called(source.as_deref());
        let (client, address) = (String::new(), String::new());
        let booking = Booking {
            line: 0,
            source,
            path: PathBuf::new(),
            days: None,
            priority: 1,
            must: Must::Needed,
            client,
            address,
        };
        Booked { booking, room }
    };
    Ok(found.into_iter().map(at_once).collect())
}

/// Who gets what, and what one more piece would bring.
fn assigned(booked: &[Booked], store: &Store, unit: Unit) -> (StockResult, Vec<Option<Answer>>) {
    let askings: Vec<Result<Asking, Vec<Fault>>> = booked.iter().map(asking).collect();
    let rooms: Vec<Asking> = askings.iter().filter_map(|asking| asking.as_ref().ok().cloned()).collect();
    let limits = Limits { shown: 0, ..Limits::default() };
    let Staged { rooms, found: assignment, plans } =
        assign_by_fit(&rooms, &store.owned, &limits, Effort { work: WORK, sets: MOST_SETS });
    let one_more = more(&rooms, &store.owned, &assignment, WORK_ON_MORE);
    let has_days = booked.iter().any(|booked| booked.booking.days.is_some());
    let moves = if has_days { moves(&rooms, store.owned.len(), &assignment) } else { Vec::new() };
    let found = Found { assignment, plans, moves, one_more };
    let mut staged = rooms.iter();
    let bookings = booked.iter().zip(&askings).map(|(booked, asking)| {
        let (from, to) = written_days(booked.booking.days);
        let room = BookingResult {
            source: booked.booking.source.clone(),
            name: booked.room.as_ref().ok().map(|room| room.answer.brief.room.name.clone()),
            days: booked.booking.days,
            from,
            to,
            priority: booked.booking.priority,
            client: booked.booking.client.clone(),
            address: booked.booking.address.clone(),
            faults: asking.as_ref().err().cloned().unwrap_or_default(),
            arrangement: None,
            not_stageable: None,
            asked: Vec::new(),
        };
        BookedRoom { room, asking: asking.as_ref().ok().and_then(|_| staged.next()) }
    });
    let told = told(bookings.collect(), store, &found, unit);
    // A booking that is at fault has no plan.
    let each = rooms.iter().zip(&found.assignment.rooms).zip(found.plans);
    let mut plans = each.map(|((asking, furnished), plan)| Some(under_names_of_stock(plan?, asking, furnished, store)));
    let plans = askings.iter().map(|asking| asking.as_ref().ok().and_then(|_| plans.next().flatten())).collect();
    (told, plans)
}

/// What the solver is asked for a booking.
fn asking(booked: &Booked) -> Result<Asking, Vec<Fault>> {
    let room = booked.room.clone()?;
    let brief = &room.answer.asked;
    let must = match &booked.booking.must {
        Must::Needed => brief.pieces().filter(|(_, piece)| piece.needed).map(|(id, _)| id).collect(),
        Must::All => brief.piece_ids().collect(),
        Must::Nothing => Vec::new(),
        Must::Named(names) => {
            let unknown = names.iter().filter(|name| brief.pieces_called(name).is_empty());
            let unknown: Vec<Fault> = unknown.map(|name| stock_faults::no_piece(name, brief)).collect();
            if !unknown.is_empty() {
                return Err(unknown);
            }
            let mut called: Vec<PieceId> = names.iter().flat_map(|name| brief.pieces_called(name)).collect();
            called.sort_unstable();
            called.dedup();
            called
        }
    };
    let Booking { days, priority, .. } = booked.booking;
    Ok(Asking { room, days: days.unwrap_or(ANY_DAY), priority, must })
}

/// The pick list as rows, and everything as JSON.
fn write(folder: &Path, told: &StockResult, unit: Unit, xlsx: bool) -> Result<(), Failure> {
    fs::create_dir_all(folder).map_err(|why| Failure::Uncreatable { name: folder.display().to_string(), why })?;
    put_rows(&folder.join(PICKS), &page::rows(told, unit), xlsx)?;
    let mut file = Whole::start(folder.join(STOCK))?;
    file.add(&json::text(told)?)?;
    file.put()
}
