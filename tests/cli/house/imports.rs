//! Imports run one way: no file imports itself round through others, and the floors of `cli` are kept.

use std::collections::{BTreeMap, BTreeSet};

use super::modules::{Modules, Words};
use super::{MEMBERS, root, text};

type Imports = BTreeMap<Words, BTreeMap<Words, BTreeSet<String>>>;

/// All that a module imports, through others too.
fn reached(from: &Words, imports: &Imports) -> BTreeSet<Words> {
    let (mut found, mut open) = (BTreeSet::new(), vec![from.clone()]);
    while let Some(next) = open.pop() {
        open.extend(imports[&next].keys().filter(|to| found.insert((*to).clone())).cloned());
    }
    found
}

/// Sets of modules that import each other in a circle.
fn circles(imports: &Imports) -> Vec<BTreeSet<Words>> {
    let reached: BTreeMap<&Words, BTreeSet<Words>> =
        imports.keys().map(|from| (from, reached(from, imports))).collect();
    let mut circles: Vec<BTreeSet<Words>> = Vec::new();
    for (from, to) in &reached {
        if to.contains(*from) && !circles.iter().any(|circle| circle.contains(*from)) {
            circles.push(to.iter().filter(|other| reached[*other].contains(*from)).cloned().collect());
        }
    }
    circles
}

/// What ties a circle: each import of one of its files by another, with the names taken.
fn ties(circle: &BTreeSet<Words>, modules: &Modules, imports: &Imports) -> String {
    let tie = |from: &Words| {
        let within = imports[from].iter().filter(|(to, _)| circle.contains(*to));
        let told = within.map(|(to, names)| format!("{} -> {} for {names:?}", modules.file(from), modules.file(to)));
        told.collect::<Vec<_>>()
    };
    circle.iter().flat_map(tie).collect::<Vec<_>>().join("\n")
}

#[test]
fn no_file_imports_itself_round_through_others() {
    let mut told = Vec::new();
    for member in MEMBERS {
        let modules = Modules::of(member);
        let imports = modules.imports();
        told.extend(circles(&imports).iter().map(|circle| ties(circle, &modules, &imports)));
    }
    assert!(told.is_empty(), "these files import each other in circles:\n{}", told.join("\n\n"));
}

/// The floors as the table in the library's own words has them: each module at its root with its floor.
fn floors() -> BTreeMap<String, usize> {
    let library = text(&root().join("cli/src/lib.rs"));
    let rows = library.lines().filter_map(|line| line.strip_prefix("//! | ")).filter_map(|row| {
        let mut cells = row.split('|').map(str::trim);
        let floor: usize = cells.next()?.parse().ok()?;
        let modules = cells.next()?.split(", ").map(|name| name.trim_matches('`').to_owned());
        Some(modules.map(move |module| (module, floor)).collect::<Vec<_>>())
    });
    rows.flatten().collect()
}

#[test]
fn imports_of_the_command_line_run_down_its_floors() {
    let (modules, floors) = (Modules::of("cli"), floors());
    let floor = |path: &Words| {
        let module = path.first()?;
        Some(*floors.get(module).unwrap_or_else(|| panic!("cli/src/lib.rs gives `{module}` no floor")))
    };
    for (path, _) in modules.each() {
        floor(path);
    }
    for (from, to) in modules.imports() {
        for (to, names) in to {
            // The root stands over them all, and none of them names it.
            let down = match (floor(&from), floor(&to)) {
                (None, _) => true,
                (Some(_), None) => false,
                (Some(from), Some(to)) => to <= from,
            };
            assert!(down, "{} imports {names:?} from {}, a floor up", modules.file(&from), modules.file(&to));
        }
    }
}
