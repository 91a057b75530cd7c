//! The solver says nothing: it has no sentence, and no name for people.

use std::path::Path;

use super::{from_root, root, rust_files, text};

/// What decides returns ids, enumerations and figures; what has a space in it is for a reader, and stands in the words of
/// `cli`. What a debug assertion says is for developers.
#[test]
fn the_solver_has_no_sentence() {
    for file in rust_files(&root().join("solver/src")).into_iter().filter(|file| !is_for_tests(file)) {
        let text = text(&file);
        let said: Vec<&str> = literals(&text).into_iter().filter(|literal| literal.contains(' ')).collect();
        assert!(said.is_empty(), "{} says {said:?}", from_root(&file));
    }
}

/// Whether the module above takes a file in for tests alone.
fn is_for_tests(file: &Path) -> bool {
    let (folder, stem) = (file.parent().unwrap(), file.file_stem().unwrap().to_string_lossy());
    let above = [folder.join("mod.rs"), folder.join("lib.rs"), folder.with_extension("rs")];
    let declared = format!("#[cfg(test)]\nmod {stem};");
    above.iter().filter(|file| file.exists()).any(|file| text(file).contains(&declared))
}

/// Every string literal of a file's own code, as it is written, without its quotes: not those of its tests, attributes,
/// comments and debug assertions.
fn literals(text: &str) -> Vec<&str> {
    let own = text.split("#[cfg(test)]").next().unwrap_or_default();
    let (mut found, mut at) = (Vec::new(), 0);
    while at < own.len() {
        let rest = &own[at..];
        at += if rest.starts_with("//") {
            rest.find('\n').unwrap_or(rest.len())
        } else if rest.starts_with("#[") || rest.starts_with("debug_assert") {
            bracketed(rest)
        } else if let Some((literal, length)) = literal(rest) {
            found.push(literal);
            length
        } else {
            character(rest).unwrap_or_else(|| rest.chars().next().map_or(1, char::len_utf8))
        };
    }
    found
}

/// The literal that `text` starts with, and how long it is, quotes included.
fn literal(text: &str) -> Option<(&str, usize)> {
    let hashes = text.strip_prefix('r').map(|rest| rest.len() - rest.trim_start_matches('#').len());
    if let Some(hashes) = hashes.filter(|hashes| text[1 + hashes..].starts_with('"')) {
        let (start, end) = (hashes + 2, format!("\"{}", "#".repeat(hashes)));
        let length = text[start..].find(&end)?;
        return Some((&text[start..start + length], start + length + end.len()));
    }
    let inner = text.strip_prefix('"')?;
    let mut escaped = false;
    let length = inner.find(|letter| {
        let ends = letter == '"' && !escaped;
        escaped = letter == '\\' && !escaped;
        ends
    })?;
    Some((&inner[..length], length + 2))
}

/// How long the character literal is that `text` starts with; `None` where it starts with none, but with a lifetime.
fn character(text: &str) -> Option<usize> {
    let inner = text.strip_prefix('\'')?;
    let first = inner.chars().next()?;
    let length = if first == '\\' { 1 + inner[1..].chars().next()?.len_utf8() } else { first.len_utf8() };
    inner[length..].find('\'').filter(|more| *more == 0 || first == '\\').map(|more| length + more + 2)
}

/// How long it is up to the bracket that closes the first one.
fn bracketed(text: &str) -> usize {
    let (mut depth, mut at) = (0_usize, text.find(['[', '(']).unwrap_or_default());
    while at < text.len() {
        let rest = &text[at..];
        match rest.chars().next() {
            Some('[' | '(') => depth += 1,
            Some(']' | ')') if depth == 1 => return at + 1,
            Some(']' | ')') => depth -= 1,
            _ => {}
        }
        at += literal(rest)
            .map(|(_, length)| length)
            .or_else(|| character(rest))
            .unwrap_or_else(|| rest.chars().next().map_or(1, char::len_utf8));
    }
    text.len()
}

#[test]
fn literals_are_told_from_all_else() {
    let text = "// \"no\"\n#[allow(x, reason = \"no (\")]\nlet (a, b) = (\"one\", '\"'); debug_assert!(f(')'), \"no\");\n\
                fn f<'a>() { r#\"two \"2\"\"#; \"th\\\"ree\" }\n#[cfg(test)]\nmod tests { \"no\" }";
    assert_eq!(literals(text), ["one", "two \"2\"", "th\\\"ree"]);
}
