"""A test program run once, with a limit on the processor and not on the clock: the machine may have other work."""

import dataclasses
import os
import re
import resource
import subprocess

MOST_MEMORY = 8 << 30
# By the clock, in seconds, only what waits for ever ends.
CLOCK = 7200


@dataclasses.dataclass
class Ended:
    """How tests came out (`passed`, `failed`, `died`, `processor` or `clock`), after how many seconds of the processor, and which
    of them failed."""

    how: str
    took: float
    failed: list


def used():
    spent = resource.getrusage(resource.RUSAGE_CHILDREN)
    return spent.ru_utime + spent.ru_stime


def tried(folder, program, tests, mutant, limit, reached=None):
    # Laws draw alike each time, and leave nothing behind that would help with the next mutant.
    laws = {"RNG_SEED": "1", "MAX_SHRINK_ITERS": "0", "DISABLE_FAILURE_PERSISTENCE": "1"}
    told = {"MUTANT": str(mutant), "RUST_BACKTRACE": "0", **{f"PROPTEST_{name}": value for name, value in laws.items()}}
    if reached:
        told["REACHED"] = reached

    def limited():
        resource.setrlimit(resource.RLIMIT_CPU, (int(limit) + 1, int(limit) + 5))
        resource.setrlimit(resource.RLIMIT_AS, (MOST_MEMORY, MOST_MEMORY))

    before = used()
    words = ["timeout", "--foreground", "-k", "5", str(CLOCK), program, "--exact", "--test-threads=2", *tests]
    done = subprocess.run(words, cwd=folder, env=dict(os.environ, **told), capture_output=True, preexec_fn=limited)
    failed = re.findall(rb"(?m)^test (\S+).* FAILED$", done.stdout)
    codes = {0: "passed", 101: "failed", 124: "clock", 137: "processor", 152: "processor"}
    return Ended(codes.get(done.returncode, "died"), used() - before, [name.decode() for name in failed])
