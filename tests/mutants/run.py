#!/usr/bin/env python3
"""Mutants of the sources against the suites of their member, by a seeded draw.

    cargo install cargo-mutants --locked
    python3 -m venv /tmp/mutants && /tmp/mutants/bin/pip install tree-sitter tree-sitter-rust
    /tmp/mutants/bin/python tests/mutants/run.py FOLDER [--count 200] [--seed 1] [--seconds 3600]

FOLDER takes a copy of the last commit, its build, what was learned of its tests and `outcomes.ndjson`, a line a mutant; a run goes
on with what is there, and `--again` puts the survivors to the tests of the commit that is there now (all is built anew). The
list is that of cargo-mutants; what has no form that can be asked for at run time gives its place to the next of the draw. All mutants
are built at once, each asking whether it is the one; every test is run once by itself to learn which mutants it reaches, and
which comparisons would come out otherwise there; then each mutant is put to those tests, the short ones first. `results.md` says
what came of it.
"""

import argparse
import json
import pathlib
import random
import sys
import time

import build
import learn
import plant
import trial

STEPS = (1, 4, 15, 60, 1e9)  # seconds of the processor that the tests of a batch take, the short ones first


def batches(tests):
    done, steps, batch, took = [], list(STEPS), [], 0.0
    for test in tests:
        batch.append(test)
        took += test["took"]
        if took > steps[0]:
            done.append(batch)
            steps, batch, took = steps[1:], [], 0.0
    return done + [batch] if batch else done


def outcome(tree, tests, number):
    """What becomes of a mutant among the tests of its member, and of how many."""
    reaching = [test for test in tests if number in test["reached"]]
    if not reaching:
        return {"outcome": "not reached"}
    differing = [test for test in reaching if number not in test["alike"]]
    if not differing:
        return {"outcome": "makes no difference", "reached by": len(reaching)}
    done = 0
    for batch in batches(differing):
        done += len(batch)
        for program in sorted({test["program"] for test in batch}):
            of_program = [test for test in batch if test["program"] == program]
            limit = 20 + 5 * sum(test["took"] for test in of_program)
            ended = trial.tried(tree / of_program[0]["member"], program, [test["name"] for test in of_program], number, limit)
            if ended.how != "passed":
                return {"outcome": "caught", "how": ended.how, "tests": done, "by": ended.failed[:3]}
    return {"outcome": "survives", "tests": done}


def read(file):
    return [json.loads(line) for line in file.read_text(encoding="utf-8").splitlines()] if file.exists() else []


def main():
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    words.add_argument("folder", type=plant.folder_of)
    words.add_argument("--count", type=int, default=200)
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--seconds", type=float, default=3600, help="of the clock, after which no further mutant is begun")
    words.add_argument("--libraries", type=plant.folder_of, help="a target folder of the gate, whose libraries are taken over")
    words.add_argument("--again", action="store_true", help="only what survived, with the tests of the last commit")
    asked = words.parse_args()
    asked.folder.mkdir(parents=True, exist_ok=True)
    begun = time.monotonic()

    outcomes = asked.folder / ("again.ndjson" if asked.again else "outcomes.ndjson")
    if asked.again:
        lived = {line["name"] for line in read(asked.folder / "outcomes.ndjson") if line["outcome"] != "caught"}
        drawn = [mutant for mutant in build.listed() if mutant["name"] in lived]
        asked.folder, asked.count = asked.folder / "again", len(drawn)
        asked.folder.mkdir(exist_ok=True)
    else:
        drawn = build.listed()
        random.Random(asked.seed).shuffle(drawn)
    print(f"{asked.count} of {len(drawn)}", flush=True)
    made = build.built(asked.folder, drawn, asked.count, asked.libraries)
    print(f"{len(made.mutants)} built after {time.monotonic() - begun:.0f} s, passed over: {made.passed_over}", flush=True)
    done = {line["name"] for line in read(outcomes)}
    with open(outcomes, "a", encoding="utf-8") as out:
        for package, member in sorted(build.MEMBERS.items()):
            tests = learn.reaches(asked.folder, made, member)
            print(f"{len(tests)} tests of {member} learned after {time.monotonic() - begun:.0f} s", flush=True)
            for mutant in made.mutants:
                if mutant["package"] != package or mutant["name"] in done or time.monotonic() - begun > asked.seconds:
                    continue
                line = {"name": mutant["name"], "number": mutant["number"], **outcome(made.tree, tests, mutant["number"])}
                out.write(json.dumps(line) + "\n")
                out.flush()
                if line["outcome"] != "caught":
                    print(f"{line['outcome']}: {mutant['name']}", flush=True)
    told = read(outcomes)
    print(f"{sum(line['outcome'] == 'caught' for line in told)} of {len(told)} caught", flush=True)


main()
