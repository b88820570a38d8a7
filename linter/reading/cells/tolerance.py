"""Toleranced sizes as tables spell them: class, deviations, limits, or the nominal alone.

Forms from common practice and, from memory, ISO 129-1, ISO 286-1, ISO 14405-1 and ASME Y14.5. The text is cut into
signs once from left to right and then read in order; no part of it is looked at twice, so time grows with length only.
"""

import re

from attrs import evolve, frozen

from linter.reading.cells.numbers import Decimal, Number, read_number
from linter.reading.cells.signs import LONGEST_TEXT, ReadError, fold, missing_state, shown
from linter.reading.cells.tolerance_signs import EXPECTED, WIDEST_LIMITS, Item, Kind, Trouble, cut_items, strip_prefix
from linter.reading.cells.units import conversion, known_unit

#: Deviations beyond these parts of the nominal are more likely in another unit: whole numbers, and with decimals.
WIDEST_WHOLE_DEVIATION, WIDEST_DEVIATION = 0.05, 0.25
#: Smaller deviations than this are never doubted: nobody states fifths of a micrometre.
LEAST_DOUBTED = 0.2
#: A unit behind the deviations that is this much smaller than the unit of the table belongs to the deviations alone
#: (µm beside mm, thou beside inch).
SMALL_UNIT = 1 / 500


@frozen
class Size:
    """A size as read.

    Attributes
    ----------
    nominal : float or None
        Nominal size, in ``unit``; None where only a tolerance or only limits are stated.
    lower, upper : float or None
        Deviations from the nominal in ``unit``; with ``limits`` the limits of size themselves. None where not stated.
    limits : bool
        True where limits of size are stated without a nominal.
    tolerance_class : str
        ISO 286 class as stated (``k5``), the pair of a fit (``H7/g6``), or empty.
    unit : str
        Unit text of all numbers above; empty where none is stated.
    reversed : bool
        True where two deviations stand in the order lower, upper. ``lower`` and ``upper`` are sorted nevertheless.
    kind : str
        What a prefix says: ``diameter`` for Ø, ``radius`` for R, and so on; empty without a prefix.
    count : int
        Number of features from a prefix such as ``2x``; 1 without one.
    decimals : int
        Decimals of the nominal (or of the limits) as written.
    notes : tuple of str
        ``reference``, ``basic``, ``general tolerance``, ``envelope``, ``one-sided`` (only one deviation or limit
        stated), ``settled`` (the decimal mark of the file, or other numbers of the text, settled an
        ambiguous number).
    """

    nominal: float | None = None
    lower: float | None = None
    upper: float | None = None
    limits: bool = False
    tolerance_class: str = ""
    unit: str = ""
    reversed: bool = False
    kind: Kind = ""
    count: int = 1
    decimals: int = 0
    notes: tuple[str, ...] = ()

    def about(self, nominal: float) -> "Size":
        """Limits of size turned into deviations from a nominal that is known from elsewhere (same unit)."""
        if not self.limits:
            return self
        digits = 12
        return evolve(
            self,
            nominal=nominal,
            lower=None if self.lower is None else round(self.lower - nominal, digits),
            upper=None if self.upper is None else round(self.upper - nominal, digits),
            limits=False,
        )


_DATE = re.compile(
    r"(?:\d{4}[-/.]\d{1,2}[-/.]\d{1,2}|\d{1,2}([-/.])\d{1,2}\1\d{4})(?:[ T]\d{1,2}:\d{2}(?::\d{2})?(?:\.\d+)?)?"
)
_THREAD = re.compile(
    r"(?:M|G|UNC|UNF|Tr) ?\d+(?:[.,]\d+)?(?: ?x ?\d+(?:[.,]\d+)?)?(?:[ -]+\d[A-Ha-h]{1,2})?|\d[GHgh]|[123][AB]"
)
_GENERAL = re.compile(
    r"(?:(?:DIN |EN ){0,2}ISO ?(?:2768|22081)(?:[- ]{0,3}[0-9a-zA-Z]{1,4}){0,3}"
    r"|DIN ?7168[ -]?[a-z]{0,6}"
    r"|JIS ?B ?0405[ -]?[a-z]{0,3}|GB/T ?1804[ -]?[a-z]{0,3}"
    r"|untoleranced|general(?: tolerance)?|Allgemeintoleranz|Freimaß"
    r"|[fmcv][HKL]?|未注公差|普通公差)"
)
_GENERAL_TAIL = re.compile(r"(.*[\d.,)])[ ,;(]+(" + _GENERAL.pattern + r")\)?")
_SPACED = re.compile(r"([1-9]\d{0,2})((?: \d{3})+)(?![\d])")


def _to_unit(value: float, source: str, target: str, raw: str) -> float:
    """A value of one unit text in another."""
    if source == target:
        return value
    factor = conversion(source, target)
    if factor is None:
        raise Trouble("wrong-unit", raw, f"the units {source} and {target} in “{shown(raw)}” do not belong together")
    return float(f"{value * factor:.12g}")


def _classes(found: list[str], raw: str) -> str:
    if len(found) <= 1:
        return found[0] if found else ""
    if len(found) == 2 and found[0][0].isupper() != found[1][0].isupper():
        return "/".join(found)
    raise Trouble("not-a-size", raw, f"“{shown(raw)}” states more than one tolerance class")


def _split_units(items: list[Item], stated: str, raw: str, nominal_wanted: bool) -> tuple[list[Item], str, str]:
    """Items without units, the unit of the nominal and that of the deviations."""
    units = [(index, item.text) for index, item in enumerate(items) if item.sort == "unit"]
    numbers = [item for item in items if item.sort in ("plain", "signed", "pm")]
    rest = [item for item in items if item.sort != "unit"]
    if not units:
        return rest, stated, stated
    texts = list(dict.fromkeys(text for _, text in units))
    for text in texts:
        if stated and conversion(text, stated) is None:
            raise Trouble(
                "wrong-unit", raw, f"the unit {text} in “{shown(raw)}” does not measure what {stated} measures"
            )
    if "m" in texts and stated and conversion("m", stated) != 1:
        raise Trouble(
            "ambiguous-unit", raw, f"the m in “{shown(raw)}” can be metre or the general tolerance m",
            f"a size in {stated}",
        )  # fmt: skip
    first_number_index = next((i for i, item in enumerate(items) if item.sort in ("plain", "signed", "pm")), len(items))
    behind_first = len(items) > first_number_index + 1 and items[first_number_index + 1].sort == "unit"
    deviations = [item for item in numbers[1:] if item.sort != "plain"] if nominal_wanted else []
    if numbers and numbers[0].sort == "signed" and len(numbers) == 2 and numbers[1].sort == "signed":
        deviations = []
    if not deviations:
        if len(texts) > 1:
            raise Trouble("wrong-unit", raw, f"“{shown(raw)}” states more than one unit ({', '.join(texts)})")
        return rest, texts[0], texts[0]
    if behind_first:
        return rest, units[0][1], texts[-1]
    if len(texts) > 1:
        raise Trouble("wrong-unit", raw, f"“{shown(raw)}” states more than one unit ({', '.join(texts)})")
    unit = texts[0]
    # A unit behind the deviations only: 7.5 +12/+4 µm means 7.5 mm where the table's unit is mm.
    if stated and (conversion(unit, stated) or 1) < SMALL_UNIT:
        return rest, stated, unit
    if not stated and any(abs(item.value) > WIDEST_DEVIATION * abs(numbers[0].value) for item in deviations):
        raise Trouble(
            "ambiguous-unit", raw, f"in “{shown(raw)}” the unit {unit} cannot be that of the size, which has none",
            "the unit of the size behind the size, and that of the deviations behind them",
        )  # fmt: skip
    return rest, unit, unit


def _with_words(items: list[Item], raw: str) -> Size:
    """Limits named by words: ``max 7.500 min 7.495`` or ``7.500 max / 7.495 min``."""
    words_first = next(item.sort for item in items if item.sort in ("max", "min", "plain")) != "plain"
    found: dict[str, Item] = {}
    waiting: Item | None = None
    for item in items:
        if item.sort in ("sep", "bracket", "note"):
            continue
        if item.sort not in ("max", "min", "plain"):
            raise Trouble("not-a-size", raw, f"“{shown(raw)}” mixes limits in words with another tolerance")
        is_word = item.sort != "plain"
        if waiting is None and is_word == words_first:
            waiting = item
            continue
        if waiting is None or is_word == words_first:
            raise Trouble("not-a-size", raw, f"“{shown(raw)}” does not give one number to each limit")
        word, number = (waiting, item) if words_first else (item, waiting)
        if word.sort in found:
            raise Trouble("not-a-size", raw, f"“{shown(raw)}” states the same limit twice")
        found[word.sort] = number
        waiting = None
    if waiting is not None:
        raise Trouble("not-a-size", raw, f"“{shown(raw)}” does not give one number to each limit")
    low, high = found.get("min"), found.get("max")
    if low and high and low.value > high.value:
        raise Trouble("reversed-limits", raw, f"the smallest size is larger than the largest in “{shown(raw)}”")
    return Size(
        lower=low.value if low else None,
        upper=high.value if high else None,
        limits=True,
        decimals=max(item.decimals for item in found.values()),
        notes=() if low and high else ("one-sided",),
    )


def _pair_of_limits(first: Item, second: Item, raw: str, ranges: bool) -> tuple[float, float]:
    low, high = sorted((first.value, second.value))
    if not ranges and high - low > WIDEST_LIMITS * abs(high):
        raise Trouble(
            "range-of-sizes",
            raw,
            f"“{shown(raw)}” looks like a range of sizes or a date rather than two limits of one size",
        )
    return low, high


def _deviations(items: list[Item], raw: str) -> tuple[float | None, float | None, bool]:
    """Lower and upper deviation from signed numbers, and whether they stand in reversed order."""
    if len(items) == 1 and items[0].sort == "pm":
        return -items[0].value, items[0].value, False
    if any(item.sort == "pm" for item in items) or len(items) > 2:
        raise Trouble("not-a-size", raw, f"“{shown(raw)}” has more numbers than a size with one tolerance")
    if any(item.sort == "plain" and item.value != 0 for item in items):
        raise Trouble(
            "unsigned-deviations", raw, f"the deviations in “{shown(raw)}” have no sign",
            "deviations with their signs, such as +0.012/+0.004"
        )  # fmt: skip
    if len(items) == 1:
        value = items[0].value
        if items[0].text.startswith("-") or value < 0:
            return value, None, False
        return None, value, False
    upper, lower = items[0].value, items[1].value
    return min(upper, lower), max(upper, lower), lower > upper


def _size(items: list[Item], raw: str, unit: str, ranges: bool, nominal_wanted: bool) -> Size:
    """A size from its items."""
    all_items = items
    items, unit, deviation_unit = _split_units(items, unit, raw, nominal_wanted)
    notes = tuple(dict.fromkeys(item.text for item in items if item.sort == "note"))
    if any(item.sort in ("max", "min") for item in items):
        size = _with_words([item for item in items if item.sort != "class"], raw)
        classes = _classes([item.text for item in items if item.sort == "class"], raw)
        return evolve(size, unit=unit, tolerance_class=classes, notes=(*size.notes, *notes))
    if items and "sep" in (items[0].sort, items[-1].sort):
        raise Trouble("not-a-size", raw, f"something is missing beside a sign in “{shown(raw)}”")
    if conversion(unit or "mm", "mm") and any(item.settled and item.decimals == 0 for item in items):
        # no length is written with grouped thousands here: a 1,234 among points is rather a slip of three decades
        raise Trouble(
            "ambiguous-number", raw, f"“{shown(raw)}” has another decimal mark than the file, or grouped thousands",
            "a length with the decimal mark of the file",
        )  # fmt: skip
    brackets = "".join(item.text for item in items if item.sort == "bracket")
    wrapped = len(items) >= 3 and items[0].sort == items[-1].sort == "bracket" and brackets in ("()", "[]")
    if brackets not in ("", "()", "[]", "()()", "{}"):
        raise Trouble("not-a-size", raw, f"the brackets in “{shown(raw)}” do not match")
    tolerance_class = _classes([item.text for item in items if item.sort == "class"], raw)
    numbers = [item for item in items if item.sort in ("plain", "signed", "pm")]
    if wrapped and len(numbers) == 1 and not tolerance_class and numbers[0].sort == "plain":
        notes = (*notes, "reference" if brackets == "()" else "basic")
    settled = ("settled",) if any(item.settled for item in numbers) else ()
    base = Size(tolerance_class=tolerance_class, unit=unit, notes=(*notes, *settled))
    if not numbers:
        if not tolerance_class:
            raise Trouble("not-a-size", raw, f"“{shown(raw)}” is not a size")
        return base
    first, others = numbers[0], [item.sort for item in numbers[1:]]
    has_nominal = nominal_wanted and (
        (first.sort == "plain" and not (first.value == 0 and others == ["signed"]))
        or (first.sort == "signed" and (others == ["pm"] or len(others) == 2))
    )
    if not has_nominal:
        lower, upper, turned = _deviations(numbers, raw)
        one_sided = ("one-sided",) if lower is None or upper is None else ()
        return evolve(
            base, lower=lower, upper=upper, reversed=turned, unit=deviation_unit, notes=(*base.notes, *one_sided)
        )
    nominal, rest = numbers[0], numbers[1:]
    if not nominal.value and tolerance_class:
        raise Trouble("not-a-size", raw, f"“{shown(raw)}” gives a tolerance class to a size of zero")
    base = evolve(base, decimals=nominal.decimals)
    if not rest:
        return evolve(base, nominal=nominal.value)
    if len(rest) > 1 and rest[0].sort == "plain" and rest[0].value and items[items.index(nominal) + 1].sort == "sep":
        raise Trouble("not-a-size", raw, f"“{shown(raw)}” does not begin with the nominal size")
    if all(item.sort == "plain" for item in rest):
        if len(rest) == 1 and rest[0].value != 0 and any(item.sort == "sep" for item in items):
            low, high = _pair_of_limits(nominal, rest[0], raw, ranges)
            return evolve(base, lower=low, upper=high, limits=True, decimals=max(nominal.decimals, rest[0].decimals))
        if len(rest) == 2 and all(
            abs(item.value - nominal.value) <= WIDEST_LIMITS * abs(nominal.value) for item in rest
        ):
            low, high = _pair_of_limits(rest[0], rest[1], raw, ranges)
            return evolve(base, lower=low, upper=high, limits=True).about(nominal.value)
    lower, upper, turned = _deviations(rest, raw)
    widest = max(abs(value) for value in (lower, upper) if value is not None)
    part = WIDEST_DEVIATION if any(item.decimals for item in rest) else WIDEST_WHOLE_DEVIATION
    if lower is not None:
        lower = _to_unit(lower, deviation_unit, unit, raw) if deviation_unit != unit else lower
    if upper is not None:
        upper = _to_unit(upper, deviation_unit, unit, raw) if deviation_unit != unit else upper
    stated_behind = any(item.sort == "unit" for item in all_items)
    if not stated_behind and not ranges and nominal.value and widest > max(LEAST_DOUBTED, part * abs(nominal.value)):
        raise Trouble(
            "unlikely-deviations", raw,
            f"the deviations in “{shown(raw)}” are too large for the size; they may be in another unit",
            "deviations in the unit of the size, or with their own unit behind them",
        )  # fmt: skip
    one_sided = ("one-sided",) if lower is None or upper is None else ()
    return evolve(
        base, nominal=nominal.value, lower=lower, upper=upper, reversed=turned, notes=(*base.notes, *one_sided)
    )


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
    if _THREAD.fullmatch(folded):
        return ReadError(
            "thread", text, EXPECTED, f"“{shown(text)}” is a thread or the class of one, not a size of a seat"
        )
    body, kind, count = strip_prefix(folded) if nominal_wanted else (folded, "", 1)
    if match := _SPACED.match(body):
        body = match[1] + match[2].replace(" ", "'") + body[match.end() :]
    try:
        items, _ = cut_items(body, text, decimal, ranges)
        if fraction := _fraction(body, items, unit, text):
            size: Size = fraction
        else:
            size = _size(items, text, unit, ranges, nominal_wanted)
    except Trouble as trouble:
        return trouble.error
    return evolve(size, kind=kind, count=count, notes=(*size.notes, *general))


_FRACTIONS = re.compile(r"([\d ½¼¾⅛⅜⅝⅞-]*\d/\d+|\d* ?[½¼¾⅛⅜⅝⅞]) ?(.*)")


def _fraction(body: str, items: list[Item], unit: str, raw: str) -> Size | None:
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
        raise Trouble(
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
        number = read_number(text, decimal)
        if isinstance(number, Number):
            if half_width:
                return Size(lower=-number.value, upper=number.value, unit=unit or "", decimals=number.decimals)
            return ReadError(
                "half-or-full-band", text, "±0.2, or two deviations with signs",
                f"“{shown(text)}” can be half the tolerance band or the whole of it",
            )  # fmt: skip
    return size
