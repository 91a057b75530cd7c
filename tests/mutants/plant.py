"""Plants mutants in a copy of the sources, all in one build: each asks at run time whether it is the one to be tried."""

import pathlib
import re

import tree_sitter
import tree_sitter_rust

MODULE_PATH = "elbowroom_model::mutant"
MODULE = '''//! Which mutant is tried: the one whose number `MUTANT` says. What is reached is written to the file that `REACHED` names.
#![allow(missing_docs, clippy::unwrap_used)]
use std::io::Write;
use std::sync::LazyLock;
use std::sync::atomic::{AtomicBool, Ordering};
const MOST: usize = 50_000;
static CHOSEN: LazyLock<usize> =
    LazyLock::new(|| std::env::var("MUTANT").ok().and_then(|chosen| chosen.parse().ok()).unwrap_or(usize::MAX));
static LEARNS: LazyLock<Option<String>> = LazyLock::new(|| std::env::var("REACHED").ok());
static REACHED: [AtomicBool; MOST] = [const { AtomicBool::new(false) }; MOST];
static COMPARED: [AtomicBool; MOST] = [const { AtomicBool::new(false) }; MOST];
static DIFFERED: [AtomicBool; MOST] = [const { AtomicBool::new(false) }; MOST];
fn told(seen: &[AtomicBool; MOST], number: usize, mark: &str) {
    if let Some(file) = LEARNS.as_ref() {
        if !seen[number].load(Ordering::Relaxed) && !seen[number].swap(true, Ordering::Relaxed) {
            let mut file = std::fs::OpenOptions::new().create(true).append(true).open(file).unwrap();
            file.write_all(format!("{mark}{number}\\n").as_bytes()).unwrap();
        }
    }
}
pub fn is(number: usize) -> bool {
    told(&REACHED, number, "");
    number == *CHOSEN
}
pub fn is_other(number: usize) -> bool {
    number == *CHOSEN
}
pub fn learns() -> bool {
    LEARNS.is_some()
}
pub fn compared(number: usize, was: bool, would_be: bool) -> bool {
    told(&COMPARED, number, "b");
    if was != would_be {
        told(&DIFFERED, number, "d");
    }
    was
}
'''

PARSER = tree_sitter.Parser(tree_sitter.Language(tree_sitter_rust.language()))


class NotPlanted(Exception):
    """The mutant has no form that can be asked for at run time."""


# What is read twice may do nothing else meanwhile.
ACTS = re.compile(r"&mut |next\(|pop|push|insert|remove|take\(|replace|swap|drain|return|\?|\{")


def flat(text):
    """On one line, so that all after it keep theirs."""
    if "\n" in text and "//" in text:
        raise NotPlanted
    return text.replace("\n", " ")


def is_comparison(mutant):
    return mutant["genre"] == "BinaryOperator" and mutant["replacement"] in ("==", "!=", "<", ">", "<=", ">=")


class Source:
    """A file with the places where mutants go in."""

    def __init__(self, path):
        self.path = path
        self.text = path.read_bytes()
        self.tree = PARSER.parse(self.text)
        self.starts = [0] + [at + 1 for at, byte in enumerate(self.text) if byte == 10]

    def byte(self, place):
        line = self.text[self.starts[place["line"] - 1] :].decode("utf-8", "ignore")
        return self.starts[place["line"] - 1] + len(line[: place["column"] - 1].encode())

    def node(self, start, end, kinds):
        node = self.tree.root_node.descendant_for_byte_range(start, end)
        while node is not None and node.type not in kinds:
            node = node.parent
        if node is None:
            raise NotPlanted
        return node

    def edits(self, mutant):
        """Insertions and the stretch that they claim, so that no two mutants share an expression."""
        number = mutant["number"]
        module = "crate::mutant" if "model/src" in mutant["file"] else MODULE_PATH
        ask = f"{module}::is({number})"
        start, end = (self.byte(mutant["span"][end]) for end in ("start", "end"))
        new, genre = mutant["replacement"], mutant["genre"]
        if genre == "FnValue":
            node = self.tree.root_node.descendant_for_byte_range(start, max(start, end - 1))
            while node is not None and node.type != "function_item":
                node = node.parent
            if node is None or node.child_by_field_name("body") is None:
                raise NotPlanted
            body = node.child_by_field_name("body")
            if any(child.type == "function_modifiers" and b"const" in child.text for child in node.children):
                raise NotPlanted
            # `return` in a function that gives nothing takes no value.
            gives = "" if new == "()" else f" {new}"
            return [(body.start_byte + 1, f" if {ask} {{ return{gives}; }}")], (body.start_byte, body.start_byte + 1)
        if genre == "BinaryOperator":
            node = self.node(start, max(start, end - 1), ("binary_expression", "compound_assignment_expr"))
            left, right = (flat(node.child_by_field_name(side).text.decode()) for side in ("left", "right"))
            old = self.text[start:end].decode()
            chosen = f"if {ask} {{ {left} {new} {right} }} else {{ {left} {old} {right} }}"
            if "let " in left or "let " in right:
                raise NotPlanted
            if is_comparison(mutant) and not mutant.get("once") and not ACTS.search(left + right):
                was, other = f"{left} {old} {right}", f"{left} {new} {right}"
                compared = f"{module}::learns() {{ {module}::compared({number}, {was}, {other}) }}"
                chosen = f"if {module}::is_other({number}) {{ {other} }} else if {compared} else {{ {was} }}"
            lines = "\n" * node.text.count(b"\n")
            return [(node.start_byte, node.end_byte, f"({chosen}{lines})")], (node.start_byte, node.end_byte)
        if genre == "UnaryOperator":
            node = self.node(start, max(start, end - 1), ("unary_expression",))
            old = flat(node.text.decode())
            lines = "\n" * node.text.count(b"\n")
            bare = re.sub(r"^[!-]\s*", "", old)
            return [(node.start_byte, node.end_byte, f"(if {ask} {{ {bare} }} else {{ {old} }}{lines})")], (node.start_byte, node.end_byte)
        if genre == "MatchArmGuard":
            old = self.text[start:end].decode()
            if "let " in old:
                raise NotPlanted
            return [(start, end, f"(if {ask} {{ {new} }} else {{ {old} }})")], (start, end)
        if genre == "MatchArm":
            node = self.node(start, max(start, end - 1), ("match_arm",))
            pattern = node.child_by_field_name("pattern")
            condition = pattern.child_by_field_name("condition")
            if condition is None:
                return [(pattern.end_byte, f" if !{ask}")], (node.start_byte, pattern.end_byte)
            if b"let " in condition.text:
                raise NotPlanted
            return [(condition.start_byte, f"!{ask} && ("), (condition.end_byte, ")")], (node.start_byte, pattern.end_byte)
        raise NotPlanted


def planted(folder, mutants, count):
    """Writes the first `count` that can be into the sources under `folder`; gives those, and the ones that were passed over."""
    sources, edits, claimed, taken, unplanted = {}, {}, {}, [], []
    for mutant in mutants:
        if len(taken) == count:
            break
        file = mutant["file"]
        source = sources.setdefault(file, None) or Source(folder / file)
        sources[file] = source
        claims_of_file = claimed.setdefault(file, [])
        try:
            of_mutant, claims = source.edits(mutant)
        except NotPlanted:
            unplanted.append(mutant)
            continue
        # Several may start one body: each is asked after the other.
        if any(claims != other and claims[0] < other[1] and other[0] < claims[1] for other in claims_of_file) or (
            claims in claims_of_file and mutant["genre"] != "FnValue"
        ):
            unplanted.append(mutant)
            continue
        claims_of_file.append(claims)
        edits.setdefault(file, []).extend(of_mutant)
        taken.append(mutant)
    for file, of_file in edits.items():
        text = sources[file].text
        for edit in sorted(of_file, key=lambda edit: (edit[0], len(edit)), reverse=True):
            start, end, new = edit if len(edit) == 3 else (edit[0], edit[0], edit[1])
            # Lines keep their numbers, so that a complaint of the compiler leads back to its mutant.
            text = text[:start] + new.encode() + text[end:]
        sources[file].path.write_bytes(text)
    module = folder / "model/src/mutant.rs"
    module.write_text(MODULE, encoding="utf-8")
    library = folder / "model/src/lib.rs"
    said = library.read_text(encoding="utf-8")
    if "pub mod mutant;" not in said:
        library.write_text(re.sub(r"(?m)^(pub )?mod ", r"pub mod mutant;\n\g<0>", said, count=1), encoding="utf-8")
    return taken, unplanted


def folder_of(text):
    return pathlib.Path(text).resolve()
