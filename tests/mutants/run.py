#!/usr/bin/env python3
"""Mutants of the sources against the suites of their member, by a seeded draw.

    cargo install cargo-mutants
    python3 -m venv /tmp/mutants && /tmp/mutants/bin/pip install tree-sitter tree-sitter-rust
    /tmp/mutants/bin/python tests/mutants/run.py FOLDER [--count 200] [--seed 1] [--seconds 3600]

FOLDER takes a copy of the last commit, its build and `outcomes.ndjson`, a line a mutant; a run goes on with what is there. The list
is that of cargo-mutants. All mutants that are drawn are built at once, each asking at run time whether it is the one; every test is
run once by itself to learn which mutants it reaches; then each mutant is put to the tests that reach it, the short ones first. One
that no test reaches survives like one that none catches. What survives is for a person to read.

Only the list and the planting were tried so far: no run has come to its end, and nothing is known yet of what survives.
"""

import argparse
import json
import os
import pathlib
import random
import subprocess
import sys
import tempfile
import time

import plant

ROOT = pathlib.Path(__file__).resolve().parents[2]
PLACES = {
    "elbowroom-solver": [f"solver/src/{part}/**" for part in ("rules", "routes", "verify", "ranking", "criteria")],
    "elbowroom-model": [f"model/src/{part}/**" for part in ("survey", "length", "scenario")],
}
MEMBERS = {"elbowroom-solver": "solver", "elbowroom-model": "model"}
STEPS = (12, 60, 100_000)  # tests at once, the short ones first


def listed():
    found = []
    for package, places in PLACES.items():
        words = ["cargo", "mutants", "--list", "--json", "--no-config", "--package", package]
        words += [word for place in places for word in ("--file", place)]
        told = json.loads(subprocess.run(words, cwd=ROOT, check=True, capture_output=True, text=True).stdout)
        found += [dict(mutant, package=package) for mutant in told]
    return sorted(found, key=lambda one: (one["file"], one["span"]["start"]["line"], one["span"]["start"]["column"], one["replacement"]))


def copied(folder):
    tree = folder / "tree"
    subprocess.run(["rm", "-rf", tree], check=True)
    tree.mkdir(parents=True)
    archive = subprocess.Popen(["git", "archive", "HEAD"], cwd=ROOT, stdout=subprocess.PIPE)
    subprocess.run(["tar", "-x", "-C", tree], stdin=archive.stdout, check=True)
    archive.wait()
    return tree


def cargo(tree, folder, *words):
    environment = dict(os.environ, CARGO_TARGET_DIR=str(folder / "target"), CARGO_INCREMENTAL="0", RUSTFLAGS="-Awarnings")
    words = ["cargo", *words, "--workspace", "--message-format=json"]
    done = subprocess.run(words, cwd=tree, env=environment, capture_output=True, text=True)
    return done.returncode, [json.loads(line) for line in done.stdout.splitlines() if line.startswith("{")], done.stderr


def refused(messages, mutants):
    """The mutants in lines that the compiler complains of."""
    at_fault = set()
    for message in messages:
        told = message.get("message") or {}
        if told.get("level") == "error":
            for span in told.get("spans", []):
                for mutant in mutants:
                    lines = range(mutant["function_line"], mutant["span"]["end"]["line"] + 1)
                    within = range(mutant["span"]["start"]["line"], mutant["span"]["end"]["line"] + 1)
                    if span["file_name"] == mutant["file"] and span["line_start"] in (lines if mutant["genre"] == "FnValue" else within):
                        at_fault.add(mutant["number"])
    return at_fault


def built(folder, mutants):
    """The test programs by member, with every mutant in them that compiles."""
    while True:
        tree = copied(folder)
        mutants = plant.planted(tree, mutants)
        code, messages, said = cargo(tree, folder, "check", "--lib")
        if code != 0:
            at_fault = refused(messages, mutants)
            if not at_fault:
                sys.exit(said[-4000:])
            print(f"{len(at_fault)} do not compile", flush=True)
            mutants = [mutant for mutant in mutants if mutant["number"] not in at_fault]
            continue
        code, messages, said = cargo(tree, folder, "test", "--no-run", "--lib", "--test", "model", "--test", "solver")
        if code != 0:
            sys.exit(said[-4000:])
        programs = {}
        for message in messages:
            if message.get("executable") and message.get("profile", {}).get("test"):
                manifest = pathlib.Path(message["manifest_path"]).parent
                programs.setdefault(manifest.name, []).append(message["executable"])
        return tree, mutants, programs


def tried(tree, member, program, tests, mutant, limit, reached=None):
    """Whether all of these tests pass with that mutant; how long that took."""
    environment = dict(os.environ, MUTANT=str(mutant), **({"REACHED": reached} if reached else {}))
    begun = time.monotonic()
    words = [program, "--exact", "--test-threads=2", *tests]
    try:
        done = subprocess.run(words, cwd=tree / member, env=environment, capture_output=True, timeout=limit)
        return done.returncode == 0, time.monotonic() - begun
    except subprocess.TimeoutExpired:
        return False, time.monotonic() - begun


def reaches(tree, programs):
    """Of each test: how long it takes, and the mutants that it reaches."""
    tests = []
    for member, of_member in programs.items():
        for program in of_member if member in MEMBERS.values() else []:
            told = subprocess.run([program, "--list", "--format", "terse"], cwd=tree / member, capture_output=True, text=True, check=True)
            for line in told.stdout.splitlines():
                if not line.endswith(": test"):
                    continue
                name = line.removesuffix(": test")
                with tempfile.NamedTemporaryFile() as file:
                    passed, took = tried(tree, member, program, [name], "none", 300, file.name)
                    numbers = {int(number) for number in file.read().split()}
                if passed:
                    tests.append((took, member, program, name, numbers))
                else:
                    print(f"fails unchanged, left out: {name}", flush=True)
    return sorted(tests, key=lambda test: test[:4])


def outcome(tree, tests, mutant):
    reaching = [test for test in tests if mutant["number"] in test[4]]
    if not reaching:
        return {"outcome": "not reached"}
    done = 0
    for step in STEPS:
        batch = reaching[done : done + step]
        done += len(batch)
        for program in sorted({test[2] for test in batch}):
            of_program = [test for test in batch if test[2] == program]
            limit = 30 + 10 * sum(test[0] for test in of_program)
            passed, _ = tried(tree, of_program[0][1], program, [test[3] for test in of_program], mutant["number"], limit)
            if not passed:
                return {"outcome": "caught", "tests": done}
    return {"outcome": "survives", "tests": done}


def main():
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    words.add_argument("folder", type=plant.folder_of)
    words.add_argument("--count", type=int, default=200)
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--seconds", type=float, default=3600)
    asked = words.parse_args()
    asked.folder.mkdir(parents=True, exist_ok=True)
    all_of_them = listed()
    drawn = random.Random(asked.seed).sample(all_of_them, min(asked.count, len(all_of_them)))
    for number, mutant in enumerate(drawn):
        mutant["number"] = number
        function = mutant.get("function") or {}
        mutant["function_line"] = function.get("span", mutant["span"])["start"]["line"]
    print(f"{len(drawn)} of {len(all_of_them)} drawn", flush=True)
    begun = time.monotonic()
    tree, mutants, programs = built(asked.folder, drawn)
    print(f"{len(mutants)} built after {time.monotonic() - begun:.0f} s", flush=True)
    tests = reaches(tree, programs)
    print(f"{len(tests)} tests learned after {time.monotonic() - begun:.0f} s", flush=True)
    outcomes = asked.folder / "outcomes.ndjson"
    known = outcomes.read_text(encoding="utf-8").splitlines() if outcomes.exists() else []
    done = {json.loads(line)["name"] for line in known}
    with open(outcomes, "a", encoding="utf-8") as out:
        for mutant in mutants:
            if mutant["name"] in done:
                continue
            if time.monotonic() - begun > asked.seconds:
                break
            of_member = [test for test in tests if test[1] == MEMBERS[mutant["package"]]]
            line = {"name": mutant["name"], "number": mutant["number"], **outcome(tree, of_member, mutant)}
            out.write(json.dumps(line) + "\n")
            out.flush()
            if line["outcome"] != "caught":
                print(f"{line['outcome']}: {mutant['name']}", flush=True)


main()
