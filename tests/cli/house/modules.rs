//! The modules of a member, a file each, as their code tells them: what each imports, hands on and takes.
//!
//! An import is a path in code that leads into another file: in a `use`, before a function, in a type, in a macro. What a
//! module hands on (`pub use`) is followed to the file that has it, so a folder's face is nobody's import. `mod child;`
//! alone is none; a parent that calls its child imports it. What stands under `cfg(test)` is passed over.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use syn::visit::{self, Visit};

use super::{from_root, root, rust_files, text};

/// A path, a word for each part.
pub(super) type Words = Vec<String>;

/// The modules of a member by their paths from its root.
pub(super) struct Modules {
    all: BTreeMap<Words, Module>,
}

/// One file.
#[derive(Default)]
pub(super) struct Module {
    /// As seen from the root of the repository.
    pub file: String,
    /// Public items that it defines, and whether each is a type.
    pub defined: Vec<Defined>,
    /// Its child modules, and whether each is public.
    pub children: BTreeMap<String, bool>,
    /// What it hands on under which name, and whether to everybody.
    pub handed_on: BTreeMap<String, HandedOn>,
    /// Paths that its code names, from the member's root.
    named: BTreeSet<Words>,
    /// Parameters of functions that are written as tuples.
    pub tuples: usize,
}

/// A type that a module defines for everybody.
pub(super) struct Defined(pub String);

/// What stands behind a `pub use`.
pub(super) struct HandedOn {
    /// From the member's root.
    pub path: Words,
    /// To everybody, not to this member alone.
    pub public: bool,
}

impl Modules {
    /// The modules of the library that `member` is.
    pub(super) fn of(member: &str) -> Self {
        let folder = root().join(member).join("src");
        let files = rust_files(&folder).into_iter().filter(|file| !file.ends_with("src/main.rs"));
        let parsed: Vec<(Words, String, syn::File)> = files
            .map(|file| {
                let (name, tree) = (from_root(&file), syn::parse_file(&text(&file)));
                (path_of(&folder, &file), name.clone(), tree.unwrap_or_else(|error| panic!("{name}: {error}")))
            })
            .collect();
        let paths: BTreeSet<Words> = parsed.iter().map(|(path, ..)| path.clone()).collect();
        let tests: Vec<Words> = parsed.iter().flat_map(|(path, _, tree)| test_modules(path, tree)).collect();
        let is_test = |path: &Words| tests.iter().any(|test| path.starts_with(test));
        let read = parsed.into_iter().filter(|(path, ..)| !is_test(path)).map(|(path, file, tree)| {
            let mut reader = Reader { at: &path, paths: &paths, scope: BTreeMap::new(), module: Module::default() };
            reader.module.file = file;
            reader.read(&tree);
            (path.clone(), reader.module)
        });
        Self { all: read.collect() }
    }

    /// Each with its path.
    pub(super) fn each(&self) -> impl Iterator<Item = (&Words, &Module)> {
        self.all.iter()
    }

    /// The file of a module.
    pub(super) fn file(&self, path: &Words) -> &str {
        &self.all[path].file
    }

    /// What each module imports: other modules, with the names taken from each.
    pub(super) fn imports(&self) -> BTreeMap<Words, BTreeMap<Words, BTreeSet<String>>> {
        let mut imports: BTreeMap<Words, BTreeMap<Words, BTreeSet<String>>> = BTreeMap::new();
        for (path, module) in &self.all {
            let found = imports.entry(path.clone()).or_default();
            for named in &module.named {
                if let Some((home, item)) = self.home(named)
                    && home != *path
                {
                    found.entry(home).or_default().insert(item);
                }
            }
        }
        imports
    }

    /// The module that has the item at the end of a path, what is handed on followed home; none where a module itself is
    /// named.
    pub(super) fn home(&self, named: &[String]) -> Option<(Words, String)> {
        let (mut at, mut rest) = (Words::new(), named.to_vec());
        // No chain of hands is as long as there are modules.
        for _ in 0..self.all.len() {
            let word = rest.first()?.clone();
            let below = [&at[..], std::slice::from_ref(&word)].concat();
            let module = self.all.get(&at)?;
            if self.all.contains_key(&below) {
                at = below;
                rest.remove(0);
            } else if let Some(on) = module.handed_on.get(&word) {
                rest = [&on.path[..], &rest[1..]].concat();
                at.clear();
            } else {
                return Some((at, word));
            }
        }
        None
    }
}

/// The path of the module in `file`.
fn path_of(folder: &Path, file: &Path) -> Words {
    let inside = file.strip_prefix(folder).unwrap().with_extension("");
    let mut words: Words = inside.iter().map(|part| part.to_string_lossy().into_owned()).collect();
    if words.last().is_some_and(|last| last == "mod" || last == "lib") {
        words.pop();
    }
    words
}

/// Modules that a file declares for tests alone.
fn test_modules(path: &Words, tree: &syn::File) -> Vec<Words> {
    let tests = tree.items.iter().filter_map(|item| match item {
        syn::Item::Mod(module) if is_for_tests(&module.attrs) => Some(module.ident.to_string()),
        _ => None,
    });
    tests.map(|name| [&path[..], &[name]].concat()).collect()
}

/// Whether something stands under `cfg(test)`, or is there for the checks of `tests/fuzz/`.
fn is_for_tests(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| match &attribute.meta {
        syn::Meta::List(list) => {
            list.path.is_ident("cfg")
                && matches!(&*list.tokens.to_string(), "test" | "fuzzing" | "any (test , fuzzing)")
        }
        _ => false,
    })
}

/// Reads one file.
struct Reader<'a> {
    at: &'a Words,
    paths: &'a BTreeSet<Words>,
    /// What names stand for that a `use` has brought in.
    scope: BTreeMap<String, Words>,
    module: Module,
}

impl Reader<'_> {
    fn read(&mut self, tree: &syn::File) {
        // Names that are brought in may stand below where they are used.
        for item in &tree.items {
            if let syn::Item::Use(item) = item {
                self.take_in(item);
            }
        }
        self.visit_file(tree);
    }

    fn take_in(&mut self, item: &syn::ItemUse) {
        let mut found = Vec::new();
        flatten(&item.tree, &mut Words::new(), &mut found);
        for (path, name) in found {
            let Some(path) = self.reached_from_root(&path) else { continue };
            match item.vis {
                syn::Visibility::Inherited => {
                    self.module.named.insert(path.clone());
                }
                syn::Visibility::Public(_) | syn::Visibility::Restricted(_) => {
                    let public = matches!(item.vis, syn::Visibility::Public(_));
                    self.module.handed_on.insert(name.clone(), HandedOn { path: path.clone(), public });
                }
            }
            self.scope.insert(name, path);
        }
    }

    /// A path of the code as seen from the member's root; none where it leads out of the member.
    fn reached_from_root(&self, path: &[String]) -> Option<Words> {
        let first = path.first()?;
        match first.as_str() {
            "crate" => Some(path[1..].to_vec()),
            "self" => Some([&self.at[..], &path[1..]].concat()),
            "super" => {
                let up = path.iter().take_while(|word| *word == "super").count();
                Some([&self.at[..self.at.len().checked_sub(up)?], &path[up..]].concat())
            }
            _ => {
                let child = [&self.at[..], std::slice::from_ref(first)].concat();
                let brought_in = || self.scope.get(first).map(|to| [&to[..], &path[1..]].concat());
                if self.paths.contains(&child) { Some([&child[..], &path[1..]].concat()) } else { brought_in() }
            }
        }
    }

    fn name(&mut self, path: &[String]) {
        self.module.named.extend(self.reached_from_root(path));
    }

    /// The paths in what a macro or an attribute is given.
    fn name_in_tokens(&mut self, tokens: &str) {
        let parted = tokens.replace("::", " :: ");
        let is_part = |character: char| character.is_alphanumeric() || character == '_' || character == ':';
        let (mut path, mut joined) = (Words::new(), false);
        for word in parted.split(|character: char| !is_part(character)).filter(|word| !word.is_empty()) {
            if word != "::" && !joined {
                self.name(&std::mem::take(&mut path));
            }
            joined = word == "::";
            if !joined {
                path.push(word.to_owned());
            }
        }
        self.name(&path);
    }
}

/// The paths of a `use`, each with the name that it brings in.
fn flatten(tree: &syn::UseTree, before: &mut Words, found: &mut Vec<(Words, String)>) {
    let mut add = |before: &Words, last: &syn::Ident, name: &syn::Ident| {
        let mut path = before.clone();
        if last != "self" {
            path.push(last.to_string());
        }
        let name = if name == "self" { path.last().cloned().unwrap_or_default() } else { name.to_string() };
        found.push((path, name));
    };
    match tree {
        syn::UseTree::Path(path) => {
            before.push(path.ident.to_string());
            flatten(&path.tree, before, found);
            before.pop();
        }
        syn::UseTree::Name(name) => add(before, &name.ident, &name.ident),
        syn::UseTree::Rename(rename) => add(before, &rename.ident, &rename.rename),
        syn::UseTree::Group(group) => group.items.iter().for_each(|item| flatten(item, before, found)),
        syn::UseTree::Glob(_) => {}
    }
}

impl<'ast> Visit<'ast> for Reader<'_> {
    fn visit_item(&mut self, item: &'ast syn::Item) {
        match item {
            syn::Item::Mod(module) if is_for_tests(&module.attrs) => {}
            syn::Item::Mod(module) => {
                let public = matches!(module.vis, syn::Visibility::Public(_));
                self.module.children.insert(module.ident.to_string(), public);
                assert!(module.content.is_none(), "{} holds a module that has no file", self.module.file);
            }
            // Taken in already; one inside a function counts like any other.
            syn::Item::Use(_) => {}
            syn::Item::Struct(syn::ItemStruct { vis, ident, .. })
            | syn::Item::Enum(syn::ItemEnum { vis, ident, .. })
            | syn::Item::Trait(syn::ItemTrait { vis, ident, .. })
            | syn::Item::Type(syn::ItemType { vis, ident, .. }) => {
                if matches!(vis, syn::Visibility::Public(_)) {
                    self.module.defined.push(Defined(ident.to_string()));
                }
                visit::visit_item(self, item);
            }
            item => visit::visit_item(self, item),
        }
    }

    fn visit_path(&mut self, path: &'ast syn::Path) {
        let words: Words = path.segments.iter().map(|segment| segment.ident.to_string()).collect();
        self.name(&words);
        visit::visit_path(self, path);
    }

    fn visit_macro(&mut self, it: &'ast syn::Macro) {
        self.name_in_tokens(&it.tokens.to_string());
        visit::visit_macro(self, it);
    }

    fn visit_meta_list(&mut self, list: &'ast syn::MetaList) {
        self.name_in_tokens(&list.tokens.to_string());
    }

    fn visit_signature(&mut self, signature: &'ast syn::Signature) {
        let is_tuple = |input: &&syn::FnArg| match input {
            syn::FnArg::Typed(typed) => matches!(*typed.pat, syn::Pat::Tuple(_)),
            syn::FnArg::Receiver(_) => false,
        };
        self.module.tuples += signature.inputs.iter().filter(is_tuple).count();
        visit::visit_signature(self, signature);
    }
}
