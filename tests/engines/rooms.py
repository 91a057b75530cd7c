"""Rooms for the engines, and the bytes that they must give: those of `batch` over the same rooms in a folder."""

import json
import pathlib
import random
import subprocess
import time

ROOMS = 500
WORKERS = 2


def scenario(number):
    """A room, always the same for its number; every fiftieth is at fault, and a faulty room must stop nothing."""
    draw = random.Random(number)
    width, depth = draw.randint(380, 620), draw.randint(340, 500)
    window, door = draw.randint(20, 200), draw.randint(15, width - 100)
    sofa = draw.randint(190, 260)
    units = "furlong" if number % 50 == 49 else "cm"
    return f"""name: Room {number}
units: {units}
walls:
  - {{ name: front wall, length: {width}, holds: [{{ kind: window, at: {window}, width: 150, view: liked }}] }}
  - {{ name: right wall, length: {depth} }}
  - {{ name: back wall, length: {width}, holds: [{{ kind: door, at: {door}, width: 83, hinge: left, swings: in, leads_to: entrance }}] }}
  - {{ name: left wall, length: {depth} }}
pieces:
  - {{ kind: sofa, width: 150..{sofa} }}
  - {{ kind: coffee-table, needed: {str(number % 2 == 0).lower()} }}
"""


def made(place):
    """The rooms as files in a folder, and as lines in the order of their names."""
    folder = pathlib.Path(place) / "rooms"
    folder.mkdir(parents=True)
    lines = []
    for number in range(ROOMS):
        name = f"room-{number:04}.yaml"
        (folder / name).write_text(scenario(number))
        lines.append(json.dumps({"source": name, "scenario": scenario(number)}))
    return folder, lines


def expected(program, folder, place):
    """What `batch` leaves in a folder."""
    out = pathlib.Path(place) / "out"
    started = time.monotonic()
    subprocess.run([program, "batch", str(folder), "-o", str(out)], check=True, stdout=subprocess.DEVNULL)
    print(f"batch: {ROOMS} rooms, {time.monotonic() - started:.1f} s")
    return (out / "rooms.ndjson").read_bytes()


def piped(program, lines):
    """A part of the lines through the program, one room after another."""
    lines = "".join(f"{line}\n" for line in lines)
    ended = subprocess.run([program, "batch", "-", "--threads", "1"], input=lines.encode(), capture_output=True, check=True)
    return ended.stdout.decode().splitlines()


def compare(engine, started, found, wanted):
    """Ends with an error where the bytes differ."""
    got = "".join(f"{line}\n" for line in found).encode()
    assert len(found) == ROOMS, f"{len(found)} lines"
    assert got == wanted, f"{engine} gives other bytes than batch"
    faulty = sum(json.loads(line)["result"] is None for line in found)
    print(f"{engine}: the same {len(got)} bytes, {faulty} rooms at fault, {time.monotonic() - started:.1f} s")
