"""A review result with every outcome, severity and drawing, and one with hostile texts, for all writers."""

import re
from collections.abc import Callable
from html.parser import HTMLParser

import pytest
from attrs import evolve

from linter.model.findings import (
    Assessment,
    Assumed,
    Change,
    ConcessionNote,
    Failure,
    InputRecord,
    Layer,
    Loosened,
    MachineRecord,
    Quantity,
    ReadCell,
    ReviewResult,
    RulebookRecord,
    StationRecord,
    Unrecognised,
    Used,
    WorkingLine,
)
from linter.model.places import Place
from linter.model.plan import (
    Alternative,
    Conflict,
    Decision,
    Fact,
    Left,
    MachinePlan,
    PlanLine,
    PlanResult,
    SizeValue,
)
from linter.rulebook.model import Chapter, Clause, Rulebook, Source, Step, Table

FILE = "dust_extractor.xlsx"

HOSTILE = (
    "<img src=x onerror=alert(1)>",
    '"><svg/onload=alert(1)>',
    "</style><script>alert(1)</script>",
    "--><script>alert(1)</script>",
    "javascript:alert(1)",
    "&#x3C;script&#x3E;",
    "{{7*7}}{% raw %}",
    "\u202egnp.exe\u2066",
    "=HYPERLINK(1)",
    "a\x00b\x1b[31mred\x07",
    "half \ud800 pair \udc00",
    "x" * 100_000,
    "line\r\nbreak\u2028here\ufeff\u200b",
)


def _clause(name: str, title: str, picture: str, level: str = "station", tables: dict | None = None) -> Clause:
    return Clause(
        id=name,
        title=title,
        level=level,
        check="",
        question=f"{title}?",
        arithmetic="as shown in the working",
        measure="ratio of observed to limit",
        needs=(),
        uses=(),
        limits={},
        tables=tables or {},
        steps=(Step(1.0, "minor"), Step(1.5, "major")),
        messages={},
        consequence=f"Where this is not so ({title.lower()}), the bearing runs hot and its seat wears.",
        remedy="Change it.",
        sources=("ISO-286-1", "common practice"),
        picture=picture,
    )


LIMITS = Table(
    "speed_factor.csv",
    ("family", "lubrication", "remark_from", "low", "high", "source", "provenance"),
    (
        ("ball", "grease", "150000", "500000", "577500", "ISO-286-1", "read"),
        ("ball", "oil-air", "", "1500000", "2500000", "ISO-286-1", "read"),
        ("roller", "grease", "120000", "300000", "400000", "ISO-286-1", "read"),
    ),
    {},
)


@pytest.fixture
def rulebook() -> Rulebook:
    clauses = (
        _clause("table.read", "Every cell was understood", "", "machine"),
        _clause("speed.factor", "Speed factor within its limit", "speed-scale", tables={"limits": LIMITS}),
        _clause("speed.seal", "Seal lip speed within its limit", ""),
        _clause("fit.shaft-class", "Fit of the inner ring on its shaft seat", "fit-diagram"),
        _clause("fit.running-clearance", "Clearance in use", "clearance-walk"),
        _clause("shoulder.fillet", "Fillet clears the ring chamfer", ""),
        _clause("preload.minimum", "Preload above its minimum", "preload-window", "machine"),
        _clause("life.rating", "Rating life reached", "", "machine"),
    )
    keys = dict.fromkeys(c.chapter for c in clauses)
    return Rulebook(
        name="Mill works layer",
        version="3",
        title="Rulebook for rolling-bearing seats",
        chapters=tuple(Chapter(k, k.title(), f"All about {k}.") for k in keys),
        clauses={c.id: c for c in clauses},
        sources={
            "ISO-286-1": Source("ISO-286-1", "ISO 286-1, ISO code system for tolerances", "2010", "read in reprints")
        },
        layers=(Layer("Mill works layer", "3"), Layer("ringseat", "2026.1")),
        loosened=(Loosened("speed.seal", "Mill works layer", "switched off", "No contact seals are used here."),),
        reasons={},
    )


def _line(key: str, symbol: str, value: float | str, unit: str, formula: str = "") -> WorkingLine:
    return WorkingLine(key, symbol, key.replace("_", " "), value, unit, formula)


def _lines(unit: str, **values: float) -> tuple[WorkingLine, ...]:
    return tuple(_line(key, "δ", value, unit) for key, value in values.items())


FIT = _lines(
    "um",
    seat_lower=-5.0,
    seat_upper=0.0,
    ring_lower=-8.0,
    ring_upper=0.0,
    fit_smallest=-5.0,
    fit_mean=1.5,
    fit_largest=8.0,
    fit_in_use_smallest=-7.5,
    fit_in_use_largest=5.5,
)
CLEARANCE = _lines(
    "um",
    clearance_delivered_min=5.0,
    clearance_delivered_max=20.0,
    loss_inner_min=0.0,
    loss_inner_max=6.4,
    loss_outer_min=0.0,
    loss_outer_max=0.0,
    loss_temperature=3.1,
    clearance_running_min=-4.5,
    clearance_running_max=16.9,
)
PRELOAD = _lines(
    "N",
    min_slip=6.2,
    min_practice=9.0,
    max_stress=48.0,
    max_life=31.0,
    force_smallest=7.1,
    force_nominal=12.0,
    force_largest=17.4,
)
SPEED = (
    _line("speed", "n", 82000.0, "r/min"),
    _line("mean_diameter", "d_m", 8.5, "mm", "(d + D)/2"),
    _line("speed_factor", "n·d_m", 697000.0, "mm.r/min", "n d_m"),
    _line("remark_from", "", 150000.0, "mm.r/min"),
    _line("limit_low", "", 500000.0, "mm.r/min"),
    _line("limit_high", "", 577500.0, "mm.r/min"),
    _line("family", "", "ball", ""),
)

VALUES = {
    "drawing_number": "DE-210",
    "drawing_revision": "C",
    "bore_diameter": 4.0,
    "outside_diameter": 13.0,
    "ring_width": 5.0,
    "ring_chamfer": 0.2,
    "ball_diameter": 2.381,
    "ball_count": 7.0,
    "pitch_diameter": 8.5,
    "contact_angle": 15.0,
    "shaft_seat_diameter": {"nominal": 4.0, "lower": -0.005, "upper": 0.0, "class": "h5"},
    "housing_seat_diameter": {"nominal": 13.0, "lower": 0.0, "upper": 0.011, "class": "H6"},
    "shaft_shoulder_diameter": {"nominal": 5.6, "lower": -0.05, "upper": 0.05, "class": None},
    "housing_shoulder_diameter": {"nominal": 11.2, "lower": None, "upper": None, "class": None},
    "shaft_fillet_radius": 0.3,
    "housing_fillet_radius": 0.15,
    "housing_outer_diameter": 21.0,
    "shaft_bore": 1.2,
    "axial_role": "spring-loaded",
    "free_ring": "outer",
    "preload_method": "spring",
    "spring_rate": {"nominal": 14.0, "lower": -1.4, "upper": 1.4, "class": None},
}


def _used(name: str, cell: str, text: str) -> Used:
    return Used(name, Place(FILE, "Seats", cell), text)


def _item(
    clause: str,
    machine: str,
    station: str | None,
    outcome: str,
    severity: str | None = None,
    message: str = "",
    **more: object,
) -> Assessment:
    facts: dict = {
        "title": clause,
        "observed": None,
        "lower": None,
        "upper": None,
        "message": message or f"{clause} is {outcome}.",
        "sources": ("ISO-286-1", "common practice") if outcome in ("met", "finding", "conceded") else (),
    }
    return Assessment(
        clause=clause, machine=machine, station=station, outcome=outcome, severity=severity, **{**facts, **more}
    )


def _station(machine: str, station: str, column: str) -> list[Assessment]:
    um = "um"
    return [
        _item(
            "fit.running-clearance",
            machine,
            station,
            "finding",
            "minor",
            "The running clearance can be −4.5 µm; it should stay above 0 µm.",
            observed=Quantity(-4.5, um),
            lower=Quantity(0.0, um),
            working=CLEARANCE,
            remedy="Choose clearance group C3 (clearance_class).",
            places=(_used("clearance_class", f"{column}12", "CN"),),
        ),
        _item(
            "fit.shaft-class",
            machine,
            station,
            "finding",
            "major",
            "The smallest fit is 5 µm of clearance; the inner ring carries a rotating load and needs interference.",
            observed=Quantity(-5.0, um),
            lower=Quantity(0.0, um),
            working=FIT,
            remedy="Give the shaft seat k5 or m5.",
            places=(_used("shaft_seat_diameter", f"{column}14", "4 h5 (0/−0.005) mm"),),
            clears_with=(Change("shaft_seat_diameter", "k5", "", "h5 -> k5", True, 1),),
            assumed=(Assumed("inner_groove_ratio", 0.52, "1", "not stated; the vocabulary's default 0.52 stands in"),),
        ),
        _item(
            "shoulder.fillet",
            machine,
            station,
            "finding",
            "critical",
            "The fillet of 0.3 mm does not clear the ring chamfer of 0.2 mm; the ring stands on the fillet.",
            observed=Quantity(0.3, "mm"),
            upper=Quantity(0.2, "mm"),
            working=(_line("fillet", "r_a", 0.3, "mm"), _line("chamfer", "r_s min", 0.2, "mm")),
            remedy="Make shaft_fillet_radius 0.2 mm or less, or give the shoulder an undercut.",
            places=(_used("shaft_fillet_radius", f"{column}20", "0.3 mm"),),
        ),
        _item(
            "speed.factor",
            machine,
            station,
            "conceded" if station == "B" else "finding",
            "remark",
            "The speed factor 697 000 mm·r/min is above the limit 500 000 mm·r/min for steel balls in grease.",
            observed=Quantity(697000.0, "mm.r/min"),
            upper=Quantity(500000.0, "mm.r/min"),
            working=SPEED,
            places=(_used("speed_max", f"{column}4", "82 000 r/min"),),
            concession="K-7" if station == "B" else None,
        ),
        _item("speed.seal", machine, station, "not applicable", None, "Not applicable: there is no contact seal."),
    ]


@pytest.fixture
def sample(rulebook: Rulebook) -> ReviewResult:
    items: list[Assessment] = []
    for machine in ("blower", "fan"):
        items += [
            _item(
                "life.rating",
                machine,
                None,
                "not assessed",
                None,
                "Not assessed: the table does not state required life.",
                missing=("required_life",),
                remedy="State required_life.",
            ),
            _item(
                "preload.minimum",
                machine,
                None,
                "finding",
                "major",
                "The smallest preload is 7.1 N, below the 9 N that keep the balls from slipping.",
                observed=Quantity(7.1, "N"),
                lower=Quantity(9.0, "N"),
                upper=Quantity(31.0, "N"),
                working=PRELOAD,
            ),
            _item("table.read", machine, None, "met", None, "Every cell was understood."),
        ]
        for station, column in (("A", "D"), ("B", "E")):
            items += _station(machine, station, column)
    return ReviewResult(
        tool="ringseat",
        tool_version="0.1.0",
        rulebook=RulebookRecord(rulebook.name, rulebook.version, rulebook.sha256, rulebook.layers, rulebook.loosened),
        input=InputRecord(FILE, "0f" * 32, "one row per parameter"),
        machines=tuple(MachineRecord(m, "DE-210", "C", ("A", "B")) for m in ("blower", "fan")),
        assessments=tuple(items),
        unrecognised=(
            Unrecognised("paint", "RAL 7035", Place(FILE, "Seats", "D40"), "not a parameter of the vocabulary"),
        ),
        gate_severity="major",
        notes=("Sheet Old is hidden; it was read all the same.",),
        understood=tuple(
            ReadCell(m, s, p, Place(FILE, "Seats", c), read, value)
            for m in ("blower", "fan")
            for s, p, c, read, value in (
                (None, "speed_max", "D4", "82.000 1/min", "82 000 r/min"),
                ("A", "shaft_seat_diameter", "D14", "4h5", "4 h5 (0/−0.005) mm"),
                ("B", "shaft_seat_diameter", "E14", "4h5", "4 h5 (0/−0.005) mm"),
                ("A", "lubrication", "D15", "grease", "grease"),
            )
        ),
        concessions=(
            ConcessionNote("K-7", "applied", "Concession K-7 covers speed.factor at blower B until 2027-03-31."),
            ConcessionNote("K-3", "expired", "Concession K-3 ended on 2025-12-31; the finding counts."),
        ),
        stations=tuple(StationRecord(m, s, VALUES) for m in ("blower", "fan") for s in ("A", "B")),
        plan=(
            PlanLine(
                1, "blower", "A", "shaft_seat_diameter", Place(FILE, "Seats", "D14"), "4 h5 (0/−0.005) mm",
                "4 k5 (+0.006/+0.001) mm", SizeValue(4.0, 0.001, 0.006, "k5"), "mm", ("fit.shaft-class",), (),
                "clears Tolerance class of the shaft seat",
            ),
        ),
        plan_result=PlanResult(
            "closed",
            {"critical": 1, "major": 0, "minor": 2, "remark": 3},
            (
                MachinePlan(
                    "blower", "closed", {"critical": 1, "major": 0, "minor": 2, "remark": 3},
                    (Left("shoulder.fillet", "A", "critical"),),
                    (Conflict(("shoulder.fillet",), (Fact("ring_chamfer", "A", "0.2 mm"),), "The fillet stays."),),
                ),
            ),
        ),
        decisions=(
            Decision(
                "blower", (Alternative("A", "inner_ring_retention", "none", "adhesive"),), True, (),
                ("fit.shaft-class",), (), (), "closed", {"critical": 1, "major": 0, "minor": 2, "remark": 3},
            ),
        ),
    )  # fmt: skip


@pytest.fixture
def hostile(sample: ReviewResult) -> ReviewResult:
    """Every text that comes from a table, replaced by text that means harm."""
    machines = tuple(MachineRecord(bad, bad, bad, (bad,)) for bad in HOSTILE)
    items = []
    for bad in HOSTILE:
        place = Place(bad, bad, "D14")
        items += [
            evolve(
                item,
                machine=bad,
                station=bad if item.station else None,
                message=bad,
                remedy=bad,
                title=bad,
                missing=(bad,) if item.missing else (),
                places=tuple(evolve(u, place=place, text=bad) for u in item.places),
                clears_with=tuple(evolve(c, text=bad, value=bad) for c in item.clears_with),
                working=tuple(evolve(w, meaning=bad, formula=bad) for w in item.working),
                assumed=tuple(evolve(a, reason=bad) for a in item.assumed),
            )
            for item in sample.assessments
            if item.machine == "blower" and item.station in (None, "A")
        ]
    values = {**VALUES, "drawing_number": HOSTILE[0]}
    return evolve(
        sample,
        input=InputRecord(HOSTILE[0], "0f" * 32, HOSTILE[1]),
        machines=machines,
        assessments=tuple(items),
        notes=HOSTILE,
        failures=tuple(Failure("speed.factor", bad) for bad in HOSTILE),
        unrecognised=tuple(Unrecognised(bad, bad, Place(bad, bad, "A1"), bad) for bad in HOSTILE),
        understood=tuple(ReadCell(bad, bad, "shaft_seat_diameter", Place(bad, bad, "A1"), bad, bad) for bad in HOSTILE),
        concessions=tuple(ConcessionNote(bad, "applied", bad) for bad in HOSTILE),
        stations=tuple(StationRecord(bad, bad, {**values, "station": bad}) for bad in HOSTILE),
    )


@pytest.fixture
def wide(sample: ReviewResult) -> Callable[[int], ReviewResult]:
    """The sample's first machine repeated, two stations each."""

    def build(machines: int) -> ReviewResult:
        names = [f"machine {n:04d}" for n in range(machines)]
        pick = [i for i in sample.assessments if i.machine == "blower"]
        text = "The shoulder of 11.2 mm lies between 10.9 mm and 11.6 mm, as the ring's chamfer and its land ask for."
        met = [_item("shoulder.fillet", "", s, "met", None, text) for s in "AB" for _ in range(30)]
        return evolve(
            sample,
            machines=tuple(MachineRecord(n, "DE-210", "C", ("A", "B")) for n in names),
            assessments=tuple(evolve(i, machine=n) for n in names for i in (*pick, *met)),
            stations=tuple(StationRecord(n, s, VALUES) for n in names for s in ("A", "B")),
            understood=tuple(
                ReadCell(n, s, p, Place(FILE, "Seats", f"D{k + 10}"), "4 h5", "4 h5 (0/−0.005) mm")
                for n in names
                for s in ("A", "B")
                for k, p in enumerate(VALUES)
            ),
        )

    return build


VOID = {"meta", "br", "col", "hr", "img", "input", "link", "wbr"}


class Strict(HTMLParser):
    """Collects ids, links and tags; every tag must be closed in order (stricter than HTML asks for)."""

    def __init__(self, text: str) -> None:
        super().__init__(convert_charrefs=True)
        self.open: list[str] = []
        self.ids: list[str] = []
        self.links: list[str] = []
        self.labels: list[str] = []
        self.tags: set[str] = set()
        self.attributes: set[str] = set()
        self.headings: list[int] = []
        self.text: list[str] = []
        self.feed(text)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag, attributes):
        names = [name for name, _ in attributes]
        assert len(names) == len(set(names)), f"<{tag}> states an attribute twice"
        self.tags.add(tag)
        self.attributes.update(names)
        facts = dict(attributes)
        if "id" in facts:
            self.ids.append(facts["id"])
        if "href" in facts:
            self.links.append(facts["href"])
        self.labels += (facts.get("aria-labelledby") or "").split()
        if re.fullmatch("h[1-6]", tag):
            self.headings.append(int(tag[1]))
        if self.open:
            parent = self.open[-1]
            assert not (tag in ("li",) and parent not in ("ul", "ol")), f"<{tag}> in <{parent}>"
            assert not (tag in ("td", "th") and parent != "tr"), f"<{tag}> in <{parent}>"
            assert not (tag == "tr" and parent not in ("thead", "tbody")), f"<{tag}> in <{parent}>"
            assert not (parent == "p" and tag in ("p", "div", "ul", "table", "section", "h3", "dl")), f"<{tag}> in <p>"
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attributes):
        assert "svg" in self.open, f"<{tag}/> outside a drawing"
        self.handle_starttag(tag, attributes)
        self.open.pop()

    def handle_endtag(self, tag):
        assert self.open and self.open[-1] == tag, f"</{tag}> closes <{self.open[-1:]}>"
        self.open.pop()

    def handle_data(self, data):
        self.text.append(data)


@pytest.fixture
def strict() -> type[Strict]:
    return Strict
