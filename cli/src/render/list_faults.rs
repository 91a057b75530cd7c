//! Every fault of a list of pieces, in the order of its lines, each with its remedy once.

use elbowroom_model::listing::Faults;

use crate::text::look::Look;
use crate::text::page::Page;
use crate::text::safe::safe;
use crate::words;

/// All faults of the list `name`, then how many there are. Rows that share a remedy are told under it once.
pub(crate) fn text(name: &str, faults: &Faults, look: Look) -> String {
    let mut page = Page::new(look);
    for (place, fault) in faults.told.iter().enumerate() {
        page.entry(0, &words::list::fault(faults.sheet.as_deref(), fault.place, &fault.message));
        let next = faults.told.get(place + 1);
        if next.is_none_or(|next| next.remedy != fault.remedy) {
            page.faint(4, &fault.remedy);
        }
    }
    if faults.beyond > 0 {
        page.paragraph(0, &words::list::beyond(faults.beyond));
    }
    page.gap();
    page.into_text() + &words::failure::faults(faults.told.len() + faults.beyond, &safe(name))
}
