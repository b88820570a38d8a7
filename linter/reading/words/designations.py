"""Rolling-bearing designations: what the number in a parts list says about size and execution, and what it does not.

A designation is a basic number with signs before and behind it. The basic number follows one plan at every maker (DIN
623-1, JIS B 1513, ABMA 20 on the sizes of ISO 15): its sizes come from a table of printed sizes and are never computed.
Most signs are each maker's own. Only those that several makers print with one meaning are read; every other sign is
reported by name. Nothing follows from a sign that is absent: what a complete designation would mean without it is
given apart, as an assumption.
"""

import re
import string
from collections.abc import Iterator, Mapping
from functools import lru_cache
from types import MappingProxyType

from attrs import field, frozen

from linter.reading.cells.signs import LONGEST_TEXT, fold, shown
from linter.reading.words.bearing_numbers import (
    CHUNK,
    Found,
    Refused,
    Strength,
    basic_number,
    check_sizes_beside,
    other_number,
    prepared,
)
from linter.reading.words.bearing_tables import ANGULAR, ROLLER, Sign, balls_said, is_word, prefix_table, sign_table

_UPPER = str.maketrans(string.ascii_lowercase, string.ascii_uppercase)
_CLOSED = frozenset({"shield", "contact seal", "non-contact seal"})
#: A clearance group with letters joined behind it: a grease or a fill, which does not change the group.
_FILLED = re.compile(r"C[2-5](?=[A-Z])")
_LONGEST_SIGN, _LONGEST_CHUNK = 12, 24

NOT_KNOWN = "not known: a maker's own sign, a grease or a word; nothing is read from it"
IN_FRONT = "stands in front of the number and is no part of it that is known"
NO_SIGN_BEHIND = "not stated; a complete designation without a sign for it would mean {}"


@frozen
class Derived:
    """One value that a designation gives, and why.

    Attributes
    ----------
    value : str or float
        A choice of the vocabulary, or a number in the unit of the parameter (mm, deg).
    basis : str
        The row or the sign that it comes from, with its source.
    """

    value: str | float
    basis: str


@frozen(eq=False)
class Designation:
    """One designation as understood.

    Attributes
    ----------
    as_written : str
        The text of the cell.
    normalised : str
        Basic number and signs in capitals with one blank between them; the folded text where there is no number.
    basic : str or None
        The basic number as in the table of sizes; None where no size may be taken from the text.
    derived : mapping of str to Derived
        Parameters of the vocabulary with what the designation says of them; sizes are nominal. Empty where no size
        may be taken from the text.
    defaults : mapping of str to Derived
        Parameters that are not stated, with what a complete designation would mean without them. An assumption.
    arrangement : str or None
        ``DB``, ``DF`` or ``DT``.
    reported : tuple of (str, str)
        Parts of the text that nothing was read from (or that say more than was read), each with the reason.
    refusal : str or None
        What has to be asked: why the text gives no size, or not all of it, or contradicts itself. What stands in
        ``derived`` stands all the same.
    strength : {"certain", "possible", "no"}
        How surely the text is a designation by itself, without a heading that says so.
    """

    as_written: str
    normalised: str
    basic: str | None = None
    derived: Mapping[str, Derived] = field(factory=dict)
    defaults: Mapping[str, Derived] = field(factory=dict)
    arrangement: str | None = None
    reported: tuple[tuple[str, str], ...] = ()
    refusal: str | None = None
    strength: Strength = "no"

    def _word(self, name: str) -> str | None:
        return str(self.derived[name].value) if name in self.derived else None

    def _number(self, name: str) -> float | None:
        return float(self.derived[name].value) if name in self.derived else None

    @property
    def bearing_type(self) -> str | None:
        """Type of bearing, as a choice of the vocabulary."""
        return self._word("bearing_type")

    @property
    def bore_diameter(self) -> float | None:
        """Nominal bore d in mm."""
        return self._number("bore_diameter")

    @property
    def outside_diameter(self) -> float | None:
        """Nominal outside diameter D in mm."""
        return self._number("outside_diameter")

    @property
    def ring_width(self) -> float | None:
        """Nominal width B in mm."""
        return self._number("ring_width")

    @property
    def contact_angle(self) -> float | None:
        """Nominal contact angle in deg."""
        return self._number("contact_angle")

    @property
    def closure(self) -> str | None:
        """Closure, as a choice of the vocabulary."""
        return self._word("closure")

    @property
    def clearance_class(self) -> str | None:
        """Group of radial clearance of ISO 5753-1."""
        return self._word("clearance_class")

    @property
    def tolerance_class(self) -> str | None:
        """Tolerance class of ISO 492."""
        return self._word("tolerance_class")

    @property
    def cage(self) -> str | None:
        """Cage, as a choice of the vocabulary."""
        return self._word("cage")


def read_designation(text: str) -> Designation:
    """What a designation says: sizes from the table, and the signs that several makers print with one meaning.

    Parameters
    ----------
    text : str
        One cell, as written: any case, blanks, hyphens, slashes, full-width signs; words around the number.

    Returns
    -------
    Designation
        With ``refusal`` set where something has to be asked; then nothing is derived, or the part that stands. Never
        raises.

    Notes
    -----
    Numbers after DIN 623-1, JIS B 1513 and ABMA 20 as printed by the makers named in
    ``data/designation_sources.csv``; sizes after ISO 15 and ABMA 12.2 by way of the same catalogues.
    """
    if len(text) > LONGEST_TEXT:
        return Designation(
            text, shown(text), refusal=f"{len(text)} signs are no designation (at most {LONGEST_TEXT} are read)"
        )
    return _read(text)


def looks_like_designation(text: str) -> bool:
    """Whether a text is a designation beyond doubt by itself: never for a plain number, which can be a size."""
    return designation_strength(text) == "certain"


def designation_strength(text: str) -> Strength:
    """How surely a text is a designation by itself.

    ``certain``: a known number with a sign that only bearings carry (``608-2Z``, ``NU204``). ``possible``: a known
    number that may be another quantity (``6203``, ``R8``, ``7005C``), or the number of a bearing that is not in the
    table. ``no``: anything else.
    """
    return read_designation(text).strength


@lru_cache(maxsize=8192)
def _read(text: str) -> Designation:
    folded = fold(text)
    try:
        return _understood(text, folded.translate(_UPPER))
    except Refused as refused:
        return Designation(text, folded.translate(_UPPER), refusal=refused.why, strength=refused.strength)


def _understood(text: str, key: str) -> Designation:
    sizes, key = prepared(key)
    found = basic_number(key)
    check_sizes_beside(found, sizes)
    return _Signs(found, key, sizes).designation(text)


class _Signs:
    """The signs around one basic number, gathered into a designation."""

    def __init__(self, found: Found, key: str, sizes: tuple[float, ...]) -> None:
        self.found, self.type, self.sizes = found, found.size.type, sizes
        self.reported: list[tuple[str, str]] = []
        self.asked: list[str] = []
        self.stated: dict[str, dict[str, str]] = {}
        self.groups: set[str] = set()
        self.prefixes: list[str] = []
        self.words: list[str] = []
        self.strong = False
        if found.special_bore is not None:
            self.reported.append((f"/{found.special_bore:g}", f"special bore in mm in place of {found.size.bore:g} mm"))
        self._before(key[: found.start])
        self._behind(key[found.end :])

    def _state(self, sign: str, reads: tuple[tuple[str, str], ...], source: str) -> None:
        for name, value in reads:
            self.stated.setdefault(name, {}).setdefault(value, f"sign {sign}: {source}")

    def _before(self, text: str) -> None:
        """Words and signs in front of the number."""
        for sign in (*CHUNK.findall(text), *self.found.prefixes):
            row = prefix_table().get(sign)
            if row is not None and (not row.types or self.type in row.types):
                self._state(sign, row.reads, row.source)
                self.prefixes.append(sign)
                if row.says:
                    self.reported.append((sign, f"{row.says} ({row.source})"))
            elif balls := balls_said(sign):
                self._state(sign, balls.reads, balls.source)
            elif not is_word(sign):
                self.reported.append((sign, IN_FRONT))

    def _behind(self, text: str) -> None:
        """Signs behind the number, chunk by chunk."""
        chunks = _merged(CHUNK.findall(text))
        if (other := other_number(text)) is not None:
            raise Refused(
                f"two numbers are written, {self.found.size.basic} and {other}: one cell states one bearing", "possible"
            )
        if chunks and chunks[0].isdigit() and text[:1] in "-/ ":
            raise Refused(
                f"“{chunks[0]}” behind {self.found.size.basic} follows no rule: it can be a bore in sixteenths of an "
                f"inch or a number of another kind",
                "possible",
            )
        for number, chunk in enumerate(chunks):
            self._chunk(chunk, number == 0)

    def _chunk(self, chunk: str, first: bool) -> None:
        rows = self._split(chunk, first)
        tail = ""
        if rows is None:
            for fill in _FILLED.finditer(chunk):
                if (part := self._split(chunk[: fill.end()], first)) is not None:
                    rows, tail = part, chunk[fill.end() :]
        if rows is None:
            if not is_word(chunk):
                self.reported.append((chunk, NOT_KNOWN))
            return
        for row in rows:
            self.words.append(row.sign)
            self.groups.add(row.group)
            self.strong |= row.group in ("closure", "clearance", "tolerance") and len(row.sign) > 1
            if row.group == "arrangement":
                self.stated.setdefault("arrangement", {}).setdefault(row.sign, row.source)
            self._state(row.sign, row.reads, row.source)
            if row.asks:
                self.asked.append(f"{row.sign}: {row.says} ({row.source})")
            elif row.says:
                self.reported.append((row.sign, f"{row.says} ({row.source})"))
        if tail:
            self.reported.append((tail, NOT_KNOWN))

    def _split(self, chunk: str, first: bool) -> list[Sign] | None:
        """The signs that a chunk is made of, as few as can be, long ones first; None where a part of it is no sign."""
        known: dict[tuple[int, str], list[Sign] | None] = {}

        def rest(at: int, before: str) -> list[Sign] | None:
            if at == len(chunk):
                return []
            if (at, before) not in known:
                best: list[Sign] | None = None
                for end in range(min(len(chunk), at + _LONGEST_SIGN), at, -1):
                    row = self._row(chunk[at:end], before, first and at == 0)
                    tail = None if row is None else rest(end, row.group)
                    if row is not None and tail is not None and (best is None or len(tail) + 1 < len(best)):
                        best = [row, *tail]
                known[at, before] = best
            return known[at, before]

        return rest(0, "") if len(chunk) <= _LONGEST_CHUNK else None

    def _row(self, sign: str, before: str, first: bool) -> Sign | None:
        """The row of a sign at its place: behind a sign of the group ``before``, or at the start of a chunk."""
        rows = [row for row in sign_table().get(sign, ()) if self._fits(row, before, first)]
        if not rows:
            return None
        if self.type == ANGULAR and self.groups & {"arrangement", "set", "universal"}:
            rows.sort(key=lambda row: row.group != "preload")
        return rows[0]

    def _fits(self, row: Sign, before: str, first: bool) -> bool:
        if row.types and self.type not in row.types:
            return False
        if row.first and not first:
            return False
        if row.series and not self.found.size.basic.startswith(row.series):
            return False
        return not before or "any" in row.joins or before in row.joins

    def designation(self, text: str) -> Designation:
        """Everything together: sizes, what the signs state, contradictions, and what was not stated."""
        size = self.found.size
        if self.type == ANGULAR and "clearance_class" in self.stated:
            why = "axial clearance of the pair, no radial group (NSK-GC p. A 55, example 2)"
            if "arrangement" not in self.groups:
                why = "ISO 5753-1 has no radial group for angular contact bearings (from memory of ISO 5753-1:2009)"
            self.reported.extend((sign, why) for sign in self.stated.pop("clearance_class"))
        if "bore" in self.groups:
            raise Refused(f"{size.basic}: {'; '.join(self.asked)}", "possible")
        bore = size.bore if self.found.special_bore is None else self.found.special_bore
        basis = size.basis if self.found.special_bore is None else "bore in mm behind the number (SKF-GC p. 148)"
        derived = {"bearing_type": Derived(self.type, size.basis), "bore_diameter": Derived(bore, basis)}
        derived["outside_diameter"] = Derived(size.outside, size.basis)
        for name in ("closure", "clearance_class", "tolerance_class", "cage", "ball_material", "contact_angle"):
            values = self.stated.get(name, {})
            if len(values) == 1:
                value, basis = next(iter(values.items()))
                derived[name] = Derived(float(value) if name == "contact_angle" else value, basis)
            elif values:
                self.asked.append(f"{' and '.join(values)} are both stated: neither is read")
        if self.type != ANGULAR:
            derived["contact_angle"] = Derived(0.0, f"{self.type} bearing")
        if (width := self._width(derived)) is not None:
            derived["ring_width"] = width
        if size.chamfer is not None:
            derived["ring_chamfer"] = Derived(size.chamfer, f"smallest printed r_s min; {size.basis}")
        arrangement = self.stated.get("arrangement", {})
        return Designation(
            text,
            " ".join((*self.prefixes, size.basic, *self.words)),
            size.basic,
            MappingProxyType(derived),
            MappingProxyType(dict(self._defaults(derived))),
            next(iter(arrangement)) if len(arrangement) == 1 else None,
            tuple(self.reported),
            "; ".join(self.asked) or None,
            self._strength(),
        )

    def _width(self, derived: dict[str, Derived]) -> Derived | None:
        """Width: from the table, unless it depends on a closure that is not stated."""
        size = self.found.size
        if size.closed_width is None or size.closed_width == size.width:
            return Derived(size.width, size.basis)
        if self.sizes:
            return Derived(self.sizes[2], "written beside the number, one of the two widths of the table")
        closure = derived["closure"].value if "closure" in derived else None
        if "W" not in self.prefixes:
            if closure in _CLOSED:
                return Derived(size.closed_width, f"width with {closure}; {size.basis}")
            if closure == "open":
                return Derived(size.width, f"width of the open bearing; {size.basis}")
        self.asked.append(f"B of {size.basic} is {size.width:g} mm open and {size.closed_width:g} mm closed: state it")
        return None

    def _defaults(self, derived: dict[str, Derived]) -> Iterator[tuple[str, Derived]]:
        """What a complete designation would mean where it states nothing."""
        if self.type != ROLLER and "closure" not in self.groups and "ring_width" in derived:
            yield "closure", Derived("open", NO_SIGN_BEHIND.format("open"))
        if "tolerance" not in self.groups:
            yield "tolerance_class", Derived("Normal", NO_SIGN_BEHIND.format("class Normal"))
        if self.type != ANGULAR and "clearance" not in self.groups and "clearance_class" not in self.stated:
            yield "clearance_class", Derived("CN", NO_SIGN_BEHIND.format("clearance CN"))

    def _strength(self) -> Strength:
        return "certain" if self.strong or self.found.letters in ("NU", "NJ", "NUP", "MR") else "possible"


def _merged(chunks: list[str]) -> list[str]:
    """Chunks, with a sign that was written in two parts (``2 RS``, ``C 3``, ``ABEC 5``) made one."""
    signs = sign_table()
    merged: list[str] = []
    for chunk in chunks:
        last = merged[-1] if merged else ""
        parted = (
            last and (last not in signs or chunk not in signs) and (last.isdigit() or chunk.isdigit() or last == "ABEC")
        )
        if parted and last + chunk in signs:
            merged[-1] = last + chunk
        else:
            merged.append(chunk)
    return merged
