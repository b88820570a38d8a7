"""Where the verdicts stand against what makers and handbooks print as right, and as wrong.

Small tables are made of printed rows (``data/calibration/*.csv``, each row with its source) and reviewed. A false alarm
is a finding graver than a remark at the printed value; a miss is none well beyond it. As a program it prints every
figure: ``python -m tests.published.calibration [RULEBOOK] [--further] [-v]``.

What was entered and not printed (loads, some cages and classes) stands in the rows' ``basis`` and ``*_provenance``
columns: tables of speeds are made with C/P = 15, spindles with C/P = 50 and a spring.
"""

import csv
import sys
import tempfile
from collections import Counter, defaultdict
from pathlib import Path

from linter.model.vocabulary import vocabulary
from linter.reading import read_table
from linter.review.assess import assess
from linter.review.records import assessments
from linter.rulebook.load import load

DATA = Path(__file__).parent / "data"
#: The corpus that limits were drawn up with, and rows of further makers that were measured before a limit was touched.
CORPORA = ("calibration", "calibration_further")
RANK = {None: 0, "remark": 1, "minor": 2, "major": 3, "critical": 4}
SPEED_RUNS = (
    (" n", 1, False), (" n stated", 1, True), (" 1.3n stated", 1.3, True), (" 1.5n", 1.5, False),
    (" 1.5n stated", 1.5, True), (" 2n", 2, False),
)  # fmt: skip
SPEED_COLUMNS = (
    "bearing_type", "bore_diameter", "outside_diameter", "ring_width", "contact_angle", "closure", "cage",
    "ball_material", "tolerance_class", "lubrication", "dynamic_rating", "static_rating",
)  # fmt: skip
#: Clauses that one station alone cannot meet.
PAIR = ("alignment.stated", "fit.arrangement")


def printed(name, corpus):
    """The printed rows of one table."""
    with (DATA / corpus / f"{name}.csv").open(encoding="utf-8", newline="") as stream:
        return list(csv.DictReader(stream))


def reviewed(rows, book):
    """Records by machine."""
    names = [n for n in vocabulary() if any(r.get(n) not in (None, "") for r in rows)]
    units = {n: vocabulary()[n].unit for n in names}
    heads = [f"{n} [{units[n]}]" if units[n] not in ("", "1") else n for n in names]
    found = defaultdict(list)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "printed.csv"
        with path.open("w", encoding="utf-8", newline="") as stream:
            writer = csv.writer(stream, lineterminator="\n")
            writer.writerow(heads)
            writer.writerows([[r.get(n, "") for n in names] for r in rows])
        reading = read_table(path)
    for record in assessments(assess(reading.stations, book), outcomes=("finding", "met"), full=False):
        found[record.machine].append(record)
    assert {r["machine"] for r in rows} == set(found)
    return found


def findings(records, chapters, above="remark"):
    """The findings of these chapters graver than ``above``."""
    return [
        r for r in records
        if r.outcome == "finding" and r.clause.startswith(chapters) and RANK[r.severity] > RANK[above]
    ]  # fmt: skip


class Figures:
    """Counts by name: how many rows, of how many, and which."""

    def __init__(self):
        self.hit, self.of, self.rows, self.clauses = {}, {}, {}, {}

    def add(self, name, rows, of, clauses=()):
        self.hit[name], self.of[name], self.rows[name] = len(rows), of, rows
        self.clauses[name] = Counter(clauses)

    def share(self, name):
        return self.hit[name] / self.of[name] if self.of[name] else 0.0


def speeds(book, figures, corpus):
    rows = printed("speeds", corpus)

    def table(row, label, factor, stated):
        spindle = row["bearing_type"].startswith("angular") and row["tolerance_class"] not in ("Normal", "P6")
        made = {name: row.get(name, "") for name in SPEED_COLUMNS}
        if spindle and made["lubrication"] == "grease":
            made["lubrication"] = "grease for high speed"
        return made | {
            "machine": row["id"] + label, "station": "A", "duty": "continuous", "rotating_ring": "inner",
            "load_direction": "stationary", "ring_material": "bearing steel",
            "radial_load": f"{float(row['dynamic_rating']) / (50 if spindle else 15):.4g}",
            "preload_method": "spring" if row["preload"].startswith("single") else "none",
            "speed_max": f"{float(row['speed']) * factor:.0f}", "limiting_speed": row["speed"] if stated else "",
        }  # fmt: skip

    found = reviewed([table(row, *run) for row in rows for run in SPEED_RUNS], book)
    for label, name in ((" n", "speed_false"), (" n stated", "speed_false_maker_stated")):
        bad = {row["id"]: f for row in rows if (f := findings(found[row["id"] + label], "speed."))}
        hit = [row for row in rows if row["id"] in bad]
        figures.add(name, hit, len(rows), (r.clause for f in bad.values() for r in f))
        critical = [row for row in hit if any(r.severity == "critical" for r in bad[row["id"]])]
        figures.add(f"{name}_critical", critical, len(rows))
    for label, name in (
        (" 1.3n stated", "speed_missed_1.3_maker_stated"), (" 1.5n", "speed_missed_1.5"),
        (" 1.5n stated", "speed_missed_1.5_maker_stated"), (" 2n", "speed_missed_2"),
    ):  # fmt: skip
        figures.add(name, [row for row in rows if not findings(found[row["id"] + label], "speed.")], len(rows))


def arrangements(book, figures, corpus):
    rows = printed("arrangements", corpus)
    names = set(vocabulary()) - {"machine", "station"}
    found = reviewed(
        [{k: v for k, v in row.items() if k in names} | {"machine": row["id"], "station": "A"} for row in rows], book
    )
    for chapter, over, name in (
        ("fit.", "minor", "fit_false_major"), ("fit.", "remark", "fit_false"), ("fit.", "major", "fit_false_critical"),
        ("alignment.", "remark", "alignment_false"), ("preload.", "remark", "preload_false"),
        ("speed.", "remark", "arrangement_speed_false"),
    ):  # fmt: skip
        records = {row["id"]: [r for r in found[row["id"]] if r.clause not in PAIR] for row in rows}
        use = [
            row for row in rows
            if any(r.outcome in ("met", "finding") and r.clause.startswith(chapter) for r in records[row["id"]])
        ]  # fmt: skip
        if chapter == "alignment.":
            use = [row for row in use if row["shaft_seat_runout"] or row["shaft_seat_roughness"]]
        if chapter == "preload.":
            use = [row for row in use if row["preload_force"]]
        bad = {row["id"]: f for row in use if (f := findings(records[row["id"]], chapter, over))}
        hit = [row for row in use if row["id"] in bad]
        figures.add(name, hit, len(use), (r.clause for f in bad.values() for r in f))


def abutments(book, figures, corpus):
    rows = printed("abutments", corpus)

    def table(row, label):
        d, low, high, fillet, chamfer = (
            float(row[k]) for k in ("bore_diameter", "da_min", "Da_max", "ra_max", "ring_chamfer")
        )
        names = (
            "bearing_type", "bore_diameter", "outside_diameter", "ring_width", "closure", "ring_chamfer",
            "inner_ring_shoulder_diameter",
        )  # fmt: skip
        small = d < 10
        made = {name: row.get(name, "") for name in names} | {
            "machine": row["id"] + label, "station": "A", "tolerance_class": "Normal", "rotating_ring": "inner",
            "speed_max": "1500", "shaft_material": "steel", "housing_material": "cast iron",
            "shaft_seat_diameter": f"{d:g} k5", "housing_seat_diameter": f"{float(row['outside_diameter']):g} H7",
            "shaft_shoulder_diameter": f"{low:g} +{0.05 if small else 0.1}/0",
            "housing_shoulder_diameter": f"{high:g} 0/-{0.05 if small else 0.1}",
            "shaft_fillet_radius": f"{fillet:g}", "housing_fillet_radius": f"{fillet:g}",
        }  # fmt: skip
        if label == " fillet":
            made["shaft_fillet_radius"] = f"{1.3 * chamfer:.3g}"
        if label == " low":
            made["shaft_shoulder_diameter"] = f"{d + 0.4 * (low - d):.4g} +0.02/0"
        return made

    found = reviewed([table(row, label) for row in rows for label in (" printed", " fillet", " low")], book)
    bad = {row["id"]: f for row in rows if (f := findings(found[row["id"] + " printed"], "shoulder."))}
    hit = [row for row in rows if row["id"] in bad]
    figures.add("shoulder_false", hit, len(rows), (r.clause for f in bad.values() for r in f))
    figures.add(
        "fillet_1.3_chamfer_missed",
        [row for row in rows if not findings(found[row["id"] + " fillet"], "shoulder.fillet")],
        len(rows),
    )
    figures.add(
        "low_shoulder_missed",
        [row for row in rows if not findings(found[row["id"] + " low"], "shoulder.shaft-height")],
        len(rows),
    )


def failures(book, figures, corpus):
    rows = printed("failures", corpus)
    names = set(vocabulary()) - {"machine", "station"}
    found = reviewed(
        [{k: v for k, v in row.items() if k in names} | {"machine": row["id"], "station": "A"} for row in rows], book
    )

    def worst(row):
        wanted = tuple(row["clauses"].split("|"))
        return max(
            (RANK[r.severity] for r in found[row["id"]] if r.clause in wanted and r.outcome == "finding"), default=0
        )

    figures.add("failures_missed", [row for row in rows if worst(row) < RANK[row["least"]]], len(rows))


def measured(book, corpus=CORPORA[0]):
    """Every figure of one corpus under one rulebook."""
    figures = Figures()
    for part in (speeds, arrangements, abutments, failures):
        part(book, figures, corpus)
    return figures


def main(arguments):
    words = [a for a in arguments if not a.startswith("-")]
    figures = measured(load(words[0] if words else None), CORPORA["--further" in arguments])
    for name, hit in figures.hit.items():
        print(f"{name}: {hit} of {figures.of[name]} ({100 * figures.share(name):.1f} %)")
        if figures.clauses[name]:
            print("   ", ", ".join(f"{clause} {count}" for clause, count in figures.clauses[name].most_common()))
        makers = Counter(row["source"] for row in figures.rows[name])
        if makers:
            print("   ", ", ".join(f"{maker} {count}" for maker, count in makers.most_common()))
        if "-v" in arguments:
            for row in figures.rows[name]:
                print("     ", row["id"], row["source"], row.get("designation", ""), row.get("speed", ""))


if __name__ == "__main__":
    main(sys.argv[1:])
