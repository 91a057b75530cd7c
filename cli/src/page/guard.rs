//! Who may ask: a browser that shows the token, that asks this machine by its own name, from the page itself.
//!
//! A page of the web that has its own name point to 127.0.0.1 is told apart by the host that it asks for; one that posts a
//! form is, by its origin; both lack the cookie, which browsers send to this page alone.

use axum::http::header::{COOKIE, HOST, ORIGIN};
use axum::http::{HeaderMap, Method};

use super::token::Token;

/// Where the link leads, before its token.
pub(super) const ENTER: &str = "/enter/";

/// What is let in.
#[derive(Debug, Clone)]
pub(super) struct Guard {
    token: Token,
    port: u16,
}

impl Guard {
    /// Of a page on this port.
    pub(super) const fn new(token: Token, port: u16) -> Self {
        Self { token, port }
    }

    /// The address without the token.
    pub(super) fn address(&self) -> String {
        format!("http://127.0.0.1:{}", self.port)
    }

    /// The link that lets a browser in.
    pub(super) fn link(&self) -> String {
        format!("{}{ENTER}{}", self.address(), self.token.told())
    }

    /// The cookie that the link leaves.
    pub(super) fn cookie(&self) -> String {
        format!("{}={}; Path=/; HttpOnly; SameSite=Strict", self.cookie_name(), self.token.told())
    }

    /// Whether this is the token.
    pub(super) fn is_token(&self, shown: &str) -> bool {
        self.token.is(shown)
    }

    /// Ports share cookies, so that the name tells them apart.
    fn cookie_name(&self) -> String {
        format!("elbowroom-{}", self.port)
    }

    /// Whether the host that is asked for is this page, and not a name that leads to it.
    pub(super) fn is_host(&self, headers: &HeaderMap) -> bool {
        let mut hosts = headers.get_all(HOST).iter();
        let host = hosts.next().and_then(|host| host.to_str().ok());
        hosts.next().is_none() && host.is_some_and(|host| self.hosts().iter().any(|own| host.eq_ignore_ascii_case(own)))
    }

    /// Whether it is the page itself that asks. What changes something must say so.
    pub(super) fn is_from_page(&self, method: &Method, headers: &HeaderMap) -> bool {
        let fetched = headers.get("sec-fetch-site").and_then(|site| site.to_str().ok());
        if fetched.is_some_and(|site| !matches!(site, "same-origin" | "none")) {
            return false;
        }
        match headers.get(ORIGIN).map(|origin| origin.to_str().unwrap_or_default()) {
            None => *method == Method::GET || *method == Method::HEAD,
            Some(origin) => self.hosts().iter().any(|own| origin == format!("http://{own}")),
        }
    }

    pub(super) fn shows_token(&self, headers: &HeaderMap) -> bool {
        let name = self.cookie_name();
        let cookies = headers.get_all(COOKIE).iter().filter_map(|cookies| cookies.to_str().ok());
        cookies
            .flat_map(|cookies| cookies.split(';'))
            .any(|cookie| cookie.trim().split_once('=').is_some_and(|(own, token)| own == name && self.is_token(token)))
    }

    fn hosts(&self) -> [String; 2] {
        ["127.0.0.1", "localhost"].map(|host| format!("{host}:{}", self.port))
    }
}

#[cfg(test)]
mod tests {
    use axum::http::{HeaderMap, HeaderValue, Method};

    use super::Guard;
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
        let guard = Guard::new(Token::new().unwrap(), 4711);
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
        let guard = Guard::new(Token::new().unwrap(), 4711);
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
        let guard = Guard::new(Token::new().unwrap(), 4711);
        let token = guard.token.told();
        assert!(guard.shows_token(&headers(&[("cookie", &format!("a=b; elbowroom-4711={token}"))])));
        assert!(!guard.shows_token(&headers(&[("cookie", &format!("elbowroom-4712={token}"))])));
        assert!(!guard.shows_token(&headers(&[("cookie", "elbowroom-4711=0")])));
        assert!(!guard.shows_token(&headers(&[])));
    }
}
