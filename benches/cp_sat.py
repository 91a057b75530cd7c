#!/usr/bin/env python3
"""CP-SAT on the programs that the ratio run wrote down: on a grid, one thread, one after the other.

    cargo bench -p elbowroom-solver --features highs --bench ratio
    python3 -m venv /tmp/ratio && /tmp/ratio/bin/pip install ortools
    /tmp/ratio/bin/python benches/cp_sat.py PROGRAMS [KIND] [ROOM]

Three columns: the program as stated with usual options on a grid of 10 mm, and tuned, with the program made ready for it,
on 10 mm and on 1 mm. Times are of the processor: CP-SAT's own solving, and what stating the program and making it ready took
in the ratio run. Putting the program to it from Python is not timed.

A grid point is a point, so no optimum on a grid may be above elbowroom's; and the nearest grid point to elbowroom's keeps every row
but for half a step of each variable, so the program with rows let out by that must have a point that is worth as much but for
half a step. Either failing is a disagreement: it is told, and the exit code is 1. What the grid loses is told too.
"""

import json
import math
import pathlib
import sys
import time

from ortools.sat.python import cp_model

WORTH = 1_000_000  # what a millimetre is worth is held to a millionth
LIMIT = 60.0  # seconds for one program
SAME = 1e-6  # optima nearer to each other than this share are the same
KINDS = ("largest", "sizes", "plan")

USUAL = {"linearization_level": 2}
TUNED = {
    "linearization_level": 2,
    "cut_level": 0,
    "use_implied_bounds": False,
    "use_sat_inprocessing": False,
    "use_feasibility_pump": False,
    "max_presolve_iterations": 1,
    "symmetry_level": 0,
    "cp_model_probing_level": 0,
    "use_objective_lb_search": True,
    "relative_gap_limit": SAME,
}
COLUMNS = [
    ("as stated, 10 mm", "stated", 10.0, USUAL),
    ("tuned, 10 mm", "prepared", 10.0, TUNED),
    ("tuned, 1 mm", "prepared", 1.0, TUNED),
]


class Grid:
    """A program on a grid; `outward` lets every row out by what the nearest grid point may break it."""

    def __init__(self, program, step, outward=False):
        self.model = cp_model.CpModel()
        self.step, self.outward = step, outward
        self.bounds = program["bounds"]
        self.variables = [self.on_grid(index, *bounds) for index, bounds in enumerate(self.bounds)]
        for row in program["always"]:
            self.at_most(row)
        self.stands = {}
        for ways in program["ways"]:
            # The only stand of a piece is no choice.
            for state in ways if len(ways) > 1 else []:
                self.stands[state] = self.model.NewBoolVar(f"stands{state}")
            if len(ways) > 1:
                self.model.AddExactlyOne(self.stands[state] for state in ways)
        costs = []
        for choice in program["choices"]:
            costs += self.choose(choice)
        self.constant, worth = program["constant"], [-round(cost * WORTH) * pick for pick, cost in costs]
        self.give = 0.0
        for (variable, fixed), weight in zip(self.variables, program["objective"]):
            self.constant += weight * fixed
            if variable is not None and weight != 0.0:
                worth.append(round(weight * step * WORTH) * variable)
                self.give += abs(weight) * step / 2
        self.worth = sum(worth)
        self.model.Maximize(self.worth)

    def on_grid(self, index, low, high):
        """A variable in grid steps; one that no grid point falls to is the constant that it all but is."""
        if self.outward:
            first, last = math.floor(low / self.step + 0.5), math.floor(high / self.step + 0.5)
            first, last = (1, 0) if high - low < 1e-9 else (first, last)
        else:
            first, last = math.ceil(low / self.step - 1e-9), math.floor(high / self.step + 1e-9)
        if first <= last:
            return self.model.NewIntVar(first, last, f"x{index}"), 0.0
        return None, low

    def at_most(self, row, when=()):
        """The row in whole numbers, rounded the safe way; where it hangs on others, while these hold."""
        terms = [(index, coefficient) for index, coefficient in row["terms"] if self.variables[index][0] is not None]
        scale = scale_of([coefficient for _, coefficient in terms], 1000 if self.step > 1.0 else 10000)
        left, most = [], row["most"]
        most -= sum(coefficient * self.variables[index][1] for index, coefficient in row["terms"])
        for index, coefficient in terms:
            whole = round(coefficient * scale)
            off = coefficient - whole / scale
            if self.outward:
                most += max(-off * bound for bound in self.bounds[index]) + self.step / 2 * abs(whole / scale)
            else:
                most -= max(off * bound for bound in self.bounds[index])
            left.append(whole * self.variables[index][0])
        asked = self.model.Add(sum(left) <= math.floor(most / self.step * scale + 1e-6))
        if when:
            asked.OnlyEnforceIf(*when)

    def choose(self, choice):
        """One alternative at least, while these stands stand; the costs of the alternatives, if any."""
        when = [self.stands[state] for state in choice["when"] if state in self.stands]
        alternatives, costs = choice["alternatives"], choice["costs"]
        free = not any(costs)
        if not alternatives:
            self.model.AddBoolOr([stand.Not() for stand in when])
            return []
        if len(alternatives) == 1 and free:
            for row in alternatives[0]:
                self.at_most(row, when)
            return []
        if len(alternatives) == 2 and free and not when:
            pick = self.model.NewBoolVar("")
            picks = [pick, pick.Not()]
        else:
            picks = [self.model.NewBoolVar("") for _ in alternatives]
            self.model.AddBoolOr(picks + [stand.Not() for stand in when])
        for pick, alternative in zip(picks, alternatives):
            for row in alternative:
                self.at_most(row, [pick])
        return [(pick, cost) for pick, cost in zip(picks, costs) if cost]

    def above(self, least):
        """Only points that are worth more, by as much as is no rounding, count."""
        self.model.Add(self.worth >= math.floor((least - self.constant) * WORTH) + 1)

    def solve(self, parameters, satisfy=False):
        """How it ended, the best worth, and the seconds that it took."""
        solver = cp_model.CpSolver()
        for name, value in {"num_workers": 1, "max_time_in_seconds": LIMIT, **parameters}.items():
            setattr(solver.parameters, name, value)
        if satisfy:
            self.model.ClearObjective()
        before = time.process_time()
        status = solver.Solve(self.model)
        seconds = time.process_time() - before
        found = status in (cp_model.OPTIMAL, cp_model.FEASIBLE)
        value = solver.ObjectiveValue() / WORTH + self.constant if found and not satisfy else None
        return status, value, seconds


def scale_of(coefficients, otherwise):
    """The least factor that makes all of them whole."""
    for scale in (1, 2, 10):
        if all(abs(each * scale - round(each * scale)) < 1e-9 for each in coefficients):
            return scale
    return otherwise


def above(best):
    """What the next layout must be worth more than."""
    return None if best is None else best + SAME * abs(best)


class Column:
    """One room under one way of asking."""

    def __init__(self, which, step, parameters):
        self.which, self.step, self.parameters = which, step, parameters
        self.every = self.best = 0.0
        self.unfinished = self.lost_all = 0
        self.lost = []
        self.found = None

    def take(self, name, program):
        """Solves one program both ways; what disagrees with elbowroom."""
        optimum, seconds = program["optimum"], program["seconds"][self.which]
        self.every += seconds
        self.best += seconds
        stated = program[self.which]
        if stated is None:
            return [] if optimum is None else [f"{name}: nothing is left of a program that has {optimum}"]
        grid = Grid(stated, self.step)
        status, value, spent = grid.solve(self.parameters)
        self.every += spent
        better = Grid(stated, self.step)
        if self.found is not None:
            better.above(above(self.found))
        better_status, better_value, spent = better.solve(self.parameters)
        self.best += spent
        self.found = max((each for each in (self.found, better_value) if each is not None), default=None)
        done = (cp_model.OPTIMAL, cp_model.INFEASIBLE)
        self.unfinished += (status not in done) + (better_status not in done)
        return self.compare(name, stated, value, optimum) if status in done else []

    def compare(self, name, stated, value, optimum):
        if optimum is None:
            return [] if value is None else [f"{name}: CP-SAT has {value}, elbowroom nothing"]
        if value is None:
            self.lost_all += 1
        elif value > optimum + SAME * abs(optimum):
            return [f"{name}: CP-SAT has {value}, elbowroom {optimum}"]
        else:
            self.lost.append((optimum - value) / max(abs(optimum), 1.0))
        outward = Grid(stated, self.step, outward=True)
        outward.above(optimum - outward.give - SAME * abs(optimum))
        status, _, _ = outward.solve(TUNED, satisfy=True)
        if status == cp_model.INFEASIBLE:
            return [f"{name}: elbowroom has {optimum}, more than what a grid of {self.step} mm can lose above {value}"]
        return []


def room_of(path):
    room = json.loads(path.read_text())
    columns = [Column(*asked) for _, *asked in COLUMNS]
    wrong = []
    for program in room["programs"]:
        for (title, *_), column in zip(COLUMNS, columns):
            wrong += column.take(f"{room['room']} {program['arrangement']}, {title}", program)
    return room, columns, wrong


def table(title, rooms, seconds, own):
    print(f"\n{title}: ms, and how many times elbowroom's (warm; in brackets cold)\n")
    print("| room | elbowroom | cold | " + " | ".join(f"{name} | times" for name, *_ in COLUMNS) + " |")
    print("| --- | --- | --- |" + " --- | --- |" * len(COLUMNS))
    lines = [(room["room"], own(room), [seconds(column) for column in columns]) for room, columns in rooms]
    total = {key: sum(each[key] for _, each, _ in lines) for key in ("warm", "cold")}
    sums = [sum(spent) for spent in zip(*(spent for *_, spent in lines))]
    for name, each, spent in [*lines, ("sum", total, sums)]:
        cells = " | ".join(f"{s * 1e3:.0f} | {s / each['warm']:.0f} ({s / each['cold']:.0f})" for s in spent)
        print(f"| {name} | {each['warm'] * 1e3:.1f} | {each['cold'] * 1e3:.1f} | {cells} |")
    least = (
        " | | ".join(
            f"{min(s[i] / e['warm'] for _, e, s in lines):.0f} ({min(s[i] / e['cold'] for _, e, s in lines):.0f})"
            for i in range(len(COLUMNS))
        )
    )
    print(f"| least | | | | {least} |")


def losses(rooms):
    for index, (name, *_) in enumerate(COLUMNS):
        columns = [columns[index] for _, columns in rooms]
        lost = [each for column in columns for each in column.lost]
        if lost:
            print(
                f"{name}: the grid loses {sum(lost) / len(lost) * 100:.3f} % of the optimum on average, {max(lost) * 100:.2f} % at"
                f" most, and all layouts of {sum(column.lost_all for column in columns)} arrangements;"
                f" not finished in {LIMIT:.0f} s: {sum(column.unfinished for column in columns)}"
            )


def main(folder, *asked):
    disagree = False
    for kind in [kind for kind in KINDS if not set(asked) & set(KINDS) or kind in asked]:
        paths = sorted(pathlib.Path(folder, kind).glob("*.json"))
        names = {path.stem for path in paths}
        rooms = []
        for path in [path for path in paths if not set(asked) & names or path.stem in asked]:
            room, columns, wrong = room_of(path)
            rooms.append((room, columns))
            for each in wrong:
                print(each, file=sys.stderr)
            disagree = disagree or bool(wrong)
        if rooms:
            table(f"{kind}, every arrangement", rooms, lambda column: column.every, lambda room: room["own"]["every"])
            table(f"{kind}, the best layout of the room alone", rooms, lambda column: column.best, lambda room: room["own"]["best"])
            print()
            losses(rooms)
    return 1 if disagree else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
