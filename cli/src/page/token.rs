//! What a browser must show to be let in: a random word, told once, in the link.

use std::fmt::Write;

/// Bytes of chance in a token.
const BYTES: usize = 32;

/// A token, as it stands in the link and in the cookie.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Token(String);

impl Token {
    /// A new one.
    ///
    /// # Errors
    /// The system has no chance to give.
    pub(super) fn new() -> std::io::Result<Self> {
        let mut bytes = [0_u8; BYTES];
        getrandom::fill(&mut bytes).map_err(|why| std::io::Error::other(why.to_string()))?;
        let mut token = String::with_capacity(2 * BYTES);
        for byte in bytes {
            let _ = write!(token, "{byte:02x}");
        }
        Ok(Self(token))
    }

    /// As it is told.
    pub(super) fn told(&self) -> &str {
        &self.0
    }

    /// Whether `shown` is the token. How long that takes tells nothing of how much of it is right.
    pub(super) fn is(&self, shown: &str) -> bool {
        let differ = self.0.bytes().zip(shown.bytes()).fold(0, |differ, (own, other)| differ | (own ^ other));
        self.0.len() == shown.len() && differ == 0
    }
}

#[cfg(test)]
mod tests {
    use super::Token;

    #[test]
    fn only_the_whole_token_is_the_token() {
        let (one, other) = (Token::new().unwrap(), Token::new().unwrap());
        assert!(one.is(one.told()) && !one.is(other.told()) && !one.is("") && !one.is(&one.told()[1..]));
        assert_eq!(one.told().len(), 64);
    }
}
