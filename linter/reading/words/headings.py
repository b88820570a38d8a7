"""Words of a table to parameters: what a heading, a row label or a JSON key names, each looked up once."""

import re
from typing import Any

from attrs import define, evolve, field, frozen

from linter.model.vocabulary import Parameter, parameter
from linter.reading.cells.signs import fold, is_figure, missing_state
from linter.reading.words.bearing_words import names_bearing
from linter.reading.words.cuts import BRACKET, TWO_SCRIPTS
from linter.reading.words.dictionary import Version, word_key
from linter.reading.words.in_brackets import without_bearing
from linter.reading.words.joined_names import halves_of
from linter.reading.words.limits import without_limits
from linter.reading.words.match import OPEN, TEMPERATURE_LETTER, UNIT_OF_LETTER
from linter.reading.words.measured_words import FOUND_REASON, IN_NAMES, without, without_found
from linter.reading.words.names import Names
from linter.reading.words.pairs import PAIR, pair_said
from linter.reading.words.parts import concepts_said, is_bearing, part_alone
from linter.reading.words.positions_said import is_bearing_there, is_counted, station_with_more

#: Begins like a value and has no letters that only names have (a viscosity is headed ``40 °C粘度``, a speed
#: ``1st critical``).
_NUMBER_FIRST = re.compile(
    r"(?!1(?:st|\.)? ?(?:biege|bending )?[ck]rit)[+\-−±Ø⌀øφΦϕ∅Ф.,]?\s?[\d.,][^\u0400-\u1fff\u3040-\u9fff]*$"
)
_STROKE = re.compile(r"[/／]")
_ASPECTS = {"class": "tolerance"}
#: Words in the place of a station that say the whole machine.
_OF_THE_WHOLE = frozenset(
    word_key(word)
    for word in (
        "general", "general data", "common", "all", "allgemein", "allgemeine daten", "gesamt", "général", "générales",
        "données générales", "commun", "datos generales", "común", "dati generali", "generale", "comune", "общее",
        "общие данные", "共通", "全体", "一般", "通用", "总体", "基本数据", "general info", "global",
        "machine data", "overall", "maschine", "maschinendaten", "gesamtanlage", "données machine", "ensemble",
        "datos de la máquina", "dati macchina", "machine", "máquina", "macchina", "данные машины", "машина",
        "общие", "機械全体", "共通データ", "全般", "機械", "总体参数", "整机", "总体数据", "机器", "设备参数",
        "整机参数", "整机数据", "机器参数", "機械データ", "機械諸元", "machine parameters", "maschinenparameter",
        "paramètres machine", "paramètres généraux", "parámetros de la máquina", "parámetros generales",
        "parametri macchina", "parametri generali", "параметры машины", "общие параметры", "general parameters",
        "assembly", "whole assembly", "baugruppe", "zusammenbau", "gesamtbaugruppe", "conjunto", "complessivo",
        "assieme", "insieme", "сборка", "сборочная единица", "агрегат", "总成", "装配体", "整体", "組立", "組立品",
        "アセンブリ", "ユニット全体",
        "both", "both ends", "both sides", "both bearings", "both positions", "all positions", "all bearings", "beide",
        "beide seiten", "beide lager", "beide lagerstellen", "alle lagerstellen", "les deux", "les deux paliers",
        "deux côtés", "ambos", "ambos lados", "ambos apoyos", "entrambi", "entrambe", "entrambi i lati", "оба", "обе",
        "обе опоры", "обе стороны", "両方", "両側", "両端", "两端", "两侧", "双侧", "两端共用",
        "divers", "autres", "sonstiges", "misc", "miscellaneous", "other", "varie", "altro", "varios", "otros",
        "прочее", "другое", "その他", "其他", "其它",
        "alle", "tous", "toutes", "todos", "todas", "tutti", "tutte", "все", "すべて", "全て", "全部",
    )
)  # fmt: skip
#: A basic number of a bearing, with letters before and behind it.
_DESIGNATED = re.compile(r"(?:[A-Z]{1,4} ?)?\d{3,5}(?:[ /-]?[A-Z0-9]{1,6}){0,3}")
_PARTS_OF_SEATS = ("shaft_seat", "housing_seat", "shaft_shoulder", "housing_shoulder", "shaft_fillet", "housing_fillet")
_SIGN = r"[\u3040-\u30ff\u3400-\u9fff]"
_BEARING_AROUND = re.compile(rf"(.*{_SIGN})の?(?:軸受部?|轴承)|(?:軸受|ベアリング)({_SIGN}+)")  # 左側軸受, 軸受負荷側
#: Words that are part of a station's name.
_SIDES = frozenset(("lato", "côté", "lado", "seite", "side", "сторона"))
#: Where a word for a station may end before the station itself.
_AFTER_WORD = re.compile(r"\s*[:：=]\s*|[ _]+[–—-][ _]+|[ _]+")


def _of_part(part: str, name: str, rest: str) -> str:
    """What is left of a name behind the word for a part, without the other part if only sizes told that of it."""
    for other in ("shaft", "housing"):
        if rest.startswith(f"{other} ") and other not in concepts_said(name) and part_alone(part) not in ("", other):
            return rest.removeprefix(f"{other} ").removeprefix("seat ")
    return rest


@frozen
class Heading:
    """What one word names.

    Attributes
    ----------
    parameter : str
        Name in the vocabulary.
    station : str
        Station that the word itself names, or empty.
    unit : str
        Unit that stands with the word, or empty.
    aspect : str
        What the cells state: as in :class:`linter.reading.layouts.strips.Strip`, or ``unit`` for a column of units.
    own_unit : bool
        True where the word is the vocabulary's own name, so that its canonical unit is agreed.
    version : str
        Which of several statements the word says it is: ``newer``, ``older``, or empty.
    assumed : bool
        True where no word says of which part it is and what stands beside it tells.
    """

    parameter: str
    station: str = ""
    unit: str = ""
    aspect: str = "value"
    own_unit: bool = False
    version: Version = ""
    assumed: bool = field(default=False, eq=False)

    @property
    def entry(self) -> Parameter:
        """The parameter itself."""
        return parameter(self.parameter)

    def traits(self, label: str) -> dict[str, Any]:
        """Arguments of a strip."""
        return {
            "aspect": self.aspect, "unit": self.unit, "own_unit": self.own_unit, "label": label, "version": self.version
        }  # fmt: skip


@frozen
class Told:
    """A name of a table without the position that stands in it, that position, and whether sizes told its part.

    Where a comment beside the name tells what it means (``by_comment``), that is the rest.
    """

    rest: str
    station: str
    by_sizes: bool = False
    by_comment: bool = False


@frozen
class Deviation:
    """The name of the size that a name states a deviation of, and which one: ``upper`` or ``lower``.

    ``above`` says that the upper one lies above zero, as no ring has it.
    """

    size: str
    aspect: str
    above: bool = False


@define(eq=False)
class Words:
    """The name mapping with a memory of what was looked up, and what the names of a table show by themselves.

    That are the positions in them, and which of them state deviations of a size that another one names.
    """

    names: Names
    told: dict[str, Told] = field(factory=dict)
    deviations: dict[str, Deviation] = field(factory=dict)
    asked: dict[Any, Any] = field(factory=dict)
    _known: dict[str, Heading | None] = field(factory=dict)
    _groups: dict[str, str] = field(factory=dict)
    _stations: dict[str, str] = field(factory=dict)

    def heading(self, text: str) -> Heading | None:
        """What a word names, or None; a bearing in brackets is no part of it."""
        text = without_bearing(text.strip())
        if text not in self._known:
            own = self._of_position(text, self._find(text)) if 0 < len(text) <= 200 else None
            self._known[text] = self._deviation(text) or self._of_hole(text, own)
        return self._known[text]

    def _of_hole(self, text: str, own: Heading | None) -> Heading | None:
        """What a name means: a bore of which the table states a deviation above zero is that of the housing."""
        if own is None or own.parameter != "bore_diameter" or own.aspect != "value" or own.own_unit:
            return own
        above = any(said.size == text and said.above for said in self.deviations.values())
        return evolve(own, parameter="housing_seat_diameter") if above else own

    def _deviation(self, text: str) -> Heading | None:
        """What a name states that is a deviation's by the names of the table, or None."""
        if (said := self.deviations.get(text)) is None or (size := self.heading(said.size)) is None:
            return None
        return evolve(size, aspect=said.aspect, unit="") if size.entry.kind == "toleranced" else None

    def with_letter_of_unit(self, text: str) -> Heading | None:
        """What a name means whose last letter is its unit of temperature and no station (``temp_bearing_C``)."""
        letter = TEMPERATURE_LETTER.fullmatch(fold(text))
        found = self.heading(f"{letter[1]} [{UNIT_OF_LETTER[letter[2]]}]") if letter else None
        return found if found is not None and found.entry.unit == "degC" and not found.station else None

    def told_of(self, text: str) -> Told | None:
        """A name without the position that the names of the table show in it; a unit or a part may stand around it."""
        if not self.told:
            return None
        text = without_bearing(text)
        if (told := self.told.get(text)) is not None:
            return told
        core, bracket, unit = text.rpartition(" [")
        if bracket and (told := self.told.get(core)) is not None:
            return Told(f"{told.rest} [{unit}", told.station)
        for blank in (k for k, sign in enumerate(text) if sign == " "):
            if (told := self.told.get(text[blank + 1 :])) is not None and told.station:
                return Told(f"{text[:blank]} {_of_part(text[:blank], text[blank + 1 :], told.rest)}", told.station)
        return None

    def _of_position(self, text: str, own: Heading | None) -> Heading | None:
        """What a name means: by what is left of it without its position, where that says more than the whole name."""
        told = self.told_of(text)
        if told is not None and told.by_comment and (found := self.heading(told.rest)) is not None:
            return evolve(found, station=told.station)
        if told is None or (own is not None and (own.station == told.station or own.entry.level == "machine")):
            return own
        if names_bearing(told.rest):
            return Heading("bearing_designation", told.station)
        found = self.heading(told.rest)
        of_station = found is not None and found.entry.level == "station" and found.parameter != "station"
        if told.by_sizes and found is not None and found.entry.level == "machine":
            return found  # Shield material
        return own if found is None or found.station or not of_station else evolve(found, station=told.station)

    def group(self, text: str) -> str:
        """Kind of heading word (``NAME``, ``VALUE``, ``UNIT``, ``EXPR``, ...), or empty."""
        text = text.strip()
        if text not in self._groups:
            group = self.names.group(text) if 0 < len(text) <= 60 else None
            self._groups[text] = group or ""
        return self._groups[text]

    def groups(self, text: str) -> tuple[str, ...]:
        """Every kind of heading word that a text is."""
        text = text.strip()
        return self.names.groups(text) if 0 < len(text) <= 60 and not is_figure(text) else ()

    def unit_of(self, text: str) -> str:
        """The unit that a heading carries (``Upper dev. [µm]``, ``sup. µm``), or empty."""
        return self.names.split_unit(text.strip())[1]

    def mapped(self, text: str) -> bool:
        """Whether the name mapping itself names a text, be it a number or one sign."""
        mapping = self.names.mapping
        return bool(mapping.names or mapping.patterns) and mapping.find(fold(text)) is not None

    def of_whole(self, text: str) -> bool:
        """Whether a text in the place of a part or station says the whole machine (``General``)."""
        return word_key(text.strip(" :.-–—=*#()[]")) in _OF_THE_WHOLE

    def says_machine(self, text: str) -> bool:
        """Whether a text is a word for the machine or for all of it, and no name of one."""
        heading = self.heading(text)
        return self.of_whole(text) or (heading is not None and heading.parameter == "machine" and not heading.station)

    def station(self, text: str) -> str:
        """A station by its cell: as the mapping names it, else as it stands; none where a dash says so."""
        text = text.strip()
        if word_key(text) in _OF_THE_WHOLE:
            return ""
        stations = self.names.mapping.stations
        if stations and (mapped := stations.get(fold(text))):
            return mapped
        return "" if len(text) < 5 and missing_state(text) == "not applicable" else text

    def station_said(self, text: str) -> str:
        """The station that a text says, by itself or with a word for one before it (``Position NDE``); or empty.

        A word that says only bearing needs a word for a station behind it: what follows may be its number.
        """
        if text not in self._stations:
            self._stations[text] = self._station_of(text)
        return self._stations[text]

    def _station_of(self, text: str) -> str:
        if own := self.names.station(text):
            return own
        if (around := _BEARING_AROUND.fullmatch(text)) and (own := self.names.station(around.expand(r"\1\2"))):
            return own
        if own := station_with_more(text, self.names):
            return own
        for cut in _AFTER_WORD.finditer(text):
            head, rest = text[: cut.start()], text[cut.end() :].strip()
            heading = self.heading(head)
            if heading is None or heading.parameter != "station" or heading.station or not rest:
                continue
            if fold(head).casefold() in _SIDES and text[cut.start() : cut.end()] in (" ", "_"):
                return text  # "lato motore" is the name as it stands
            if is_bearing(head):
                if station := self.names.station(rest):
                    return station
                continue
            behind_colon = text[cut.start() : cut.end()].strip() in (":", "：") and len(rest) <= 40
            return rest if behind_colon or not self._names_value(rest) else ""
        if is_bearing_there(text, self.names) or is_counted(text, self.names):
            return text
        heading = self.heading(text) if " " in text and len(text) <= 40 else None
        return text if heading is not None and heading.parameter == "station" and heading.station else ""

    def _names_value(self, rest: str) -> bool:
        """Whether what stands behind a word for a place is a word for a value; a capital (``B``) is the place."""
        capital = rest.isupper() and self.names.station(rest) == rest
        return not capital and (bool(self.groups(rest)) or self.heading(rest) is not None)

    def why(self, text: str) -> str:
        """Why a word is not understood, as half a sentence."""
        measured = FOUND_REASON if self.of_design(text, "found") is not None else ""
        return measured or self.names.why(text.strip()) or OPEN

    def of_design(self, text: str, words: str = "designed") -> Heading | None:
        """What a name of a seat's size or form names without a word that says whose value it is."""
        core, unit = self.names.split_unit(text)
        rest = without_found(core) if words == "found" else without(core, IN_NAMES[words])
        found = self.heading(f"{rest} [{unit}]" if unit else rest) if rest else None
        return found if found and found.entry.level == "station" and found.entry.unit in ("mm", "um") else None

    def _in_two_scripts(self, text: str) -> Heading | None:
        """A name in two languages (``Место установки Location``): what one says, the other saying that or nothing."""
        core, unit = self.names.split_unit(text)
        if (halves := TWO_SCRIPTS.fullmatch(core)) is None:
            return None
        behind = f" [{unit}]" if unit else ""
        found = [self.heading(f"{half.strip()}{behind}") for half in halves.groups()]
        said = {heading for heading in found if heading is not None}
        return said.pop() if len(said) == 1 else None

    def _in_two_languages(self, text: str) -> Heading | None:
        """A name in two languages with a stroke between them (``Shaft seat / Wellensitz``) that both say the same."""
        core, unit = self.names.split_unit(text)
        halves = [half.strip() for half in core.split(" / ")]
        if len(halves) != 2 or not all(halves):
            return None
        one, two = (self.heading(f"{half} [{unit}]" if unit else half) for half in halves)
        return one if one is not None and one == two else None

    def _beside_bearing(self, text: str) -> Heading | None:
        """A name behind which stands in brackets its position again, or the bearing there (``Journal DE (6311)``)."""
        core, unit = self.names.split_unit(fold(text))
        if (bracket := BRACKET.fullmatch(core)) is None:
            return None
        told = self.heading(bracket[1]) if self.names.station(bracket[2]) else None
        if told is not None and told.station:
            return told  # Lagersitz A (laufradseitig)
        found = self.heading(bracket[1]) if _DESIGNATED.fullmatch(bracket[2].strip()) else None
        if found is None or not found.parameter.startswith(_PARTS_OF_SEATS):
            return None
        return evolve(found, unit=found.unit or unit)

    def _pair(self, text: str) -> Heading | None:
        """The heading of two values in one cell (``Ra shaft / bore``): of the first, the second in its aspect."""
        if not _STROKE.search(text) or self.names.mapping.find(fold(text)) is not None:
            return None
        core, unit = self.names.split_unit(text)
        part = part_alone(_STROKE.split(core, maxsplit=1)[0].strip())
        if part and (whole := self.names.find(text)) is not None and whole.parameter.startswith(part):
            return None  # Shaft / Seat diameter
        pair = pair_said(core, self.heading) if _STROKE.search(core) else None
        return Heading(pair[0], unit=unit, aspect=f"{PAIR}{pair[1]}") if pair is not None else None

    def _of_drawing(self, text: str) -> Heading | None:
        """The number of a drawing, where a name says that and its revision (``Drawing / Rev.``, ``図番・改訂``)."""
        halves = halves_of(text) if self.names.mapping.find(fold(text)) is None else []
        number = self.heading(halves[0]) if halves else None
        both = number is not None and number.parameter == "drawing_number" and self.says_revision(halves[1])
        return number if both else None

    def says_revision(self, text: str) -> bool:
        """Whether a word says the revision of a drawing; words that say it only beside one count (``Stand``)."""
        heading = self.heading(text) if text else None
        return heading == Heading("drawing_revision") or (heading is None and concepts_said(text) == {"revision"})

    def _find(self, text: str) -> Heading | None:
        if _NUMBER_FIRST.match(text) and self.names.mapping.find(fold(text)) is None:
            return None  # values are never looked up as names
        if pair := self._pair(text):
            return pair
        if (drawing := self._of_drawing(text)) is not None:
            return drawing
        match = self.names.find(text)
        if (match is None or not match.mapped) and self.of_design(text, "found") is not None:
            return None  # Wellensitz Ist
        if match is None and (rest := without_limits(text)) != text:
            match = self.names.find(rest)  # two limits in one cell are a size
            match = match if match is not None and parameter(match.parameter).kind == "toleranced" else None
        if match is None:
            keys = {"STATION": "station", "MACHINE": "machine"}
            groups = self.names.groups(text)
            own = Heading(keys[groups[0]]) if len(groups) == 1 and groups[0] in keys else None
            own = own or self._in_two_scripts(text) or self._in_two_languages(text) or self._beside_bearing(text)
            return own or self.of_design(text)
        return Heading(
            match.parameter,
            match.station or "",
            match.unit or "",
            _ASPECTS.get(match.aspect, match.aspect),
            match.parameter in text and not match.mapped,
            match.version,
        )
