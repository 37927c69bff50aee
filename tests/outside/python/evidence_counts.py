"""Intervals from counts, by a statistics library that shares nothing with the program.

statsmodels: proportion_confint for how common a condition is and for printed sensitivities; Table2x2.riskratio, its interval by the logarithm and the
error of that logarithm for likelihood ratios (the ratio of the share of positive results with the condition to that without is LR+, of
negative results LR-). Where a cell is zero 0.5 is added to all four first: the page of the facts says so; the library would raise the
empty cell alone.

Not a stage of its own, because the library with what it needs is some 150 MB. Run by hand where Debian's python3-statsmodels is there:

    python3 tests/outside/python/evidence_counts.py          writes data/evidence_counts_shares.csv and data/evidence_counts_ratios.csv
    python3 tests/outside/python/evidence_counts.py --check  computes them again and says which lines differ
"""

import json
import sys
from pathlib import Path

from statsmodels import __version__
from statsmodels.stats.contingency_tables import Table2x2
from statsmodels.stats.proportion import proportion_confint

tests = Path(__file__).resolve().parent.parent
facts = tests.parent.parent / "core" / "reference" / "data" / "evidence"
made_by = f"by tests/outside/python/evidence_counts.py with statsmodels {__version__.split('+')[0]}"


def read(name):
    return json.loads((facts / f"{name}.json").read_text(encoding="utf-8"))[name]


def shares():
    yield f"# Limits (95 in 100) of shares, {made_by}: of every counted row of pretest.json, and of the"
    yield "# printed sensitivity and specificity of two studies whose groups are counted there (GOOSSENS2015: 493 of 593 with a tear;"
    yield "# DECARY2018ACL: 43 of 279). Wilson's limits, or the exact ones of Clopper and Pearson (beta), as the study took them."
    yield "row,figure,method,positive,people,share,low,high"
    counted = [(row["row"], "best", "wilson", row["positive"], row["people"]) for row in read("pretest") if "positive" in row and "people" in row]
    thessaly, pivot_pop = "accuracy.meniscus.thessaly_20.GOOSSENS2015", "accuracy.acl.pivot_pop.DECARY2018ACL"
    counted += [(thessaly, "sens", "wilson", 316, 493), (thessaly, "spec", "wilson", 53, 100)]
    counted += [(pivot_pop, "sens", "beta", 23, 43), (pivot_pop, "spec", "beta", 217, 236)]
    for name, figure, method, x, n in counted:
        low, high = proportion_confint(x, n, alpha=0.05, method=method)
        yield f"{name},{figure},{method},{x},{n},{x / n:.8f},{low:.8f},{high:.8f}"


def invented():
    """Tables of all sizes, from a few lines of arithmetic: small, uneven, with and without empty cells."""
    state = 20261126
    for number in range(48):
        cells = []
        for _ in range(4):
            state = (state * 1103515245 + 12345) % 2**31
            cells.append(state // 65536 % (4, 12, 60, 400)[number % 4])
        if cells[0] + cells[1] > 0 and cells[2] + cells[3] > 0:
            yield f"invented.{number + 1}", cells


def tables():
    for row in read("accuracy"):
        if "counts" in row:
            yield row["row"], [row["counts"][cell] for cell in ("tp", "fn", "fp", "tn")]
    # 0.64 of 493 knees with a tear, 0.53 of 100 without: the counts behind the printed shares of GOOSSENS2015.
    yield "accuracy.meniscus.thessaly_20.GOOSSENS2015", [316, 177, 47, 53]
    yield from invented()


def ratios():
    yield f"# Likelihood ratios from counts with the error of the logarithm and its limits (95 in 100), {made_by}."
    yield "# Rows named invented.* are no study's: they are there for the arithmetic alone."
    yield "row,tp,fn,fp,tn,result,ratio,se,low,high"
    for name, counts in tables():
        tp, fn, fp, tn = (cell + (0.5 if 0 in counts else 0) for cell in counts)
        for result, table in (("positive", [[tp, fn], [fp, tn]]), ("negative", [[fn, tp], [tn, fp]])):
            made = Table2x2(table, shift_zeros=False)
            low, high = made.riskratio_confint(alpha=0.05)
            yield f"{name},{','.join(map(str, counts))},{result},{made.riskratio:.8f},{made.log_riskratio_se:.8f},{low:.8f},{high:.8f}"


def main():
    differ = 0
    for name, lines in (("evidence_counts_shares.csv", shares()), ("evidence_counts_ratios.csv", ratios())):
        file, text = tests / "data" / name, list(lines)
        if "--check" not in sys.argv:
            file.write_text("\n".join(text) + "\n", encoding="utf-8")
            print(f"{name}: {len(text)} lines")
            continue
        stored = [line for line in file.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
        for line in sorted(set(stored) ^ {line for line in text if not line.startswith("#")}):
            print(f"{name}: {'stored' if line in stored else 'now'} {line}")
            differ += 1
    return 1 if differ else 0


if __name__ == "__main__":
    sys.exit(main())
