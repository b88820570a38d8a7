"""The words of a table to our parameters: built-in headings of eight languages, and a name mapping on top.

A word is matched exactly after folding look-alike signs, with its case; only a word of a language may then match with
its case put aside, never a symbol (``d`` and ``D`` are two diameters). Nothing is matched by likeness.
"""

import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

from attrs import evolve, field, frozen

from linter.model.vocabulary import parameter, vocabulary
from linter.reading.cells.choices import choice_listed, lists_choices_of
from linter.reading.cells.han import simplified
from linter.reading.cells.requirements import characteristic_of, parameter_of
from linter.reading.cells.signs import fold, shown
from linter.reading.cells.units import LONGEST_TEXT, known_unit
from linter.reading.words import cuts, eastern
from linter.reading.words.cuts import (
    BRACKET,
    LETTER_STATION,
    STATION_PREFIX,
    aspect_cuts,
    holds_a_capital,
    is_article,
    joint_cuts,
    plain_name,
    spelled_out,
    station_cuts,
    temperature_spelled_out,
    unit_behind,
    unit_moved_behind,
    unit_trouble,
    version_cuts,
    with_blanks,
    without_article,
)
from linter.reading.words.dictionary import GROUPS, JOINT, MOST_REMEMBERED, dictionary, group_key, word_key
from linter.reading.words.limits import limit_of_size
from linter.reading.words.mapping import Mapping, load_mapping
from linter.reading.words.match import (
    TEMPERATURE_LETTER,
    Match,
    aspect_of,
    is_letter_alone,
    is_letter_of_unit,
    letter_of_bearing,
    named,
    of_machine_with_letter,
    placed,
    together,
    with_letter_of_unit,
    with_noun,
)
from linter.reading.words.parts import concepts_said, is_bearing, part_of_size, tells_feature
from linter.reading.words.places import place_said
from linter.reading.words.turning import speed_of_what_turns

_SYMBOL_BEHIND = re.compile(r"(?P<name>.*[^ ,=])[ ,=]+(?P<symbol>[^ ,=]{1,6})")
_SYMBOL_BEFORE = re.compile(r"(?P<symbol>[^ ,=]{1,6})[ ,=]+(?P<name>[^ ,=].*)")
#: A small letter counts behind a word for a bearing or its place only (``brg_a_shaft_dia``).
_SMALL_LETTER = re.compile(r"[a-h]")
#: A symbol of two letters and a capital, which no part of it can be (``Fr B``, ``FaA``); no letter of a unit.
_SYMBOL_AND_CAPITAL = re.compile(r"[A-Za-z][a-z][ _.]?[A-EGHIJL-MO-QS-Z]")


@frozen
class Names:
    """The names that are understood: the built-in headings, and a mapping on top of them.

    Attributes
    ----------
    mapping : Mapping
        What the name mapping states; empty for the built-in names alone.
    """

    mapping: Mapping = field(factory=Mapping)
    _found: dict[str, "Match | str"] = field(factory=dict, init=False, eq=False, repr=False)
    _grouped: dict[str, tuple[str, ...]] = field(factory=dict, init=False, eq=False, repr=False)

    @staticmethod
    @cache
    def built_in() -> "Names":
        """The built-in names alone; one object, so that what a word means is found once for all tables."""
        return Names()

    @classmethod
    def load(cls, path: str | Path) -> "Names":
        """The built-in names with a name mapping (TOML) on top.

        Raises
        ------
        MappingError
            If the file cannot be read as a name mapping; names the file and the key.
        """
        return cls(load_mapping(Path(path)))

    def find(self, text: str) -> Match | None:
        """What a name means, or None; :meth:`why` says why not."""
        found = self._look(text)
        return found if isinstance(found, Match) else None

    def why(self, text: str) -> str:
        """Why a name is not understood, as half a sentence; empty where it is."""
        found = self._look(text)
        return found if isinstance(found, str) else ""

    def group(self, text: str) -> str | None:
        """The group of heading words a text belongs to (``NAME``, ``VALUE``, ``UNIT``, ...), or None.

        A unit behind the word is put aside (``Value [mm]``). A word of several groups gives the first of ``GROUPS``.
        """
        groups = self.groups(text)
        return groups[0] if groups else None

    def groups(self, text: str) -> tuple[str, ...]:
        """Every group a heading word belongs to, in the order of ``GROUPS``."""
        if text not in self._grouped:
            if len(self._grouped) >= MOST_REMEMBERED:
                self._grouped.clear()
            self._grouped[text] = self._groups_of(text) if len(text) <= LONGEST_TEXT else ()
        return self._grouped[text]

    def _groups_of(self, text: str) -> tuple[str, ...]:
        headings, bare = dictionary(), self.split_unit(text)[0]
        for word in dict.fromkeys((fold(text), fold(bare))):
            found = headings.groups.get(word) or headings.group_words.get(group_key(word), ())
            if found:
                return tuple(sorted(found, key=GROUPS.index))
        if plain := simplified(text):
            return self.groups(plain)
        if "±" in bare and bare.strip("± ()[]"):
            return tuple(group for group in self.groups(bare.replace("±", " ")) if group == "CLASS")  # ± tol
        return tuple(filter(None, (part_of_size(bare) or limit_of_size(bare),)))

    def station(self, text: str) -> str | None:
        """The station a piece of a name states: one of the mapping, a capital letter, a number, or a usual word."""
        mapped = self.mapping.stations.get(fold(text))
        if mapped is not None:
            return mapped
        piece = fold(text)
        shorter = STATION_PREFIX.sub("", piece).removeprefix("#")
        if LETTER_STATION.fullmatch(shorter) or (shorter != piece and _SMALL_LETTER.fullmatch(shorter)):
            return shorter.lstrip("0")
        known = word_key(piece) in dictionary().stations and piece not in cuts.ARTICLES
        return text.strip() if known or eastern.is_position(piece) else place_said(text) or None

    def split_unit(self, text: str) -> tuple[str, str]:
        """A heading and its unit; units that the mapping translates count in brackets."""
        if (bracket := BRACKET.fullmatch(text)) and fold(bracket[2]) in self.mapping.units:
            return bracket[1], self.mapping.unit(bracket[2])
        return unit_behind(text)

    def _look(self, text: str) -> Match | str:
        if len(self._found) >= MOST_REMEMBERED:
            self._found.clear()
        return self._found.get(text) or self._found.setdefault(text, self._understand(text))

    def _understand(self, text: str) -> Match | str:
        if len(text) > LONGEST_TEXT:
            return f"a name of {len(text)} signs is longer than the {LONGEST_TEXT} that are read"
        folded = plain_name(fold(text))
        if not folded:
            return "nothing stands there"
        mapped = self.mapping.find(folded)
        if mapped is not None:
            if not mapped.parameter:
                return "the name mapping says to leave it out"
            meant = Match(mapped.parameter, mapped.station, None, mapped.aspect, mapped=True)
            unit = mapped.unit or self.split_unit(folded)[1]
            return evolve(meant, unit=unit) if unit and not unit_trouble(meant.parameter, unit) else meant
        reasons: list[str] = []
        match = self._peel(folded, frozenset(), reasons)
        if match is None or match.feature or (match.parameter, match.station) == ("machine", "M"):
            match = self._by_parts(folded) or match  # M rotor: its mass
        elif match.station and tells_feature(match.station) and not match.mapped:
            plain = named(self.split_unit(folded)[0])  # ``oscilación frontal``: a word of the feature, of no station
            if plain is not None:
                match = evolve(match, parameter=plain.parameter, aspect=plain.aspect, station=None)
        if match is None and (moved := unit_moved_behind(folded)):
            return self._look(moved)
        if (match := match or self._in_other_spelling(folded)) is None:
            return reasons[0] if reasons else "no parameter has this name"
        if match.feature and (other := self._also_names(match, folded)):
            return f"it can mean {other} or {match.parameter}"
        return match

    def _in_other_spelling(self, text: str) -> Match | None:
        """A name as other firms write it: with blanks, in other characters, with a symbol or a place glued to it."""
        plain = simplified(text, sure=False)
        others = (with_blanks(text), plain, eastern.shorter_kana(text), speed_of_what_turns(text))
        for other in filter(None, others):
            if match := self.find(other):
                at = plain.find(match.station or " ") if other == plain else -1
                return evolve(match, station=text[at : at + len(match.station or "")]) if at >= 0 else match
        if match := self._with_symbol(text) or self._behind_position(text):
            return match
        bracket = BRACKET.fullmatch(text)  # 使用条件(連続/間欠)
        listed = choice_listed(text) or (choice_listed(bracket[2]) if bracket else "")
        of_parts = listed == "rotating_ring" and "rotating" not in concepts_said(text)  # Cylindricity (shaft/housing)
        return Match(listed) if listed and not of_parts else None  # 固定/自由

    def _also_names(self, match: Match, text: str) -> str:
        """Another parameter that a name of a text lists before a stroke (``Drawing no./Rev``); or empty."""
        listed = "/" in text and parameter(match.parameter).kind == "text" and match.feature
        other = self._whole(listed, []) if listed else None
        return other.parameter if other is not None and other.parameter != match.parameter else ""

    def _with_symbol(self, text: str) -> Match | None:
        """A Chinese or Japanese name with the symbol of its parameter right behind or before it (``宽度B(mm)``)."""
        core, unit = self.split_unit(text)
        for name, symbol in eastern.names_and_symbols(core):
            if unit and is_bearing(name) and (dimension := self._whole(symbol, [])):
                return None if unit_trouble(dimension.parameter, unit) else evolve(dimension, unit=unit)  # 轴承d(mm)
            match = self.find(f"{name} [{unit}]" if unit else name)
            if match is not None and match.aspect == "value" and eastern.is_symbol(symbol, match.parameter):
                return match
        return None

    def _behind_position(self, text: str) -> Match | None:
        """A Chinese or Japanese name with the place of the bearing right before it (``前轴承内径``)."""
        for station, name in eastern.positions_before(text):
            match = self.find(name)
            if match is not None and not match.station and match.parameter != "station":
                return evolve(match, station=station) if parameter(match.parameter).level == "station" else None
        return None

    def _by_parts(self, text: str) -> Match | None:
        """A name that no list holds, from the words of the trade in it; its unit, station and aspect are taken off."""
        core, unit = self.split_unit(text)
        if unit == "min":  # no duration is stated in minutes: Hsg bore dia (min)
            core, unit = f"{core} min", ""
        stated = known_unit(unit) if unit else None
        if stated and stated.dimension == "rotational speed" and word_key(core) in dictionary().speeds:
            return Match("speed_max", unit=unit)  # a table's only word for a speed, with the unit that shows it
        core = temperature_spelled_out(core, unit)
        if unit and (letter := letter_of_bearing(core)) and (match := self._whole(letter, [])):
            return None if unit_trouble(match.parameter, unit) else evolve(match, unit=unit)
        for rest, station in (*self._ways(core), *with_noun(core, stated)):
            if match := together(rest) or named(rest):
                return self._around(match, core, station, unit)
        return None

    def _around(self, match: Match, core: str, station: str | None, unit: str) -> Match | None:
        """What the words of a name mean with the station and the unit beside them, or None where these do not fit."""
        if station and is_letter_of_unit(station, match.parameter):
            return None if unit else with_letter_of_unit(match, core)
        if is_letter_alone(match, station) or (unit and (match.unit or unit_trouble(match.parameter, unit))):
            return None
        station = self._place_or_symbol(station, match.parameter, core) if station else match.letter_behind(core)
        return None if station == "?" else evolve(placed(match, station, ""), unit=unit or match.unit or None)

    def _ways(self, core: str) -> list[tuple[str, str | None]]:
        """A name whole and without a station, that first which its signs speak for."""
        whole: list[tuple[str, str | None]] = [(core, None)]
        capital = holds_a_capital(core) or _SYMBOL_AND_CAPITAL.fullmatch(core)
        return [*self._stationed(core), *whole] if capital else [*whole, *self._stationed(core)]

    def _place_or_symbol(self, station: str, name: str, core: str) -> str | None:
        """A station beside a name, None where it is the symbol of its parameter, ``?`` where it may be either."""
        if eastern.is_small_symbol(station, name):
            return None  # 軸径 ds
        if len(station) == 1 and f" {station}" in core and self._is_symbol(station, name):
            return None if station == "D" else "?"
        return station

    def _stationed(self, text: str) -> Iterator[tuple[str, str]]:
        """Ways to cut a station off a name that is long enough to be one without it."""
        if bracket := BRACKET.fullmatch(text):
            if station := self.station(bracket[2]):
                yield bracket[1], station
            return
        for rest, piece, _ in station_cuts(text):
            symbol = len(rest) == 2 and named(rest) is not None  # Fr A
            if (len(rest) <= 3 and rest.isascii() and not symbol) or is_article(piece, text):
                continue
            if (station := self.station(piece)) and not self._is_part_of_size(text, piece):
                yield rest, station
                if len(piece) > 2 and STATION_PREFIX.match(fold(piece)):
                    yield f"bearing {rest}", station  # brg_a_designation

    def _is_part_of_size(self, text: str, piece: str) -> bool:
        """Whether a piece at the end of a name says a deviation together with the word before it (``Abmaß oben``)."""
        if len(piece) < 3 or not text.endswith(piece):
            return False
        before = [word for word in JOINT.split(text[: -len(piece)]) if word]
        return bool(before) and not {"UPPER", "LOWER"}.isdisjoint(self.groups(f"{before[-1]} {piece}"))

    def _whole(self, text: str, reasons: list[str]) -> Match | None:
        """A name with nothing around it."""
        headings = dictionary()
        mapped = self.mapping.find(text)
        if mapped is not None and mapped.parameter:
            return Match(mapped.parameter, mapped.station, mapped.unit, mapped.aspect, mapped=True)
        found = headings.exact.get(text, ())
        for key in () if found else spelled_out(word_key(text)):
            found = found or headings.words.get(key, ())
        if len(found) > 1:
            reasons.append(f"it can mean {' or '.join(found)}")
        return Match(found[0]) if len(found) == 1 else None

    def _peel(self, text: str, done: frozenset[str], reasons: list[str]) -> Match | None:
        """A name with a unit, an aspect or a station around it; each is taken off once."""
        if match := self._whole(text, reasons):
            return match
        if "unit" not in done:
            rest, unit = self.split_unit(text)
            if unit and (match := self._peel(rest, done | {"unit"}, reasons)):
                trouble = unit_trouble(match.parameter, unit)
                if not trouble:
                    return evolve(match, unit=unit)
                reasons.append(trouble)
        if "aspect" not in done:
            for rest, aspect in aspect_cuts(text):
                match = self._peel(rest, done | {"aspect"}, reasons)
                if match and (of_it := aspect_of(match, aspect, text)):
                    return of_it
                if match:
                    reasons.append(f"{match.parameter} carries no tolerance, and the name asks for its {aspect}")
        if "version" not in done:
            for rest, version in version_cuts(text):
                if match := self._peel(rest, done | {"version"}, reasons):
                    return evolve(match, version=version)
        if "characteristic" not in done and (match := self._of_feature(text, done | {"characteristic"})):
            return match
        if "unit" not in done and (letter := TEMPERATURE_LETTER.fullmatch(text)):
            match = self._peel(letter[1], done | {"unit"}, [])
            if match and parameter(match.parameter).unit == "degC":
                if of_machine := of_machine_with_letter(match, text):
                    return of_machine
                reasons.append(f"{letter[2]} behind {match.parameter} can be a station or a unit of temperature")
                return None
        if "station" not in done:
            return self._without_station(text, done | {"station"}, reasons)
        return None

    def _of_feature(self, text: str, done: frozenset[str]) -> Match | None:
        """A name of a seat or shoulder beside a word for what is limited of it (``Wellensitz A Rundlauf``)."""
        for start, end in joint_cuts(text, 3):
            for rest, word in ((text[:start], text[end:]), (text[end:], text[:start])):
                characteristic = characteristic_of(word.strip(" ,:"))
                rest = without_article(rest, text)
                inner = self._peel(rest.strip(" ,:"), done, []) if characteristic else None
                if inner is None or inner.aspect != "value":
                    continue
                name, _ = parameter_of(inner.parameter, characteristic)
                if name and not name.startswith("coaxiality_of") and inner.parameter.endswith("_diameter"):
                    return evolve(inner, parameter=name)
        return None

    def _is_symbol(self, text: str, name: str) -> bool:
        """Whether a piece beside the name of a parameter is only its symbol."""
        symbol = self._whole(text, [])
        own = vocabulary()[name].symbol.replace("_", "")
        if (symbol is not None and symbol.parameter == name) or (own != "" and text.replace("_", "") == own):
            return True
        return eastern.is_small_symbol(text, name) or (len(text) > 1 and eastern.is_symbol(text, name))

    def _symbol_in(self, piece: str, name: str) -> str:
        """The symbol of a parameter that a piece is, or that stands in it behind the word for a bearing, or nothing."""
        alone = len(piece) == 1 or (piece[-2] in " _" and is_bearing(piece[:-2]))
        return piece[-1] if alone and self._is_symbol(piece[-1], name) else ""

    def _without_station(self, text: str, done: frozenset[str], reasons: list[str]) -> Match | None:
        """A name with a station or a feature before or behind it."""
        if match := BRACKET.fullmatch(text):
            inner = self._peel(match[1], done, reasons)
            if inner:
                if "[" not in text and self._is_symbol(match[2].strip(), inner.parameter):
                    return inner
                if lists_choices_of(inner.parameter, match[2].strip()):
                    return inner
                station = self.station(match[2])
                if station and match[2].strip() not in {"N", "K"}:  # more likely a unit that does not fit
                    return evolve(inner, station=station)
                reasons.append(f"what ({shown(match[2])}) says beside {inner.parameter} is not known")
            return None
        for pattern in (_SYMBOL_BEHIND, _SYMBOL_BEFORE):
            match = pattern.fullmatch(text)
            inner = self._whole(match["name"], []) if match else None
            if match and inner and self._is_symbol(match["symbol"], inner.parameter):
                return inner
        for rest, piece, strict in station_cuts(text):
            station = None if is_article(piece, text) else self.station(piece)
            if not strict and (station is None or cuts.is_short(rest)):
                continue
            if (inner := self._peel(rest, done, reasons)) is None:
                continue
            if station is None and cuts.is_short(rest):
                reasons.append(f"{shown(rest)} of {shown(piece)} can be a dimension of any feature")
                continue
            if cuts.is_own_letter(piece, inner.parameter):
                return inner
            if station and f" {piece}" in text and (letter := self._symbol_in(piece, inner.parameter)):
                reasons.append(f"{letter} behind {inner.parameter} can be its symbol or a station")
                return None
            return placed(inner, station, piece)
        return None
