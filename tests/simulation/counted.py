"""What the scripts that kill and check share: choices that one seed repeats, and checks that are counted.

LIMBLEDGER_SEED=20261126   the seed; the same one makes the same choices
"""
import os
import random
import uuid

SEED = int(os.environ.get("LIMBLEDGER_SEED", "20261126"))
rng = random.Random(SEED)
_told = {"passed": 0, "failures": []}


def check(good, what):
    if good:
        _told["passed"] += 1
    else:
        _told["failures"].append(what)
        print("FAILED:", what)


def make_uuid():
    return str(uuid.UUID(int=rng.getrandbits(128), version=4))


def report():
    """Prints the counts as the last line; gives the exit code."""
    print(f"{_told['passed']} passed, {len(_told['failures'])} failed")
    return 1 if _told["failures"] else 0
