#!/usr/bin/env python3
"""SIGKILL at random moments while findings are recorded: nothing acknowledged is lost, nothing is doubled, the last
unanswered call is wholly there or wholly not, and the ledger verifies each time.

LIMBLEDGER_PROGRAM names the program, LIMBLEDGER_KILLS the number of kills, LIMBLEDGER_SEED the seed (printed first).
A kill does not test power loss: the operating system keeps what was written. power_cut_test.cpp does that.
"""
import json
import os
import random
import select
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import uuid

PROGRAM = os.environ.get("LIMBLEDGER_PROGRAM", "build/limbledger")
KILLS = int(os.environ.get("LIMBLEDGER_KILLS", "100"))
SEED = int(os.environ.get("LIMBLEDGER_SEED", "20261124"))
rng = random.Random(SEED)
print(f"seed {SEED}, {KILLS} kills")


def make_uuid():
    return str(uuid.UUID(int=rng.getrandbits(128), version=4))


class Sidecar:
    def __init__(self, ledger):
        self.process = subprocess.Popen(
            [PROGRAM, "serve", "--ledger", ledger, "--stdio", "lines"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, bufsize=0)
        self.left = b""
        self.next_id = 0

    def send(self, method, params):
        self.next_id += 1
        text = json.dumps({"jsonrpc": "2.0", "id": self.next_id, "method": method, "params": params})
        self.process.stdin.write(text.encode() + b"\n")

    def line(self, seconds):
        """One answer, or None when none came in that time or the program is gone."""
        until = time.monotonic() + seconds
        while b"\n" not in self.left:
            rest = until - time.monotonic()
            if rest <= 0 or not select.select([self.process.stdout], [], [], rest)[0]:
                return None
            some = os.read(self.process.stdout.fileno(), 65536)
            if not some:
                return None
            self.left += some
        answer, self.left = self.left.split(b"\n", 1)
        return json.loads(answer)

    def ask(self, method, params):
        self.send(method, params)
        answer = self.line(60)
        if answer is None or "error" in answer:
            sys.exit(f"{method} was answered {answer}")
        return answer["result"]

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()
        answers = []
        while (answer := self.line(0.2)) is not None:
            answers.append(answer)
        return answers


def batch(exam, seen, number):
    """Three findings in one call; the number is in their values."""
    deg = 60 + number % 100
    findings = [{"item": item, "side": side, "value": {"kind": "angle", "toward_deg": deg}, "instrument": "goniometer_long", "beside": True}
                for item, side in (("knee.flexion_passive", "left"), ("knee.flexion_active", "left"), ("knee.flexion_passive", "right"))]
    return {"exam": exam, "findings": findings, "seen": seen, "request": make_uuid()}


def check(sidecar, acknowledged, pending, exam):
    """What is on disk against what was answered."""
    held = {finding["finding"]: finding for finding in sidecar.ask("exam.read", {"exam": exam})["exam"]["findings"]}
    for recorded in acknowledged:
        for one in recorded:
            if held.get(one["finding"], {}).get("entry") != one["entry"]:
                return f"lost: {one}"
    extra = len(held) - sum(len(recorded) for recorded in acknowledged)
    state = sidecar.ask("request.read", {"request": pending["request"]}) if pending else {}
    if extra not in (0, 3):
        return f"{extra} findings that nobody acknowledged"
    if extra == 3 and len(state.get("entries", [])) != 3:
        return f"a call half there: {state}"
    verified = sidecar.ask("ledger.verify", {})
    return f"damage: {verified['damage']}" if verified["damage"] else None


def main():
    folder = tempfile.mkdtemp(prefix="limbledger-kills-")
    ledger = os.path.join(folder, "ledger")
    subprocess.run([PROGRAM, "new", ledger, "--demo"], check=True, stdout=subprocess.DEVNULL)
    failures, total, answered_late = [], 0, 0
    sidecar = Sidecar(ledger)
    for kill in range(KILLS):
        exam_reply = sidecar.ask("exam.open", {"complaint": "free", "setting": "outreach", "request": make_uuid()})
        exam, seen = exam_reply["exam"]["exam"], exam_reply["revision"]
        acknowledged, pending = [], None
        for number in range(rng.randrange(1, 12)):
            pending = batch(exam, seen, number)
            answer = sidecar.ask("finding.record", pending)
            acknowledged.append(answer["recorded"])
            seen = answer["revision"]
        pending = batch(exam, seen, 99)
        sidecar.send("finding.record", pending)
        time.sleep(rng.random() * rng.choice((0.0002, 0.001, 0.004)))
        for late in sidecar.kill():
            acknowledged.append(late["result"]["recorded"])
            answered_late += 1
        total += sum(len(recorded) for recorded in acknowledged)
        sidecar = Sidecar(ledger)
        if (wrong := check(sidecar, acknowledged, pending, exam)) is not None:
            failures.append(f"kill {kill}: {wrong}")
        # The same request once more: the same entries where it was there, and new ones only where it was not.
        again = sidecar.ask("finding.record", pending)
        count = len(sidecar.ask("exam.read", {"exam": exam})["exam"]["findings"])
        recorded_calls = len({recorded[0]["finding"] for recorded in acknowledged} | {again["recorded"][0]["finding"]})
        if count != 3 * recorded_calls:
            failures.append(f"kill {kill}: {count} findings after the repeat")
    sidecar.process.stdin.close()
    if sidecar.process.wait() != 0:
        failures.append("no clean stop at the end")
    shutil.rmtree(folder)
    for failure in failures:
        print(failure)
    print(f"{total} acknowledged findings, {answered_late} last calls answered before the kill")
    print(f"{KILLS - len(failures)} passed, {len(failures)} failed")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
