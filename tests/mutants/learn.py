"""Which mutants each test reaches, and how long it takes."""

import json
import subprocess
import tempfile

import trial

def names(program, folder):
    told = subprocess.run([program, "--list", "--format", "terse"], cwd=folder, capture_output=True, text=True, check=True)
    return [line.removesuffix(": test") for line in told.stdout.splitlines() if line.endswith(": test")]


def learned(folder, program, name, longest):
    """How long a test takes, which mutants it reaches, and of those the ones that come to the same each time; why not, where it
    is left out."""
    with tempfile.NamedTemporaryFile() as file:
        ended = trial.tried(folder, program, [name], "none", longest, file.name)
        lines = file.read().decode().split()
    if ended.how != "passed":
        return {"left out": f"takes longer than {longest} s" if ended.how == "processor" else "fails unchanged"}
    reached = {int(line) for line in lines if line.isdigit()}
    both = {int(line[1:]) for line in lines if line[0] == "b"}
    differ = {int(line[1:]) for line in lines if line[0] == "d"}
    return {"took": ended.took, "reached": sorted(reached | both), "alike": sorted(both - differ)}


def reaches(folder, made, member, longest, without):
    """Of each test of the member; what was learned before is taken."""
    known = folder / "learned.ndjson"
    before = {}
    if known.exists():
        for line in known.read_text(encoding="utf-8").splitlines():
            test = json.loads(line)
            before[test["program"], test["name"]] = test
    tests = []
    with open(known, "a", encoding="utf-8") as out:
        for program in made.programs[member]:
            for name in names(program, made.tree / member):
                if name.startswith(without):
                    continue
                test = before.get((program, name))
                if test is None or ("left out" in test and longest > test["longest"]):
                    test = {"member": member, "program": program, "name": name, "longest": longest}
                    test |= learned(made.tree / member, program, name, longest)
                    out.write(json.dumps(test) + "\n")
                    out.flush()
                if "took" in test:
                    tests.append(dict(test, reached=set(test["reached"]), alike=set(test["alike"])))
                else:
                    print(f"left out, {test['left out']}: {name}", flush=True)
    return sorted(tests, key=lambda test: (test["took"], test["name"]))
