"""Make a table: which layout, language, units, form of tolerances, title and encoding, and what it says.

Seeds are numbers; 1 to 60 are the set, others serve development. The same number gives the same table.
"""

import random
from collections.abc import Callable
from typing import Any

from practice.grammar import Key, Size, Table, Value

from . import blocks, pen, rows, trade, trees
from .pen import Style
from .rows import Job
from .vocabulary import LANGUAGES, MACHINES, SEAT, STATIONS, UNIT_KIND

#: Layout: what draws it, how many machines at most, where units may stand, whether a part may be left untold.
HEADED = ("heading", "row", "title", "foot", "foot", "cell")
PAIRED = ("heading", "column", "title", "foot", "cell")
LAYOUTS: dict[str, tuple[Callable[[Job], Any], int, tuple[str, ...], bool]] = {
    "wide": (rows.wide, 3, HEADED, True),
    "two heading rows": (rows.two_heading_rows, 1, ("heading", "row", "title", "foot"), False),
    "transposed": (rows.transposed, 3, PAIRED, True),
    "long": (rows.long, 3, ("column",), True),
    "name and value per position": (rows.transposed, 1, ("column", "heading"), True),
    "sections of parts": (blocks.sections, 1, PAIRED, False),
    "stacked positions": (blocks.stacked, 2, PAIRED, True),
    "side by side": (blocks.side_by_side, 1, PAIRED, True),
    "parts list": (blocks.parts_list, 1, ("heading", "row", "title", "foot"), False),
    "sheet of part": (blocks.sheet_of_part, 1, ("heading", "row"), False),
    "sheet of position": (blocks.sheet_of_position, 1, ("column", "heading"), False),
    "family rows": (rows.family, 3, ("heading", "row", "title"), False),
    "inspection list": (rows.inspection, 1, ("column",), False),
    "attributes": (rows.attributes, 1, ("column",), False),
    "stacked machines": (rows.stacked_machines, 3, ("heading", "row", "foot"), True),
    "part tables": (blocks.part_tables, 1, ("heading", "row", "title", "foot"), False),
    "form": (blocks.form_sheet, 1, ("heading", "cell"), True),
    "equations": (blocks.equations, 1, ("cell",), False),
    "json records": (trees.records, 3, ("heading",), True),
    "json parts": (trees.nested, 2, ("column",), False),
    "json attributes": (trees.arrays, 1, ("column",), True),
    "json dotted": (trees.dotted, 1, ("heading",), False),
}
ORDER = tuple(LAYOUTS)
CODED = ("family rows", "equations", "json records")
SINGLE = ("equations",)  # room for one cell a value
CHANCE = {"two heading rows": 0.7}  # of a workbook
WORKBOOKS = ("sheet of part", "sheet of position")
COMMON = (
    "drawing_number", "drawing_revision", "speed_max", "speed_operating", "required_life", "shaft_temperature",
    "housing_temperature", "shaft_material", "housing_material", "bearing_span", "rotor_mass", "balance_grade",
    "preload_method", "preload_force", "spring_rate", "shaft_orientation", "ambient_temperature",
)  # fmt: skip
#: Values of a position that a table may leave out, with their weight.
OPTIONAL = {
    "axial_role": 4, "tolerance_class": 2, "clearance_class": 2, "cage": 2, "closure": 2, "dynamic_rating": 3,
    "static_rating": 2, "fatigue_load_limit": 1, "limiting_speed": 1, "lubrication": 3, "base_oil_viscosity_40": 2,
    "radial_load": 4, "axial_load": 3, "housing_outer_diameter": 1,
    **{f"{part}_{feature}": 5 for part in ("shaft", "housing") for feature in SEAT if feature != "seat_diameter"},
}  # fmt: skip
ENCODINGS = {
    "en": ("utf-8", "utf-8-sig", "cp1252", "utf-16"), "de": ("utf-8-sig", "cp1252", "cp1252", "utf-16"),
    "fr": ("utf-8", "cp1252", "utf-8-sig"), "it": ("cp1252", "utf-8-sig", "utf-8"), "es": ("cp1252", "utf-8", "utf-16"),
    "ja": ("shift_jis", "utf-8-sig", "shift_jis"), "zh": ("gb18030", "utf-8-sig", "gb18030"),
    "ru": ("cp1251", "utf-8-sig", "cp1251", "utf-16"),
}  # fmt: skip
BRACKETS = {
    "ru": ("{0}, {1}", "{0}, {1}", "{0} ({1})"), "zh": ("{0}/{1}", "{0}({1})", "{0} [{1}]"),
    "ja": ("{0} ({1})", "{0} [{1}]"), "de": ("{0} [{1}]", "{0} in {1}", "{0} ({1})"),
}  # fmt: skip


def _style(rng: random.Random, layout: str, language: str) -> Style:
    """The ways of a firm that writes this language and this layout."""
    inches = language == "en" and layout not in WORKBOOKS and rng.random() < 0.6
    form = rng.choice(pen.INCH_FORMS if inches else pen.IN_CELL + pen.COLUMNED)
    if layout in ("wide", "stacked machines", "transposed") and not inches and rng.random() < 0.35:
        form = "fit pair column"
    while (form in pen.COLUMNED and layout in SINGLE) or (
        form == "fit pair column" and layout not in ("wide", "stacked machines", "transposed")
    ):
        form = rng.choice(("deviations in cell", "limits in cell") if inches else pen.IN_CELL)
    units = {kind: rng.choice(options) for kind, options in pen.UNITS.items()}
    if inches:
        units |= pen.INCH_UNITS
    if layout.startswith("json"):
        encoding, suffix = "json", ".json"
    elif layout in WORKBOOKS or (layout != "equations" and rng.random() < CHANCE.get(layout, 0.25)):
        encoding, suffix = "xlsx", ".xlsx"
    else:
        encoding, suffix = rng.choice(ENCODINGS[language]), ".csv"
    comma = language in ("de", "fr", "it", "es", "ru") and rng.random() < 0.8 and layout != "equations"
    place = rng.choice(LAYOUTS[layout][2])
    if inches and place == "cell" and layout != "equations":
        place = "heading"
    return Style(
        language=language,
        rng=rng,
        tolerance=form,
        units=units,
        unit_place=place,
        decimal="," if comma else ".",
        encoding=encoding,
        suffix=suffix,
        inches=inches,
        bracket=rng.choice(BRACKETS.get(language, ("{0} [{1}]", "{0} ({1})", "{0}, {1}"))),
        marks=rng.random() < 0.15 and not inches and not layout.startswith("json"),
        loose_shoulders=form in pen.IN_CELL and not inches and rng.random() < 0.3,
        bare_load=False,
        diameter_sign=rng.choice(("", "", "Ø")) if encoding != "cp1251" else "",
        noted=rng.random() < 0.5 and layout != "equations",
        coded=layout in CODED and rng.random() < 0.5,
        between=rng.choice((" / ", " – ", "-")),
    )


def _picked(rng: random.Random, weights: dict[str, int], count: int) -> list[str]:
    """So many different names, by weight."""
    left = dict(weights)
    found: list[str] = []
    while left and len(found) < count:
        found.append(rng.choices(list(left), list(left.values()))[0])
        del left[found[-1]]
    return found


def _own(rng: random.Random, style: Style, layout: str, positions: int) -> tuple[list[str], str]:
    """What is stated of each position, in the order of columns, and how the bearing is told."""
    bearing = "designation" if layout == "parts list" else rng.choice(("designation", "designation", "sizes", "both"))
    names = ["bearing_designation"] if bearing != "sizes" else []
    if bearing != "designation":
        names += ["bore_diameter", "outside_diameter", "ring_width", *(["ring_chamfer"] if rng.random() < 0.4 else [])]
    weights = dict(OPTIONAL)
    if style.inches:
        weights = {k: w for k, w in weights.items() if k not in ("base_oil_viscosity_40", "clearance_class")}
    untold = ""
    if LAYOUTS[layout][3] and rng.random() < 0.85:
        untold = rng.choice(
            ("seat_cylindricity", "seat_runout", "seat_roughness", "shoulder_runout", "fillet_radius", "load")
        )
        for part in ("shaft", "housing"):
            weights.pop(f"{part}_{untold}", None)
    if layout == "parts list":
        weights = {}
        features = ["seat_diameter", *rng.sample(SEAT[1:], 5)]
        names += [f"{part}_{f}" for part in ("shaft", "housing") for f in SEAT if f in features]
    else:
        names += ["shaft_seat_diameter", "housing_seat_diameter"]
    names += _picked(rng, weights, {2: 9, 4: 5}.get(positions, 3))
    if untold == "load":
        style.bare_load = True
        names = [n for n in names if n != "axial_load"] + ([] if "radial_load" in names else ["radial_load"])
    elif untold:
        names.append(f"?shaft_{untold}")
    order = [*trade_order(), *(f"?shaft_{f}" for f in SEAT)]
    return sorted(set(names), key=order.index), bearing


def trade_order() -> list[str]:
    """Parameters of a position in the order of columns."""
    seats = [f"{part}_{feature}" for part in ("shaft", "housing") for feature in SEAT]
    bearing = ["bearing_designation", "bore_diameter", "outside_diameter", "ring_width", "ring_chamfer"]
    rest = [name for name in OPTIONAL if name not in seats]
    return ["axial_role", *bearing, *(n for n in rest if n != "axial_role"), *seats]


def make(number: int) -> Table:
    """The table of a number.

    Parameters
    ----------
    number : int
        1 to 60 for the set; any other for development.

    Returns
    -------
    Table
        Its bytes and what they mean.
    """
    rng = random.Random(f"fourth-{number}")
    layout = ORDER[(number * 5) % len(ORDER)]
    language = LANGUAGES[(number + number // len(LANGUAGES)) % len(LANGUAGES)]
    style = _style(rng, layout, language)
    machines = rng.choice((1, 1, 2, 3)[: 1 + LAYOUTS[layout][1]])
    if layout in ("family rows", "stacked machines"):
        machines = max(2, machines)
    stations = rng.choice(STATIONS[language])
    made = [
        trade.machine(name, stations, rng, style.inches, style.tolerance == "plus-minus column", language == "ru")
        for name in rng.sample(MACHINES[language], machines)
    ]
    own, bearing = _own(rng, style, layout, 2 * machines)
    common = [n for n in COMMON if n in _picked(rng, dict.fromkeys(COMMON, 1), 5 if machines == 1 else 3)]
    job = Job(style, made, common, own, rng.choice(("pairs", "colon", "value with unit", "unit beside")))
    for machine in made:
        for position in machine.positions:
            _finish(position, own, style)
    document = LAYOUTS[layout][0](job)
    content = trees.content(document) if style.encoding == "json" else job.book.content()
    implied: dict[Key, Value] = {
        (m, s, name): value for m, s, position in job.positions() for name, value in position.implied.items()
    } if bearing != "sizes" else {}  # fmt: skip
    return Table(
        seed=number,
        suffix=style.suffix,
        content=content,
        machines=tuple(str(m.values["machine"]) for m in made),
        stations=tuple(tuple(p.name for p in m.positions) for m in made),
        expected=tuple(job.book.expected),
        implied=implied,
        kinds={
            "layout": layout,
            "language": language,
            "tolerance": style.tolerance,
            "units": style.unit_place,
            "length unit": style.units["length"][0],
            "bearing": bearing,
            "encoding": style.encoding,
        },
    )


def _finish(position: trade.Position, own: list[str], style: Style) -> None:
    """Values that depend on how the table is written: untold parts, shoulders with a tolerance."""
    for name in own:
        if name.startswith("?"):
            position.values[name] = position.values[name[1:]]
    if style.loose_shoulders:
        for name in pen.SHOULDER_SIZES:
            value = position.values[name]
            if isinstance(value, float):
                position.values[name] = Size(value, -0.1, 0.1)


assert set(OPTIONAL) - set(UNIT_KIND) <= {
    "axial_role", "tolerance_class", "clearance_class", "cage", "closure", "lubrication"
}  # fmt: skip
