//! The page in the browser, from the outside: who is let in, what is saved, what is sent; and in a real browser.

mod browser;
mod chosen;
mod folder;
mod lan;
mod load;
mod safety;
mod served;
mod shop;
mod started;
mod steps;
mod touched;
mod trial;
