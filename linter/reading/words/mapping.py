"""A name mapping: a TOML file that says what the words of a company's tables mean.

The format is described in docs/name-mapping.md and in ``schemas/name-mapping.schema.json``.
"""

import json
import re
from functools import cache
from pathlib import Path
from typing import Any, Literal

from attrs import field, frozen

from linter.model.packaged import data_folder
from linter.model.vocabulary import parameter, vocabulary
from linter.reading.cells.signs import ReadError, fold, shown
from linter.reading.cells.units import LONGEST_TEXT, factor_to, read_unit

Aspect = Literal["value", "upper", "lower", "max", "min", "class", "unit", "dimensions", "fits"]

LONGEST_PATTERN = 200
MOST_REPEATS = 3


class MappingError(ValueError):
    """A name mapping that cannot be used; the text names the file, the key, what stands there and what is expected."""


@frozen
class Mapped:
    """What a mapping says about one name; ``parameter`` is empty where the name is to be left out."""

    parameter: str
    station: str | None = None
    unit: str | None = None
    aspect: Aspect = "value"


@frozen
class Pattern:
    """A pattern for whole names."""

    match: re.Pattern[str]
    parameter: str
    station: str | int | None = None
    unit: str | None = None
    aspect: Aspect = "value"


@frozen
class Mapping:
    """The content of a name mapping.

    Attributes
    ----------
    names : dict of str to Mapped
        By folded name; matched with case.
    patterns : tuple of Pattern
        Tried in order on names that ``names`` lacks.
    stations : dict of str to str
        Folded word of the table to station.
    units : dict of str to str
        Folded unit text of the table to a unit text we know.
    choices : dict of str to dict of str to str
        Parameter to text of the table to word of the vocabulary.
    decimal : {".", ","} or None
        Declared decimal mark.
    encoding : str or None
        Declared encoding of text tables.
    default_unit : str or None
        Unit of lengths where a table states none.
    half_width : bool
        True where a tolerance without sign is half the band.
    """

    names: dict[str, Mapped] = field(factory=dict)
    patterns: tuple[Pattern, ...] = ()
    stations: dict[str, str] = field(factory=dict)
    units: dict[str, str] = field(factory=dict)
    choices: dict[str, dict[str, str]] = field(factory=dict)
    decimal: Literal[".", ","] | None = None
    encoding: str | None = None
    default_unit: str | None = None
    half_width: bool = False

    def find(self, folded: str) -> Mapped | None:
        """What the mapping says about a folded name, or None."""
        if folded in self.names:
            return self.names[folded]
        if len(folded) > LONGEST_TEXT:
            return None
        for pattern in self.patterns:
            if match := pattern.match.fullmatch(folded):
                station = None if pattern.station is None else match[pattern.station]
                if station is not None:
                    station = self.stations.get(station, station)
                return Mapped(pattern.parameter, station, pattern.unit, pattern.aspect)
        return None

    def unit(self, text: str) -> str:
        """A unit text as the mapping translates it, else unchanged."""
        return self.units.get(fold(text), text) if self.units else text


@cache
def _schema() -> Any:
    from jsonschema import Draft202012Validator

    path = data_folder("schemas") / "name-mapping.schema.json"
    return Draft202012Validator(json.loads(path.read_text(encoding="utf-8")))


def load_mapping(path: Path) -> Mapping:
    """Read and check a name mapping.

    Raises
    ------
    MappingError
        Names the file and the key.
    """
    try:
        text = path.read_bytes()
    except OSError as error:
        raise MappingError(f"{path}: the name mapping cannot be opened ({error.strerror})") from None
    if len(text) > 1_000_000:
        raise MappingError(f"{path}: the name mapping has {len(text)} bytes; 1 000 000 are read at most")
    import tomllib  # not every review has a mapping

    try:
        data = tomllib.loads(text.decode("utf-8-sig"))
    except UnicodeDecodeError:
        raise MappingError(f"{path}: the name mapping is not UTF-8 text") from None
    except (tomllib.TOMLDecodeError, RecursionError) as error:
        raise MappingError(f"{path}: not TOML: {error}") from None
    return parse_mapping(data, str(path))


def parse_mapping(data: dict[str, Any], file: str) -> Mapping:
    """A mapping from the content of its file; ``file`` is named in errors.

    Raises
    ------
    MappingError
        Names the file and the key.
    """
    errors = sorted(_schema().iter_errors(data), key=lambda error: (list(map(str, error.path)), error.message))
    if errors:
        key = ".".join(map(str, errors[0].path)) or "top level"
        raise MappingError(f"{file}: {key}: {shown(errors[0].message, 200)}")
    names: dict[str, Mapped] = {}
    for word, entry in data.get("names", {}).items():
        entry = {"parameter": entry} if isinstance(entry, str) else entry
        key = fold(word)
        if key in names:
            raise MappingError(f"{file}: names.{shown(word)}: the same name stands there twice after folding")
        names[key] = Mapped(
            _parameter(entry["parameter"], file, f"names.{shown(word)}"),
            entry.get("station"),
            _unit(entry.get("unit"), entry["parameter"], file, f"names.{shown(word)}"),
            entry.get("aspect", "value"),
        )
    file_part = data.get("file", {})
    units = {fold(their): ours for their, ours in data.get("units", {}).items()}
    for their, ours in units.items():
        if isinstance(read_unit(ours), ReadError):
            raise MappingError(f"{file}: units.{shown(their)}: {shown(ours)} is not a unit that is known")
    check_file(file_part, file)
    return Mapping(
        names=names,
        patterns=tuple(_pattern(entry, index, file) for index, entry in enumerate(data.get("patterns", []))),
        stations={fold(their): ours for their, ours in data.get("stations", {}).items()},
        units=units,
        choices=_choices(data.get("choices", {}), file),
        decimal=file_part.get("decimal"),
        encoding=file_part.get("encoding"),
        default_unit=file_part.get("default_unit"),
        half_width=file_part.get("half_width", False),
    )


def check_file(said: dict[str, Any], file: str) -> dict[str, Any]:
    """What is said of whole files (``default_unit``, ``encoding``), checked and given back; ``file`` says where.

    Raises
    ------
    MappingError
        Names the key.
    """
    unit, encoding = said.get("default_unit"), said.get("encoding")
    if unit is not None and isinstance(factor_to("mm", unit), ReadError):
        raise MappingError(f"{file}: file.default_unit: {shown(unit)} is not a unit of length")
    if encoding is not None:
        try:
            "".encode(encoding)
        except (LookupError, UnicodeError):
            raise MappingError(f"{file}: file.encoding: {shown(encoding)} is not an encoding that is known") from None
    return said


def _parameter(name: str, file: str, key: str) -> str:
    if name and name not in vocabulary():
        raise MappingError(f"{file}: {key}: {shown(name)} is not a parameter of the vocabulary")
    return name


def _unit(text: str | None, name: str, file: str, key: str) -> str | None:
    if text is None:
        return None
    wanted = parameter(name).unit if name else ""
    if not wanted:
        raise MappingError(f"{file}: {key}: a unit is stated, and {name or 'a name left out'} has none")
    if isinstance(factor_to(wanted, text), ReadError):
        raise MappingError(f"{file}: {key}: {shown(text)} is not a unit that {name} ({wanted}) can be stated in")
    return text


def _pattern(entry: dict[str, Any], index: int, file: str) -> Pattern:
    key = f"patterns.{index}"
    text = entry["match"]
    if trouble := pattern_trouble(text):
        raise MappingError(f"{file}: {key}.match: {trouble}")
    try:
        compiled = re.compile(text)
    except (re.error, RecursionError, OverflowError) as error:
        raise MappingError(f"{file}: {key}.match: {shown(text)} is not a regular expression ({error})") from None
    name = _parameter(entry["parameter"], file, key)
    station = entry.get("station")
    if station is not None:
        known = (isinstance(station, int) and 1 <= station <= compiled.groups) or station in compiled.groupindex
        if not known:
            raise MappingError(f"{file}: {key}.station: the pattern has no group {station}")
    return Pattern(compiled, name, station, _unit(entry.get("unit"), name, file, key), entry.get("aspect", "value"))


def pattern_trouble(text: str) -> str:
    """Why a pattern is refused, or nothing.

    A pattern may take long on a hostile name if a repeat stands on a group that repeats, or if many open repeats follow
    each other. So no group may be repeated, nothing may refer back, and open repeats are few.
    """
    if len(text) > LONGEST_PATTERN:
        return f"the pattern has {len(text)} signs; {LONGEST_PATTERN} are allowed"
    repeats = 0
    in_set = False
    previous = ""
    position = 0
    while position < len(text):
        sign = text[position]
        if sign == "\\":
            following = text[position + 1 : position + 2]
            if following.isdigit() and following != "0" and not in_set:
                return "a pattern may not refer back to a group"
            previous, position = "escaped", position + 2
            continue
        if in_set:
            in_set = sign != "]"
            previous = "set"
        elif sign == "[":
            in_set = True
            if text[position + 1 : position + 2] == "^":
                position += 1
            if text[position + 1 : position + 2] == "]":
                position += 1
        elif text.startswith("(?P=", position):
            return "a pattern may not refer back to a group"
        elif sign in "*+{":
            if previous == ")":
                return "a group in a pattern may not be repeated"
            repeats += 1
            previous = sign
        else:
            previous = sign
        position += 1
    if repeats > MOST_REPEATS:
        return f"the pattern repeats {repeats} times; {MOST_REPEATS} repeats are allowed"
    return ""


def _choices(data: dict[str, dict[str, str]], file: str) -> dict[str, dict[str, str]]:
    for name, words in data.items():
        if name not in vocabulary() or parameter(name).kind != "choice":
            raise MappingError(f"{file}: choices.{shown(name)}: not a choice parameter of the vocabulary")
        for their, ours in words.items():
            if ours not in parameter(name).choices:
                allowed = ", ".join(parameter(name).choices)
                raise MappingError(
                    f"{file}: choices.{name}.{shown(their)}: {shown(ours)} is not one of the words {allowed}"
                )
    return data
