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


def unreached(tests, number):
    """What is to be said of a mutant that no test can notice; `None` of the others."""
    reaching = [test for test in tests if number in test["reached"]]
    if not reaching:
        return {"outcome": "not reached"}
    if all(number in test["alike"] for test in reaching):
        return {"outcome": "makes no difference", "reached by": len(reaching)}
    return None


def caught(tree, batch, number):
    """How a batch of tests notices a mutant; `None` where it does not."""
    for program in sorted({test["program"] for test in batch}):
        of_program = [test for test in batch if test["program"] == program]
        limit = 20 + 5 * sum(test["took"] for test in of_program)
        ended = trial.tried(tree / of_program[0]["member"], program, [test["name"] for test in of_program], number, limit)
        if ended.how != "passed":
            return {"outcome": "caught", "how": ended.how, "by": ended.failed[:3]}
    return None


def outcomes_of(tree, tests, mutants, is_over):
    """Each mutant with what became of it. All are put to the short tests before any is to the long ones."""
    left = []
    for mutant in mutants:
        told = unreached(tests, mutant["number"])
        if told:
            yield mutant, told
        else:
            differing = [test for test in tests if mutant["number"] in test["reached"] - test["alike"]]
            left.append((mutant, batches(differing)))
    for step in range(len(STEPS)):
        living = []
        for mutant, of_mutant in left:
            if is_over():
                return
            if step >= len(of_mutant):
                yield mutant, {"outcome": "survives", "tests": sum(map(len, of_mutant))}
            elif told := caught(tree, of_mutant[step], mutant["number"]):
                yield mutant, told
            else:
                living.append((mutant, of_mutant))
        left = living
        print(f"{len(left)} live after step {step + 1}: {[mutant['name'] for mutant, _ in left]}", flush=True)
    for mutant, of_mutant in left:
        yield mutant, {"outcome": "survives", "tests": sum(map(len, of_mutant))}


def read(file):
    return [json.loads(line) for line in file.read_text(encoding="utf-8").splitlines()] if file.exists() else []


def main():
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    words.add_argument("folder", type=plant.folder_of)
    words.add_argument("--count", type=int, default=200)
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--seconds", type=float, default=3600, help="of the clock, after which no further mutant is begun")
    words.add_argument("--longest", type=float, default=900, help="seconds of the processor; a test that takes longer is left out")
    words.add_argument("--without", action="append", default=[], help="leave out the tests whose names begin so")
    words.add_argument("--libraries", type=plant.folder_of, help="a target folder of the gate, whose libraries are taken over")
    words.add_argument("--again", action="store_true", help="only what survived, with the tests of the last commit")
    asked = words.parse_args()
    asked.folder.mkdir(parents=True, exist_ok=True)
    begun = time.monotonic()

    outcomes = asked.folder / ("again.ndjson" if asked.again else "outcomes.ndjson")
    lived = {line["name"] for line in read(asked.folder / "outcomes.ndjson") if line["outcome"] != "caught"}
    if asked.again:
        asked.folder = asked.folder / "again"
        asked.folder.mkdir(exist_ok=True)
    made = build.known(asked.folder)
    if made is None:
        drawn = [mutant for mutant in build.listed() if not asked.again or mutant["name"] in lived]
        random.Random(asked.seed).shuffle(drawn)
        made = build.built(asked.folder, drawn, len(drawn) if asked.again else asked.count, asked.libraries)
    print(f"{len(made.mutants)} built after {time.monotonic() - begun:.0f} s, passed over: {made.passed_over}", flush=True)
    done = {line["name"] for line in read(outcomes)}
    with open(outcomes, "a", encoding="utf-8") as out:
        for package, member in sorted(build.MEMBERS.items()):
            tests = learn.reaches(asked.folder, made, member, asked.longest, tuple(asked.without))
            print(f"{len(tests)} tests of {member} learned after {time.monotonic() - begun:.0f} s", flush=True)
            mutants = [mutant for mutant in made.mutants if mutant["package"] == package and mutant["name"] not in done]
            for mutant, told in outcomes_of(made.tree, tests, mutants, lambda: time.monotonic() - begun > asked.seconds):
                out.write(json.dumps({"name": mutant["name"], "number": mutant["number"], **told}) + "\n")
                out.flush()
                if told["outcome"] != "caught":
                    print(f"{told['outcome']}: {mutant['name']}", flush=True)
    told = read(outcomes)
    print(f"{sum(line['outcome'] == 'caught' for line in told)} of {len(told)} caught", flush=True)


main()
