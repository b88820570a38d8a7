"""The specification of every seat of a table: a printable page for each position, a text to paste, the list of it."""

from collections.abc import Collection, Mapping, Sequence
from functools import cache
from pathlib import Path
from typing import Any

from attrs import asdict, frozen
from markupsafe import Markup, escape

from linter.model.findings import ReviewResult
from linter.model.stations import Stations
from linter.model.visible import visible
from linter.model.wording import number_text, words_of
from linter.report.drawings.half_section import not_stated
from linter.report.html import environment
from linter.report.sheet.characteristics import Characteristic, characteristics_of, datum_letters, stated_rows
from linter.report.sheet.inspection import inspection_list
from linter.report.sheet.section import ORDER, feature_of, seat_drawing
from linter.report.sheet.symbols import ENVELOPE

#: What the drawing of a position has to state; what the table leaves out of it is named on the sheet.
WANTED = tuple(
    f"{side}_{what}"
    for side in ("shaft", "housing")
    for what in (
        "seat_diameter", "seat_cylindricity", "seat_runout", "seat_roughness", "shoulder_diameter", "shoulder_runout",
        "fillet_radius",
    )
)  # fmt: skip
_PROPOSED_NOTE = (
    "Values marked as proposed are start values of this program, not stated by the table; decide on them first."
)


@frozen
class About:
    """What a specification was made from: shown on every page.

    ``gate``: ``open``, ``closed`` or ``undecided``; ``date``: date of the table; ``warning``: why it must not be
    released, empty for no reason.
    """

    tool: str
    rulebook: str
    gate: str
    file: str
    sha256: str
    date: str
    warning: str = ""


@frozen
class Page:
    """One position: what stands on its page."""

    machine: str
    station: str
    bearing: str
    drawing: str
    drawing_of_seat: Markup | None
    numbered: tuple[tuple[int, Characteristic], ...]
    notes: tuple[str, ...]

    @property
    def halves(self) -> tuple[tuple[tuple[int, Characteristic], ...], ...]:
        """The list in two columns."""
        middle = (len(self.numbered) + 1) // 2
        return tuple(half for half in (self.numbered[:middle], self.numbered[middle:]) if half)


@frozen(eq=False)
class Specification:
    """The specification of one table; its parts are written by :meth:`html`, :meth:`text` and :meth:`workbook`."""

    about: About
    pages: tuple[Page, ...]
    listed: tuple[Characteristic, ...]
    stations: Stations

    def html(self) -> str:
        """The pages as one HTML document, one A4 page for each position; the text to paste below them on a screen."""
        return environment().get_template("sheet.html.j2").render(
            about=self.about, pages=self.pages, text=escape(self.text()), css=style(), limit=limit_text,
            untoleranced=untoleranced,
        )  # fmt: skip

    def text(self) -> str:
        """The specification as plain text."""
        lines = []
        for page in self.pages:
            lines.append(f"SEATS: {page.machine}, position {page.station}; bearing {page.bearing}")
            lines.append(f"drawing {page.drawing}")
            for feature in ORDER:
                drawn = [c.drawn for _, c in page.numbered if c.station and feature_of(c.parameter) == feature]
                if drawn:
                    lines.append(f"{feature}: {'; '.join(drawn)}")
            lines += [f"{c.name}: {c.drawn}" for _, c in page.numbered if not c.station]
            lines += [*page.notes, ""]
        about = self.about
        lines.append(f"{about.rulebook}; gate {about.gate}; table {about.file} of {about.date}; {about.tool}")
        if about.warning:
            lines.append(about.warning)
        return "\n".join(map(visible, lines)) + "\n"

    def workbook(self) -> bytes:
        """The inspection list."""
        return inspection_list(self.stations, self.listed, asdict(self.about))


def limit_text(value: float | None, unit: str) -> str:
    """A limit as a number; a dash where there is none."""
    return "\u2013" if value is None else number_text(value, unit)


def untoleranced(item: Characteristic) -> str:
    """The nominal of a characteristic without limits, said so; empty for any other."""
    if item.nominal is None or item.least is not None or item.most is not None:
        return ""
    return f"{number_text(item.nominal, item.unit)}, no tolerance stated"


@cache
def style() -> Markup:
    """The style sheet of the pages."""
    return Markup((Path(__file__).parent / "sheet.css").read_text(encoding="utf-8"))


def specification(
    stations: Stations,
    result: ReviewResult,
    date: str,
    *,
    envelope: Collection[tuple[str, int]] | bool = False,
    proposed: Collection[tuple[str, int]] = (),
) -> Specification:
    """The specification of a reviewed table.

    Parameters
    ----------
    stations : Stations
        As read, or with start values put in.
    result : ReviewResult
        Its review.
    date : str
        Date of the table.
    envelope, proposed
        As for :func:`linter.report.sheet.characteristics.characteristics_of`.

    Returns
    -------
    Specification
        Only values that the table states, and start values where ``proposed`` names them.
    """
    listed: list[Characteristic] = []
    numbers: dict[tuple[str, int], int] = {}
    for machine, first in enumerate(stations.first_rows.tolist()):
        whole: list[Characteristic] = []
        for row in range(first, first + int((stations.machine_row == machine).sum())):
            found = characteristics_of(stations, row, envelope=envelope, proposed=proposed)
            for item in found:
                if item.station:
                    listed.append(item)
                    numbers[(item.parameter, row)] = len(listed)
                elif row == first:
                    whole.append(item)
        for item in whole:
            listed.append(item)
            numbers[(item.parameter, first)] = len(listed)
    values = {(record.machine, record.station): record.values for record in result.stations}
    pages = tuple(
        _page(stations, row, numbers, listed, values, envelope, bool(proposed)) for row in range(len(stations))
    )
    warning = ""
    if result.gate != "open":
        counts = ", ".join(f"{number} {word}" for word, number in result.severities.items() if number)
        warning = f"The gate is {result.gate}{f' ({counts})' if counts else ''}: not to be released as it stands."
    about = About(
        tool=f"{result.tool} {result.tool_version}",
        rulebook=f"{result.rulebook.name} {result.rulebook.version}",
        gate=result.gate,
        file=result.input.file,
        sha256=result.input.sha256,
        date=date,
        warning=warning,
    )
    return Specification(about, pages, tuple(listed), stations)


def _page(
    stations: Stations, row: int, numbers: Mapping[tuple[str, int], int], listed: Sequence[Characteristic],
    values: Mapping[tuple[str, str], Mapping[str, Any]], envelope: Collection[tuple[str, int]] | bool, proposed: bool,
) -> Page:  # fmt: skip
    machine, station = stations.machines[int(stations.machine_row[row])], str(stations.text("station")[row])
    first = int(stations.first_rows[int(stations.machine_row[row])])
    keys = [(name, at) for name, at in numbers if at == row and listed[numbers[(name, at)] - 1].station]
    keys += [(name, at) for name, at in numbers if at == first and not listed[numbers[(name, at)] - 1].station]
    numbered = tuple((numbers[key], listed[numbers[key] - 1]) for key in keys)
    shaft, shafts, housing, housings = datum_letters(stations, row)
    own = values.get((machine, station), {})
    drawing = seat_drawing(own, [pair for pair in numbered if pair[1].station], (shaft, housing))
    parts = [str(stations.text(name)[row]) for name in ("drawing_number", "drawing_revision")]
    shown = " rev. ".join(filter(None, parts)) or "number and revision are not stated"
    notes = _notes(stations, row, own, (shafts, housings), envelope, proposed)
    return Page(machine, station, _bearing(stations, row), shown, drawing, numbered, notes)


def _bearing(stations: Stations, row: int) -> str:
    """Designation and sizes of the bearing, as far as they are known."""
    sizes = [float(stations.number(name)[row]) for name in ("bore_diameter", "outside_diameter", "ring_width")]
    size = " \u00d7 ".join(number_text(value, "mm") for value in sizes if value == value)
    tolerance = stations.choice("tolerance_class")
    word = tolerance.words[int(tolerance.codes[row])] if tolerance.codes[row] >= 0 else ""
    known = [str(stations.text("bearing_designation")[row]), size, f"class {word}" if word else ""]
    return ", ".join(filter(None, known)) or "not stated"


def _notes(
    stations: Stations, row: int, values: Mapping[str, Any], common: tuple[str, str],
    envelope: Collection[tuple[str, int]] | bool, proposed: bool,
) -> tuple[str, ...]:  # fmt: skip
    notes = []
    if envelope:
        notes.append(
            f"{ENVELOPE} (E in a circle): envelope requirement, ISO 14405-1; others are two-point sizes (ISO 8015)."
        )
    else:
        notes.append("Sizes are two-point sizes, independent of form (ISO 14405-1, ISO 8015): no envelope is stated.")
    rows = [r for r in range(len(stations)) if stations.machine_row[r] == stations.machine_row[row]]
    names = [str(stations.text("station")[r]) for r in rows]
    if len(rows) > 1:
        notes.append(
            f"{common[0]}: common axis of the shaft seats at {', '.join(names)}; {common[1]}: common axis of the bores "
            f"there (ISO 5459). Run-out of seats is total, that of abutments axial; ISO 1101."
        )
    else:
        notes.append("One position only: run-outs refer to the axis of its own seat, there is no common axis.")
    for side in ("shaft", "housing"):
        name = f"{side}_undercut_form"
        if stated_rows(stations, name)[row]:
            choice = stations.choice(name)
            notes.append(f"{side} undercut of form {choice.words[int(choice.codes[row])]}.")
    if values.get("shaft_bore") == 0:
        notes.append("The shaft is solid.")
    if any(values.get(f"{side}_fillet_radius") for side in ("shaft", "housing")):
        notes.append("R max: largest radius of the corner; the ring must bear on the abutment, not on the fillet.")
    if proposed:
        notes.append(_PROPOSED_NOTE)
    if wanting := [words_of(name) for name in WANTED if not stated_rows(stations, name)[row]]:
        notes.append(f"Not stated by the table: {', '.join(wanting)}.")
    if habit := [words_of(name) for name in not_stated(values)]:
        notes.append(f"Drawn in usual proportion, not to be scaled from the picture: {', '.join(habit)}.")
    return tuple(notes)
