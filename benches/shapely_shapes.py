#!/usr/bin/env python3
"""Shapes as elbowroom measures them, measured by GEOS: whatever differs is told, and is an error.

    cargo bench -p elbowroom-solver --bench shapes > shapes.ndjson
    python3 -m venv /tmp/shapes && /tmp/shapes/bin/pip install shapely==2.2.0
    /tmp/shapes/bin/python benches/shapely_shapes.py shapes.ndjson

A length may differ by what rounding makes of coordinates of some metres; whether two shapes touch is asked of GEOS only where they
are further from touching than that.
"""

import collections
import json
import sys

import shapely
from shapely.geometry import LineString, MultiPoint, Point, Polygon

LENGTH = 1e-6  # mm
AREA = 1e-2  # mm2: a millionth of a millimetre along ten metres


def shape(corners):
    return Polygon(corners) if len(corners) > 2 else LineString(corners)


def depth(first, second):
    """How far one is to be moved to leave the other: of all differences of places, the nearest on their edge."""
    differences = MultiPoint([(a[0] - b[0], a[1] - b[1]) for a in first for b in second]).convex_hull
    nought = Point(0.0, 0.0)
    if differences.geom_type != "Polygon" or not differences.contains(nought):
        return 0.0
    return differences.exterior.distance(nought)


def overshoot(room, piece):
    outside = [room.distance(Point(corner)) for corner in piece.exterior.coords]
    inside = [piece.exterior.distance(Point(at)) for at in room.exterior.coords if piece.contains(Point(at))]
    return max([0.0, *outside, *inside])


def differences(line):
    first, second = shape(line["first"]), shape(line["second"])
    room = Polygon(line["room"])
    assert first.is_valid and second.is_valid and room.is_valid, line
    distance = first.distance(second)
    common = first.intersection(second).area
    at = [Point(place) for place in line["at"]]
    polygons = first.geom_type == second.geom_type == "Polygon"

    def differs(what, here, there, within):
        if abs(here - there) > within:
            yield what, here, there

    yield from differs("gap", line["gap"], distance, LENGTH)
    yield from differs("apart", line["apart"], distance, LENGTH)
    for place, of in zip(at, (first, second)):
        yield from differs("a place of the gap", place.distance(of), 0.0, LENGTH)
    yield from differs("between the places", at[0].distance(at[1]), distance, LENGTH)
    if distance > LENGTH or common > AREA:
        yield from differs("meets", line["meets"], distance == 0.0, 0)
    yield from differs("common", line["common"], common, AREA)
    if polygons:
        yield from differs("depth", line["depth"], depth(line["first"], line["second"]), LENGTH)
    yield from differs("area", line["area"], first.area, AREA)
    if first.geom_type == "Polygon":
        yield from differs("overshoot", line["overshoot"], overshoot(room, first), LENGTH)
        if first.distance(room.exterior) > LENGTH or not room.contains(first):
            yield from differs("covers", line["covers"], room.contains_properly(first), 0)
    parts = [Polygon(part) for part in line["parts"]]
    yield from differs("parts", sum(part.area for part in parts), room.area, AREA)
    yield from differs("parts together", shapely.union_all(parts).symmetric_difference(room).area, 0.0, AREA)
    for part in parts:
        yield from differs("a convex part", part.convex_hull.area, part.area, AREA)
    yield from differs("hull", line["hull"], room.convex_hull.area, AREA)
    yield from differs("pockets", line["pockets"], room.convex_hull.area - room.area, AREA)


def main():
    counts, told, met, apart = collections.Counter(), 0, 0, 0
    with open(sys.argv[1], encoding="utf-8") as lines:
        for number, text in enumerate(lines):
            line = json.loads(text)
            met, apart = met + (line["gap"] == 0), apart + (line["gap"] > 0)
            for what, here, there in differences(line):
                counts[what] += 1
                told += 1
                if told <= 20:
                    print(f"{number}: {what}: elbowroom {here}, GEOS {there}")
    print(f"GEOS {shapely.geos_version_string}: {met} pairs that meet, {apart} apart, {told} differences {dict(counts)}")
    sys.exit(told > 0)


main()
