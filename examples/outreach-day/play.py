#!/usr/bin/env python3
"""Plays the request files of this folder to the program, as a tablet's form would, and keeps the talk.

A text that starts with @ stands for what an earlier reply gave: @person, @place, @exam, @revision. The ledger is a
demonstration ledger of invented people. After the signature the program is killed with SIGKILL and started again.
"""
import json
import os
import signal
import subprocess
import sys

PROGRAM, LEDGER, OUT = sys.argv[1:4]
HERE = os.path.dirname(os.path.abspath(__file__))
known, talk = {}, []


class Sidecar:
    def __init__(self):
        self.process = subprocess.Popen([PROGRAM, "serve", "--ledger", LEDGER, "--stdio", "lines"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)

    def ask(self, request):
        line = json.dumps(request, ensure_ascii=False)
        self.process.stdin.write(line.encode() + b"\n")
        self.process.stdin.flush()
        answer = self.process.stdout.readline()
        if not answer:
            sys.exit(f"no answer to {request['method']}")
        talk.append("> " + line)
        talk.append("< " + answer.decode().rstrip("\n"))
        return json.loads(answer)

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def stop(self):
        self.process.stdin.close()
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
    if method == "finding.record":
        more = f": {len(result['recorded'])} findings on disk"
    elif method == "exam.sign":
        more = ": signed" + (", the same answer as before the kill" if result.get("repeat") else "")
    elif method == "exam.assess":
        for rule in result["rules"]:
            more += f": {rule['rule']} {rule['side']} {rule['outcome']}" + "".join(f", needs {one.get('item', one['input'])}" for one in rule["settle"])
    elif method == "health.check":
        more = f": {result['state']}"
    print(f"  {method}{more}")


def play(sidecar, name):
    replies = {}
    with open(os.path.join(HERE, "requests", name), encoding="utf-8") as lines:
        for line in lines:
            request = filled(json.loads(line))
            if request["method"] == "exam.sign" and "signed_from" not in known:
                known["signed_from"] = request["params"]["seen"]
            answer = sidecar.ask(request)
            say(request["method"], answer)
            replies[request["method"]] = answer
            if "result" in answer:
                remember(request["method"], answer["result"])
    return replies


first = Sidecar()
for part in ("1-arrive.jsonl", "2-examine.jsonl", "3-decide.jsonl"):
    play(first, part)
first.kill()
print("  -- the program was killed with SIGKILL; it is started again --")
second = Sidecar()
replies = play(second, "4-after.jsonl")
if second.stop() != 0:
    sys.exit("the program did not stop cleanly")
repeat = replies["exam.sign"].get("result", {})
if not repeat.get("repeat"):
    sys.exit("the signature did not survive the kill")
exam, person = replies["exam.read"]["result"]["exam"], replies["person.read"]["result"]["person"]
names = replies["exam.read"]["result"]["names"]
findings = exam.pop("findings")
document = {"format": "limbledger-exam/1", "as_of": "2026-11-24", "person": person, "exam": exam, "findings": findings, "names": names}
with open(os.path.join(OUT, "exam.json"), "w", encoding="utf-8") as file:
    json.dump(document, file, ensure_ascii=False, indent=1)
with open(os.path.join(OUT, "talk.jsonl"), "w", encoding="utf-8") as file:
    file.write("\n".join(talk) + "\n")
