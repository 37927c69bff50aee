#!/usr/bin/env python3
"""A day of an invented clinic after which the queue is long: two tablets that changed the same exams without knowing of each other, and people
who were registered at both. The clinic's ledger is left as it came home, for somebody to work through.

usage: long_queue.py PROGRAM FOLDER; FOLDER is new and holds the ledgers afterwards.
"""
import os
import sys

from devices import DAY, Program, at, join, new_clinic, say
from visits import Visit, angle, answer, register

UPPER, LOWER = "Upper Ford (invented)", "Lower Mill (invented)"
PROGRAM, OUT = Program(sys.argv[1]), os.path.abspath(sys.argv[2])


def folder(name):
    return os.path.join(OUT, name)


def girth(side, cm):
    return {"item": "leg.thigh_girth_10cm", "side": side, "value": {"kind": "length", "entered": f"{cm} cm"}, "instrument": "tape"}


def begun(heron):
    """What both tablets know in the morning: by name, who is being examined and for what."""
    people = {
        "Abeni Madeup": ("female", "1988-02-11", "acute_knee", "left"),
        "Baraka Madeup": ("male", "1979-10-30", "acute_knee", "right"),
        "Chidi Madeup": ("male", "1995-06-21", "acute_knee", "left"),
        "Dalila Madeup": ("female", "2013-03-05", "chronic_knee", "right"),
        "Efua Madeup": ("female", "1966-12-01", "chronic_knee", "left"),
        "Faraji Madeup": ("male", "1958-07-14", "chronic_knee", "right"),
        "Gamba Madeup": ("male", "2001-01-19", "ankle_injury", "left"),
        "Hawa Madeup": ("female", "1990-09-09", "chronic_knee", "left"),
        "Imani Madeup": ("female", "1983-05-27", "chronic_knee", "right"),
        "Jabari Madeup": ("male", "1971-11-02", "acute_knee", "left"),
        "Kesi Madeup": ("female", "1999-08-03", "chronic_knee", "left"),
        "Lindiwe Madeup": ("female", "1949-04-30", "chronic_knee", "right"),
    }
    visits = {}
    for number, (name, (sex, birth, complaint, side)) in enumerate(people.items()):
        injured = {"injured_on": DAY} if complaint == "acute_knee" else {}
        visits[name] = Visit.opened(heron, register(heron, name, sex, birth, UPPER), complaint, side, examined_at=at(f"09:{3 * number:02}"), **injured)
    visits["Abeni Madeup"].record(angle("knee.flexion_active", "left", 118))
    visits["Baraka Madeup"].record(answer("history.pop", "right", "no"))
    visits["Chidi Madeup"].record(answer("vessel.foot_cold", "left", "no"))
    visits["Dalila Madeup"].record(answer("knee.look_skin_hot_red", "right", "yes"), answer("history.unwell", "midline", "yes"))
    visits["Efua Madeup"].record(angle("knee.flexion_passive", "left", 124), girth("left", "43.5"))
    visits["Faraji Madeup"].record(answer("knee.crepitus", "right", "yes"))
    return visits


def at_upper_ford(heron, visits):
    """heron, in the afternoon."""
    heron.write("person.amend", **known(heron, "Imani Madeup"), changes={"birth": {"date": "1983-05-17"}})
    other = register(heron, "Abeni Nobody", "female", "1989", UPPER)
    visits["Abeni Madeup"].write("exam.move", person=other, reason="It was her cousin Abeni Nobody who was examined.")
    visits["Baraka Madeup"].write("exam.swap_sides", reason="The other knee was meant throughout.")
    visits["Chidi Madeup"].correct(answer("vessel.foot_cold", "left", "no"))
    visits["Dalila Madeup"].record({"item": "general.temperature", "side": "midline", "value": {"kind": "temperature", "cel": 36.9}, "instrument": "thermometer"})
    visits["Efua Madeup"].correct(angle("knee.flexion_passive", "left", 126))
    visits["Faraji Madeup"].write("finding.withdraw", finding=standing(visits["Faraji Madeup"], "knee.crepitus"), reason="Recorded for the wrong person.")
    visits["Gamba Madeup"].impression("Sprained outer ankle.", "left", "fairly sure")
    visits["Gamba Madeup"].sign("Gamba Madeup, LEFT ankle")
    visits["Hawa Madeup"].impression("Worn knee joint.", "left", "fairly sure")
    visits["Imani Madeup"].plan({"kind": "review", "text": "Bending measured again", "side": "right", "by": "2026-12-22"})
    visits["Jabari Madeup"].write("exam.withdraw", reason="Begun twice by mistake.")
    visits["Kesi Madeup"].write("exam.amend", changes={"side": "left", "injured_on": "2026-11-01"})
    visits["Lindiwe Madeup"].write("consent.record", consent={"examine": "yes", "record": "yes", "send": "no", "by": "self"})
    register(heron, "Safiya Invented", "female", "1994-04-08", UPPER)
    register(heron, "Kito Invented", "male", "2019-06-06", LOWER)


def at_lower_mill(swift, names):
    """swift, in the same afternoon, to which the same people came."""
    visits = {name: Visit.read(swift, exam) for name, exam in names.items()}
    swift.write("person.amend", **known(swift, "Imani Madeup"), changes={"birth": {"date": "1982-05-27"}})
    other = register(swift, "Abena Nobody", "female", "1972", LOWER)
    visits["Abeni Madeup"].write("exam.move", person=other, reason="The knee is Abena Nobody's; she was called by the other name.")
    visits["Baraka Madeup"].record(angle("knee.flexion_active", "right", 96))
    visits["Chidi Madeup"].correct(answer("vessel.foot_cold", "left", "yes"))
    visits["Dalila Madeup"].record({"item": "general.temperature", "side": "midline", "value": {"kind": "temperature", "cel": 39.4}, "instrument": "thermometer"})
    visits["Efua Madeup"].correct(angle("knee.flexion_passive", "left", 98))
    visits["Faraji Madeup"].correct(answer("knee.crepitus", "right", "no"))
    visits["Gamba Madeup"].record(answer("ankle.lateral_malleolus_tender", "left", "yes"))
    visits["Hawa Madeup"].impression("Torn inner meniscus.", "left", "unsure")
    visits["Imani Madeup"].plan({"kind": "referral", "text": "Knee clinic", "side": "right", "who": "district hospital (invented)", "by": "2026-12-08"})
    visits["Jabari Madeup"].record(answer("history.locking", "left", "yes"))
    visits["Kesi Madeup"].write("exam.amend", changes={"side": "right"})
    visits["Lindiwe Madeup"].write("consent.record", consent={"examine": "yes", "record": "yes", "send": "yes", "by": "her son"})
    register(swift, "Safia Invented", "female", "1994-08-04", UPPER)
    register(swift, "Neema Invented", "female", "2019-06-06", LOWER)


def known(device, name):
    """A person's id and revision, as this device has them."""
    found = device.ask("person.find", text=name)["people"][0]["person"]
    return {"person": found["person"], "seen": found["revision"], "replaces": found["revision"]}


def standing(visit, item):
    return next(one["finding"] for one in visit.device.ask("exam.read", exam=visit.exam)["exam"]["findings"] if one["item"] == item)


os.makedirs(OUT)
clinic, code = new_clinic(PROGRAM, folder("clinic"), "Desta Invented")
clinic.serve(at("06:00"), hub=True)
hub = {"with": clinic.url}
heron, _ = join(clinic, code, "heron", folder("heron"), "Amina Invented")
swift, _ = join(clinic, code, "swift", folder("swift"), "Chipo Invented")
heron.serve(at("09:45"))
visits = begun(heron)
heron.errand("exchange.begin", **hub)
swift.serve(at("09:30"))
swift.errand("exchange.begin", **hub)
for tablet in (heron, swift):
    tablet.stop()
swift.serve(at("13:30"))
at_lower_mill(swift, {name: visit.exam for name, visit in visits.items()})
heron.serve(at("14:30"))
at_upper_ford(heron, visits)
for tablet in (heron, swift):
    tablet.errand("exchange.begin", **hub)
    tablet.stop()
clinic.stop()
queue = PROGRAM.run("conflicts", "--ledger", clinic.ledger)
if "TO BE SETTLED: 15," not in queue:
    sys.exit("the queue does not hold the fifteen lines of this day:\n" + queue)
say(queue)
say(f"The ledger is {clinic.ledger}. To work through it, serve it; conflict.list gives what each line's method takes:")
say(f"  {PROGRAM.path} serve --ledger {clinic.ledger} --http 0")
