#!/usr/bin/env python3
"""A whole day of an invented clinic: three tablets in two villages, home by network and by stick, what disagrees settled.

usage: day.py PROGRAM FOLDER; FOLDER is new and holds every ledger afterwards.
"""
import os
import shutil
import sys

import play
from devices import DAY, Device, Program, at, join, new_clinic, say, told
from visits import Visit, angle, answer, register

UPPER, LOWER = "Upper Ford (invented)", "Lower Mill (invented)"
PROGRAM, OUT = Program(sys.argv[1]), os.path.abspath(sys.argv[2])
STICK = os.path.join(OUT, "stick")


def step(text):
    say()
    say(text)


def part(text):
    say()
    say(text)
    say("=" * len(text))


def folder(name):
    return os.path.join(OUT, name)


def write_stick(device, name):
    done = device.errand("parcel.write", path=os.path.join(STICK, name + ".parcel"))
    say(f"     {done['entries']} entries, {done['bytes']} bytes, sealed and read back")


def read_stick(device, name):
    done = device.errand("parcel.take", path=os.path.join(STICK, name + ".parcel"))
    say(f"     {done['entries']} entries, {done['taken']} of them new here")


def the_evening_before():
    part("The evening before, at the clinic: three tablets are let in")
    clinic, code = new_clinic(PROGRAM, folder("clinic"), "Desta Invented")
    clinic.serve(at("03:00"), hub=True)
    tablets = []
    for name, examiner in (("heron", "Amina Invented"), ("kite", "Bakari Invented"), ("swift", "Chipo Invented")):
        tablet, digits = join(clinic, code, name, folder(name), examiner)
        say(f"  {name}, of {examiner}: both screens show {digits}")
        tablets.append(tablet)
    for tablet in tablets:  # each knows the others now, and can open what they bring
        PROGRAM.run("exchange", "--ledger", tablet.ledger, "--with", clinic.url)
    clinic.stop()
    return clinic, code, tablets


def upper_ford_morning(heron, kite):
    part(f"Morning at {UPPER}")
    step("  heron, Amina Invented: three people are examined")
    heron.serve(at("10:40"))
    people = play.three_exams(heron)
    step("  heron: a woman with a sore knee registers, and waits so long that she walks on to the other village")
    register(heron, "Nyota Invented", "female", "1971-04-09", UPPER, "00412", tell=True)
    step("  heron: Juma Nobody's knee is begun; he shall be seen at the other village too, so the tablet writes a stick for it")
    juma = Visit.opened(heron, register(heron, "Juma Nobody", "male", "1992-08-17", UPPER, tell=True), "acute_knee", "right", examined_at=at("11:40"), injured_on=DAY)
    juma.record(angle("knee.flexion_active", "right", 110), answer("vessel.foot_cold", "right", "no"), answer("history.pop", "right", "no"))
    write_stick(heron, "to-lower-mill")
    step("  kite, Bakari Invented: its battery was flat, and its clock stands in the year 2001")
    kite.serve("2001-01-01T00:04:00.000Z")
    otieno = Visit.opened(kite, register(kite, "Otieno Madeup", "male", "1984", UPPER, tell=True), "ankle_injury", "left")
    say(f"     the program to the form: {', '.join(otieno.remarks)}; {kite.ask('health.check')['clock']['hint']}")
    otieno.record(answer("ankle.swelling_lateral", "left", "yes"), answer("ankle.lateral_malleolus_tender", "left", "no"))
    otieno.impression("Sprained outer ankle.", "left", "fairly sure")
    otieno.plan({"kind": "advice", "text": "Walk on it as it allows", "became": "given"})
    otieno.sign("Otieno Madeup, LEFT ankle")
    return people, juma.exam, otieno.exam


def lower_mill(swift, juma_exam):
    part(f"The day at {LOWER}")
    step("  swift, Chipo Invented: the woman who walked on registers here, and says her birthday the other way round")
    swift.serve(at("11:00"))
    nyota = register(swift, "Nyotta Invented", "female", "1971-09-04", UPPER, tell=True)
    knee = Visit.opened(swift, nyota, "chronic_knee", "left", examined_at=at("11:10"))
    knee.record(angle("knee.flexion_passive", "left", 121), angle("knee.flexion_passive", "right", 138))
    knee.impression("Worn knee joint.", "left", "fairly sure")
    knee.plan({"kind": "review", "text": "Bending measured again", "side": "left", "by": "2027-02-24"})
    knee.sign("Nyotta Invented, LEFT knee")
    swift.stop()
    step("  12:00: the tablet is stopped and its folder copied")
    shutil.copytree(folder("swift"), folder("swift-copy-of-noon"))
    step("  13:00: the stick of Upper Ford is read; Juma Nobody came on it, and at the door his foot is cold")
    swift.serve(at("13:00"))
    read_stick(swift, "to-lower-mill")
    juma = Visit.read(swift, juma_exam)
    juma.correct(angle("knee.flexion_active", "right", 85), answer("vessel.foot_cold", "right", "yes"))
    step("  14:00: a stick for the clinic is written and goes ahead on a motorcycle; then the tablet falls into the mill race")
    write_stick(swift, "lower-mill-14-00")
    swift.stop()
    os.rename(folder("swift"), folder("swift-in-the-mill-race"))
    step("  15:00: the copy of noon is put onto another tablet, which goes on and knows nothing of the afternoon; a calf is begun and not finished")
    shutil.copytree(folder("swift-copy-of-noon"), folder("swift"))
    swift.name = "swift, put back"
    swift.serve(at("15:00"))
    zawadi = Visit.opened(swift, register(swift, "Zawadi Nobody", "female", "2003-01", LOWER, tell=True), "calf_pain", "left", examined_at=at("15:10"))
    zawadi.record(answer("history.fever", "midline", "no"))
    swift.stop()


def upper_ford_afternoon(heron, juma_exam):
    part(f"Afternoon at {UPPER}")
    step("  heron: Juma Nobody came back; nobody here knows what was found at the other village, and his exam is finished and signed")
    heron.stop()
    heron.serve(at("16:00"))
    juma = Visit.read(heron, juma_exam)
    juma.correct(angle("knee.flexion_active", "right", 105), answer("vessel.foot_cold", "right", "no"))
    juma.impression("Bruised knee.", "right", "fairly sure")
    juma.plan({"kind": "advice", "text": "Cool it, walk as it allows", "side": "right", "became": "given"})
    juma.sign("Juma Nobody, RIGHT knee")
    heron.stop()


def home(clinic, code, heron, kite, swift):
    part("Evening: the day comes home")
    clinic.serve(at("18:00"), hub=True)
    step("  the stick that went ahead is read at the clinic")
    read_stick(clinic, "lower-mill-14-00")
    step("  the district wants the day's count at six; what has come by then is reported")
    report(clinic)
    step("  kite has no network: it writes a stick")
    write_stick(kite, "kite")
    kite.stop()
    read_stick(clinic, "kite")
    for tablet in (heron, swift):
        step(f"  {tablet.name}: over the clinic's network")
        told(PROGRAM.run("exchange", "--ledger", tablet.ledger, "--with", clinic.url, may_end_with=(0, 1)))
    step("  swift does as it was told, and joins again in a new folder")
    again, digits = join(clinic, code, "swift, joined again", folder("swift-again"), "Chipo Invented")
    say(f"     both screens show {digits}")
    told(PROGRAM.run("exchange", "--ledger", again.ledger, "--with", clinic.url, may_end_with=(0, 1)))
    return again


def report(clinic):
    """Kept with its number; what came since the last one is named, and that one stays as it was."""
    day = {"from": DAY, "as_of": DAY}
    seen = [one["report"]["entry"] for one in clinic.ask("district.count", **day).get("reported", [])]
    told(clinic.write("district.report", **day, seen=seen, language="en")["text"].split("\n", 1)[1])


def list_of(clinic, method, **params):
    """A list as a person reads it, without the banner that stands on every page."""
    page = clinic.ask(method, language="en", **params)
    say()
    told(page["text"].split("\n", 1)[1])
    return page


# What the clinic decides, by what a line is about: the word that the value it takes holds, and the reason.
SETTLED = {
    "vessel.foot_cold": ("yes", "Chipo Invented, on the telephone: felt both feet at 13:00, the right one was cold. In the afternoon nobody felt them anew: "
                                "the answer of the morning was sent again."),
    "knee.flexion_active": ("85", "Measured twice at the other village, with the long goniometer; the man had walked home between the two."),
}


def decide(clinic, row):
    if row["about"] == "finding":
        word, reason = SETTLED[row["item"]]
        taken = next(one for one in row["entries"] if word in one["text"])
        Visit.read(clinic, row["exam"]).write("conflict.settle", take=taken["entry"], reason=reason)
        told(f"conflict.settle: {taken['text']} (reason: {reason})")
    elif row["about"] == "births_of_one":
        wrong = next(one for one in row["pair"]["people"] if one["birth"]["date"] == "1971-09-04")
        reason = "She showed her card: the ninth of April. At Lower Mill day and month were written the other way round."
        clinic.write("person.amend", person=wrong["person"], changes={"birth": {"date": "1971-04-09"}}, replaces=wrong["revision"], seen=wrong["revision"], reason=reason)
        told(f"person.amend: {wrong['names'][0]['text']}: born 1971-04-09 (reason: {reason})")
    else:
        pair = clinic.write("pair.decide", persons=row["pair"]["persons"], same="yes", reason="asked_person", seen=row["revision"])
        names = " / ".join(name["text"] for person in pair["pair"]["people"] for name in person["names"])
        decided = pair["pair"]["decided"][0]
        told(f"pair.decide: {names}: one person: {decided['same']} (reason: {decided['reason'].replace('_', ' ')})")


def put_off(clinic, row, asked):
    """Not decided yet: whom somebody has asked stays with the line, and so does the line."""
    persons = row["pair"]["persons"]
    clinic.write("conflict.put_off", persons=persons, about=row["about"], entries=[], asked=asked, look_again="2026-11-25", seen=row["pair"]["people"][0]["revision"])
    told(f"conflict.put_off: {asked}")
    line = next(one for one in clinic.ask("conflict.list", language="en")["queue"] if (one.get("pair") or {}).get("persons") == persons)
    told("conflict.list: " + line["put_off"][0]["text"])


def work_the_queue(clinic):
    part("What disagrees is settled at the clinic, by Desta Invented")
    left = list_of(clinic, "conflict.list")["queue"]
    say()
    put_off(clinic, next(row for row in left if row["about"] == "look_alike"), "Her sister in Lower Mill, by telephone, whether she was seen at both villages; she rings back after the meal")
    left = clinic.ask("conflict.list", language="en")["queue"]
    while left:
        decide(clinic, next(row for row in left if row["settle_by"] in ("conflict.settle", "pair.decide", "person.amend")))
        left = clinic.ask("conflict.list", language="en")["queue"]  # what was settled takes with it what was not seen of it
    list_of(clinic, "conflict.list")


def act_on(clinic, otieno):
    part("What the lists ask for is done")
    for visit in clinic.ask("day.list", day=DAY, language="en")["visits"]:
        for alert in visit["alerts"]:
            done = "Called the head of Upper Ford (invented) at 18:20: he is driven to the district hospital (invented) now, the leg level and bare."
            Visit.read(clinic, visit["exam"]).write("alert.handle", alert=alert["alert"], side=alert["side"], action=done)
            say()
            told(f"{visit['person']['names'][0]['text']}: {alert['text']}")
            told("alert.handle: " + done)
    when = "Bakari Invented says: this was in the morning, about half past ten. The clock of the tablet was not set."
    say()
    told_of_the_day(clinic, otieno)
    Visit.read(clinic, otieno).write("addendum.record", kind="correction", reason="the day of the exam", text=when, examined_on=DAY)
    told(f"addendum.record: examined_on {DAY}; {when}")
    told_of_the_day(clinic, otieno)


def told_of_the_day(clinic, exam):
    """What the note says of who was seen and when, and what the judgement asks."""
    head = clinic.ask("note.write", exam=exam)["text"].split("\n")
    told("note.write: " + " ".join(line for line in head[1:6] if "Otieno" in line or "Examined" in line))
    for one in clinic.ask("exam.assess", exam=exam, only=["contradictions"], language="en")["contradictions"]:
        told("exam.assess asks: " + one["text"])


def take_home(clinic, heron, kite, swift, again):
    part("Everybody takes home what the clinic has")
    for tablet in (heron, again, swift):
        step("  " + tablet.name)
        told(PROGRAM.run("exchange", "--ledger", tablet.ledger, "--with", clinic.url, may_end_with=(0, 1)))
    step("  kite, by stick")
    write_stick(clinic, "from-the-clinic")
    told(PROGRAM.run("parcel", "read", os.path.join(STICK, "from-the-clinic.parcel"), "--ledger", kite.ledger))
    clinic.stop()


def verify_all(devices):
    part("Every ledger is verified")
    heads = {}
    for device in devices:
        say()
        told(PROGRAM.run("verify", device.ledger))
        with_heads = device.serve().ask("ledger.verify", keep=False)
        device.stop()
        heads[device.name] = sorted((head["replica"], head["seq"], head["entry"]) for head in with_heads["vouched_to"])
        if with_heads["damage"] or heads[device.name] != heads[devices[0].name]:
            sys.exit(f"{device.name} does not hold what the clinic holds")
    say()
    say(f"  {'; '.join(heads)}: complete and equal, to the last entry of each branch ({len(heads[devices[0].name])}).")


os.makedirs(STICK)
say()
say("DEMONSTRATION. Clinic, villages and people are invented. What is set in is what the program says.")
clinic, code, (heron, kite, swift) = the_evening_before()
people, juma, otieno = upper_ford_morning(heron, kite)
lower_mill(swift, juma)
upper_ford_afternoon(heron, juma)
again = home(clinic, code, heron, kite, swift)
part("The day list, before")
list_of(clinic, "day.list", day=DAY)
work_the_queue(clinic)
act_on(clinic, otieno)
part("The day list, after")
list_of(clinic, "day.list", day=DAY)
step("  the district is told what the count was when all had come home")
report(clinic)
take_home(clinic, heron, kite, swift, again)
part("The three exams of the morning, as a person reads them")
heron.serve()
play.write_all_down(heron, people, OUT)
heron.stop()
for name in people:
    say()
    say("=== " + name)
    with open(os.path.join(OUT, name + ".txt"), encoding="utf-8") as note:
        say(note.read())
verify_all([clinic, heron, kite, swift, again])
play.keep(OUT, "talk.jsonl", "\n".join(Device.talk) + "\n")
