"""500 rooms under Dask: two local workers, each piping parts of the lines through the program."""

import sys
import time

import dask.bag
from dask.distributed import Client, LocalCluster

import rooms


def main(program, place):
    folder, lines = rooms.made(place)
    wanted = rooms.expected(program, folder, place)
    with LocalCluster(n_workers=rooms.WORKERS, threads_per_worker=1, dashboard_address=None) as cluster, Client(cluster):
        started = time.monotonic()
        parts = dask.bag.from_sequence(lines, npartitions=10)
        found = parts.map_partitions(lambda part: rooms.piped(program, part)).compute()
    rooms.compare("Dask", started, found, wanted)


if __name__ == "__main__":
    main(*sys.argv[1:])
