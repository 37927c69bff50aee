#!/usr/bin/env python3
"""Two sidecars as real processes, neither of which stops to exchange: the hub's lets the tablet in by the digits that somebody types,
both record, and the tablet's exchanges with the hub's while both are called. SIGKILL of either in the middle, then on: afterwards both
hold the same, everything acknowledged is there, and both verify. How long calls take meanwhile is printed, not judged.

LIMBLEDGER_PROGRAM names the program, LIMBLEDGER_SERVED_KILLS the number of kills, LIMBLEDGER_SERVED_EXAMS the exams of the long exchange,
LIMBLEDGER_SEED the seed (printed first).
"""
import http.client
import json
import os
import re
import shutil
import signal
import socket
import struct
import subprocess
import sys
import tempfile
import threading
import time

from counted import SEED, check, make_uuid, report, rng

PROGRAM = os.path.abspath(os.environ.get("LIMBLEDGER_PROGRAM", "build/limbledger"))
KILLS = int(os.environ.get("LIMBLEDGER_SERVED_KILLS", "12"))
EXAMS = int(os.environ.get("LIMBLEDGER_SERVED_EXAMS", "400"))


def free_port():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


class Refused(Exception):
    pass


class Sidecar:
    """limbledger serve over HTTP; with a port also for the other devices of the clinic."""

    def __init__(self, ledger, hub_port=None):
        self.ledger, self.acknowledged = ledger, []
        named = os.path.join(ledger, "sidecar.json")
        if os.path.exists(named):
            os.remove(named)
        words = [PROGRAM, "serve", "--ledger", ledger, "--http", "0"]
        if hub_port:
            words += ["--hub", str(hub_port), "--hub-address", "127.0.0.1"]
        self.said = open(os.path.join(os.path.dirname(ledger), os.path.basename(ledger) + ".said"), "a+")
        self.process = subprocess.Popen(words, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=self.said)
        for _ in range(3000):
            if os.path.exists(named):
                break
            if self.process.poll() is not None:
                self.said.seek(0)
                sys.exit(f"the sidecar ended: {self.said.read()}")
            time.sleep(0.01)
        sidecar = json.load(open(named))
        self.port = int(re.search(r":(\d+)/", sidecar["http"]).group(1))
        self.token = sidecar["tokens"][0]["token"]
        self.local = threading.local()

    def ask(self, method, params=None):
        if getattr(self.local, "line", None) is None:
            self.local.line = http.client.HTTPConnection("127.0.0.1", self.port, timeout=120)
        body = json.dumps({"jsonrpc": "2.0", "id": 1, "method": method, "params": params or {}})
        try:
            self.local.line.request("POST", "/rpc", body, {"Content-Type": "application/json", "Authorization": "Bearer " + self.token})
            answer = json.loads(self.local.line.getresponse().read())
        except Exception:
            self.local.line = None
            raise
        if "error" in answer:
            code = answer["error"]["data"]["faults"][0]["code"]
            if code == "limit.rate":
                time.sleep(0.1)
                return self.ask(method, params)
            raise Refused(code)
        if "request" in (params or {}) and method != "request.read":
            self.acknowledged.append(params["request"])
        return answer["result"]

    def write(self, exams):
        for number in range(exams):
            opened = self.ask("exam.open", {"complaint": "free", "setting": "outreach", "request": make_uuid()})
            findings = [{"item": item, "side": side, "value": {"kind": "angle", "toward_deg": 60 + number % 40}, "instrument": "goniometer_long"}
                        for item, side in (("knee.flexion_passive", "left"), ("knee.flexion_active", "left"), ("knee.flexion_passive", "right"))]
            self.ask("finding.record", {"exam": opened["exam"]["exam"], "findings": findings, "seen": opened["revision"], "request": make_uuid()})
        return opened["exam"]["exam"]

    def errand(self):
        return self.ask("exchange.read")["errand"]

    def comes_to(self):
        while self.errand()["state"] == "running":
            time.sleep(0.01)
        return self.errand()

    def exchange(self, url):
        self.ask("exchange.begin", {"with": url})
        return self.comes_to()

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def stop(self):
        self.process.send_signal(signal.SIGTERM)
        return self.process.wait(60)


class Listening:
    """A session over WebSocket (RFC 6455) that only hears what it is told, until `object` is named or the line ends."""

    def __init__(self, sidecar):
        self.line = socket.create_connection(("127.0.0.1", sidecar.port), timeout=60)
        self.line.sendall((f"GET /rpc HTTP/1.1\r\nHost: 127.0.0.1:{sidecar.port}\r\nConnection: Upgrade\r\nUpgrade: websocket\r\n"
                           "Sec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n").encode())
        self.stream = self.line.makefile("rb")
        while self.stream.readline().strip():
            pass
        text = json.dumps({"jsonrpc": "2.0", "id": 1, "method": "session.open", "params": {"token": sidecar.token}}).encode()
        size = struct.pack(">BH", 0x80 | 126, len(text)) if len(text) > 125 else struct.pack(">B", 0x80 | len(text))
        self.line.sendall(b"\x81" + size + bytes(4) + text)  # masked with zeros
        self.next()

    def next(self):
        _, size = self.stream.read(2)
        size = struct.unpack(">H", self.stream.read(2))[0] if size == 126 else struct.unpack(">Q", self.stream.read(8))[0] if size == 127 else size
        return self.stream.read(size).decode()

    def hears_of(self, named):
        while True:
            told = self.next()
            if '"ledger.changed"' in told and named in told:
                self.line.close()
                return True


class OverStdio:
    """The same program over the standard input alone."""

    def __init__(self, ledger):
        self.process = subprocess.Popen([PROGRAM, "serve", "--ledger", ledger, "--stdio", "lines"], stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                                        stderr=subprocess.DEVNULL, text=True)

    def ask(self, method, params=None):
        self.process.stdin.write(json.dumps({"jsonrpc": "2.0", "id": 1, "method": method, "params": params or {}}) + "\n")
        self.process.stdin.flush()
        return json.loads(self.process.stdout.readline())["result"]

    def end(self):
        self.process.stdin.close()
        return self.process.wait(60)


def refused_for(ask):
    try:
        ask()
        return "answered"
    except Refused as refusal:
        return str(refusal)


def join(hub, url, code, ledger):
    check(hub.ask("replica.enrol", {"code": code})["state"] == "waits", "an enrolment begins")
    newcomer = subprocess.Popen([PROGRAM, "join", ledger, "--demo", "--with", url, "--examiner", "Invented"], stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                                stderr=subprocess.PIPE, text=True)
    shown, line = None, newcomer.stdout.readline()
    while line and shown is None:
        shown = re.fullmatch(r" +(\d{6})\n", line)
        line = newcomer.stdout.readline() if shown is None else line
    if shown is None:
        sys.exit(f"the new device shows no digits: {newcomer.communicate()}")
    seen = hub.ask("replica.enrolling")
    check(seen["state"] == "compares" and seen["digits"] == shown.group(1), f"both screens show the same six digits: {seen}")
    wrong = "%06d" % ((int(shown.group(1)) + 1) % 1000000)
    check(refused_for(lambda: hub.ask("replica.let_in", {"digits": wrong})) == "enrol.digits", "other digits let nobody in")
    check(refused_for(lambda: hub.ask("replica.let_in", {"digits": "yes"})) == "enrol.digits", "a yes lets nobody in")
    let_in = hub.ask("replica.let_in", {"digits": shown.group(1)})
    check(let_in["state"] == "let_in", f"the digits let it in: {let_in}")
    said = "".join(newcomer.communicate("yes\n", timeout=120))
    check(newcomer.returncode == 0, f"the new device joins: {said}")


def same(one, other, what):
    first, second = one.ask("ledger.verify"), other.ask("ledger.verify")
    check(not first["damage"] and not second["damage"], f"{what}: both verify")
    heads = [sorted(json.dumps(head, sort_keys=True) for head in each["vouched_to"]) for each in (first, second)]
    check(first["entries"] == second["entries"] and heads[0] == heads[1], f"{what}: both hold the same: {first['entries']} and {second['entries']}")


def timed_calls(sidecar, while_so, times):
    while while_so():
        began = time.monotonic()
        sidecar.ask("exam.find", {"limit": 1})
        times.append(time.monotonic() - began)
        time.sleep(0.005)


def in_ms(times):
    ordered = sorted(times)
    return f"{len(ordered)} calls, median {1000 * ordered[len(ordered) // 2]:.1f} ms, longest {1000 * ordered[-1]:.1f} ms" if ordered else "no call"


def long_exchange(hub, tablet, url):
    tablet.write(EXAMS)
    heard, cursor = {}, hub.ask("changes.read")["cursor"]
    waiting = threading.Thread(target=lambda: heard.update(hub.ask("changes.read", {"cursor": cursor, "wait_ms": 60000})))
    waiting.start()
    quiet, at_hub, at_tablet, over = [], [], [], threading.Event()
    began = time.monotonic()
    timed_calls(tablet, lambda: time.monotonic() - began < 1, quiet)
    callers = [threading.Thread(target=timed_calls, args=(each, lambda: not over.is_set(), times)) for each, times in ((hub, at_hub), (tablet, at_tablet))]
    began = time.monotonic()
    tablet.ask("exchange.begin", {"with": url})
    for one in callers:
        one.start()
    done = tablet.comes_to()
    lasted = time.monotonic() - began
    over.set()
    for one in callers:
        one.join()
    waiting.join()
    check(done["state"] == "done" and done["same"] and done["given"] >= 5 * EXAMS, f"a long exchange: {done}")
    check(len(heard.get("changes", [])) > 0, "who waits at the hub for changes is told")
    check(len(at_hub) > 2 and len(at_tablet) > 2, "both are called while it runs")
    print(f"{done['given']} entries in {lasted:.2f} s; without: {in_ms(quiet)}; meanwhile at the hub: {in_ms(at_hub)}; at the tablet: {in_ms(at_tablet)}")
    return lasted


def kills(at, port, url, hub, tablet, lasts):
    exams = max(20, EXAMS // 10)
    acknowledged, at_work = [], 0
    for number in range(KILLS):
        tablet.write(rng.randrange(exams // 2, exams))
        hub.write(rng.randrange(1, 5))
        victim = ("hub", "tablet")[number % 2]
        tablet.ask("exchange.begin", {"with": url})
        time.sleep(lasts * rng.uniform(0.0, 0.3))
        at_work += tablet.errand()["state"] == "running"
        if victim == "hub":
            hub.kill()
            acknowledged += hub.acknowledged
            hub = Sidecar(at("hub"), port)
        else:
            tablet.kill()
            acknowledged += tablet.acknowledged
            tablet = Sidecar(at("tablet"))
        for _ in range(10):
            try:
                done = tablet.exchange(url)
            except Refused as refusal:  # the one that lost its hub tries again by itself
                check(str(refusal) == "exchange.busy", f"kill {number}: {refusal}")
                done = tablet.comes_to()
            if done["state"] == "done" and done["same"]:
                break
        check(done["state"] == "done" and done["same"], f"kill {number} of the {victim}: {done}")
    print(f"{at_work} of {KILLS} came before the exchange had ended")
    same(hub, tablet, "after kills")
    acknowledged += hub.acknowledged + tablet.acknowledged
    lost = sum(hub.ask("request.read", {"request": request}).get("state") != "recorded" for request in acknowledged)
    check(lost == 0, f"{lost} of {len(acknowledged)} acknowledged requests are not at the hub")
    print(f"{len(acknowledged)} acknowledged requests")
    return hub, tablet


def by_stick(at, hub, tablet):
    os.mkdir(at("stick"))
    path = at("stick/friday.parcel")
    tablet.write(3)
    for _ in range(3):
        tablet.ask("parcel.write", {"path": path})
        time.sleep(rng.uniform(0.0, 0.05))
        tablet.kill()
        tablet = Sidecar(at("tablet"))
        if os.path.exists(path):
            os.remove(path)  # it was done before; nothing is written over it
    tablet.ask("parcel.write", {"path": path})
    written = tablet.comes_to()
    check(written["state"] == "done" and os.listdir(at("stick")) == ["friday.parcel"], f"a parcel is written: {written} {os.listdir(at('stick'))}")
    before = hub.ask("ledger.verify")["entries"]
    whole = open(path, "rb").read()
    with open(at("stick/bad.parcel"), "wb") as file:
        place = rng.randrange(148, len(whole))
        file.write(whole[:place] + bytes([whole[place] ^ 1]) + whole[place + 1:])
    hub.ask("parcel.take", {"path": at("stick/bad.parcel")})
    bad = hub.comes_to()
    check(bad["state"] == "failed" and bad["fault"]["code"] == "parcel.changed", f"a changed byte: {bad}")
    check(hub.ask("ledger.verify")["entries"] == before, "nothing of it was taken")
    hub.ask("parcel.take", {"path": path})
    taken = hub.comes_to()
    check(taken["state"] == "done" and taken["whole"] and taken["taken"] > 0, f"a whole parcel: {taken}")
    hub.ask("parcel.take", {"path": path})
    check(hub.comes_to()["taken"] == 0, "a parcel taken again brings nothing")
    return tablet


def over_stdio(at, hub, url):
    there = hub.write(2)
    tablet = OverStdio(at("tablet"))
    tablet.ask("exchange.begin", {"with": url})
    while tablet.ask("exchange.read")["errand"]["state"] == "running":
        time.sleep(0.01)
    done = tablet.ask("exchange.read")["errand"]
    check(done["state"] == "done" and done["same"] and done["taken"] > 0, f"over the standard input: {done}")
    check(tablet.ask("exam.read", {"exam": there})["exam"]["exam"] == there, "what the hub recorded is there at once")
    # One that is left in the middle is no trouble at the end.
    tablet.ask("exchange.begin", {"with": url})
    check(tablet.end() == 0, "a program that ends in the middle of an exchange ends cleanly")


def new_clinic(ledger):
    """A new clinic whose hub is served; gives it, its port, where it says that it answers, and its printed code."""
    made = subprocess.run([PROGRAM, "new", ledger, "--demo"], capture_output=True, text=True)
    code = re.search(r"\n +((?:\S{4} ?-?){9})\n", made.stdout).group(1)
    port = free_port()
    hub = Sidecar(ledger, port)
    url = hub.ask("exchange.read")["answering"]["addresses"][0]
    check(url == f"https://127.0.0.1:{port}", f"the hub says where it answers: {url}")
    return hub, port, url, code


def main():
    print(f"seed {SEED}, {KILLS} kills, {EXAMS} exams")
    folder = tempfile.mkdtemp(prefix="limbledger-served-")
    at = lambda name: os.path.join(folder, name)
    hub, port, url, code = new_clinic(at("hub"))
    join(hub, url, code, at("tablet"))
    tablet = Sidecar(at("tablet"))
    listening = Listening(hub)
    there, here = hub.write(2), tablet.write(2)
    done = tablet.exchange(url)
    check(done["state"] == "done" and done["same"] and done["taken"] > 0 and done["given"] > 0 and done["held"]["not_held"] == 0, f"a first exchange: {done}")
    check(tablet.ask("exam.read", {"exam": there})["exam"]["exam"] == there, "what the hub recorded is on the tablet at once")
    check(hub.ask("exam.read", {"exam": here})["exam"]["exam"] == here, "what the tablet recorded is at the hub at once")
    check(listening.hears_of(here), "a session at the hub is told of it")
    same(hub, tablet, "after a first exchange")
    again = tablet.exchange(url)
    check(again["state"] == "done" and again["same"] and again["taken"] == again["given"] == 0, f"again: {again}")
    lasts = long_exchange(hub, tablet, url)
    hub, tablet = kills(at, port, url, hub, tablet, lasts)
    tablet = by_stick(at, hub, tablet)
    check(tablet.exchange(url)["same"], "both hold the same in the end")
    same(hub, tablet, "in the end")
    check(tablet.stop() == 0, "the tablet's stops cleanly")
    over_stdio(at, hub, url)
    check(hub.stop() == 0, "the hub's stops cleanly")
    shutil.rmtree(folder)
    return report()


if __name__ == "__main__":
    sys.exit(main())
