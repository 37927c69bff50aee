#!/usr/bin/env python3
"""Plays the request files of this folder to the program over HTTP, as a tablet's form would, and keeps the talk.

A text that starts with @ stands for what an earlier reply gave: @person, @place, @exam, @revision. The ledger is a
demonstration ledger of invented people. In the middle of the third examination the program is killed with SIGKILL and
started again; what it had acknowledged must be there. Standard library only: this is all that a front end needs.
"""
import atexit
import json
import os
import signal
import subprocess
import sys
import time
import urllib.error
import urllib.request

PROGRAM, LEDGER, OUT = sys.argv[1:4]
HERE = os.path.dirname(os.path.abspath(__file__))
DAY = "2026-11-24"
known, talk = {}, []


class Sidecar:
    """The program, found by DIR/sidecar.json, which names its addresses and the token to send."""

    def __init__(self):
        with open(os.path.join(OUT, "serve.log"), "ab") as log:
            self.process = subprocess.Popen([PROGRAM, "serve", "--ledger", LEDGER, "--http", "0"], stdin=subprocess.DEVNULL, stdout=log, stderr=log)
        atexit.register(self.process.terminate)  # also where the play ends early: nothing keeps the ledger
        end = time.monotonic() + 60
        while not self.found():
            if self.process.poll() is not None or time.monotonic() > end:
                sys.exit(f"the program does not serve; see {OUT}/serve.log")
            time.sleep(0.02)
        while self.ask({"jsonrpc": "2.0", "id": 0, "method": "health.check"}, keep=False)["result"]["state"] != "ready":
            if time.monotonic() > end:
                sys.exit("the ledger was not unlocked within a minute")
            time.sleep(0.05)

    def found(self):
        try:
            with open(os.path.join(LEDGER, "sidecar.json"), encoding="utf-8") as file:
                self.at = json.load(file)
        except (OSError, ValueError):
            return False
        return self.at["pid"] == self.process.pid  # one that was killed leaves its file behind

    def ask(self, request, keep=True):
        line = json.dumps(request, ensure_ascii=False)
        token = next(one["token"] for one in self.at["tokens"] if one["scope"] == "examiner")
        heads = {"Content-Type": "application/json", "Authorization": "Bearer " + token}
        try:
            with urllib.request.urlopen(urllib.request.Request(self.at["http"], line.encode(), heads), timeout=60) as reply:
                answer = reply.read().decode()
        except urllib.error.HTTPError as refused:
            sys.exit(f"{request['method']}: {refused.code} {refused.read().decode()}")
        if keep:
            talk.extend(["> " + line, "< " + answer.rstrip("\n")])
        return json.loads(answer)

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def stop(self):
        self.process.terminate()
        return self.process.wait()


def filled(value):
    if isinstance(value, str) and value.startswith("@"):
        return known[value[1:]]
    if isinstance(value, dict):
        return {key: filled(inner) for key, inner in value.items()}
    return [filled(inner) for inner in value] if isinstance(value, list) else value


def remember(method, result):
    if method == "place.amend":
        known["place"] = result["places"][0]["place"]["place"]
    for path in ("person", "exam"):
        inner = result.get(path)
        if isinstance(inner, dict) and path in inner:
            known[path] = inner[path]
    if isinstance(result.get("revision"), list) and not method.startswith(("person.", "place.")):
        known["revision"] = result["revision"]


def say(method, answer):
    if "error" in answer:
        for fault in answer["error"]["data"]["faults"]:
            print(f"  {method}: {answer['error']['message']}: {fault['code']} at {fault['path']} (expected {fault.get('expected', '')}; got {fault.get('got', '')})")
        return
    result, more = answer["result"], ""
    if method == "person.register":
        more = ": " + result["person"]["names"][0]["text"]
    elif method == "finding.record":
        more = f": {len(result['recorded'])} findings on disk" + (", the same answer as before the kill" if result.get("repeat") else "")
    elif method == "health.check":
        more = f": {result['state']}"
    print(f"  {method}{more}")


def play(sidecar, name, quiet=False):
    """Sends one file; the replies by method, and the last request."""
    replies, request = {}, None
    with open(os.path.join(HERE, "requests", name + ".jsonl"), encoding="utf-8") as lines:
        for line in lines:
            request = filled(json.loads(line))
            answer = sidecar.ask(request)
            if not quiet:
                say(request["method"], answer)
            replies[request["method"]] = answer
            if "result" in answer:
                remember(request["method"], answer["result"])
    return replies, request


def keep(name, text):
    with open(os.path.join(OUT, name), "w", encoding="utf-8") as file:
        file.write(text)


def write_down(sidecar, name):
    """The note as text and as a page to print, and the exam as a document that needs no ledger."""
    replies, _ = play(sidecar, "6-read", quiet=True)
    note = replies["note.write"]["result"]
    keep(f"{name}.txt", note["text"])
    keep(f"{name}.html", note["html"])
    exam, names = replies["exam.read"]["result"]["exam"], replies["exam.read"]["result"]["names"]
    findings = exam.pop("findings")
    document = {"format": "limbledger-exam/1", "as_of": DAY, "person": replies["person.read"]["result"]["person"], "exam": exam, "findings": findings, "names": names, "ledger_kind": "demonstration",
                "place": replies["place.read"]["result"]["places"][0]["place"]}
    keep(f"{name}.json", json.dumps(document, ensure_ascii=False, indent=1))
    alone = subprocess.run([PROGRAM, "assess", os.path.join(OUT, f"{name}.json")], stdout=subprocess.PIPE, check=True).stdout.decode()
    if note["text"] != alone:
        sys.exit(f"the note and the document of {name} do not print the same page: compare {name}.txt with what assess prints of {name}.json, in {OUT}")
    if exam["state"] != "signed":
        sys.exit(f"the exam of {name} is not signed")


first = Sidecar()
people = {}
play(first, "1-arrive")
for part in ("2-football", "3-stiff"):
    play(first, part)
    people[part[2:]] = dict(known)
    print("  -- signed; the next person --")
_, last = play(first, "4-child")
first.kill()
print("  -- the program was killed with SIGKILL; it is started again --")
second = Sidecar()
again = second.ask(last)
say(last["method"], again)
if not again.get("result", {}).get("repeat"):
    sys.exit("an acknowledged finding did not survive the kill")
play(second, "5-child-after")
people["child"] = dict(known)
for name, ids in people.items():
    known.update(ids)
    write_down(second, name)
if second.stop() != 0:
    sys.exit("the program did not stop cleanly")
keep("talk.jsonl", "\n".join(talk) + "\n")
