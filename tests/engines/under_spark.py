"""500 rooms under Spark: its own `pipe`, on two local cores."""

import shlex
import sys
import time

from pyspark import SparkContext

import rooms


def main(program, place):
    folder, lines = rooms.made(place)
    wanted = rooms.expected(program, folder, place)
    with SparkContext(master=f"local[{rooms.WORKERS}]", appName="rooms") as spark:
        started = time.monotonic()
        piped = spark.parallelize(lines, 10).pipe(f"{shlex.quote(program)} batch - --threads 1", checkCode=True)
        rooms.compare("Spark", started, piped.collect(), wanted)


if __name__ == "__main__":
    main(*sys.argv[1:])
