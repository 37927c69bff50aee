#!/usr/bin/env python3
"""The day of many tablets as real processes: each records its exams by its sidecar and comes home to the hub's over HTTPS, by a parcel on a
stick, or some so and some so; in several orders, and twice. Every time the clinic reads the same out of its ledger, and so does a tablet
that took it back with it. Time and bytes are printed; that nothing new costs at most 256 bytes of exchange, both ways, is checked.

LIMBLEDGER_PROGRAM names the program, LIMBLEDGER_TIER=full makes it the whole day: 12 tablets, 40 exams each, 60 findings an exam;
LIMBLEDGER_SEED the seed (printed first).
"""
import hashlib
import json
import os
import shutil
import sys
import tempfile
import time

from counted import SEED, check, make_uuid, report, rng
from served_exchange import Sidecar, join, new_clinic

TABLETS, EXAMS, FINDINGS = (12, 40, 60) if os.environ.get("LIMBLEDGER_TIER") == "full" else (3, 4, 12)


def examine(tablet, items):
    """The tablet's exams, every finding another item or side."""
    for _ in range(EXAMS):
        opened = tablet.ask("exam.open", {"complaint": "free", "setting": "outreach", "request": make_uuid()})
        findings = [{"item": items[number // 2], "side": ("left", "right")[number % 2], "value": {"kind": "answer", "answer": rng.choice(("no", "unsure"))}}
                    for number in range(FINDINGS)]
        tablet.ask("finding.record", {"exam": opened["exam"]["exam"], "findings": findings, "seen": opened["revision"], "request": make_uuid()})


def state_of(sidecar):
    """A digest of every exam as it is read, and how many there are. Nothing of the device that answers is in it."""
    exams = sorted(one["exam"] for one in sidecar.ask("exam.find", {"limit": 500})["exams"])
    whole = hashlib.sha256()
    for exam in exams:
        read = sidecar.ask("exam.read", {"exam": exam})
        check(len(read["exam"]["findings"]) == FINDINGS, f"{exam} has all its findings")
        whole.update(json.dumps(read, sort_keys=True).encode())
    return len(exams), whole.hexdigest()


def by_network(tablet, url):
    done = tablet.exchange(url)
    check(done["state"] == "done" and done["same"], f"an exchange: {done}")
    return done


def by_stick(tablet, hub, path):
    tablet.ask("parcel.write", {"path": path})
    written = tablet.comes_to()
    check(written["state"] == "done", f"a parcel is written: {written}")
    hub.ask("parcel.take", {"path": path})
    taken = hub.comes_to()
    check(taken["state"] == "done" and taken["whole"], f"a whole parcel: {taken}")
    size = os.path.getsize(path)
    os.remove(path)
    return taken["taken"], size


def comes_home(at, way, url, hub, stick):
    """All tablets, in an order of this time's; gives the entries that were new and the bytes."""
    order = list(range(TABLETS))
    rng.shuffle(order)
    entries = size = 0
    for number in order:
        tablet = Sidecar(at(f"tablet{number}"))
        if way == "stick" or (way == "either" and number % 2 == 0):
            new, carried = by_stick(tablet, hub, os.path.join(stick, f"{number}.parcel"))
        else:
            done = by_network(tablet, url)
            new, carried = done["given"], done["bytes"]
        entries, size = entries + new, size + carried
        tablet.stop()
    return entries, size


def main():
    print(f"seed {SEED}, {TABLETS} tablets x {EXAMS} exams x {FINDINGS} findings")
    folder = tempfile.mkdtemp(prefix="limbledger-day-")
    at = lambda name: os.path.join(folder, name)
    hub, port, url, code = new_clinic(at("hub"))
    items = [one["item"] for one in hub.ask("catalogue.read")["items"] if one["value"] == "answer" and not one["safety"] and one.get("sides") == ["left", "right"]]
    for number in range(TABLETS):
        join(hub, url, code, at(f"tablet{number}"))
        tablet = Sidecar(at(f"tablet{number}"))
        examine(tablet, items)
        tablet.stop()
    hub.stop()
    held = None
    for way in ("network", "stick", "either"):
        world = lambda name, way=way: os.path.join(at(way), name)
        os.mkdir(at(way))
        os.mkdir(world("stick"))
        for name in ("hub", *(f"tablet{number}" for number in range(TABLETS))):
            shutil.copytree(at(name), world(name))
        hub = Sidecar(world("hub"), port)
        for time_of in ("first", "second"):
            began = time.monotonic()
            entries, size = comes_home(world, way, url, hub, world("stick"))
            lasted = time.monotonic() - began
            state = state_of(hub)
            held = held or state
            check(state == held and state[0] == TABLETS * EXAMS, f"by {way}, the {time_of} time: one and the same state: {state} and {held}")
            check((entries == 0) == (time_of == "second"), f"by {way}, the {time_of} time: {entries} new entries")
            print(f"by {way}, the {time_of} time: {entries} new entries, {size} bytes, {lasted:.1f} s")
        # All take the rest home; then nothing is new on either side.
        for _ in range(2):
            for number in range(TABLETS):
                tablet = Sidecar(world(f"tablet{number}"))
                by_network(tablet, url)
                tablet.stop()
        tablet = Sidecar(world("tablet0"))
        again = by_network(tablet, url)
        check(again["bytes"] <= 256 and again["taken"] == again["given"] == 0, f"nothing new costs at most 256 bytes: {again}")
        check(state_of(tablet) == held, "a tablet holds what the clinic holds")
        verified = [each.ask("ledger.verify") for each in (hub, tablet)]
        check(not any(each["damage"] for each in verified), f"both verify: {[each['damage'] for each in verified]}")
        tablet.stop()
        hub.stop()
        shutil.rmtree(at(way))
    print(f"state {held[1]}, {held[0]} exams")
    shutil.rmtree(folder)
    return report()


if __name__ == "__main__":
    sys.exit(main())
