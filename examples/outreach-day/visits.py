"""What the invented people of the day come with, in as few calls as a form would need."""
from devices import OFFSET_MIN, told


def answer(item, side, yes_no):
    return {"item": item, "side": side, "value": {"kind": "answer", "answer": yes_no}}


def angle(item, side, degrees):
    return {"item": item, "side": side, "value": {"kind": "angle", "toward_deg": degrees}, "instrument": "goniometer_long", "position": "supine"}


def register(device, name, sex, birth, home, number=None, tell=False):
    """A person as somebody says their name; the id."""
    params = {"names": [{"text": name}], "sex": sex, "birth": {"date": birth}, "home": home}
    if number:
        params["identifiers"] = [{"issuer": "Clinic K (invented)", "text": number}]
    person = device.write("person.register", **params)["person"]
    if tell:
        told(f"{person['names'][0]['text']}, born {person['birth']['date']}, {person['home']}")
    return person["person"]


class Visit:
    """One exam at one device. `seen` is what its form has shown: each reply brings it up to date."""

    def __init__(self, device, exam, seen):
        self.device, self.exam, self.seen = device, exam, seen

    @classmethod
    def opened(cls, device, person, complaint, side, **more):
        done = device.write("exam.open", person=person, complaint=complaint, side=side, setting="outreach", offset_min=OFFSET_MIN, **more)
        visit = cls(device, done["exam"]["exam"], done["revision"])
        visit.remarks = done.get("remarks", [])
        visit.write("consent.record", consent={"examine": "yes", "record": "yes", "send": "yes", "by": "self", "capacity": "yes"})
        return visit

    @classmethod
    def read(cls, device, exam):
        """The exam as it stands on this device, opened in a form there."""
        return cls(device, exam, device.ask("exam.read", exam=exam)["revision"])

    def write(self, method, **params):
        done = self.device.write(method, exam=self.exam, seen=self.seen, **params)
        self.seen = done.get("revision", self.seen)
        return done

    def record(self, *findings):
        return self.write("finding.record", findings=list(findings))

    def correct(self, *findings):
        """New values for what stands on this form already."""
        standing = {(one["item"], one["side"]): one["entry"] for one in self.device.ask("exam.read", exam=self.exam)["exam"]["findings"] if one["standing"] == "current"}
        return self.record(*({**one, "replaces": [standing[one["item"], one["side"]]]} for one in findings))

    def impression(self, text, side, certainty):
        return self.write("impression.record", impression={"text": text, "side": side, "certainty": certainty})

    def plan(self, *items):
        return self.write("plan.record", plan_items=list(items))

    def sign(self, read_aloud):
        return self.write("exam.sign", read_aloud=read_aloud)
