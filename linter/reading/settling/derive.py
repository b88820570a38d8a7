"""What the designation of a bearing says, put where the table states nothing; a stated value wins.

A value that contradicts the designation stays and is told: one of the two is wrong. What a complete designation would
mean without a sign (class Normal, clearance CN, open) is an assumption. Balls printed for the size are assumptions too:
a designation does not fix them.
"""

import re
from collections.abc import Iterator
from functools import lru_cache
from typing import Any

import numpy as np
from attrs import define, evolve, field, frozen
from numpy.typing import NDArray

from linter.model.columns import Assumption, Choice, Derivation
from linter.model.places import Place
from linter.model.stations import Problem, Stations
from linter.model.vocabulary import parameter
from linter.reading.cells.several import role_of_name
from linter.reading.files.intake import visible
from linter.reading.settling.bearing_list import BearingList
from linter.reading.words.bearing_geometry import internal_geometry, printed_ratings
from linter.reading.words.boundary import DIMENSIONS
from linter.reading.words.designations import IN_FRONT, Designation, read_designation

DESIGNATION = "bearing_designation"
#: Derived but not compared: makers print different smallest chamfers for one size.
_NOT_COMPARED = ("ring_chamfer",)
#: Two sizes nearer than this are one (mm): inch bearings are rounded to micrometres.
_SAME = 2e-3
#: A seat differs from the ring on it by less than this share of its size, as fits of ISO 286-1 do.
_OF_A_FIT = 1e-3
_NOT_STATED = "not stated; a complete designation without a sign for it would mean {}"
_PRINTED = "not stated; printed for this size of bearing, which a designation does not fix"
_DIFFERING = "not stated; makers print different balls for this size of bearing, and the weakest are taken"
_SOLVED = "not stated; solved from the ratings that one maker prints for this size of bearing"
#: Ratings of two makers for one size with the same balls differ by less than this (common practice).
_OTHER_MAKER = 0.12
_EXPECTED = "a designation such as 608-2Z/C3, or the bearing's type and sizes"
#: What a bearing is; another value of these in a firm's list means another bearing, of the others another maker.
_IDENTITY = ("bore_diameter", "outside_diameter", "ring_width", "bearing_type", "contact_angle")
_LIST = "in the list of bearings"
#: Internal geometry that belongs together: of one source or not at all.
_BALLS = ("ball_count", "ball_diameter", "pitch_diameter")
#: Words that say of an end that nothing is coupled to it as well as that its bearing floats.
_FREE = re.compile(r"(?<![^\W_])(?:free|freie?s?|libre|liber[oa])(?![^\W_])|自由|свободн", re.IGNORECASE)
#: Problems of designations that are told one by one.
_MOST_TOLD = 200


@frozen
class Value:
    """One value for one row, with what it comes from; ``assumed`` holds the reason where it is not certain."""

    value: float | str
    basis: str
    assumed: str = ""


@define(eq=False)
class _Filling:
    """Columns while derived values are put into their gaps."""

    stations: Stations
    found: dict[str, dict[int, Value]] = field(factory=dict)
    problems: list[Problem] = field(factory=list)
    notes: dict[str, None] = field(factory=dict)
    _known: dict[str, NDArray[np.bool_]] = field(factory=dict, init=False)
    _values: dict[str, list[Any]] = field(factory=dict, init=False)

    def is_stated(self, name: str, row: int) -> bool:
        """Whether the table states a parameter for a row."""
        if name not in self._known:
            self._known[name] = self.stations.known(name)
        return bool(self._known[name][row])

    def stated(self, name: str, row: int) -> float | str:
        """What the table states of a number or choice for a row."""
        if name not in self._values:
            is_number = parameter(name).kind == "number"
            column = self.stations.number(name) if is_number else self.stations.choice(name).texts()
            self._values[name] = column.tolist()
        value: float | str = self._values[name][row]
        return value

    def note(self, text: str) -> None:
        """Say something once."""
        if len(self.notes) < _MOST_TOLD:
            self.notes[text] = None

    def offer(self, row: int, name: str, value: Value) -> bool:
        """Take a value for a row where none is known yet; False where one is."""
        of_name = self.found.setdefault(name, {})
        if row in of_name or self.is_stated(name, row):
            return False
        of_name[row] = value
        return True

    def take_instead(self, row: int, name: str, value: Value, text: str) -> None:
        """Take the size that a designation means for the diameter of a seat that stands in its place; that is told."""
        other, seat = ("outside", "housing") if name == "bore_diameter" else ("bore", "shaft")
        place = self.stations.place(name, row)
        at = f"{self.stated(name, row):g} mm at {place.short() if place else ''}"
        said = f"{name}: {at} is the {other} diameter of {text}; it may be that of the {seat} seat, and is not used"
        self.found.setdefault(name, {})[row] = value
        self.tell("disagreement", row, name, text, "diameter-of-seat", "one bearing", said)

    def filled(self) -> Stations:
        """The stations with every value that was taken."""
        s = self.stations
        numbers, choices, assumed, derived = dict(s.numbers), dict(s.choices), dict(s.assumed), dict(s.derived)
        for name, of_name in self.found.items():
            if not of_name:
                continue
            rows = np.zeros(len(s), dtype=bool)
            basis = np.full(len(s), "", dtype=object)
            doubtful = np.zeros(len(s), dtype=bool)
            entry = parameter(name)
            for row, value in of_name.items():
                rows[row], basis[row], doubtful[row] = True, value.basis, bool(value.assumed)
            values = [value.value for value in of_name.values()]
            if entry.kind == "number":
                numbers[name] = s.number(name).copy()
                numbers[name][list(of_name)] = [float(value) for value in values]
            else:
                codes = s.choice(name).codes.copy()
                codes[list(of_name)] = [entry.choices.index(str(value)) for value in values]
                choices[name] = Choice(entry.choices, codes)
            derived[name] = Derivation(rows, basis)
            if doubtful.any():
                reasons = dict.fromkeys(value.assumed for value in of_name.values() if value.assumed)
                assumed[name] = Assumption(doubtful, "; or ".join(reasons))
        return evolve(s, numbers=numbers, choices=choices, assumed=assumed, derived=derived)

    @property
    def told(self) -> bool:
        """Whether as many problems are told as are told one by one."""
        return len(self.problems) >= _MOST_TOLD

    def tell(self, kind: str, row: int, name: str, read: str, code: str, expected: str, sentence: str) -> None:
        if self.told:
            return
        place = self.stations.place(DESIGNATION, row)
        where = place or Place("")
        message = f"{where}: {visible(sentence, 300)}; expected {expected}."
        self.problems.append(Problem(kind, row, name, place, visible(read, 60), expected, message, code))  # type: ignore[arg-type]


@frozen
class Derived:
    """Stations with what their designations say, and what is to be told of them."""

    stations: Stations
    problems: tuple[Problem, ...] = ()
    notes: tuple[str, ...] = ()


def derive(stations: Stations, bearings: BearingList | None = None) -> Derived:
    """Fill what the designations of the stations say.

    Parameters
    ----------
    stations : Stations
        As read, without defaults.
    bearings : BearingList, optional
        The firm's own list; its values go before what a designation means.

    Returns
    -------
    Derived
        The stations with gaps filled and ``derived`` (and ``assumed``) set; values that are stated stay. Problems:
        contradictions (``disagreement``) and designations that are not understood (``unreadable``, or ``assumption``
        where the table states the sizes itself). Notes: signs that nothing was read from.
    """
    texts = stations.text(DESIGNATION)
    filling = _Filling(stations)
    _roles_of_names(filling, stations)
    silent: set[str] = set()  # of which nothing is derived, nor told any more
    for row, text in enumerate(texts.tolist()):
        if text and text not in silent:
            if bearings is not None:
                _listed(filling, row, text, bearings)
            said = _said(text, _stated_sizes(filling, row) if _leaves_width(text) else None)
            _one(filling, row, said)
            if filling.told and bearings is None and not (said.read.derived or said.read.defaults):
                silent.add(text)
    return Derived(filling.filled(), tuple(filling.problems), tuple(filling.notes))


def _roles_of_names(filling: _Filling, stations: Stations) -> None:
    """The axial role that a station's name says; ``free end`` says one only beside a fixed one of the same machine."""
    names, machine = stations.text("station").tolist(), stations.machine_row.tolist()
    roles = [role_of_name(name) for name in names]
    fixed = {at for at, role in zip(machine, roles, strict=True) if role == "locating"}
    for row, (name, role) in enumerate(zip(names, roles, strict=True)):
        if role and (machine[row] in fixed or not _FREE.search(name)):
            filling.offer(row, "axial_role", Value(role, f"station {visible(name, 40)}"))


def _listed(filling: _Filling, row: int, text: str, bearings: BearingList) -> None:
    """What the firm's list says of the bearing of one station."""
    listed = bearings.find(text)
    filling.note(f"what the table leaves open of a bearing is taken from the list of bearings {bearings.file}")
    if listed is None:
        filling.note(f"designation {visible(text, 40)} is not in the list of bearings {bearings.file}")
        return
    for name, value in listed.values.items():
        if not filling.offer(row, name, Value(value, listed.basis(name))):
            _compare(filling, row, name, f"{_LIST} {visible(text, 40)}", value, listed.basis(name))


def known_designation(text: str, sizes: tuple[float, float, float] | None = None) -> Designation:
    """A designation as far as it is believed.

    Parameters
    ----------
    text : str
        As written.
    sizes : tuple of three floats, optional
        d, D and B that the table states (mm); they settle a width that the designation leaves open.

    Returns
    -------
    Designation
        Refused where a strange word is joined to a number that may be none of a bearing.
    """
    read = read_designation(text)
    if sizes is not None and read.derived and "ring_width" not in read.derived:
        beside = read_designation(f"{text} {sizes[0]:g}x{sizes[1]:g}x{sizes[2]:g}")
        read = beside if beside.derived else read
    if read.strength != "certain" and any(why == IN_FRONT for _, why in read.reported):
        strange = ", ".join(visible(sign, 20) for sign, why in read.reported if why == IN_FRONT)
        return Designation(text, read.normalised, refusal=f"{strange} {IN_FRONT}, {read.basic}")
    return read


@lru_cache(maxsize=4096)
def _leaves_width(text: str) -> bool:
    """Whether the sizes that stand beside a designation can settle what it leaves open."""
    read = read_designation(text)
    return bool(read.derived) and "ring_width" not in read.derived


def _stated_sizes(filling: _Filling, row: int) -> tuple[float, float, float] | None:
    d, outside, width = (float(filling.stated(name, row)) for name in DIMENSIONS)
    return None if np.isnan(d + outside + width) else (d, outside, width)


@frozen(eq=False)
class _Said:
    """What one designation says, worked out once for all the stations that carry it."""

    text: str
    read: Designation
    derived: tuple[tuple[str, Value], ...]
    defaults: tuple[tuple[str, Value], ...]
    balls: tuple[tuple[str, Value], ...]
    ratings: tuple[tuple[str, float], ...]
    notes: tuple[str, ...]


@lru_cache(maxsize=4096)
def _said(text: str, sizes: tuple[float, float, float] | None) -> _Said:
    read = known_designation(text, sizes)
    named = f"{DESIGNATION} {visible(text, 40)}"
    notes = []
    if read.derived and read.reported:
        signs = "; ".join(f"{visible(sign, 20)} ({why})" for sign, why in read.reported)
        notes.append(f"designation {visible(text, 40)}: not read: {signs}")
    return _Said(
        text,
        read,
        tuple((name, Value(found.value, f"{named}: {found.basis}")) for name, found in read.derived.items()),
        tuple(
            (name, Value(found.value, f"{named}: {found.basis}", _NOT_STATED.format(found.value)))
            for name, found in read.defaults.items()
        ),
        tuple(_geometry(read)) if read.derived else (),
        printed_ratings(read) if read.derived else (),
        tuple(notes),
    )


def _one(filling: _Filling, row: int, said: _Said) -> None:
    """One station."""
    meant = {name: value.value for name, value in said.derived}
    for name, value in said.derived:
        if not filling.offer(row, name, value) and name not in _NOT_COMPARED:
            if _is_of_seat(filling, row, name, meant):
                filling.take_instead(row, name, value, said.text)
                continue
            _compare(filling, row, name, said.text, value.value, said.read.derived[name].basis)
    for name, value in said.defaults:
        filling.offer(row, name, value)
    free = not any(filling.is_stated(name, row) for name in _BALLS)
    if said.balls and free and _agrees_with_ratings(filling, row, said):
        for name, value in said.balls:
            filling.offer(row, name, value)
    if said.read.refusal is not None:
        _refused(filling, row, said.text, said.read)
    if said.read.arrangement:
        _paired(filling, row, said.text, said.read.arrangement)
    for note in said.notes:
        filling.note(note)


def _is_of_seat(filling: _Filling, row: int, name: str, meant: dict[str, float | str]) -> bool:
    """Whether a stated bore is the outside diameter of the designation, or the other way round: that of a seat."""
    other = {"bore_diameter": "outside_diameter", "outside_diameter": "bore_diameter"}.get(name, "")
    if other not in meant or filling.stations.place(name, row) is None or filling.found.get(name, {}).get(row):
        return False
    stated, meant_other = float(filling.stated(name, row)), float(meant[other])
    near = max(_SAME, _OF_A_FIT * meant_other)
    if abs(meant_other - float(meant[name])) <= near or abs(stated - meant_other) > near:
        return False
    return not filling.is_stated(other, row) or float(filling.stated(other, row)) == stated


def _paired(filling: _Filling, row: int, text: str, arrangement: str) -> None:
    """A pair behind one designation: the station is judged as one bearing of it, which is said at its cell."""
    how = {"DB": "back to back", "DF": "face to face", "DT": "in tandem"}.get(arrangement, "")
    pair = f"{visible(text, 60)} is a pair of bearings {how}".rstrip()
    sentence = f"{pair} ({arrangement}); the station is taken as one bearing of it, with the loads stated for it"
    expected = "loads and preload of one bearing of the pair"
    filling.tell("assumption", row, DESIGNATION, text, "pair", expected, sentence)


def _compare(filling: _Filling, row: int, name: str, text: str, value: float | str, basis: str) -> None:
    """A value beside what the designation means or the list says: told where they differ."""
    stations, entry = filling.stations, parameter(name)
    first = filling.found.get(name, {}).get(row)
    stated: float | str
    if entry.kind == "number":
        stated = float(filling.stated(name, row)) if first is None else float(first.value)
        if abs(stated - float(value)) <= max(_SAME, 1e-6 * abs(stated)):
            return
    else:
        stated = str(filling.stated(name, row)) if first is None else str(first.value)
        if stated == value:
            return
    one, other = (f"{v:g} {entry.unit}" if isinstance(v, float) else v for v in (stated, value))
    place = stations.place(name, row) if first is None else None
    at = f" at {place.short()}" if place is not None else "" if first is None else f" by the {first.basis}"
    said = f"{name}: {one} is stated{at} and {other} is what {text} means ({basis}); the stated value is used"
    grave = not text.startswith(_LIST) or name in _IDENTITY
    kind = "disagreement" if grave else "assumption"
    filling.tell(kind, row, name, text, "designation-contradicts", "one bearing", said)


def _refused(filling: _Filling, row: int, text: str, read: Designation) -> None:
    """A designation that has to be asked about; a number of another kind does no harm where the sizes are stated."""
    if filling.told:
        return
    stated = all(filling.is_stated(name, row) for name in ("bore_diameter", "outside_diameter", "ring_width"))
    harmless = stated and not read.derived
    said = f"the designation {visible(text, 60)} is not understood: {read.refusal}"
    kind = "assumption" if harmless else "unreadable"
    filling.tell(kind, row, DESIGNATION, text, "designation-not-read", _EXPECTED, said)


def _geometry(read: Designation) -> Iterator[tuple[str, Value]]:
    """Balls that are printed for a size or solved from its printed ratings; the weakest where sources differ."""
    found = internal_geometry(read)
    if found is None:
        return
    how = "printed" if found.published else "solved by ISO 281 and ISO 76 from the ratings that are printed"
    basis = f"{how} for {found.bearing} by {found.maker}: {found.source}"
    if found.differing:
        basis += f"; other makers: {'; '.join(found.differing)}"
    reason = _PRINTED if found.published and not found.differing else _DIFFERING if found.differing else _SOLVED
    values = {
        "ball_count": float(found.ball_count), "ball_diameter": found.ball_diameter,
        "pitch_diameter": found.pitch_diameter,
    }  # fmt: skip
    for name, value in values.items():
        if value is not None:
            yield name, Value(value, basis, reason)


def _agrees_with_ratings(filling: _Filling, row: int, said: _Said) -> bool:
    """Whether the ratings that a station states can be those of the printed balls; True where it states none."""
    return all(
        abs(float(filling.stated(name, row)) / printed - 1) <= _OTHER_MAKER
        for name, printed in said.ratings
        if filling.is_stated(name, row)
    )
