"""The list of mutants, and one build with those that are drawn."""

import dataclasses
import json
import os
import pathlib
import subprocess
import sys

import plant

ROOT = pathlib.Path(__file__).resolve().parents[2]
PLACES = {
    "elbowroom-solver": [f"solver/src/{part}/**" for part in ("rules", "routes", "verify", "ranking", "criteria")],
    "elbowroom-model": [f"model/src/{part}/**" for part in ("survey", "length", "scenario")],
}
MEMBERS = {"elbowroom-solver": "solver", "elbowroom-model": "model"}


@dataclasses.dataclass
class Built:
    """A copy of the sources with mutants in them, and the test programs by member."""

    tree: pathlib.Path
    mutants: list
    programs: dict
    passed_over: dict


def listed():
    found = []
    for package, places in PLACES.items():
        words = ["cargo", "mutants", "--list", "--json", "--no-config", "--package", package]
        words += [word for place in places for word in ("--file", place)]
        told = json.loads(subprocess.run(words, cwd=ROOT, check=True, capture_output=True, text=True).stdout)
        found += [dict(mutant, package=package) for mutant in told]
    found.sort(key=lambda one: (one["file"], one["span"]["start"]["line"], one["span"]["start"]["column"], one["replacement"]))
    for number, mutant in enumerate(found):
        mutant["number"] = number
        function = mutant.get("function") or {}
        mutant["function_line"] = function.get("span", mutant["span"])["start"]["line"]
    return found


def copied(folder):
    tree = folder / "tree"
    subprocess.run(["rm", "-rf", tree], check=True)
    tree.mkdir(parents=True)
    archive = subprocess.Popen(["git", "archive", "HEAD"], cwd=ROOT, stdout=subprocess.PIPE)
    # Files keep no time of their own: what is as it was before a mutant went is built anew as well.
    subprocess.run(["tar", "-x", "-m", "-C", tree], stdin=archive.stdout, check=True)
    archive.wait()
    return tree


def taken_over(folder, libraries, tree):
    """Libraries as the gate builds them go into this build, by hard links; the command line, which nothing here tries, stays empty."""
    if libraries:
        if not (folder / "target").exists():
            (folder / "target/debug").mkdir(parents=True)
            for part in ("deps", "build", ".fingerprint"):
                how = "-a" if part == ".fingerprint" else "-al"  # what cargo writes over is not shared
                subprocess.run(["cp", how, libraries / "debug" / part, folder / "target/debug" / part], check=True)
        for file, text in (("lib.rs", "//! Nothing.\n"), ("main.rs", "fn main() {}\n")):
            (tree / "cli/src" / file).write_text(text, encoding="utf-8")


def cargo(tree, folder, libraries, *words):
    told = {"CARGO_TARGET_DIR": str(folder / "target"), "CARGO_INCREMENTAL": "0"}
    packages = [word for package in PLACES for word in ("--package", package)]
    if libraries:
        packages = ["--workspace", "--features", "elbowroom-solver/highs"]
    words = ["cargo", *words, *packages, "--locked", "--message-format=json"]
    done = subprocess.run(words, cwd=tree, env=dict(os.environ, **told), capture_output=True, text=True)
    return done.returncode, [json.loads(line) for line in done.stdout.splitlines() if line.startswith("{")], done.stderr


def refused(messages, mutants):
    """The mutants in lines that the compiler complains of."""
    at_fault = set()
    for message in messages:
        told = message.get("message") or {}
        if told.get("level") == "error":
            for span in told.get("spans", []):
                for mutant in mutants:
                    first = mutant["function_line"] if mutant["genre"] == "FnValue" else mutant["span"]["start"]["line"]
                    lines = range(first, mutant["span"]["end"]["line"] + 1)
                    if span["file_name"] == mutant["file"] and span["line_start"] in lines:
                        at_fault.add(mutant["number"])
    return at_fault


def known(folder):
    """The build that is there; `None` where there is none."""
    file = folder / "built.json"
    return Built(folder / "tree", **json.loads(file.read_text(encoding="utf-8"))) if file.exists() else None


def built(folder, drawn, count, libraries):
    """The first `count` of the draw that can be planted and compile, in one build."""
    passed_over = {"no form at run time": [], "does not compile": []}
    left = list(drawn)
    while True:
        tree = copied(folder)
        taken_over(folder, libraries, tree)
        mutants, unplanted = plant.planted(tree, left, count)
        passed_over["no form at run time"] += [mutant["name"] for mutant in unplanted]
        left = [mutant for mutant in left if mutant not in unplanted]
        code, messages, said = cargo(tree, folder, libraries, "build", "--profile", "test", "--lib")
        if code == 0:
            break
        at_fault = [mutant for mutant in mutants if mutant["number"] in refused(messages, mutants)]
        if not at_fault:
            sys.exit(said[-4000:])
        print(f"{len(at_fault)} do not compile", flush=True)
        for mutant in at_fault:
            if plant.is_comparison(mutant) and not mutant.get("once"):
                mutant["once"] = True  # its operands can not be read twice
            else:
                passed_over["does not compile"].append(mutant["name"])
                left.remove(mutant)
    code, messages, said = cargo(tree, folder, libraries, "test", "--no-run", "--lib", "--test", "model", "--test", "solver")
    if code != 0:
        sys.exit(said[-4000:])
    programs = {}
    for message in messages:
        if message.get("executable") and message.get("profile", {}).get("test"):
            member = pathlib.Path(message["manifest_path"]).parent.name
            programs.setdefault(member, []).append(message["executable"])
    told = {"mutants": mutants, "programs": programs, "passed_over": {why: len(names) for why, names in passed_over.items()}}
    (folder / "passed_over.json").write_text(json.dumps(passed_over, indent=1), encoding="utf-8")
    (folder / "built.json").write_text(json.dumps(told), encoding="utf-8")
    return Built(tree, **told)
