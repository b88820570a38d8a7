"""What a name of a table means, and what its words say together."""

import re

from attrs import evolve, frozen

from linter.model.vocabulary import parameter
from linter.reading.cells.units import Unit
from linter.reading.words.boundary import names_dimensions
from linter.reading.words.cuts import aspect_cuts, sign_behind, station_at_end
from linter.reading.words.dictionary import Version
from linter.reading.words.limits import IS_LARGEST, IS_SMALLEST
from linter.reading.words.mapping import Aspect
from linter.reading.words.parts import is_bearing, is_pair_of_fits, named_by_parts

#: Why a name is not read of which nothing says more: none that is known, or its cells or neighbours leave it open.
OPEN = "the name is not recognised"
#: What a unit says of a name that leaves it out (``Ambient (°C)``, ``Rated rpm``).
_NOUNS = {"temperature": "temperature", "rotational speed": "speed", "force": "load", "mass": "mass"}
TEMPERATURE_LETTER = re.compile(r"(.*[^ _])(?:[ _]|(?<=[a-z]))([CFK])")
UNIT_OF_LETTER = {"C": "degC", "F": "degF", "K": "K"}

#: Letters that are the symbol of a kind of parameter, by the ends of their names.
_SYMBOLS: dict[str, str | tuple[str, ...]] = {
    "R": ("_radius", "_chamfer"), "r": ("_radius", "_chamfer"), "D": "_diameter", "F": ("_force", "_load"),
    "L": "bearing_span", "M": "_mass", "T": "_temperature",
}  # fmt: skip


def is_letter_of(letter: str, name: str) -> bool:
    """Whether a letter beside a parameter is the symbol of its kind (``R`` of a radius) and no station."""
    return name.endswith(_SYMBOLS.get(letter, "-"))


@frozen
class Match:
    """What a name of a table means.

    Attributes
    ----------
    parameter : str
        Parameter of the vocabulary.
    station : str or None
        Station that the name itself states, as a station of the table (``bore_diameter [A]``).
    unit : str or None
        Unit text that the name carries (``Bore [mm]``) or that the mapping states.
    aspect : {"value", "upper", "lower", "max", "min", "class", "unit", "dimensions", "fits"}
        What of the parameter it is: the value, a deviation, a limit of size, the tolerance (class or deviations), the
        unit, bore, outside diameter and width of the bearing in one, or the classes of shaft and housing in one.
    feature : str or None
        The other half of ``NAME@FEATURE`` or ``NAMESPACE:name`` where it is not a station that is known.
    mapped : bool
        True where the name mapping says so.
    version : {"", "newer", "older"}
        Which of several statements the name says it is (``(new)``, ``old``, ``proposed``).
    """

    parameter: str
    station: str | None = None
    unit: str | None = None
    aspect: Aspect = "value"
    feature: str | None = None
    mapped: bool = False
    version: Version = ""

    def letter_behind(self, name: str) -> str | None:
        """The letter of a position behind a name of shaft or housing (``Welle Rauheit Ra B``), no symbol there."""
        of_part = self.parameter.startswith(("shaft_", "housing_")) and "_width" not in self.parameter
        return "B" if of_part and name[-2:] in (" B", "_B") and name[-3:-2].isalpha() else None


def aspect_of(match: Match, aspect: Aspect, text: str) -> Match | None:
    """What a name with a word for an aspect beside it means, or None where its parameter has no such aspect."""
    if aspect == "class" and (whole := named_by_parts(text)) and whole.parameter != match.parameter:
        return Match(whole.parameter, aspect=whole.aspect)  # Classe gioco radiale
    if aspect in ("value", "unit") or parameter(match.parameter).kind == "toleranced":
        return evolve(match, aspect=aspect)
    return match if match.parameter.endswith({"max": IS_LARGEST, "min": IS_SMALLEST}.get(aspect, ())) else None


def of_machine_with_letter(match: Match, text: str) -> Match | None:
    """A temperature with the letter of a unit behind it; of a bearing without a station that may be its station."""
    of_machine = parameter(match.parameter).level == "machine"
    letter = TEMPERATURE_LETTER.fullmatch(text) if of_machine or match.station else None
    return evolve(match, unit=UNIT_OF_LETTER[letter[2]]) if letter else None


def is_letter_of_unit(letter: str, name: str) -> bool:
    """Whether a letter may be the unit of a parameter as well as a station (``T_SHAFT_C``, ``REGREASE_H``)."""
    return letter in {"degC": ("C", "F", "K"), "h": ("H", "h")}.get(parameter(name).unit, ())


def is_letter_alone(match: Match, station: str | None) -> bool:
    """Whether the letter behind the name of a bearing's temperature may be its station, which nothing else names."""
    return bool(match.unit) and not station and parameter(match.parameter).level == "station"


def with_letter_of_unit(match: Match, text: str) -> Match | None:
    """A parameter with the letter of its unit behind it; a temperature of a bearing may have its station there."""
    return evolve(match, unit="h") if parameter(match.parameter).unit == "h" else of_machine_with_letter(match, text)


def with_noun(name: str, unit: Unit | None) -> list[tuple[str, None]]:
    """A name with the noun that its unit says, where it says one."""
    noun = _NOUNS.get(unit.dimension) if unit is not None else None
    return [(f"{name} {noun}", None)] if noun else []


def placed(match: Match, station: str | None, feature: str) -> Match:
    """A name with the station or the feature that a piece of it says; R of a radius and D of a diameter are symbols."""
    station = station or station_at_end(feature)
    if is_letter_of(station or "", match.parameter):
        return match  # few machines reach a station D or R
    if station and station == parameter(match.parameter).unit and not match.unit:
        return evolve(match, unit=station)  # Precarico N
    return evolve(match, station=station) if station else evolve(match, feature=feature or None)


def together(text: str) -> Match | None:
    """A name of several values in one cell: the dimensions of a bearing, or the fits of both its seats."""
    if names_dimensions(text):
        return Match("bore_diameter", aspect="dimensions")
    return Match("shaft_seat_diameter", aspect="fits") if is_pair_of_fits(text) else None


def named(text: str) -> Match | None:
    """What the words of the trade in a name say, alone or beside a part of the tolerance or the letter of a unit."""
    letter = TEMPERATURE_LETTER.fullmatch(text)
    if letter and (of_rest := named_by_parts(letter[1])) and parameter(of_rest.parameter).unit == "degC":
        return Match(of_rest.parameter, unit=UNIT_OF_LETTER[letter[2]])
    if (signed := sign_behind(text)) and (of_rest := named_by_parts(signed[0])):
        toleranced = parameter(of_rest.parameter).kind == "toleranced"
        return Match(of_rest.parameter, aspect=signed[1]) if toleranced else None
    if (whole := named_by_parts(text)) is not None:
        return Match(whole.parameter, aspect=whole.aspect)
    for rest, aspect in aspect_cuts(text):
        of_rest = named_by_parts(rest)
        if of_rest is not None and of_rest.aspect == "value" and parameter(of_rest.parameter).kind == "toleranced":
            return Match(of_rest.parameter, aspect=aspect)
    return None


def letter_of_bearing(text: str) -> str:
    """The letter beside a word for a bearing alone, which is its symbol (``Lager d``, ``B roulement``); or empty."""
    both = (text.rpartition(" ")[::2], text.partition(" ")[::-2])
    return next((letter for piece, letter in both if len(letter) == 1 and is_bearing(piece)), "")
