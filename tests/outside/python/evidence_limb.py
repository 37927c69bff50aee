# stage: outside
"""Rows of pelvis, hip, calf, ankle and foot, worked out without the program and with the standard library alone.

  python3 tests/outside/python/evidence_limb.py            checks the facts, and the stored values against a fresh computation
  python3 tests/outside/python/evidence_limb.py --write    writes tests/outside/data/evidence_limb_checks.csv anew

Formulas: sensitivity and specificity to ratios; the delta method on ln ratio (from counts, from the interval of a ratio, or from the
intervals of both shares on the logit); 0.5 added to each of four counts where one is 0; odds x ratio. Where nothing is printed an error
of 0.5 is stated, a convention of this project. Misprints are named here a second time, with what is wrong.
"""
import csv
import json
import math
import pathlib
import sys
from fractions import Fraction

TOP = pathlib.Path(__file__).resolve().parents[3]
FACTS = TOP / "core/reference/data/evidence"
STORED = TOP / "tests/outside/data/evidence_limb_checks.csv"
Z = 1.959963985
PRIORS = (0.05, 0.25, 0.60)

# Printed ratios that do not follow from the printed shares, each rounded as it was printed.
MISPRINTS = {
    "accuracy.hip_impingement.fadir.REIMAN2015": "the negative ratio was pooled by itself",
    "accuracy.greater_trochanteric_pain.stance_30s.GRIMALDI2017": "nobody without the condition was positive; a correction gave 12.2",
    "accuracy.ankle_or_midfoot_fracture.ankle_rule_adults.GOMES2022": "labels of the two ratios exchanged in the abstract, and pooled by themselves",
    "accuracy.bone_stress_injury.ultrasound_device.SCHNEIDERS2012": "both ratios were pooled by themselves",
    "accuracy.bone_stress_injury.fork_shin.LESHO1997": "the shares give 2.27 and 0.37, 2.33 and 0.34 are printed",
}
# A ratio of a positive result below 1, as published.
REVERSED = {
    "accuracy.hip_impingement.faber_pain.ZURICH2020": "the sign is worthless here",
    "accuracy.bone_stress_injury.fork_worst.SCHNEIDERS2012": "the worse end of a range",
    "accuracy.deep_vein_thrombosis.score_low.GOODACRE2005": "the ratio of a low band",
}
KNEE = ("acl", "pcl", "mcl", "lcl", "plc", "meniscus", "patellar")
# Of these there is never a number.
NEVER = ("fracture", "slip", "septic", "infection", "compartment", "thrombosis", "ischaemi", "arterial", "tumour", "dislocation",
         "osteoarthritis", "stress_injury")

problems = []


def need(holds, text):
    if not holds:
        problems.append(text)


def load(name):
    with open(FACTS / f"{name}.json", encoding="utf-8") as file:
        return json.load(file, parse_float=lambda text: Fraction(text), parse_int=lambda text: Fraction(text))[name]


def rounding(figure, least):
    """The ends of what a printed figure may have been, with at least so many decimals."""
    decimals = least
    while (figure * 10**decimals).denominator != 1:
        decimals += 1
    half = Fraction(1, 2 * 10**decimals)
    return figure - half, figure + half


def overlaps(printed, low, high):
    least, most = rounding(printed, 1)
    return most >= low and least <= high


def follows(row):
    sens, spec = rounding(row["sens"], 2), rounding(row["spec"], 2)
    tiny = Fraction(1, 10**9)
    good = True
    if "lr_pos" in row:
        good = overlaps(row["lr_pos"], sens[0] / (1 - spec[0]), sens[1] / max(1 - spec[1], tiny))
    if "lr_neg" in row:
        good = good and overlaps(row["lr_neg"], (1 - sens[1]) / spec[1], (1 - sens[0]) / max(spec[0], tiny))
    return good


def inside(share):
    return share is not None and 0 < share < 1


def may_compute(row):
    """What a row needs to be computed with, apart from the age and the days of the person."""
    whole = "counts" in row or (inside(row.get("sens")) and inside(row.get("spec"))) or ("lr_pos" in row and "lr_neg" in row)
    return (row["status"] == "read" and whole and row["design"] != "case_control" and not row.get("range")
            and row["confidence"] in ("b", "c"))


def logit(share):
    return math.log(share / (1 - share))


def error_of_share(row, name):
    low, high = row.get(name + "_low"), row.get(name + "_high")
    if low is None or high is None or low <= 0 or high >= 1:
        return None
    return (logit(float(high)) - logit(float(low))) / (2 * Z)


def of_few(row):
    """Fewer than 40 people, or a group of fewer than 20 with or without the condition, as counted or as the interval of one study tells."""
    groups = []
    if "counts" in row:
        counts = row["counts"]
        groups = [counts["tp"] + counts["fn"], counts["fp"] + counts["tn"]]
    elif row["design"] != "meta_analysis":
        for name in ("sens", "spec"):
            error = error_of_share(row, name)
            if error and 0 < row.get(name, 0) < 1:
                groups.append(1 / (error**2 * row[name] * (1 - row[name])))
    return row.get("n_people", 40) < 40 or any(group < 20 for group in groups)


def ratio_and_error(row, positive):
    few = of_few(row)
    if "counts" in row:
        cells = [float(row["counts"][name]) for name in ("tp", "fn", "fp", "tn")]
        if 0 in cells:
            cells = [cell + 0.5 for cell in cells]
        tp, fn, fp, tn = cells
        a, b = (tp, fp) if positive else (fn, tn)
        error = math.sqrt(1 / a - 1 / (tp + fn) + 1 / b - 1 / (fp + tn))
        return (a / (tp + fn)) / (b / (fp + tn)), max(error, 0.5) if few else error, few
    name = "lr_pos" if positive else "lr_neg"
    if name in row:
        ratio = float(row[name])
    else:
        s, c = float(row["sens"]), float(row["spec"])
        ratio = s / (1 - c) if positive else (1 - s) / c
    if name + "_low" in row:
        error = (math.log(row[name + "_high"]) - math.log(row[name + "_low"])) / (2 * Z)
        return ratio, max(error, 0.5) if few else error, few
    sens_error, spec_error = error_of_share(row, "sens"), error_of_share(row, "spec")
    if sens_error is None or spec_error is None:
        return ratio, 0.5, True
    s, c = float(row["sens"]), float(row["spec"])
    a, b = (1 - s, c) if positive else (s, 1 - c)
    error = math.hypot(a * sens_error, b * spec_error)
    return ratio, max(error, 0.5) if few else error, few


def after(prior, ratio):
    odds = prior / (1 - prior) * ratio
    return odds / (1 + odds)


def checks(rows):
    for row in rows:
        for positive in (True, False):
            ratio, error, stated = ratio_and_error(row, positive)
            for prior in PRIORS:
                low, high = ratio * math.exp(-Z * error), ratio * math.exp(Z * error)
                yield {"row": row["row"], "result": "positive" if positive else "negative", "prior": prior, "ratio": f"{ratio:.8g}",
                       "error": f"{error:.8g}", "stated": "yes" if stated else "no", "post": f"{after(prior, ratio):.8f}",
                       "low": f"{after(prior, low):.8f}", "high": f"{after(prior, high):.8f}"}


def main():
    conditions = load("conditions")
    about = {text: one for one in conditions for text in one["texts"]}
    accuracy = load("accuracy")
    limb = [row for row in accuracy if (about[row["about"]].get("parts") or ["knee"]) != ["knee"]]
    for one in conditions:
        if one["computes"]:
            need(not any(word in one["condition"] for word in NEVER), f"{one['condition']} must never have a number")
    for row in accuracy:
        if "sens" in row and "spec" in row and not follows(row):
            need("ratio_note" in row, f"{row['row']}: a ratio that does not follow, without its reason")
        if row["row"] in MISPRINTS:
            need(not follows(row), f"{row['row']}: named as a misprint, but it follows")
        if row["row"] in REVERSED:
            need(row["lr_pos"] < 1 and "ratio_note" in row, f"{row['row']}: named as reversed")
    for row in accuracy:
        if "ratio_note" in row and row["row"].split(".")[1].split("_")[0] not in KNEE:
            need(row["row"] in MISPRINTS or row["row"] in REVERSED, f"{row['row']}: a reason for a ratio that is not named here")
    fresh = list(checks([row for row in limb if may_compute(row)]))
    fields = list(fresh[0])
    if "--write" in sys.argv:
        with open(STORED, "w", encoding="utf-8", newline="") as file:
            file.write("# Ratios, errors of their logarithms, and what is left of three priors with 95 in 100 limits, for each row of pelvis, hip, calf,\n"
                       "# ankle and foot that may compute; by tests/outside/python/evidence_limb.py from the figures printed by the source that ends the row's name.\n")
            writer = csv.DictWriter(file, fields, lineterminator="\n")
            writer.writeheader()
            writer.writerows(fresh)
    with open(STORED, encoding="utf-8") as file:
        stored = list(csv.DictReader(line for line in file if not line.startswith("#")))
    need(len(stored) == len(fresh), f"{len(stored)} values are stored, {len(fresh)} come out")
    for old, now in zip(stored, fresh):
        need(old == {name: str(value) for name, value in now.items()}, f"{now['row']} {now['result']} {now['prior']}: {now} but stored {old}")
    for text in problems:
        print(text)
    print(f"{len(fresh) * 3 + len(accuracy) - len(problems)} passed, {len(problems)} failed")
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
