"""The sixteenth set: sixty exports, each with its layout, language, units, forms of tolerance, title block, encoding.

``make(number)`` draws the rotors of an office with a fixed seed and writes them as the office does. Everything is from
knowledge of the trade; no firm, product or person is a real one.
"""

from pathlib import Path

from practice.by_hand import texts
from practice.grammar import Table

from practice_sixteenth.layouts import Layout
from practice_sixteenth.office import Office, office
from practice_sixteenth.shown import Hand
from practice_sixteenth.trade import INCH, Machine
from practice_sixteenth.trees import Tree

FIRST, LAST = 1, 60


def _several(text: str, index: int, count: int) -> tuple[str, ...]:
    """A designation for each position of a rotor; rotors between ``/ ``."""
    own = text.split(" // ")
    found = [part.strip() for part in own[index % len(own)].split(",")]
    return tuple(found[min(s, len(found) - 1)] for s in range(count))


def _machines(one: Office) -> list[Machine]:
    positions = tuple(name.strip() for name in one.habit("at").split(","))
    written = "\n".join(line for lines in one.sections.values() for line in lines)
    found = []
    for index, name in enumerate(one.habit("machines").split(";")):
        bearings = _several(one.habit("brg"), index, len(positions))
        known = _several(one.habit("as", one.habit("brg")), index, len(positions))
        inch = any(known[0].startswith(sign) for sign in INCH)
        found.append(
            Machine(
                one.number, index, name.strip(), positions, bearings, known, one.habit("fits"), inch, "{t}" in written
            )
        )
    return found


def make(number: int) -> Table:
    """The table of an office.

    Parameters
    ----------
    number : int
        1 to 60.
    """
    one = office(texts(Path(__file__).parent, 0)[number])
    machines = _machines(one)
    hand = Hand(bool(one.habit("comma")), one.habit("group"), one.habit("zero", "0"))
    kind, *rest = one.file
    encoding, separator = "utf-8", ""
    made: Layout | Tree
    if kind == "json":
        made = Tree(one, hand, machines)
        truth, content = made.truth, made.bytes(encoding)
    else:
        made = Layout(one, hand, machines)
        made.lines(one.sections.get("top", []))
        made.group = []
        if one.layout == "lines":
            made.lines(one.sections["body"])
        else:
            made.columns(one.sections["body"])
        made.heads, made.group = {}, []
        made.lines(one.sections.get("foot", []))
        truth = made.sheet.truth
        if kind == "xlsx":
            name, *others = one.habit("sheets", "Data").split(" // ")
            rows = [(o.split(": ")[0], [r.split(" | ") for r in o.split(": ", 1)[1].split(" / ")]) for o in others]
            content = made.sheet.workbook(name, hand.comma, bool(one.habit("texts")), rows)
        else:
            encoding, separator = rest[-1], {"tab": "\t"}.get(rest[0], rest[0])
            content = made.sheet.delimited(separator, encoding, bool(one.habit("pad")))
    return Table(
        seed=16000 + number,
        suffix="." + kind,
        content=content,
        machines=tuple(m.name for m in machines),
        stations=tuple(m.positions for m in machines),
        expected=truth.expected(machines[0].inch),
        implied={
            (m.index, s, name): value
            for m in machines
            for s in range(len(m.positions))
            for name, value in m.implied(s).items()
        },
        kinds={
            "persona": f"{number} {one.language} {one.layout}", "language": one.language,
            "layout": one.habit("kind", one.layout), "tolerance": one.habit("form"), "units": one.habit("units"),
            "encoding": encoding, "separator": separator, "length unit": "in" if machines[0].inch else "mm",
        },
    )  # fmt: skip
