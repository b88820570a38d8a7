"""A toleranced size from the items of its text: nominal with deviations, limits, class."""

from attrs import evolve, frozen

from linter.mechanics.limits import deviations_or_nan
from linter.reading.cells.signs import shown
from linter.reading.cells.size_items import WIDEST_LIMITS, Item, Kind, NotASize
from linter.reading.cells.units import conversion

#: Printed tables round deviations to whole micrometres.
_ROUNDED = 0.51
_NUMBERS = ("plain", "signed", "pm")
#: Deviations beyond these parts of the nominal are more likely in another unit: whole numbers, and with decimals.
WIDEST_WHOLE_DEVIATION, WIDEST_DEVIATION = 0.05, 0.25
#: Smaller deviations than this are never doubted: nobody states fifths of a micrometre.
LEAST_DOUBTED = 0.2
#: A unit behind the deviations that is this much smaller than the unit of the table belongs to the deviations alone
#: (µm beside mm, thou beside inch).
SMALL_UNIT = 1 / 500


#: Tolerance classes of bearings (ISO 492), which are no zones of sizes that large: ``6000 P5`` is a bearing.
BEARING_CLASSES = ("P2", "P4", "P5", "P6")


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


def _to_unit(value: float, source: str, target: str, raw: str) -> float:
    """A value of one unit text in another."""
    if source == target:
        return value
    factor = conversion(source, target)
    if factor is None:
        raise NotASize("wrong-unit", raw, f"the units {source} and {target} in “{shown(raw)}” do not belong together")
    return float(f"{value * factor:.12g}")


def _classes(found: list[str], raw: str) -> str:
    if len(found) <= 1:
        return found[0] if found else ""
    if len(found) == 2 and found[0][0].isupper() != found[1][0].isupper():
        return "/".join(found)
    raise NotASize("not-a-size", raw, f"“{shown(raw)}” states more than one tolerance class")


@frozen
class _Measured:
    """Items without their units, the unit of the nominal, and that of the deviations."""

    items: list[Item]
    unit: str
    deviation_unit: str
    stated: bool = False


def _split_units(items: list[Item], stated: str, raw: str, nominal_wanted: bool) -> _Measured:
    """Take the units out of the items; ``stated`` is the unit of the table."""
    units = [(index, item.text) for index, item in enumerate(items) if item.sort == "unit"]
    rest = [item for item in items if item.sort != "unit"]
    if not units:
        return _Measured(rest, stated, stated)
    texts = list(dict.fromkeys(text for _, text in units))
    _check_units(texts, stated, raw)
    numbers = [item for item in items if item.sort in _NUMBERS]
    first = next((i for i, item in enumerate(items) if item.sort in _NUMBERS), len(items))
    behind_first = len(items) > first + 1 and items[first + 1].sort == "unit"
    deviations = _behind_nominal(numbers) if nominal_wanted else []
    if deviations and behind_first:
        return _Measured(rest, units[0][1], texts[-1], True)
    if len(texts) > 1:
        raise NotASize("wrong-unit", raw, f"“{shown(raw)}” states more than one unit ({', '.join(texts)})")
    unit = texts[0]
    if not deviations:
        return _Measured(rest, unit, unit, True)
    # A unit behind the deviations only: 7.5 +12/+4 µm means 7.5 mm where the table's unit is mm.
    if stated and (conversion(unit, stated) or 1) < SMALL_UNIT:
        return _Measured(rest, stated, unit, True)
    if not stated and any(abs(item.value) > WIDEST_DEVIATION * abs(numbers[0].value) for item in deviations):
        if conversion(unit, "um") == 1 and _class_settles(items, numbers, raw):
            return _Measured(rest, "mm", unit, True)
        raise NotASize(
            "ambiguous-unit", raw, f"in “{shown(raw)}” the unit {unit} cannot be that of the size, which has none",
            "the unit of the size behind the size, and that of the deviations behind them",
        )  # fmt: skip
    return _Measured(rest, unit, unit, True)


def _class_settles(items: list[Item], numbers: list[Item], raw: str) -> bool:
    """Whether micrometres are the deviations of the class in the text at its size in millimetres."""
    word = _classes([item.text for item in items if item.sort == "class"], raw)
    values = sorted(item.value for item in numbers[1:])
    return len(values) == 2 and are_of_class(word, numbers[0].value, values[0], values[1])


def _behind_nominal(numbers: list[Item]) -> list[Item]:
    """The deviations behind a nominal size; none where both numbers of a pair are deviations."""
    if [item.sort for item in numbers] == ["signed", "signed"]:
        return []
    return [item for item in numbers[1:] if item.sort != "plain"]


def _check_units(texts: list[str], stated: str, raw: str) -> None:
    for text in texts:
        if stated and conversion(text, stated) is None:
            raise NotASize(
                "wrong-unit", raw, f"the unit {text} in “{shown(raw)}” does not measure what {stated} measures"
            )
    if "m" in texts and stated and conversion("m", stated) != 1:
        raise NotASize(
            "ambiguous-unit", raw, f"the m in “{shown(raw)}” can be metre or the general tolerance m",
            f"a size in {stated}",
        )  # fmt: skip


def _with_words(items: list[Item], raw: str) -> Size:
    """Limits named by words: ``max 7.500 min 7.495`` or ``7.500 max / 7.495 min``."""
    words_first = next(item.sort for item in items if item.sort in ("max", "min", "plain")) != "plain"
    found: dict[str, Item] = {}
    waiting: Item | None = None
    for item in items:
        if item.sort in ("sep", "bracket", "note"):
            continue
        if item.sort not in ("max", "min", "plain"):
            raise NotASize("not-a-size", raw, f"“{shown(raw)}” mixes limits in words with another tolerance")
        is_word = item.sort != "plain"
        if waiting is None and is_word == words_first:
            waiting = item
            continue
        if waiting is None or is_word == words_first:
            raise NotASize("not-a-size", raw, f"“{shown(raw)}” does not give one number to each limit")
        word, number = (waiting, item) if words_first else (item, waiting)
        if word.sort in found:
            raise NotASize("not-a-size", raw, f"“{shown(raw)}” states the same limit twice")
        found[word.sort] = number
        waiting = None
    if waiting is not None:
        raise NotASize("not-a-size", raw, f"“{shown(raw)}” does not give one number to each limit")
    low, high = found.get("min"), found.get("max")
    if low and high and low.value > high.value:
        raise NotASize("reversed-limits", raw, f"the smallest size is larger than the largest in “{shown(raw)}”")
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
        raise NotASize(
            "range-of-sizes",
            raw,
            f"“{shown(raw)}” looks like a range of sizes or a date rather than two limits of one size",
        )
    return low, high


def _deviations(items: list[Item], raw: str) -> Size:
    """Deviations alone, from signed numbers."""
    if len(items) == 1 and items[0].sort == "pm":
        return Size(lower=-items[0].value, upper=items[0].value)
    if any(item.sort == "pm" for item in items) or len(items) > 2:
        raise NotASize("not-a-size", raw, f"“{shown(raw)}” has more numbers than a size with one tolerance")
    if any(item.sort == "plain" and item.value != 0 for item in items):
        raise NotASize(
            "unsigned-deviations", raw, f"the deviations in “{shown(raw)}” have no sign",
            "deviations with their signs, such as +0.012/+0.004"
        )  # fmt: skip
    if len(items) == 1:
        value = items[0].value
        if items[0].text.startswith("-") or value < 0:
            return Size(lower=value, notes=("one-sided",))
        return Size(upper=value, notes=("one-sided",))
    upper, lower = items[0].value, items[1].value
    return Size(lower=min(upper, lower), upper=max(upper, lower), reversed=lower > upper)


def size_of(items: list[Item], raw: str, unit: str, ranges: bool, nominal_wanted: bool) -> Size:
    """A size from its items.

    Parameters
    ----------
    items : list of Item
        From :func:`linter.reading.cells.size_items.cut_items`.
    raw : str
        The whole text, for messages.
    unit : str
        Unit of the table; empty where it states none.
    ranges : bool
        True where two numbers may be the ends of a wide range.
    nominal_wanted : bool
        False for the content of a tolerance column.

    Returns
    -------
    Size

    Raises
    ------
    NotASize
        With the error that the caller gets.
    """
    measured = _split_units(items, unit, raw, nominal_wanted)
    items = measured.items
    notes = tuple(dict.fromkeys(item.text for item in items if item.sort == "note"))
    tolerance_class = _classes([item.text for item in items if item.sort == "class"], raw)
    if any(item.sort in ("max", "min") for item in items):
        size = _with_words([item for item in items if item.sort != "class"], raw)
        return evolve(size, unit=measured.unit, tolerance_class=tolerance_class, notes=(*size.notes, *notes))
    _check_order(items, measured.unit, raw)
    numbers = [item for item in items if item.sort in _NUMBERS]
    if note := _frame(items, numbers, tolerance_class):
        notes = (*notes, note)
    if any(item.settled for item in numbers):
        notes = (*notes, "settled")
    base = Size(tolerance_class=tolerance_class, unit=measured.unit, notes=notes)
    if not numbers:
        if not tolerance_class:
            raise NotASize("not-a-size", raw, f"“{shown(raw)}” is not a size")
        return base
    if not (nominal_wanted and _has_nominal(numbers)):
        found = _deviations(numbers, raw)
        return evolve(
            base, lower=found.lower, upper=found.upper, reversed=found.reversed, unit=measured.deviation_unit,
            notes=(*notes, *found.notes),
        )  # fmt: skip
    nominal, rest = numbers[0], numbers[1:]
    _check_class(tolerance_class, nominal, rest, raw)
    base = evolve(base, decimals=nominal.decimals)
    if not rest:
        return evolve(base, nominal=nominal.value)
    if (limits := _as_limits(base, items, numbers, raw, ranges)) is not None:
        return limits
    return _with_deviations(base, numbers, measured, raw, ranges)


def _check_class(tolerance_class: str, nominal: Item, rest: list[Item], raw: str) -> None:
    """Classes that the size before them cannot have."""
    if not nominal.value and tolerance_class:
        raise NotASize("not-a-size", raw, f"“{shown(raw)}” gives a tolerance class to a size of zero")
    if tolerance_class in BEARING_CLASSES and nominal.value >= 600 and not nominal.decimals and not rest:
        raise NotASize("not-a-size", raw, f"“{shown(raw)}” is a bearing with its tolerance class, not a size")


def _check_order(items: list[Item], unit: str, raw: str) -> None:
    """Signs that lead nowhere, grouped thousands of a length, brackets without their other half."""
    if items and "sep" in (items[0].sort, items[-1].sort):
        raise NotASize("not-a-size", raw, f"something is missing beside a sign in “{shown(raw)}”")
    if conversion(unit or "mm", "mm") and any(item.settled and item.decimals == 0 for item in items):
        # no length is written with grouped thousands here: a 1,234 among points is rather a slip of three decades
        raise NotASize(
            "ambiguous-number", raw, f"“{shown(raw)}” has another decimal mark than the file, or grouped thousands",
            "a length with the decimal mark of the file",
        )  # fmt: skip
    if _brackets(items) not in ("", "()", "[]", "()()", "{}"):
        raise NotASize("not-a-size", raw, f"the brackets in “{shown(raw)}” do not match")


def _brackets(items: list[Item]) -> str:
    return "".join(item.text for item in items if item.sort == "bracket")


def _frame(items: list[Item], numbers: list[Item], tolerance_class: str) -> str:
    """What brackets around a lone number say of it: a reference or a basic dimension."""
    wrapped = len(items) >= 3 and items[0].sort == items[-1].sort == "bracket" and _brackets(items) in ("()", "[]")
    if not wrapped or tolerance_class or [item.sort for item in numbers] != ["plain"]:
        return ""
    return "reference" if _brackets(items) == "()" else "basic"


def _has_nominal(numbers: list[Item]) -> bool:
    """Whether the first number is a size: one without a sign, or a signed one with a tolerance behind it."""
    first, others = numbers[0], [item.sort for item in numbers[1:]]
    if first.sort == "plain":
        return not (first.value == 0 and others == ["signed"])
    return first.sort == "signed" and (others == ["pm"] or len(others) == 2)


def _as_limits(base: Size, items: list[Item], numbers: list[Item], raw: str, ranges: bool) -> Size | None:
    """Two limits of size, alone or behind the nominal; None where the numbers are no limits."""
    nominal, rest = numbers[0], numbers[1:]
    if len(rest) > 1 and rest[0].sort == "plain" and rest[0].value and items[items.index(nominal) + 1].sort == "sep":
        raise NotASize("not-a-size", raw, f"“{shown(raw)}” does not begin with the nominal size")
    if any(item.sort != "plain" for item in rest):
        return None
    if len(rest) == 1 and rest[0].value != 0 and any(item.sort == "sep" for item in items):
        low, high = _pair_of_limits(nominal, rest[0], raw, ranges)
        return evolve(base, lower=low, upper=high, limits=True, decimals=max(nominal.decimals, rest[0].decimals))
    near = all(abs(item.value - nominal.value) <= WIDEST_LIMITS * abs(nominal.value) for item in rest)
    if len(rest) == 2 and near:
        low, high = _pair_of_limits(rest[0], rest[1], raw, ranges)
        return evolve(base, lower=low, upper=high, limits=True).about(nominal.value)
    return None


def _with_deviations(base: Size, numbers: list[Item], measured: _Measured, raw: str, ranges: bool) -> Size:
    """A nominal size with its deviations."""
    nominal, rest = numbers[0], numbers[1:]
    found = _deviations(rest, raw)
    widest = max(abs(value) for value in (found.lower, found.upper) if value is not None)
    lower, upper = (
        None if value is None else _to_unit(value, measured.deviation_unit, measured.unit, raw)
        for value in (found.lower, found.upper)
    )
    decimals = any(item.decimals for item in rest)
    in_mm = conversion(measured.unit or "mm", "mm") or 1.0
    if not measured.stated and not ranges and too_wide(widest * in_mm, nominal.value * in_mm, decimals):
        if in_mm == 1.0 and are_of_class(base.tolerance_class, nominal.value, lower, upper):
            lower, upper = (None if value is None else round(value / 1000, 9) for value in (lower, upper))
            return evolve(base, nominal=nominal.value, lower=lower, upper=upper, reversed=found.reversed)
        raise NotASize(
            "unlikely-deviations", raw,
            f"the deviations in “{shown(raw)}” are too large for the size; they may be in another unit",
            "deviations in the unit of the size, or with their own unit behind them",
        )  # fmt: skip
    return evolve(
        base,
        nominal=nominal.value,
        lower=lower,
        upper=upper,
        reversed=found.reversed,
        notes=(*base.notes, *found.notes),
    )


def are_of_class(word: str, nominal: float, lower: float | None, upper: float | None) -> bool:
    """Whether two numbers are the deviations of a class at a nominal in mm, in micrometres as printed tables say."""
    if not word or lower is None or upper is None:
        return False
    low, high = deviations_or_nan(word, nominal)
    return bool(abs(low - lower) <= _ROUNDED and abs(high - upper) <= _ROUNDED)


def too_wide(widest: float, nominal: float, decimals: bool) -> bool:
    """Whether deviations are too large for a nominal to be in its unit, both in mm (or both in a unit of no length)."""
    part = WIDEST_DEVIATION if decimals else WIDEST_WHOLE_DEVIATION
    return nominal != 0 and widest > max(LEAST_DOUBTED, part * abs(nominal))
