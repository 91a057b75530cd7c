//! A shop's list: where it is dropped, and what is told of it.

use maud::{Markup, html};

use crate::words::page::shop as words;

/// Most bytes of a list that the page takes: those of some hundred thousand rows, of which far fewer are tried.
pub(in crate::page) const LARGEST_LIST: usize = 8 << 20;

/// Where a list is dropped or chosen.
pub(super) fn put() -> Markup {
    html! {
        section id="shop" aria-labelledby="h-shop" data-most=(LARGEST_LIST) {
            h2 id="h-shop" { (words::HEADING) }
            p.soft id="shop-about" { (words::ABOUT) }
            div.drop id="shop-drop" {
                label for="shop-list" { (words::CHOOSE) }
                input type="file" id="shop-list" accept=".csv,.xlsx,.ndjson" aria-describedby="shop-about";
            }
            label.sets { input type="checkbox" id="shop-sets" checked; span { (words::SETS) } }
            p id="shop-state" role="status" data-busy=(words::BUSY) data-done=(words::DONE) data-amiss=(words::AMISS)
                data-large=(words::TOO_LARGE) data-old=(words::OLD) data-gone=(crate::words::page::GONE) {}
            button type="button" id="shop-again" hidden { (words::AGAIN) }
            div id="shop-told" {}
        }
    }
}

/// What fits of a list, as the command line tells it.
pub(in crate::page) fn shopped(called: &str, told: &str) -> Markup {
    html! {
        h3 { (words::of(called)) }
        pre.told-list role="region" tabindex="0" aria-label=(words::of(called)) { (told) }
    }
}

/// What keeps a list from being read, as the command line tells it: each fault with its line.
pub(in crate::page) fn no_list(why: &str) -> Markup {
    html! { pre.told-list.list-faults role="region" tabindex="0" aria-label=(words::FAULTS) { (why) } }
}
