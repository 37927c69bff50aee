#!/usr/bin/env python3
"""A hub and two tablets as real processes: enrolment by six digits, exchange over HTTPS, parcels on a stick. SIGKILL of the hub or of
the tablet at random moments of an exchange, a full disk on either side, a stick that is pulled, copied badly or full: afterwards
all hold the same, everything acknowledged is there, and every ledger verifies.

LIMBLEDGER_PROGRAM names the program, LIMBLEDGER_EXCHANGE_KILLS the number of kills, LIMBLEDGER_SEED the seed (printed first).
"""
import http.client
import json
import os
import re
import resource
import shutil
import signal
import ssl
import subprocess
import sys
import tempfile
import threading
import time

from counted import SEED, check, make_uuid, report, rng

PROGRAM = os.path.abspath(os.environ.get("LIMBLEDGER_PROGRAM", "build/limbledger"))
KILLS = int(os.environ.get("LIMBLEDGER_EXCHANGE_KILLS", "30"))
print(f"seed {SEED}, {KILLS} kills")


def no_file_over(size):
    return lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (size, size))


def run(*words, limit=None, text=""):
    done = subprocess.run([PROGRAM, *words], input=text, capture_output=True, text=True, timeout=300, preexec_fn=limit and no_file_over(limit))
    return done.returncode, done.stdout, done.stderr


class Hub:
    """limbledger hub on a free port; its lines are read as they come."""

    def __init__(self, ledger, *more, code=None, limit=None):
        words, pipes = [PROGRAM, "hub", "--ledger", ledger, "--address", "127.0.0.1", "--port", "0", *more], ()
        if code:
            reading, writing = os.pipe()
            os.write(writing, code.encode() + b"\n")
            os.close(writing)
            words += ["--code-fd", str(reading)]
            pipes = (reading,)
        self.process = subprocess.Popen(words, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, pass_fds=pipes,
                                        preexec_fn=limit and no_file_over(limit))
        for one in pipes:
            os.close(one)
        self.lines, self.more = [], threading.Condition()
        threading.Thread(target=self.read, daemon=True).start()
        self.url = self.wait_for(r"Answering at (https://\S+)")

    def read(self):
        for line in self.process.stdout:
            with self.more:
                self.lines.append(line)
                self.more.notify_all()
        with self.more:
            self.lines.append("")
            self.more.notify_all()

    def wait_for(self, pattern):
        with self.more:
            for _ in range(600):
                found = re.search(pattern, "".join(self.lines))
                if found:
                    return found.group(1)
                if self.lines and self.lines[-1] == "":
                    break
                self.more.wait(1)
        sys.exit(f"the hub said no {pattern}: {self.lines} {self.process.stderr.read()}")

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def stop(self):
        self.process.send_signal(signal.SIGTERM)
        return self.process.wait(60)


def join(hub_ledger, code, ledger, answer=None):
    hub = Hub(hub_ledger, "--enrol", code=code)
    newcomer = subprocess.Popen([PROGRAM, "join", ledger, "--demo", "--with", hub.url, "--examiner", "Invented"], stdin=subprocess.PIPE,
                                stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
    theirs = hub.wait_for(r"\n +(\d{6})\n")
    mine, line = None, newcomer.stdout.readline()
    while line and mine is None:
        mine = re.fullmatch(r" +(\d{6})\n", line)
        line = newcomer.stdout.readline() if mine is None else line
    check(mine is not None and mine.group(1) == theirs, "both screens show the same six digits")
    if answer is None:
        hub.process.stdin.write("yes\n000000\n" if theirs != "000000" else "")  # no answer: only the digits themselves are one
        answer = theirs
    hub.process.stdin.write(answer + "\n")
    hub.process.stdin.flush()
    said = "".join(newcomer.communicate("yes\n", timeout=120))
    check(hub.stop() == 0, "the hub stops cleanly")
    return newcomer.returncode, said


def write(ledger, exams):
    """Exams with three findings each, by the sidecar; gives the requests that were acknowledged."""
    process = subprocess.Popen([PROGRAM, "serve", "--ledger", ledger, "--stdio", "lines"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
    requests = []

    def ask(method, params):
        process.stdin.write(json.dumps({"jsonrpc": "2.0", "id": 1, "method": method, "params": params}) + "\n")
        process.stdin.flush()
        answer = json.loads(process.stdout.readline())
        if "error" in answer:
            sys.exit(f"{method}: {answer}")
        if "request" in params and method != "request.read":
            requests.append(params["request"])
        return answer["result"]

    for number in range(exams):
        opened = ask("exam.open", {"complaint": "free", "setting": "outreach", "request": make_uuid()})
        findings = [{"item": item, "side": side, "value": {"kind": "angle", "toward_deg": 60 + number % 40}, "instrument": "goniometer_long"}
                    for item, side in (("knee.flexion_passive", "left"), ("knee.flexion_active", "left"), ("knee.flexion_passive", "right"))]
        ask("finding.record", {"exam": opened["exam"]["exam"], "findings": findings, "seen": opened["revision"], "request": make_uuid()})
    process.stdin.close()
    process.wait(60)
    return requests


def missing(ledger, requests):
    process = subprocess.Popen([PROGRAM, "serve", "--ledger", ledger, "--stdio", "lines"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
    lost = 0
    for request in requests:
        process.stdin.write(json.dumps({"jsonrpc": "2.0", "id": 1, "method": "request.read", "params": {"request": request}}) + "\n")
        process.stdin.flush()
        lost += json.loads(process.stdout.readline()).get("result", {}).get("state") != "recorded"
    process.stdin.close()
    process.wait(60)
    return lost


def entries_in(ledger):
    code, out, err = run("verify", ledger)
    check(code == 0, f"{ledger} verifies: {out}{err}")
    return int(re.search(r"entries +(\d+)", out).group(1))


def exchange(ledger, url):
    return run("exchange", "--ledger", ledger, "--with", url)


def comes_home(ledger, hub, what):
    code, out, err = exchange(ledger, hub.url)
    check(code == 0 and "Both hold the same" in out, f"{what}: {code} {out}{err}")


def kills(hub_ledger, tablet, acknowledged):
    hub = Hub(hub_ledger)
    began = time.monotonic()
    comes_home(tablet, hub, "the first exchange")
    lasts, at_work = time.monotonic() - began, 0
    for number in range(KILLS):
        acknowledged += write(tablet, rng.randrange(1, 6))
        victim = rng.choice(("hub", "tablet"))
        calling = subprocess.Popen([PROGRAM, "exchange", "--ledger", tablet, "--with", hub.url], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        time.sleep(lasts * rng.uniform(0.2, 1.1))
        at_work += calling.poll() is None
        if victim == "hub":
            hub.kill()
        calling.send_signal(signal.SIGKILL)
        calling.wait()
        if victim == "hub":
            if rng.random() < 0.3:
                acknowledged += write(hub_ledger, 1)
            hub = Hub(hub_ledger)
        began = time.monotonic()
        comes_home(tablet, hub, f"kill {number} of the {victim}")
        lasts = 0.7 * lasts + 0.3 * (time.monotonic() - began)
    print(f"{at_work} of {KILLS} came before the exchange had ended")
    check(at_work >= KILLS // 4, "kills came while the exchange was at work")
    check(hub.stop() == 0, "the hub stops cleanly")
    check(entries_in(hub_ledger) == entries_in(tablet), "hub and tablet hold as many entries")
    check(missing(hub_ledger, acknowledged) == 0, "everything acknowledged is at the hub")


def full_disks(hub_ledger, tablet, acknowledged):
    size = os.path.getsize(os.path.join(tablet, "ledger.sqlite"))
    hub = Hub(hub_ledger)
    acknowledged += write(tablet, 40)
    hub.stop()
    # The log of the hub's store may not grow past this.
    hub = Hub(hub_ledger, limit=32768)
    code, out, err = exchange(tablet, hub.url)
    check(code != 0 and "Both hold the same" not in out, f"a hub whose disk is full has not got it: {code} {out}{err}")
    hub.stop()
    acknowledged += write(hub_ledger, 40)
    hub = Hub(hub_ledger)
    code, out, err = run("exchange", "--ledger", tablet, "--with", hub.url, limit=32768)
    check(code != 0, f"a tablet whose disk is full does not say that all is well: {code} {out}{err} {size}")
    comes_home(tablet, hub, "after the disks had room again")
    check(hub.stop() == 0, "the hub stops cleanly")
    check(entries_in(hub_ledger) == entries_in(tablet), "hub and tablet hold as many entries after full disks")


def sticks(hub_ledger, second, acknowledged, stick):
    acknowledged += write(second, 30)
    parcel = os.path.join(stick, "day.parcel")
    code, out, err = run("parcel", "write", parcel, "--ledger", second, limit=20000)
    check(code == 4 and not os.listdir(stick), f"a full stick: {code} {out}{err} {os.listdir(stick)}")
    for _ in range(5):
        writing = subprocess.Popen([PROGRAM, "parcel", "write", parcel, "--ledger", second], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        time.sleep(rng.uniform(0.0, 0.5))
        writing.send_signal(signal.SIGKILL)
        writing.wait()
        if os.path.exists(parcel):
            break
    before = entries_in(hub_ledger)
    if os.path.exists(parcel):
        code, out, err = run("parcel", "write", parcel, "--ledger", second)
        check(code != 0 and "parcel.there" in err, f"a parcel is not written over: {code} {out}{err}")
        os.remove(parcel)
    code, out, err = run("parcel", "write", parcel, "--ledger", second)
    check(code == 0 and os.listdir(stick) == ["day.parcel"], f"a parcel is written: {code} {out}{err}")
    whole = open(parcel, "rb").read()
    bad = os.path.join(stick, "bad.parcel")
    for _ in range(3):
        at = rng.randrange(148, len(whole))
        with open(bad, "wb") as file:
            file.write(whole[:at] + bytes([whole[at] ^ (1 << rng.randrange(8))]) + whole[at + 1:])
        code, out, err = run("parcel", "read", bad, "--ledger", hub_ledger)
        check(code == 1 and re.search(r"chunk \d+; entry \d+", err) is not None, f"a changed byte at {at}: {code} {out}{err}")
    with open(bad, "wb") as file:
        file.write(whole[:rng.randrange(150, len(whole))])
    code, out, err = run("parcel", "read", bad, "--ledger", hub_ledger)
    check(code == 1 and "parcel.cut_short" in err, f"a cut parcel: {code} {out}{err}")
    check(entries_in(hub_ledger) == before, "nothing of them was taken")
    code, out, err = run("parcel", "read", bad, "--ledger", hub_ledger, "--cut")
    check(code == 1 and "cut short" in out, f"what is whole of a cut parcel: {code} {out}{err}")
    reading = subprocess.Popen([PROGRAM, "parcel", "read", parcel, "--ledger", hub_ledger], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    time.sleep(rng.uniform(0.05, 0.4))
    reading.send_signal(signal.SIGKILL)
    reading.wait()
    code, out, err = run("parcel", "read", parcel, "--ledger", hub_ledger)
    check(code == 0, f"a whole parcel: {code} {out}{err}")
    code, out, err = run("parcel", "read", parcel, "--ledger", hub_ledger)
    check(code == 0 and ", 0 of them new here" in out, f"a parcel read again: {code} {out}{err}")
    # And back, with what the hub had; never over the one that is there.
    code, out, err = run("parcel", "write", parcel, "--ledger", hub_ledger)
    check(code != 0 and "parcel.there" in err and open(parcel, "rb").read() == whole, f"a parcel is not written over: {code} {out}{err}")
    parcel = os.path.join(stick, "back.parcel")
    code, out, err = run("parcel", "write", parcel, "--ledger", hub_ledger)
    check(code == 0, f"the hub's parcel: {code} {out}{err}")
    code, out, err = run("parcel", "read", parcel, "--ledger", second)
    check(code == 0 and "it has not got yet" not in out and "entries of this device on its disk" in out, f"the hub's parcel is read: {code} {out}{err}")
    check(entries_in(hub_ledger) == entries_in(second), "hub and second tablet hold as many entries by stick alone")
    check(missing(hub_ledger, acknowledged) == 0, "everything acknowledged is at the hub")
    hub = Hub(hub_ledger)
    code, out, err = exchange(second, hub.url)
    check(code == 0 and "Both hold the same" in out, f"an exchange after sticks: {code} {out}{err}")
    hub.stop()


def speaks_nothing_older(hub):
    """By Python's own TLS: 1.3 and nothing before it, and who has not said hello is told nothing."""
    port = int(hub.url.rsplit(":", 1)[1])
    for newest, expected in ((ssl.TLSVersion.TLSv1_2, None), (ssl.TLSVersion.TLSv1_3, 403)):
        context = ssl.SSLContext(ssl.PROTOCOL_TLS_CLIENT)
        context.check_hostname, context.verify_mode, context.maximum_version = False, ssl.CERT_NONE, newest
        connection, answered = http.client.HTTPSConnection("127.0.0.1", port, timeout=20, context=context), None
        try:
            connection.request("POST", "/exchange", b"\x03anything")
            answer = connection.getresponse()
            answered = answer.status
            check(json.loads(answer.read())["code"] == "exchange.message", "who has not said hello is told nothing")
        except ssl.SSLError:
            pass
        check(answered == expected, f"{newest}: {answered}")
        connection.close()


def main():
    folder = tempfile.mkdtemp(prefix="limbledger-exchange-")
    at = lambda name: os.path.join(folder, name)
    code, out, err = run("new", at("hub"), "--demo")
    recovery = re.search(r"\n +((?:\S{4} ?-?){9})\n", out)
    check(code == 0 and recovery is not None, f"a clinic: {out}{err}")
    recovery = recovery.group(1)
    acknowledged = write(at("hub"), 2)
    code, said = join(at("hub"), recovery, at("refused"), answer="no")
    check(code == 1 and "enrol.refused" in said and os.listdir(at("refused")) in ([], ["lock"]), f"where somebody says no, nothing is made: {code} {said}")
    for tablet in ("tablet", "second"):
        code, said = join(at("hub"), recovery, at(tablet))
        check(code == 0, f"{tablet} joins: {code} {said}")
    # Another clinic's hub answers at the address: the tablet says so, and sends it nothing.
    run("new", at("other"), "--demo")
    other = Hub(at("other"))
    code, out, err = exchange(at("tablet"), other.url)
    check(code == 1 and "exchange.key" in err, f"another clinic's hub: {code} {out}{err}")
    speaks_nothing_older(other)
    other.stop()
    acknowledged += write(at("tablet"), 3)
    kills(at("hub"), at("tablet"), acknowledged)
    full_disks(at("hub"), at("tablet"), acknowledged)
    os.mkdir(at("stick"))
    sticks(at("hub"), at("second"), acknowledged, at("stick"))
    shutil.rmtree(folder)
    print(f"{len(acknowledged)} acknowledged requests")
    return report()


if __name__ == "__main__":
    sys.exit(main())
