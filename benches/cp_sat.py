#!/usr/bin/env python3
"""CP-SAT on the programs that the ratio run wrote down: on a 10 mm grid, one thread, one after the other.

    cargo bench -p elbowroom-solver --features highs --bench ratio -- programs
    python3 -m venv /tmp/ratio && /tmp/ratio/bin/pip install ortools
    /tmp/ratio/bin/python benches/cp_sat.py programs

Only CP-SAT's own solving is timed (of the processor); stating the program to it is not. A grid point is never better than the optimum, so
its figure stands beside elbowroom's, a little below.
"""

import json
import math
import pathlib
import sys
import time

from ortools.sat.python import cp_model

GRID = 10.0  # mm
SCALE = 1000  # coefficients are held to a thousandth
WORTH = 1_000_000  # and what a millimetre is worth to a millionth
LIMIT = 120.0  # seconds for one program


def on_grid(model, index, low, high):
    """A variable in grid steps; one that no grid point falls to is the constant that it all but is."""
    first, last = math.ceil(low / GRID - 1e-9), math.floor(high / GRID + 1e-9)
    if first <= last:
        return model.NewIntVar(first, last, f"x{index}"), 0.0
    return None, low


def at_most(model, variables, row):
    """The row in whole numbers, rounded the safe way."""
    left, most = [], row["most"]
    for index, coefficient in row["terms"]:
        variable, fixed = variables[index]
        most -= coefficient * fixed
        if variable is not None:
            left.append(round(coefficient * SCALE) * variable)
    return model.Add(sum(left) <= math.floor(most / GRID * SCALE + 1e-6))


def solve(program, least=None):
    """The best grid point, or (with `least`) the best that has more than that; and the seconds that it took."""
    model = cp_model.CpModel()
    variables = [on_grid(model, index, *bounds) for index, bounds in enumerate(program["bounds"])]
    for row in program["always"]:
        at_most(model, variables, row)
    stands = {}
    for ways in program["ways"]:
        for state in ways:
            stands[state] = model.NewBoolVar(f"stands{state}")
        model.AddExactlyOne(stands[state] for state in ways)
    for choice in program["choices"]:
        picks = []
        for alternative in choice["alternatives"]:
            pick = model.NewBoolVar("")
            for row in alternative:
                at_most(model, variables, row).OnlyEnforceIf(pick)
            picks.append(pick)
        model.AddBoolOr(picks + [stands[state].Not() for state in choice["when"]])
    constant, worth = program["constant"], []
    for (variable, fixed), weight in zip(variables, program["objective"]):
        constant += weight * fixed
        if variable is not None:
            worth.append(round(weight * GRID * WORTH) * variable)
    model.Maximize(sum(worth))
    if least is not None:
        model.Add(sum(worth) >= math.floor((least - constant) * WORTH) + 1)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.linearization_level = 2
    solver.parameters.max_time_in_seconds = LIMIT
    before = time.process_time()
    status = solver.Solve(model)
    seconds = time.process_time() - before
    found = status in (cp_model.OPTIMAL, cp_model.FEASIBLE)
    value = solver.ObjectiveValue() / WORTH + constant if found else None
    return solver.StatusName(status), value, seconds


def main(folder):
    rooms = {}
    for path in sorted(pathlib.Path(folder).glob("*.json")):
        program = json.loads(path.read_text())
        status, value, seconds = solve(program)
        room = rooms.setdefault(program["room"], {"own": 0.0, "other": 0.0, "count": 0, "open": 0, "below": 0.0,
                                             "own best": 0.0, "other best": 0.0, "best": None})
        _, better, best_seconds = solve(program, room["best"])
        room["best"] = max(filter(lambda each: each is not None, [room["best"], better]), default=None)
        room["own"] += program["seconds"]
        room["own best"] += program["best_seconds"]
        room["other best"] += best_seconds
        room["other"] += seconds
        room["count"] += 1
        room["open"] += status not in ("OPTIMAL", "INFEASIBLE")
        if value is not None and program["best"] is not None:
            room["below"] = max(room["below"], 1.0 - value / program["best"])
            if value > program["best"] + 1e-3 * abs(program["best"]):
                print(f"{path.name}: CP-SAT has {value}, elbowroom {program['best']}", file=sys.stderr)
        elif (value is None) != (program["best"] is None):
            print(f"{path.name}: CP-SAT says {status}, elbowroom {program['best']}", file=sys.stderr)
    print(f"{'room':<16} {'programs':>8} {'elbowroom ms':>13} {'CP-SAT ms':>11} {'ratio':>8} {'best only':>10} {'CP-SAT ms':>10} {'ratio':>7} {'grid costs':>10}")
    for name, room in rooms.items():
        ratio = room["other"] / room["own"]
        unfinished = f"  ({room['open']} unfinished)" if room["open"] else ""
        print(
            f"{name:<16} {room['count']:>8} {room['own'] * 1e3:>13.2f} {room['other'] * 1e3:>11.1f} "
            f"{ratio:>8.1f} {room['own best'] * 1e3:>10.2f} {room['other best'] * 1e3:>10.1f} "
            f"{room['other best'] / room['own best']:>7.1f} {room['below'] * 100:>9.2f}%{unfinished}"
        )
    own, other, own_best, other_best = (
        sum(room[key] for room in rooms.values()) for key in ("own", "other", "own best", "other best")
    )
    print(
        f"{'sum':<16} {sum(r['count'] for r in rooms.values()):>8} {own * 1e3:>13.2f} {other * 1e3:>11.1f} {other / own:>8.1f} "
        f"{own_best * 1e3:>10.2f} {other_best * 1e3:>10.1f} {other_best / own_best:>7.1f}"
    )


if __name__ == "__main__":
    main(sys.argv[1])
