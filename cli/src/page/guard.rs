//! Who may ask, and what: a browser that shows a token, that asks this machine by its own name, from the page itself.
//!
//! A page of the web that has its own name point to this machine is told apart by the host that it asks for; one that posts a
//! form is, by its origin; both lack the cookie, which browsers send to this page alone.

use std::net::Ipv4Addr;

use axum::http::header::{HOST, ORIGIN};
use axum::http::{HeaderMap, Method};
use elbowroom_model::Unit;

use super::cookies::cookies;
use super::token::Token;

/// Where the link leads, before its token.
pub(super) const ENTER: &str = "/enter/";

/// What somebody may do who is let in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Right {
    /// Look at options and keep sheets.
    Look,
    /// All of it.
    Change,
}

/// What is let in.
#[derive(Debug, Clone)]
pub(super) struct Guard {
    token: Token,
    port: u16,
    lan: Option<Lan>,
}

/// What is let in from the local network.
#[derive(Debug, Clone)]
pub(super) struct Lan {
    /// This machine's address there.
    pub(super) address: Ipv4Addr,
    /// Who shows it may look.
    pub(super) looks: Token,
}

impl Guard {
    /// Of a page on this port, and on the local network where it listens there too.
    pub(super) const fn new(token: Token, port: u16, lan: Option<Lan>) -> Self {
        Self { token, port, lan }
    }

    /// The link that lets a browser of this machine in.
    pub(super) fn link(&self) -> String {
        self.link_to("127.0.0.1", &self.token)
    }

    /// The links for the local network: to change, and to look.
    pub(super) fn links_of_lan(&self) -> Option<[String; 2]> {
        let lan = self.lan.as_ref()?;
        Some([&self.token, &lan.looks].map(|token| self.link_to(&lan.address.to_string(), token)))
    }

    fn link_to(&self, host: &str, token: &Token) -> String {
        format!("http://{host}:{}{ENTER}{}", self.port, token.told())
    }

    /// The cookie that the link of this token leaves; nothing where it is none.
    pub(super) fn cookie(&self, shown: &str) -> Option<String> {
        self.right_of(shown)?;
        Some(format!("{}={shown}; Path=/; HttpOnly; SameSite=Strict", self.cookie_name()))
    }

    /// What a token gives leave to; nothing where it is none.
    fn right_of(&self, shown: &str) -> Option<Right> {
        let looks = self.lan.as_ref().is_some_and(|lan| lan.looks.is(shown));
        match (self.token.is(shown), looks) {
            (true, _) => Some(Right::Change),
            (false, true) => Some(Right::Look),
            (false, false) => None,
        }
    }

    /// What whoever asks may do; nothing where no token is shown.
    pub(super) fn right(&self, headers: &HeaderMap) -> Option<Right> {
        cookies(headers, &self.cookie_name()).find_map(|token| self.right_of(token))
    }

    /// The unit that a browser has the page told in; the file's own where none is chosen.
    pub(super) fn units(&self, headers: &HeaderMap) -> Option<Unit> {
        cookies(headers, &format!("elbowroom-units-{}", self.port)).find_map(Unit::of)
    }

    /// Ports share cookies, so that the name tells them apart.
    fn cookie_name(&self) -> String {
        format!("elbowroom-{}", self.port)
    }

    /// Whether the host that is asked for is this page, and not a name that leads to it.
    pub(super) fn is_host(&self, headers: &HeaderMap) -> bool {
        let mut hosts = headers.get_all(HOST).iter();
        let host = hosts.next().and_then(|host| host.to_str().ok());
        hosts.next().is_none() && host.is_some_and(|host| self.hosts().any(|own| host.eq_ignore_ascii_case(&own)))
    }

    /// Whether it is the page itself that asks. What changes something must say so.
    pub(super) fn is_from_page(&self, method: &Method, headers: &HeaderMap) -> bool {
        let fetched = headers.get("sec-fetch-site").and_then(|site| site.to_str().ok());
        if fetched.is_some_and(|site| !matches!(site, "same-origin" | "none")) {
            return false;
        }
        match headers.get(ORIGIN).map(|origin| origin.to_str().unwrap_or_default()) {
            None => only_looks(method),
            Some(origin) => self.hosts().any(|own| origin == format!("http://{own}")),
        }
    }

    fn hosts(&self) -> impl Iterator<Item = String> {
        let lan = self.lan.as_ref().map(|lan| lan.address.to_string());
        let own = ["127.0.0.1", "localhost"].map(str::to_owned);
        own.into_iter().chain(lan).map(|host| format!("{host}:{}", self.port))
    }
}

/// Whether a request by this method changes nothing.
pub(super) fn only_looks(method: &Method) -> bool {
    *method == Method::GET || *method == Method::HEAD
}

#[cfg(test)]
mod tests {
    use axum::http::{HeaderMap, HeaderValue, Method};

    use super::{Guard, Lan, Right};
    use crate::page::token::Token;

    fn headers(each: &[(&'static str, &str)]) -> HeaderMap {
        let mut headers = HeaderMap::new();
        for (name, value) in each {
            headers.append(*name, HeaderValue::from_str(value).unwrap());
        }
        headers
    }

    #[test]
    fn only_this_page_by_its_own_name_is_let_in() {
        let guard = Guard::new(Token::new().unwrap(), 4711, None);
        for (host, right) in [
            ("127.0.0.1:4711", true),
            ("localhost:4711", true),
            ("127.0.0.1:4712", false),
            ("127.0.0.1", false),
            ("lodewater.example:4711", false),
            ("127.0.0.1:4711.lodewater.example", false),
        ] {
            assert_eq!(guard.is_host(&headers(&[("host", host)])), right, "{host}");
        }
        assert!(!guard.is_host(&headers(&[])));
        assert!(!guard.is_host(&headers(&[("host", "127.0.0.1:4711"), ("host", "lodewater.example")])));
    }

    #[test]
    fn what_changes_something_must_come_from_the_page() {
        let guard = Guard::new(Token::new().unwrap(), 4711, None);
        let own = ("origin", "http://127.0.0.1:4711");
        assert!(guard.is_from_page(&Method::POST, &headers(&[own])));
        assert!(guard.is_from_page(&Method::GET, &headers(&[])));
        assert!(!guard.is_from_page(&Method::POST, &headers(&[])));
        for origin in ["http://lodewater.example", "null", "https://127.0.0.1:4711", "http://127.0.0.1:4712"] {
            assert!(!guard.is_from_page(&Method::GET, &headers(&[("origin", origin)])), "{origin}");
        }
        assert!(!guard.is_from_page(&Method::POST, &headers(&[own, ("sec-fetch-site", "cross-site")])));
        assert!(!guard.is_from_page(&Method::GET, &headers(&[("sec-fetch-site", "same-site")])));
    }

    #[test]
    fn the_token_is_shown_by_the_cookie_of_this_port() {
        let guard = Guard::new(Token::new().unwrap(), 4711, None);
        let token = guard.token.told();
        let right = |cookie: &str| guard.right(&headers(&[("cookie", cookie)]));
        assert_eq!(right(&format!("a=b; elbowroom-4711={token}")), Some(Right::Change));
        assert_eq!(right(&format!("elbowroom-4712={token}")), None);
        assert_eq!(right("elbowroom-4711=0"), None);
        assert_eq!(guard.right(&headers(&[])), None);
    }

    #[test]
    fn the_local_network_has_a_host_and_a_token_that_only_looks() {
        let lan = Lan { address: "192.0.2.7".parse().unwrap(), looks: Token::new().unwrap() };
        let looks = lan.looks.told().to_owned();
        let guard = Guard::new(Token::new().unwrap(), 4711, Some(lan));
        assert!(guard.is_host(&headers(&[("host", "192.0.2.7:4711")])));
        assert!(guard.is_from_page(&Method::POST, &headers(&[("origin", "http://192.0.2.7:4711")])));
        assert!(!guard.is_host(&headers(&[("host", "192.0.2.8:4711")])));
        assert_eq!(guard.right(&headers(&[("cookie", &format!("elbowroom-4711={looks}"))])), Some(Right::Look));
        let [change, look] = guard.links_of_lan().unwrap();
        assert!(change.ends_with(guard.token.told()) && look == format!("http://192.0.2.7:4711/enter/{looks}"));
        assert_eq!(Guard::new(Token::new().unwrap(), 4711, None).cookie(&looks), None);
    }
}
