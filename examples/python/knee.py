#!/usr/bin/env python3
"""Records the examination of an invented person's knee over HTTP, then prints the alert and the assessment.

Standard library only. Each writing call has a `request` of its own, made once: where no answer comes, the same call is sent again
with it and nothing is written twice. An error is printed as the sidecar says it: code, place, what to do.
"""
import json
import os
import sys
import time
import urllib.error
import urllib.request
import uuid

LEDGER = sys.argv[1]


def call(method, **params):
    """One call; sent again with the same params, so the same request, while nobody answers."""
    body = json.dumps({"jsonrpc": "2.0", "id": 1, "method": method, "params": params}).encode()
    for left in reversed(range(20)):
        try:
            with open(os.path.join(LEDGER, "sidecar.json"), encoding="utf-8") as file:
                sidecar = json.load(file)  # read each time: a sidecar that was started again has another port and token
            heads = {"Content-Type": "application/json", "Authorization": "Bearer " + sidecar["tokens"][0]["token"]}
            with urllib.request.urlopen(urllib.request.Request(sidecar["http"], body, heads), timeout=30) as reply:
                answer = json.load(reply)
            break
        except urllib.error.HTTPError as refused:
            answer = json.load(refused)
            break
        except (OSError, ValueError) as lost:
            if left == 0:
                sys.exit(f"{method}: no answer ({lost}); is limbledger serve running for {LEDGER}?")
            time.sleep(0.25)
    if "error" in answer:
        faults = answer["error"]["data"].get("faults", [])
        sys.exit("\n".join([f"{method}: {answer['error']['message']}"] + [f"  {one['code']} at {one['path'] or '/'}: {one['hint']}" for one in faults]))
    return answer["result"]


def request():
    return str(uuid.uuid4())


def finding(item, side, value, **more):
    return {"item": item, "side": side, "value": value, **more}


def yes(item, side="left"):
    return finding(item, side, {"kind": "answer", "answer": "yes"})


def no(item, side="left"):
    return finding(item, side, {"kind": "answer", "answer": "no"})


def pulse(item, side, grade):
    return finding(item, side, {"kind": "grade", "scale": "pulse/0-3", "grade": grade})


person = call("person.register", names=[{"text": "Tuma Invented"}], birth={"date": "1990"}, sex="male", norm_sex="male", request=request())["person"]["person"]
opened = call("exam.open", person=person, complaint="acute_knee", side="left", setting="outreach", examined_at="2026-11-24T10:15:00.000Z", offset_min=120,
              injured_on="2026-11-24", identified=["Tuma Invented", "1990"], request=request())
exam = opened["exam"]["exam"]
recorded = call("finding.record", exam=exam, seen=opened["revision"], request=request(), findings=[
    finding("history.own_words", "midline", {"kind": "text", "text": "I fell off the cart and the knee bent the wrong way"}),
    finding("history.mechanism", "midline", {"kind": "choice", "choice": "hyperextension"}),
    yes("history.knee_dislocated"),
    no("knee.look_open_wound"),
    pulse("vessel.pulse_dorsalis_pedis", "left", "0"),
    pulse("vessel.pulse_dorsalis_pedis", "right", "2"),
    yes("vessel.foot_cold"),
    yes("nerve.sensation_foot_reduced"),
    no("knee.patella_tender"),
    no("knee.fibular_head_tender"),
    finding("knee.flexion_active", "left", {"kind": "not_done", "reason": "pain"}),
    finding("knee.flexion_active", "right", {"kind": "angle", "toward_deg": 138}, instrument="goniometer_long", position="supine"),
])
print(f"{len(recorded['recorded'])} findings are on disk.")

assessment = call("exam.assess", exam=exam, language="en")
for alert in assessment.get("alerts", []):
    print(f"\nALERT ({alert['urgency'].replace('_', ' ')}): {alert['text']}")
print("\nAssessment")
for rule in assessment.get("rules", []):
    more = rule.get("band") or rule.get("gate")
    print(f"  {rule['rule']} ({rule['edition']}), {rule['side'].upper()}: {rule['outcome']}{f' ({more})' if more else ''}")
for kind in ("statements", "hypotheses", "questions", "contradictions", "missing", "not_examined"):
    for one in assessment.get(kind, []):
        print(f"  {kind}: {one.get('text', one.get('message', ''))}")
print("\nDecision support for a licensed examiner; what was not examined stays unknown.")
