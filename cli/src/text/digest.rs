//! What a page's policy calls its own scripts and styles by, so that it runs no other.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

/// The hash of a script or a style as a policy has it.
pub(crate) fn digest(text: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(text.as_bytes())))
}

#[cfg(test)]
mod tests {
    use super::digest;

    /// The hash that the Content Security Policy standard itself gives for this script (Level 3, 8.2, from memory; the same by
    /// `openssl dgst -sha256 -binary | base64`).
    #[test]
    fn a_script_is_called_by_its_hash() {
        assert_eq!(digest("alert('Hello, world.');"), "'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='");
    }
}
