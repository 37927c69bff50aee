"""Plays the request files of this folder to a device, as a form would: three people examined, the program killed in the middle of the third.

A text that starts with @ stands for what an earlier reply gave: @person, @place, @exam, @revision. After the kill the program is
started again; what it had acknowledged must be there.
"""
import json
import os
import subprocess
import sys

from devices import DAY, at, say

HERE = os.path.dirname(os.path.abspath(__file__))
known = {}


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


def tell(method, answer):
    if "error" in answer:
        for fault in answer["error"]["data"]["faults"]:
            say(f"     {method}: {answer['error']['message']}: {fault['code']} at {fault['path']} (expected {fault.get('expected', '')}; got {fault.get('got', '')})")
        return
    result = answer["result"]
    if method == "person.register":
        say("     " + result["person"]["names"][0]["text"])
    elif method == "finding.record":
        say(f"     {len(result['recorded'])} findings on disk" + (", the same answer as before the kill" if result.get("repeat") else ""))
    elif method == "exam.sign":
        say("     signed")


def play(device, name, quiet=False):
    """Sends one file; the replies by method, and the last request."""
    replies, request = {}, None
    with open(os.path.join(HERE, "requests", name + ".jsonl"), encoding="utf-8") as lines:
        for line in lines:
            request = filled(json.loads(line))
            answer = device.send(request)
            if not quiet:
                tell(request["method"], answer)
            replies[request["method"]] = answer
            if "result" in answer:
                remember(request["method"], answer["result"])
    return replies, request


def keep(folder, name, text):
    with open(os.path.join(folder, name), "w", encoding="utf-8") as file:
        file.write(text)


def write_down(device, name, folder):
    """The note as text and as a page to print, and the exam as a document that needs no ledger."""
    replies, _ = play(device, "6-read", quiet=True)
    note = replies["note.write"]["result"]
    keep(folder, f"{name}.txt", note["text"])
    keep(folder, f"{name}.html", note["html"])
    exam, names = replies["exam.read"]["result"]["exam"], replies["exam.read"]["result"]["names"]
    findings = exam.pop("findings")
    document = {"format": "limbledger-exam/1", "as_of": DAY, "person": replies["person.read"]["result"]["person"], "exam": exam, "findings": findings, "names": names, "ledger_kind": "demonstration",
                "place": replies["place.read"]["result"]["places"][0]["place"]}
    keep(folder, f"{name}.json", json.dumps(document, ensure_ascii=False, indent=1))
    alone = subprocess.run([device.program.path, "assess", os.path.join(folder, f"{name}.json")], stdout=subprocess.PIPE, check=True).stdout.decode()
    if note["text"] != alone:
        sys.exit(f"the note and the document of {name} do not print the same page: compare {name}.txt with what assess prints of {name}.json, in {folder}")
    if exam["state"] != "signed":
        sys.exit(f"the exam of {name} is not signed")


def three_exams(device):
    """A knee twisted at football, a stiff knee at 67, a child whose knee hurts and whose hip nobody examined; the ids of each."""
    people = {}
    play(device, "1-arrive")
    for part in ("2-football", "3-stiff"):
        play(device, part)
        people[part[2:]] = dict(known)
    device.stop()  # each is signed after it was examined, and no exam is opened far ahead of the clock
    device.serve(at("11:15"))
    _, last = play(device, "4-child")
    device.kill()
    say("     -- the program was killed with SIGKILL; it is started again --")
    device.serve(at("11:30"))
    again = device.send(last)
    tell(last["method"], again)
    if not again.get("result", {}).get("repeat"):
        sys.exit("an acknowledged finding did not survive the kill")
    play(device, "5-child-after")
    people["child"] = dict(known)
    return people


def write_all_down(device, people, folder):
    for name, ids in people.items():
        known.update(ids)
        write_down(device, name, folder)
