"""Rolling-bearing designations: what the number in a parts list says about size and execution, and what it does not.

A designation is a basic number with signs before and behind it. The basic number follows one plan at every maker (DIN
623-1, JIS B 1513, ABMA 20 on the sizes of ISO 15): its sizes come from a table of printed sizes and are never computed.
Most signs are each maker's own. Only those that several makers print with one meaning are read; every other sign is
reported by name. Nothing follows from a sign that is absent: what a complete designation would mean without it is
given apart, as an assumption.

The tables are in ``data/designation_*.csv``, each row with its source; the keys are in ``designation_sources.csv``.
"""

import csv
import re
import string
from collections.abc import Iterator, Mapping
from functools import cache, lru_cache
from pathlib import Path
from types import MappingProxyType
from typing import Literal

from attrs import evolve, field, frozen

from linter.reading.signs import LONGEST_TEXT, caseless, fold, shown

Strength = Literal["certain", "possible", "no"]

_DATA = Path(__file__).resolve().parent / "data"
_BALL, _ANGULAR, _ROLLER = "deep groove ball", "angular contact ball", "cylindrical roller"
_UPPER = str.maketrans(string.ascii_lowercase, string.ascii_uppercase)
_CLOSED = frozenset({"shield", "contact seal", "non-contact seal"})
#: Letters that belong to the basic number, longest first.
_TYPE_LETTERS = ("NUP", "NU", "NJ", "NF", "MF", "MR", "N", "R")
#: A single number of digits, with the letters in front of it (joined, or behind one blank or hyphen).
_RUN = re.compile(r"(?<![0-9])(?:(?<![^\W\d_])(?P<letters>[A-Z]{1,8})(?P<joint>[ -]?))?(?P<digits>[0-9]{1,8})(?![0-9])")
_SLASH = re.compile(r"/([0-9]{1,3}(?:[.,][0-9]{1,4})?)(?![0-9])")
_DECIMALS = re.compile(r"[.,]([0-9]{1,8})(?![0-9A-Z])")
_INCH = re.compile(r"-[0-9](?![0-9])|A")
_THREE_SIZES = re.compile(
    r"(?<![0-9A-Z.,/])D? ?=? ?([0-9]{1,4}(?:[.,][0-9]{1,4})?) ?(?:MM)? ?[X*] ?([0-9]{1,4}(?:[.,][0-9]{1,4})?) ?(?:MM)?"
    r" ?[X*] ?([0-9]{1,4}(?:[.,][0-9]{1,4})?) ?(?:MM)?(?![0-9A-Z])"
)
_PIECES = "(?:PCS|PC|PIECES|STK|ST(?:Ü|ü)CK|OFF|EA|SZT|件|個|个)"
_QUANTITY = re.compile(
    rf"^ ?[(]?(?:[0-9]{{1,2}} ?X(?= ?[A-Z]{{0,5}}[ -]?[0-9])|[0-9]{{1,3}} ?(?:{_PIECES}\b|ST[.]))[.]? ?[)]?"
    rf"|\bQTY[.]?:? ?[0-9]{{1,3}}\b|[(, ](?:[0-9] ?X|[0-9]{{1,3}} ?{_PIECES})[.]?[)]?$|[ (]X ?[0-9]{{1,3}}[)]?$"
)
#: Where a word of Chinese or Japanese ends and a number begins.
_SCRIPT_ENDS = re.compile(r"(?<=[\u3040-\u9fff])(?=[0-9A-Z])")
# Standards that a parts list names beside a bearing; their numbers are no basic numbers.
_STANDARD = re.compile(
    r"\b(?:DIN(?: EN)?(?: ISO)?|EN|ISO)[ -]?(?:15|281|492|616|620|623|625|628|630|711|720|728|5401|5412|5753)"
    r"(?:[-:][0-9]{1,4}){0,2}(?![0-9A-Z])"
    r"|\bJIS ?B ?15[0-9]{2}(?![0-9])|\bGB(?:/T)? ?(?:27[1-6]|28[1-9]|29[0-9])(?:-[0-9]{2,4})?(?![0-9])"
    r"|\b(?:GOST|ГOCT) ?(?:520|831|832|3189|8328|8338)(?:-[0-9]{2,4})?(?![0-9])"
)
_CHUNK = re.compile(r"[^ \-/.,;:_()\[\]{}+&*'\"|=#]+")
#: A clearance group with letters joined behind it: a grease or a fill, which does not change the group.
_FILLED = re.compile(r"C[2-5](?=[A-Z])")
_LONGEST_SIGN, _LONGEST_CHUNK = 8, 24
_LETTER_FOR_DIGIT = {"O": "0", "I": "1", "L": "1", "Z": "2", "S": "5", "B": "8"}

NOT_KNOWN = "not known: a maker's own sign, a grease or a word; nothing is read from it"
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
        found = self.derived.get(name)
        return None if found is None else str(found.value)

    def _number(self, name: str) -> float | None:
        found = self.derived.get(name)
        return None if found is None else float(found.value)

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


@frozen
class Geometry:
    """Internal geometry that is printed for a size, or solved from its printed ratings.

    A designation does not fix it: makers fill one size with other balls. It may back an estimate that says so, never a
    silent value.

    Attributes
    ----------
    bearing : str
        Number of the row.
    ball_count : int
        Number of balls Z.
    ball_diameter : float
        D_w in mm.
    pitch_diameter : float or None
        D_pw in mm; None where not printed.
    dynamic_rating, static_rating : float or None
        C and C_0 in N.
    limiting_speed_grease, limiting_speed_oil : float or None
        Limiting speeds of the same maker in r/min.
    maker : str
        Whose table it is.
    published : bool
        True where ball count and size are printed; False where they are solved from printed ratings.
    source, note : str
        Where it stands, and what is to be known of it.
    differing : tuple of str
        The other rows of this size that print other balls or another pitch diameter.
    """

    bearing: str
    ball_count: int
    ball_diameter: float
    pitch_diameter: float | None
    dynamic_rating: float | None
    static_rating: float | None
    limiting_speed_grease: float | None
    limiting_speed_oil: float | None
    maker: str
    published: bool
    source: str
    note: str
    differing: tuple[str, ...] = ()


@frozen
class _Size:
    """One row of the table of sizes; lengths in mm."""

    basic: str
    type: str
    bore: float
    outside: float
    width: float
    closed_width: float | None
    chamfer: float | None
    basis: str


@frozen
class _Sign:
    """One row of the signs behind the number."""

    sign: str
    group: str
    types: frozenset[str]
    series: tuple[str, ...]
    joins: frozenset[str]
    first: bool
    reads: tuple[tuple[str, str], ...]
    says: str
    asks: bool
    source: str


@frozen
class _Found:
    """The basic number in a text: its size, where it stands, and the signs joined in front of it."""

    size: _Size
    start: int
    end: int
    prefixes: tuple[str, ...]
    letters: str
    special_bore: float | None = None


class _Refused(Exception):
    """Why a text gives no size, and how surely it is a designation all the same; never leaves this module."""

    def __init__(self, why: str, strength: Strength = "no") -> None:
        super().__init__(why)
        self.why, self.strength = why, strength


def _rows(table: str) -> list[dict[str, str]]:
    with (_DATA / f"designation_{table}.csv").open(encoding="utf-8", newline="") as stream:
        return list(csv.DictReader(stream))


@cache
def designation_sources() -> Mapping[str, str]:
    """Documents behind the keys of the ``source`` columns."""
    return MappingProxyType({row["key"]: row["document"] for row in _rows("sources")})


@cache
def _sizes() -> dict[str, _Size]:
    def number(text: str) -> float | None:
        return float(text) if text else None

    def size(row: dict[str, str]) -> _Size:
        how = {"read": "printed", "derived": "printed under the other form of the number", "memory": "from memory"}
        return _Size(
            row["basic"], row["type"], float(row["bore_mm"]), float(row["outside_diameter_mm"]), float(row["width_mm"]),
            number(row["closed_width_mm"]), number(row["rs_min_mm"]),
            f"sizes of {row['basic']}, {how[row['provenance']]}: {row['source']}",
        )  # fmt: skip

    sizes = {row["basic"]: size(row) for row in _rows("sizes")}
    for basic, row in list(sizes.items()):
        # NF is printed less and less; the dimension series gives one size to every cylindrical roller bearing (ISO 15)
        if basic.startswith("N") and basic[1].isdigit():
            sizes["NF" + basic[1:]] = _Size(
                "NF" + basic[1:], row.type, row.bore, row.outside, row.width, None, row.chamfer,
                f"one size per dimension series and bore (ISO 15), {row.basis}",
            )  # fmt: skip
    return sizes


@cache
def _signs() -> dict[str, tuple[_Sign, ...]]:
    signs: dict[str, list[_Sign]] = {}
    for row in _rows("suffixes"):
        reads = tuple((part.partition("=")[0], part.partition("=")[2]) for part in row["reads"].split("|") if part)
        signs.setdefault(row["sign"], []).append(
            _Sign(
                row["sign"], row["group"], frozenset(row["types"].split("|")) if row["types"] else frozenset(),
                tuple(row["series"].split()), frozenset(row["joins"].split()), bool(row["first"]), reads, row["says"],
                bool(row["asks"]), row["source"],
            )
        )  # fmt: skip
    return {sign: tuple(rows) for sign, rows in signs.items()}


@cache
def _prefixes() -> dict[str, dict[str, str]]:
    return {row["sign"]: row for row in _rows("prefixes")}


@cache
def _refusals() -> list[tuple[re.Pattern[str], str]]:
    return [(re.compile(row["pattern"]), f"{row['why']} ({row['source']})") for row in _rows("refusals")]


@cache
def _words() -> frozenset[str]:
    return frozenset(caseless(row["word"]) for row in _rows("words"))


def _is_word(chunk: str) -> bool:
    """Whether a part of the text is a word of parts lists that says nothing about the bearing."""
    return caseless(chunk) in _words()


def _refusal_of(number: str) -> str | None:
    return next((why for pattern, why in _refusals() if pattern.fullmatch(number)), None)


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


def internal_geometry(designation: Designation) -> Geometry | None:
    """Internal geometry that is printed for the size of a designation.

    Parameters
    ----------
    designation : Designation
        As read. Its type, d, D, B and (for an angular contact bearing) contact angle must be known.

    Returns
    -------
    Geometry or None
        A published row before a solved one. ``differing`` names the rows of this size that say otherwise.
    """
    if designation.bore_diameter is None or designation.ring_width is None or designation.contact_angle is None:
        return None
    return _geometry().get(
        (
            designation.bearing_type, designation.bore_diameter, designation.outside_diameter, designation.ring_width,
            designation.contact_angle,
        )
    )  # fmt: skip


@cache
def _geometry() -> dict[tuple[str | float | None, ...], Geometry]:
    def number(text: str) -> float | None:
        return float(text) if text else None

    by_size: dict[tuple[str | float | None, ...], list[Geometry]] = {}
    for row in _rows("geometry"):
        key = (
            row["type"], float(row["bore_mm"]), float(row["outside_diameter_mm"]), float(row["width_mm"]),
            float(row["contact_angle_deg"]),
        )  # fmt: skip
        by_size.setdefault(key, []).append(
            Geometry(
                row["bearing"], int(row["ball_count"]), float(row["ball_diameter_mm"]),
                number(row["pitch_diameter_mm"]), number(row["dynamic_rating_n"]), number(row["static_rating_n"]),
                number(row["limiting_speed_grease_rpm"]), number(row["limiting_speed_oil_rpm"]), row["maker"],
                row["provenance"] == "published", row["source"], row["note"],
            )
        )  # fmt: skip

    def chosen(rows: list[Geometry]) -> Geometry:
        best = min(rows, key=lambda row: not row.published)
        others = tuple(_in_words(row) for row in rows if row is not best and _differs(row, best))
        return evolve(best, differing=others)

    return {key: chosen(rows) for key, rows in by_size.items()}


def _differs(one: Geometry, other: Geometry) -> bool:
    """Whether two rows mean other balls: another count, a diameter off by more than its rounding, another pitch."""
    pitches = one.pitch_diameter is not None and other.pitch_diameter is not None
    return (
        one.ball_count != other.ball_count
        or abs(one.ball_diameter - other.ball_diameter) > 0.006
        or (pitches and abs(float(one.pitch_diameter or 0) - float(other.pitch_diameter or 0)) > 0.02)
    )


def _in_words(row: Geometry) -> str:
    pitch = f", D_pw {row.pitch_diameter:g} mm" if row.pitch_diameter is not None else ""
    how = "printed" if row.published else "solved from printed ratings"
    return f"{row.ball_count} balls of {row.ball_diameter:g} mm{pitch} ({row.maker}, {how}: {row.source})"


@lru_cache(maxsize=8192)
def _read(text: str) -> Designation:
    folded = fold(text)
    try:
        return _understood(text, folded.translate(_UPPER))
    except _Refused as refused:
        return Designation(text, folded.translate(_UPPER), refusal=refused.why, strength=refused.strength)


def _understood(text: str, key: str) -> Designation:
    strange = next((sign for sign in key if not sign.isprintable() or (sign.isdigit() and not sign.isascii())), None)
    if strange is not None:
        raise _Refused(f"the sign “{shown(strange)}” has no place in a designation")
    key = _STANDARD.sub(" ", key)
    sizes, key = _sizes_beside(key)
    key = _SCRIPT_ENDS.sub(" ", _QUANTITY.sub(" ", key))
    found = _basic_number(key)
    _check_sizes_beside(found, sizes)
    return _Signs(found, key, sizes).designation(text)


def _sizes_beside(key: str) -> tuple[tuple[float, ...], str]:
    """Sizes d x D x B written beside the number, and the text without them."""
    match = _THREE_SIZES.search(key)
    if match is None:
        return (), key
    sizes = tuple(float(part.replace(",", ".")) for part in match.groups())
    return sizes, key[: match.start()] + " " + key[match.end() :]


def _check_sizes_beside(found: _Found, sizes: tuple[float, ...]) -> None:
    if not sizes:
        return
    size = found.size
    bore = size.bore if found.special_bore is None else found.special_bore
    widths = {size.width, size.width if size.closed_width is None else size.closed_width}
    near = [abs(sizes[0] - bore) < 0.01, abs(sizes[1] - size.outside) < 0.01]
    if not all(near) or all(abs(sizes[2] - width) > 0.01 for width in widths):
        raise _Refused(
            f"{size.basic} is {bore:g} x {size.outside:g} x {size.width:g} mm, but "
            f"{' x '.join(f'{part:g}' for part in sizes)} is written beside it: one of the two is wrong",
            "possible",
        )


def _basic_number(key: str) -> _Found:
    """The basic number in a text in capitals; raises where there is none, or one that gives no size."""
    nearest: str | None = None
    for match in _RUN.finditer(key):
        letters, joint, digits = match["letters"] or "", match["joint"] or "", match["digits"]
        before = key[: match.start("digits")]
        if before[-1:] in (".", ",") and before[-2:-1].isdigit():
            continue
        found = _at(key, match.start(), match.start("digits"), match.end("digits"), letters, joint, digits)
        if found is not None:
            return found
        if (joint or not letters) and len(digits) >= 3 and nearest is None:
            nearest = digits
    if typo := _letter_for_digit(key):
        raise _Refused(typo)
    if nearest is None:
        raise _Refused("no basic number of a bearing is in it")
    raise _Refused(_missing(nearest))


def _at(key: str, start: int, at: int, end: int, letters: str, joint: str, digits: str) -> _Found | None:
    """The basic number at one run of digits; None where the run is none, raises where it is one that gives no size."""
    unknown: tuple[str, str] | None = None
    for kind in _TYPE_LETTERS:
        if not letters.endswith(kind) or (joint and letters != kind):
            continue
        chain = _prefix_chain(letters[: -len(kind)])
        if kind == "MF":
            kind, chain = "MR", None if chain is None else (*chain, "F")
        lettered = _lettered(key, end, kind, digits)
        if lettered is None:
            continue
        if chain is None or not _suits(chain, lettered[0]):
            unknown = letters, lettered[0].basic
            continue
        return _Found(lettered[0], start, lettered[1], chain, kind)
    if letters and (why := _refusal_of(letters + digits)):
        raise _Refused(f"{letters}{digits} is {why}", "possible")
    if letters in _TYPE_LETTERS and len(digits) >= 2:
        raise _Refused(f"{letters}{digits} is not in the table of sizes: {_plan(letters)}", "possible")
    if unknown is not None:
        raise _joined(*unknown)
    bare = _bare(key, end, digits)
    if bare is None:
        return None
    size, stop, special = bare
    if joint or not letters:
        return _Found(size, at, stop, (), "", special)
    chain = _prefix_chain(letters)
    if chain is None or not _suits(chain, size):
        raise _joined(letters, size.basic)
    return _Found(size, start, stop, chain, "", special)


def _joined(letters: str, basic: str) -> _Refused:
    return _Refused(f"“{letters}” joined to {basic} is not known there: it may make it another part", "possible")


def _suits(chain: tuple[str, ...], size: _Size) -> bool:
    """Whether signs in front of a number are signs of its type."""
    return all(not (types := _prefixes()[sign]["types"]) or size.type in types.split("|") for sign in chain)


def _prefix_chain(letters: str) -> tuple[str, ...] | None:
    """Known signs that a run of letters in front of a number is made of, longest first; None where it is not."""
    if not letters:
        return ()
    for length in (3, 2, 1):
        if letters[:length] in _prefixes() and (rest := _prefix_chain(letters[length:])) is not None:
            return (letters[:length], *rest)
    return None


def _plan(letters: str) -> str:
    return {
        "R": "inch numbers are taken from the table alone",
        "MR": "the digits are D and d, but the width is taken from the table alone",
    }.get(letters, "D and B cannot be worked out from a number")


def _lettered(key: str, end: int, letters: str, digits: str) -> tuple[_Size, int] | None:
    """Row and end of a basic number that begins with letters."""
    sizes = _sizes()
    if letters == "R" and (more := _INCH.match(key, end)) and (size := sizes.get("R" + digits + more[0])):
        return size, more.end()
    if key[end : end + 1] == "X" and (size := sizes.get(letters + digits + "X")):
        return size, end + 1
    size = sizes.get(letters + digits)
    return None if size is None else (size, end)


def _bare(key: str, end: int, digits: str) -> tuple[_Size, int, float | None] | None:
    """Row, end and special bore of a basic number of digits alone; raises where it is one that gives no size."""
    sizes = _sizes()
    plain = sizes.get(digits)
    if slash := _SLASH.match(key, end):
        number, behind = slash[1].replace(",", "."), key[slash.end() : slash.end() + 1]
        size = sizes.get(f"{digits}/{number}")
        if number == "2" and behind in ("Z", "R"):
            if plain is not None and size is not None:
                raise _Refused(
                    f"{digits}/2{behind} can be {digits} with 2{behind}…, or {digits}/2 with {behind}…: write a blank "
                    f"where the number ends",
                    "possible",
                )
            if plain is not None:
                return plain, end, None
        if size is not None:
            return size, slash.end(), None
        if plain is not None and not (behind.isascii() and behind.isalpha()):
            return _special_bore(plain, number, slash.end())
        if plain is None and len(digits) in (2, 3) and digits.startswith("6"):
            raise _Refused(f"{digits}/{number} is not in the table of sizes: D and B cannot be worked out", "possible")
    if plain is None and key[end : end + 1] == "X":
        plain, end = sizes.get(digits + "X"), end + 1
    elif key[end : end + 1] == "X" and digits + "X" in sizes:
        plain, end = sizes[digits + "X"], end + 1
    if plain is not None:
        if decimals := _DECIMALS.match(key, end):
            if decimals[1].strip("0"):
                raise _Refused(f"{digits}{decimals[0]} is a number with decimals, no designation")
            end = decimals.end()  # a number that a worksheet wrote with decimals
        return plain, end, None
    if len(digits) >= 3 and (why := _refusal_of(digits)):
        raise _Refused(f"{digits} is {why}", "no")
    return None


def _special_bore(plain: _Size, number: str, end: int) -> tuple[_Size, int, float | None]:
    """A bore in mm behind the number (``6202/15.875``); a whole number there follows no rule."""
    bore = float(number)
    if "." in number and plain.bore * 0.5 < bore < (plain.bore + plain.outside) / 2:
        return plain, end, bore
    raise _Refused(f"“/{number}” behind {plain.basic} follows no rule: a special bore is written in mm with decimals")


@cache
def _series() -> frozenset[str]:
    """Series of the numbers that end in a bore code of two digits."""
    return frozenset(basic[:-2] for basic in _sizes() if basic.isdigit() and len(basic) > 3)


def _missing(digits: str) -> str:
    """Why a number of digits gives no size."""
    stem, code = digits[:-2], digits[-2:]
    if stem in _series():
        bore = {"00": 10, "01": 12, "02": 15, "03": 17}.get(code, int(code) * 5)
        return (
            f"{digits} is not in the table of sizes: bore code {code} of series {stem} would be {bore} mm, and D and B "
            f"cannot be worked out from a number"
        )
    return f"{digits} is no basic number of the table of sizes"


def _letter_for_digit(key: str) -> str | None:
    """A hint where letters in place of digits would give a number."""
    for word in _CHUNK.findall(key):
        for written in (word[:length] for length in (5, 4, 3) if word[:1].isdigit()):
            digits = "".join(_LETTER_FOR_DIGIT.get(sign, sign) for sign in written)
            if digits != written and digits in _sizes():
                return f"“{written}” holds a letter where a digit belongs; {digits} may be meant, but is not written"
    return None


class _Signs:
    """The signs around one basic number, gathered into a designation."""

    def __init__(self, found: _Found, key: str, sizes: tuple[float, ...]) -> None:
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
        for sign in (*_CHUNK.findall(text), *self.found.prefixes):
            row = _prefixes().get(sign)
            if row is not None and (not row["types"] or self.type in row["types"].split("|")):
                reads = tuple(
                    (part.partition("=")[0], part.partition("=")[2]) for part in row["reads"].split("|") if part
                )
                self._state(sign, reads, row["source"])
                self.prefixes.append(sign)
                if row["says"]:
                    self.reported.append((sign, f"{row['says']} ({row['source']})"))
            elif not _is_word(sign):
                self.reported.append((sign, "stands in front of the number and is no part of it that is known"))

    def _behind(self, text: str) -> None:
        """Signs behind the number, chunk by chunk."""
        chunks = _merged(_CHUNK.findall(text))
        if chunks and chunks[0].isdigit() and text[:1] in "-/ ":
            if chunks[0] in _sizes():
                raise self._two(chunks[0])
            raise _Refused(
                f"“{chunks[0]}” behind {self.found.size.basic} follows no rule: it can be a bore in sixteenths of an "
                f"inch or a number of another kind",
                "possible",
            )
        for number, chunk in enumerate(chunks):
            self._chunk(chunk, number == 0)

    def _two(self, other: str) -> _Refused:
        return _Refused(
            f"two numbers are written, {self.found.size.basic} and {other}: one cell states one bearing", "possible"
        )

    def _chunk(self, chunk: str, first: bool) -> None:
        rows = self._split(chunk, first)
        tail = ""
        if rows is None:
            for fill in _FILLED.finditer(chunk):
                if (part := self._split(chunk[: fill.end()], first)) is not None:
                    rows, tail = part, chunk[fill.end() :]
        if rows is None:
            run = re.match(r"(?:N|NU|NJ|NUP|NF|MR|R)?[0-9]{3,5}", chunk)
            if run is not None and run[0] in _sizes():
                raise self._two(run[0])
            if not _is_word(chunk):
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

    def _split(self, chunk: str, first: bool) -> list[_Sign] | None:
        """The signs that a chunk is made of, as few as can be, long ones first; None where a part of it is no sign."""
        known: dict[tuple[int, str], list[_Sign] | None] = {}

        def rest(at: int, before: str) -> list[_Sign] | None:
            if at == len(chunk):
                return []
            if (at, before) not in known:
                best: list[_Sign] | None = None
                for end in range(min(len(chunk), at + _LONGEST_SIGN), at, -1):
                    row = self._row(chunk[at:end], before, first and at == 0)
                    tail = None if row is None else rest(end, row.group)
                    if row is not None and tail is not None and (best is None or len(tail) + 1 < len(best)):
                        best = [row, *tail]
                known[at, before] = best
            return known[at, before]

        return rest(0, "") if len(chunk) <= _LONGEST_CHUNK else None

    def _row(self, sign: str, before: str, first: bool) -> _Sign | None:
        """The row of a sign at its place: behind a sign of the group ``before``, or at the start of a chunk."""
        rows = [row for row in _signs().get(sign, ()) if self._fits(row, before, first)]
        if not rows:
            return None
        if self.type == _ANGULAR and self.groups & {"arrangement", "set", "universal"}:
            rows.sort(key=lambda row: row.group != "preload")
        return rows[0]

    def _fits(self, row: _Sign, before: str, first: bool) -> bool:
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
        if self.type == _ANGULAR and "clearance_class" in self.stated:
            why = "axial clearance of the pair, no radial group (NSK-GC p. A 55, example 2)"
            if "arrangement" not in self.groups:
                why = "ISO 5753-1 has no radial group for angular contact bearings (from memory of ISO 5753-1:2009)"
            self.reported.extend((sign, why) for sign in self.stated.pop("clearance_class"))
        if "bore" in self.groups:
            raise _Refused(f"{size.basic}: {'; '.join(self.asked)}", "possible")
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
                self.asked.append(f"{' and '.join(values)} contradict each other: neither is read")
        if self.type != _ANGULAR:
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
        if self.type != _ROLLER and "closure" not in self.groups and "ring_width" in derived:
            yield "closure", Derived("open", NO_SIGN_BEHIND.format("open"))
        if "tolerance" not in self.groups:
            yield "tolerance_class", Derived("Normal", NO_SIGN_BEHIND.format("class Normal"))
        if self.type != _ANGULAR and "clearance" not in self.groups and "clearance_class" not in self.stated:
            yield "clearance_class", Derived("CN", NO_SIGN_BEHIND.format("clearance CN"))

    def _strength(self) -> Strength:
        return "certain" if self.strong or self.found.letters in ("NU", "NJ", "NUP", "MR") else "possible"


def _merged(chunks: list[str]) -> list[str]:
    """Chunks, with a sign that was written in two parts (``2 RS``, ``C 3``, ``ABEC 5``) made one."""
    signs = _signs()
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
