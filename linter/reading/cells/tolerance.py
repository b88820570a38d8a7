"""Toleranced sizes as tables spell them: class, deviations, limits, or the nominal alone.

Forms from common practice and, from memory, ISO 129-1, ISO 286-1, ISO 14405-1 and ASME Y14.5. The text is cut into
signs once from left to right and then read in order; no part of it is looked at twice, so time grows with length only.
"""

import re

from attrs import evolve

from linter.reading.cells.numbers import Decimal, Number, read_number
from linter.reading.cells.signs import LONGEST_TEXT, ReadError, fold, missing_state, shown
from linter.reading.cells.size import Size, size_of
from linter.reading.cells.size_items import EXPECTED, NotASize, cut_items, strip_prefix
from linter.reading.cells.units import conversion, known_unit, split_quantity

_DATE = re.compile(
    r"(?:\d{4}[-/.]\d{1,2}[-/.]\d{1,2}|\d{1,2}([-/.])\d{1,2}\1\d{4})(?:[ T]\d{1,2}:\d{2}(?::\d{2})?(?:\.\d+)?)?"
)
_THREAD = re.compile(
    r"(?:M|G|UNC|UNF|Tr) ?\d+(?:[.,]\d+)?(?: ?x ?\d+(?:[.,]\d+)?)?(?:[ -]+\d[A-Ha-h]{1,2})?|\d[GHgh]|[123][AB]"
)
#: Under a heading of tolerances a class of holes (ISO 286-1), which elsewhere may be the name of a thread.
_HOLE_CLASS = re.compile(r"[GM](?:[3-9]|1[0-2])")
_GENERAL = re.compile(
    r"(?:(?:DIN |EN ){0,2}ISO ?(?:2768|22081)(?:[- ]{0,3}[0-9a-zA-Z]{1,4}){0,3}"
    r"|DIN ?7168[ -]?[a-z]{0,6}"
    r"|JIS ?B ?0405[ -]?[a-z]{0,3}|GB/T ?1804[ -]?[a-z]{0,3}"
    r"|untoleranced|general(?: tolerance)?|Allgemeintoleranz|Freimaß"
    r"|[fmcv][HKL]?|未注公差|普通公差)"
)
_GENERAL_TAIL = re.compile(r"(.*[\d.,)])[ ,;(]+(" + _GENERAL.pattern + r")\)?")
#: Words for the class right before it (``10 mm, Toleranz h5``), common practice; P5 behind *class* is the bearing's.
_CLASS_WORDS = (
    "(?:iso[- ]?)?tolerance(?: class| zone)?|tol|(?:iso[- ]?)?class|fit|(?:iso-)?toleranz(?:klasse|feld)?|passung"
    "|tolérance|classe(?: de tolérance)?|ajustement|tolerancia|clase|ajuste|tolleranza|classe di tolleranza"
    "|accoppiamento|допуск|поле допуска|посадка|公差帯?|公差带|公差等級|公差域クラス|はめあい|配合"
)
_CLASS_WORD = re.compile(
    rf"(?<=[\dmм\"]),? *(?:{fold(_CLASS_WORDS)})\.?[ :]*(?=\(?(?!P[2456]\b)[A-Za-z]{{1,2}}\d{{1,2}}(?![\d.,]))",
    re.IGNORECASE,
)
_SPACED = re.compile(r"([1-9]\d{0,2})((?: \d{3})+)(?![\d])")


def _read(text: str, unit: str, decimal: Decimal | None, ranges: bool, nominal_wanted: bool) -> Size | ReadError:
    if len(text) > LONGEST_TEXT:
        return ReadError(
            "too-long", text, EXPECTED,
            f"the text has {len(text)} signs, more than the {LONGEST_TEXT} that are read as a value"
        )  # fmt: skip
    if state := missing_state(text):
        sentence = "nothing stands there" if state == "empty" else f"“{shown(text)}” says that the value is {state}"
        return ReadError(state.replace(" ", "-"), text, EXPECTED, sentence)
    folded = fold(text)
    if _DATE.fullmatch(folded):
        return ReadError(
            "date-text", text, EXPECTED, f"“{shown(text)}” is a date (sizes such as 3-8 turn into dates on typing)"
        )
    if _GENERAL.fullmatch(folded):
        return Size(unit=unit, notes=("general tolerance",))
    general: tuple[str, ...] = ()
    if (match := _GENERAL_TAIL.fullmatch(folded)) and not known_unit(match[2]):
        folded, general = match[1], ("general tolerance",)
    if _THREAD.fullmatch(folded) and (nominal_wanted or not _HOLE_CLASS.fullmatch(folded)):
        return ReadError(
            "thread", text, EXPECTED, f"“{shown(text)}” is a thread or the class of one, not a size of a seat"
        )
    folded = _CLASS_WORD.sub(" ", folded) if nominal_wanted else folded
    body, kind, count = strip_prefix(folded) if nominal_wanted else (folded, "", 1)
    if match := _SPACED.match(body):
        body = match[1] + match[2].replace(" ", "'") + body[match.end() :]
    try:
        items = cut_items(body, text, decimal, ranges)
        if fraction := _fraction(body, unit, text):
            size: Size = fraction
        else:
            size = size_of(items, text, unit, ranges, nominal_wanted)
    except NotASize as error:
        return error.error
    return evolve(size, kind=kind, count=count, notes=(*size.notes, *general))


_FRACTIONS = re.compile(r"([\d ½¼¾⅛⅜⅝⅞-]*\d/\d+|\d* ?[½¼¾⅛⅜⅝⅞]) ?(.*)")


def _fraction(body: str, unit: str, raw: str) -> Size | None:
    """A nominal written as a common fraction; only where inches are stated or the form leaves no other reading."""
    match = _FRACTIONS.fullmatch(body)
    if match is None:
        return None
    number = read_number(match[1])
    if not isinstance(number, Number):
        return None
    stated = match[2].strip() or unit
    if match[2].strip() and not known_unit(match[2]):
        return None
    inches = bool(stated) and conversion(stated, "in") == 1
    if not inches and re.fullmatch(r"\d+/\d+", match[1]):
        raise NotASize(
            "ambiguous-number", raw, f"“{shown(raw)}” can be a fraction, two limits or part of a designation",
            "a decimal number, or a fraction with the unit inch",
        )  # fmt: skip
    return Size(nominal=number.value, unit=stated)


def read_size(
    text: str, unit: str | None = None, decimal: Decimal | None = None, *, ranges: bool = False
) -> Size | ReadError:
    """A toleranced size in any usual form.

    Parameters
    ----------
    text : str
        Raw text, up to 200 signs.
    unit : str, optional
        Unit text stated outside the cell (column, heading, file). A unit in the text wins; a small unit behind the
        deviations only (``7.5 +12/+4 µm``) belongs to them alone.
    decimal : {".", ","}, optional
        Decimal mark of the file; where absent, the numbers in the text itself may settle it.
    ranges : bool
        True for parameters whose value may be a wide range (a clearance, a force): then ``5-20`` is a pair of limits.

    Returns
    -------
    Size or ReadError
        Codes of numbers and units, and ``not-a-size``, ``range-of-sizes``, ``reversed-limits``,
        ``unsigned-deviations``, ``unlikely-deviations``, ``ambiguous-unit``, ``thread``.
    """
    return _read(text, unit or "", decimal, ranges, True)


def read_deviation_pair(
    text: str, unit: str | None = None, decimal: Decimal | None = None, *, half_width: bool = False
) -> Size | ReadError:
    """The content of a tolerance column: ``+0.012/+0.004``, ``±0.2``, ``k5``, ``ISO 2768-mK``.

    Parameters
    ----------
    text, unit, decimal
        As for :func:`read_size`.
    half_width : bool
        True where the table declares that a number without sign is half the band (``0.2`` is ``±0.2``); otherwise such
        a number is an error, as half and full band are both in use.

    Returns
    -------
    Size or ReadError
        ``nominal`` is None.
    """
    size = _read(text, unit or "", decimal, False, False)
    if isinstance(size, ReadError) and size.code == "unsigned-deviations":
        alone, own = split_quantity(text)
        number = read_number(alone, decimal) if not own or known_unit(own) is not None else None
        if isinstance(number, Number):
            if half_width:
                return Size(lower=-number.value, upper=number.value, unit=own or unit or "", decimals=number.decimals)
            return ReadError(
                "half-or-full-band", text, "±0.2, or two deviations with signs",
                f"“{shown(text)}” can be half the tolerance band or the whole of it",
            )  # fmt: skip
    return size
