"""The devices of the invented clinic: each is the program on a ledger of its own, called over HTTP as a tablet's form would.

Everything here is a demonstration with invented people. What a device prints is what the program says. Standard library only: this is
all that a front end needs.
"""
import atexit
import json
import os
import re
import signal
import subprocess
import sys
import textwrap
import time
import urllib.error
import urllib.request
import uuid

DAY = "2026-11-24"
OFFSET_MIN = 180  # the invented district's clocks
WIDTH = 135


def at(local):
    """A time of the day in the district, such as 09:30, as the program takes it."""
    hour, minute = map(int, local.split(":"))
    return f"{DAY}T{hour - OFFSET_MIN // 60:02}:{minute:02}:00.000Z"


def say(text=""):
    print(text, flush=True)


def told(text):
    """What the program said, set in a little; a line that it did not wrap itself is wrapped."""
    for line in text.rstrip("\n").split("\n"):
        if len(line) > WIDTH:
            say(textwrap.fill(line, WIDTH, initial_indent="     ", subsequent_indent="       ", break_on_hyphens=False))
        else:
            say("     " + line if line else "")


class Refused(Exception):
    def __init__(self, method, error):
        faults = error.get("data", {}).get("faults", [])
        self.code = faults[0]["code"] if faults else ""
        told_of = "; ".join(f"{one['code']} at {one['path']} (expected {one.get('expected', '')}; got {one.get('got', '')})" for one in faults)
        super().__init__(f"{method}: {error['message']}: {told_of}")


class Program:
    """limbledger, by its commands."""

    def __init__(self, path):
        self.path = path

    def run(self, *words, text="", may_end_with=(0,)):
        done = subprocess.run([self.path, *words], input=text, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, timeout=120)
        if done.returncode not in may_end_with:
            sys.exit(f"limbledger {' '.join(words)} ended with {done.returncode}:\n{done.stdout}{done.stderr}")
        return done.stdout


class Device:
    """One ledger; while it serves, `ask` sends it a request. `clock`: what its clock claims when it starts to serve; absent: the machine's."""

    talk = []  # every request and its answer, of all devices

    def __init__(self, program, name, ledger):
        self.program, self.name, self.ledger, self.process = program, name, ledger, None

    def serve(self, clock=None, hub=False):
        words = [self.program.path, "serve", "--ledger", self.ledger, "--http", "0"]
        if clock:
            words += ["--trouble", "clock=" + clock]
        if hub:
            words += ["--hub", "0", "--hub-address", "127.0.0.1"]
        self.log = self.ledger + ".serve.log"
        with open(self.log, "ab") as log:
            self.process = subprocess.Popen(words, stdin=subprocess.DEVNULL, stdout=log, stderr=log)
        atexit.register(self.process.terminate)  # also where the play ends early: nothing keeps the ledger
        self.wait_until(self.found, "the program does not serve")
        self.wait_until(lambda: self.ask("health.check", keep=False)["state"] != "locked", "the ledger was not unlocked")
        if hub:
            self.wait_until(lambda: self.ask("exchange.read", keep=False).get("answering", {}).get("open"), "the hub does not answer")
            self.url = self.ask("exchange.read", keep=False)["answering"]["addresses"][0]
        return self

    def wait_until(self, so, otherwise):
        end = time.monotonic() + 60
        while not so():
            if self.process.poll() is not None or time.monotonic() > end:
                sys.exit(f"{self.name}: {otherwise}; see {self.log}")
            time.sleep(0.02)

    def found(self):
        try:
            with open(os.path.join(self.ledger, "sidecar.json"), encoding="utf-8") as file:
                self.sidecar = json.load(file)
        except (OSError, ValueError):
            return False
        return self.sidecar["pid"] == self.process.pid  # one that was killed leaves its file behind

    def send(self, request, keep=True):
        """One request as it is; the whole answer."""
        line = json.dumps(request, ensure_ascii=False)
        token = next(one["token"] for one in self.sidecar["tokens"] if one["scope"] == "examiner")
        heads = {"Content-Type": "application/json", "Authorization": "Bearer " + token}
        for _ in range(100):
            try:
                with urllib.request.urlopen(urllib.request.Request(self.sidecar["http"], line.encode(), heads), timeout=60) as reply:
                    answer = reply.read().decode()
                break
            except urllib.error.HTTPError as refused:
                if refused.code != 429:
                    sys.exit(f"{request['method']}: {refused.code} {refused.read().decode()}")
                time.sleep(0.1)  # asked too often in a second
        if keep:
            self.talk.extend(["> " + line, "< " + answer.rstrip("\n")])
        return json.loads(answer)

    def ask(self, method, keep=True, **params):
        answer = self.send({"jsonrpc": "2.0", "id": len(self.talk), "method": method, "params": params}, keep)
        if "error" in answer:
            raise Refused(method, answer["error"])
        return answer["result"]

    def write(self, method, **params):
        """A method that writes, with a request id of its own."""
        return self.ask(method, request=str(uuid.uuid4()), **params)

    def errand(self, method, **params):
        """An exchange or a parcel, which goes on by itself; what came of it."""
        self.ask(method, **params)
        self.wait_until(lambda: self.ask("exchange.read", keep=False)["errand"]["state"] != "running", method + " does not end")
        done = self.ask("exchange.read")["errand"]
        if done["state"] != "done":
            sys.exit(f"{self.name}: {method}: {done}")
        return done

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def stop(self):
        if self.process is None:
            return
        self.process.terminate()
        if self.process.wait(60) != 0:
            sys.exit(f"{self.name}: the program did not stop cleanly; see {self.log}")
        self.process = None


def new_clinic(program, ledger, examiner):
    """A demonstration clinic; its first device, and the recovery code that is on paper."""
    printed = program.run("new", ledger, "--demo", "--examiner", examiner)
    return Device(program, "the clinic", ledger), re.search(r"\n +((?:\S{4}-?){9})\n", printed).group(1)


def join(hub, code, name, ledger, examiner):
    """A new device of the clinic: both screens show six digits; somebody who sees both says so on both sides."""
    hub.ask("replica.enrol", keep=False, code=code)
    newcomer = subprocess.Popen([hub.program.path, "join", ledger, "--demo", "--with", hub.url, "--examiner", examiner], stdin=subprocess.PIPE,
                                stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
    atexit.register(newcomer.kill)
    said, shown = "", None
    while shown is None:
        line = newcomer.stdout.readline()
        said, shown = said + line, re.fullmatch(r" +(\d{6})\n", line)
        if not line:
            sys.exit(f"{name} does not join:\n{said}")
    seen = hub.ask("replica.enrolling", keep=False)
    if seen.get("digits") != shown.group(1):
        sys.exit(f"the two screens show different digits: {shown.group(1)} and {seen}")
    hub.ask("replica.let_in", keep=False, digits=seen["digits"])
    said += newcomer.communicate("yes\n", timeout=120)[0]
    if newcomer.returncode != 0:
        sys.exit(f"{name} does not join:\n{said}")
    return Device(hub.program, name, ledger), shown.group(1)
