"""Headings over a block of rows or columns that say shaft, housing or bearing, and names below them."""

import re
from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import pairwise

from attrs import evolve, frozen

from linter.reading.cells.signs import caseless, fold, is_figure
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.words.columns import heading_of
from linter.reading.words.dictionary import MOST_REMEMBERED
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said, is_bearing, is_bearing_seat, part_alone, tells_feature

# Terms of the trade (ISO 286-1, ISO 5593 and their translations, from memory; common practice).
_WORDS = {
    "shaft": "shaft, journal, welle, arbre, eje, árbol, albero, вал, 軸, 轴, "
    "drive shaft, hollow shaft, antriebswelle, hohlwelle, arbre d'entraînement, arbre de commande, arbre creux, "
    "eje de accionamiento, eje hueco, albero di comando, albero cavo, вал привода, приводной вал, полый вал",
    "housing": "housing, gehäuse, logement, carter, alojamiento, alloggiamento, sede, корпус, "
    "lagergehäuse, gehäusebohrung, corps, corpo, 軸受箱, корпус подшипника, корпус подшипников, подшипниковый щит, "
    "sleeve bore, spindle sleeve, pinolenbohrung, hülsenbohrung, spindelhülse, fourreau, "
    "alésage du fourreau, canotto, foro canotto, foro del canotto, отверстие гильзы, расточка гильзы, гильза шпинделя, "
    "套筒孔, 套筒内孔, "
    "carcasa, carcasa del rodamiento, carcasa de rodamientos, cuerpo de rodamientos, soporte del rodamiento, "
    "soporte de rodamientos, carter de palier, boîtier de roulement, boîtier, corpo cuscinetti, carcassa, "
    "pump housing, pump casing, motor housing, gear housing, gearbox housing, spindle housing, fan housing, "
    "pumpengehäuse, motorgehäuse, getriebegehäuse, spindelgehäuse, corps de pompe, carter moteur, carter de moteur, "
    "corps de broche, cuerpo de bomba, carcasa de la bomba, carcasa del motor, corpo pompa, carcassa motore, "
    "corpo mandrino, корпус насоса, корпус двигателя, корпус редуктора, корпус шпинделя, ポンプ本体, "
    "ハウジング, ハウジング内径, 軸受箱内径, 外壳, 壳体, 座孔, 轴承座, 轴承座孔, 孔, 穴",
    "bearing": "bearing, lager, wälzlager, roulement, rodamiento, cuscinetto, подшипник, 軸受, 轴承",
}
# Words over what is stated of the use of a bearing (common practice).
_USE = (
    "operation, operating conditions, operating data, duty, service, use, loads, load, loading, betrieb, einsatz, "
    "betriebsdaten, betriebsbedingungen, belastung, lasten, fonctionnement, exploitation, utilisation, charges, "
    "conditions de service, servicio, funcionamiento, operación, uso, cargas, condiciones de servicio, esercizio, "
    "funzionamento, condizioni di esercizio, impiego, carichi, режим работы, эксплуатация, работа, условия работы, "
    "условия эксплуатации, нагрузка, нагрузки, 使用条件, 運転, 運転条件, 使用, 負荷, 荷重, "
    "工况, 运行, 运行条件, 工作条件, 载荷, 负荷, operating, режим, нагрузки, general, common, allgemein, allgemeines, "
    "allgemeine, généralités, générales, generales, generali, generale, общие, общее, 共通, 全般, 一般, 总体, 通用"
)
# Words over what is of no part (common practice).
_OTHER_THINGS = (
    "other, others, misc, misc., miscellaneous, machine, rotor, operation, various, sonstiges, sonstige, maschine, "
    "divers, autre, autres, varios, otros, máquina, varie, altro, altri, macchina, прочее, прочие, машина, その他, "
    "機械, 其他, 其它, 机器"
)
_OTHERS = frozenset(caseless(word) for word in _OTHER_THINGS.split(", "))
_AND = re.compile(r"\s*(?:\b(?:and|und|et|y|e|и)\b|[&/+,与和及])\s*", re.IGNORECASE)
_OF_USE = frozenset(caseless(word) for word in _USE.split(", "))
_SIDES = {caseless(word): side for side, words in _WORDS.items() for word in words.split(", ")}
_BESIDE = re.compile(
    r"\s*\b(?:side|seat|seats|data|dimensions?|features?|parameters?|spec|specs|specifications?|seite|daten|angaben|maße|sitz"
    r"|de|del|della|du|dati|datos|données|details?|détails?|detalles?|dettagli|сведения|caractéristiques|características|caratteristiche|параметры|данные|характеристики)\b"
    r"\s*",
    re.IGNORECASE,
)
#: Data, where the language sets no blank before the word.
_DATA = re.compile(r"(?:仕様|諸元|データ|参数|数据|规格|信息|情報)$")
_COMPOUND = re.compile(r"(?<=[a-zß])(?:daten|angaben|abmessungen)$")
#: Brackets behind the word for a part that only say more of it: the ring that sits there, or where the data are from.
_MORE = re.compile(r"(?P<word>[^()\[\]（）]+?)\s*[(\[（](?P<more>[^()\[\]（）]+)[)\]）]")
_EASTERN_MORE = re.compile(r"(?P<word>[^－・]+)[－・](?P<more>[^－・]+)")
_FROM = re.compile(r"(?:katalog|catal|catál|каталог|目录|样本|カタログ|型録)", re.IGNORECASE)
_BEFORE_PART = re.compile(r".*(?:[:：]| [–—-]) *")
_SEAT = re.compile(r"\b(?:seats?|sitze?|sitzes)\b", re.IGNORECASE)
#: What a heading of a block may say of its part, and where its words end.
_OF_BLOCK = {"shaft": {"shaft", "seat", "inside", "ring"}, "housing": {"housing", "seat", "bore", "outside", "ring"}}
_APART = re.compile(r"[ /,+&()’']+")
_MOST_WORDS = 4
#: Sizes with a class of a shaft or a hole (ISO 286-1).
_CLASSED = {
    part: re.compile(rf"[Ø⌀φø]? ?\d[\d.,]* ?(?:mm )?(?:{letters})(?:[3-9]|1[0-2])(?!\d)(?: ?\(?[+\-±0].*)?")
    for part, letters in (("shaft", "js|[d-hjkmnpr]"), ("housing", "JS|[D-HJKMNPR]"))
}
#: What is no part of a bearing position (``Impeller``): of the machine only where it is what turns (``Rotor``).
THING = "thing"
_TURNS = "rotor"
#: Rows between a heading and its table, blank ones.
_MOST_ABOVE = 50
#: Sizes of the bearing itself: such a word below a heading of the shaft or housing may mean another size.
_OF_THE_RING = ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer")


@frozen
class Side:
    """A heading of a block, ``shaft``, ``housing``, ``bearing``, :data:`THING` or empty for none of these; its word."""

    side: str
    word: str

    @property
    def is_thing(self) -> bool:
        """Whether it heads what is no part of a bearing position."""
        return self.side == THING


def side_of(text: str) -> Side | None:
    """The side that a heading of a block names, or None."""
    return _side_of(text) if 0 < len(text) < 40 and not is_figure(text) else None


@lru_cache(maxsize=MOST_REMEMBERED)
def _side_of(text: str) -> Side | None:
    plain = text.strip(" :.-–—=*#")
    if (more := _MORE.fullmatch(plain) or _EASTERN_MORE.fullmatch(plain)) and _says_more(more["more"]):
        of = side_of(more["word"])
        return None if of is not None and of.side == "bearing" and is_bearing_seat(more["more"]) else of
    word = _BESIDE.sub(" ", text).strip(" :.-–—=*#()[]")
    side = _SIDES.get(caseless(word), "") or part_alone(word) or ("bearing" if is_bearing(word) else "")
    if not side and (plain := _DATA.sub("", word)) != word and (side := _SIDES.get(plain, "")):
        word = plain
    if not side and (plain := _COMPOUND.sub("", word)) != word and (side := _part_of_data(plain)):
        word = plain
    if not side and (side := part_alone(text.strip(" :.-–—=*#()[]")) or _part_of_block(word)):
        word = side  # Inner ring seat
    if side == "bearing" and _SEAT.search(text):
        return None  # the seats of a bearing are those of shaft and housing: a title
    return Side(side, word) if side else None


def part_or_rotor(text: str) -> Side | None:
    """The side that a text names, or the thing that it is where that is what turns (``Rotor``); or None."""
    turns = concepts_said(text) - {"mounting"} == {_TURNS}
    return Side(THING, text) if turns else side_of(text)


def _part_of_data(text: str) -> str:
    """The part that a German word says without that for its data (``Lagerdaten``); or empty."""
    return _SIDES.get(caseless(text), "") or part_alone(text) or ("bearing" if is_bearing(text) else "")


def _part_of_block(text: str) -> str:
    """``shaft`` or ``housing`` where words say that part by its seat, its bore or the ring that sits there."""
    words = [word for word in _APART.split(text) if word]
    if len(words) > _MOST_WORDS or not all(tells_feature(w) or (len(w) <= 3 and w.isalpha()) for w in words):
        return ""
    said = concepts_said(text)
    return next((part for part, may in _OF_BLOCK.items() if part in said and said <= may), "")


def _says_more(text: str) -> bool:
    """Whether a bracket behind the word for a part names the ring that sits there, its seat, or a catalogue."""
    said = concepts_said(text)
    of_ring = "ring" in said and bool(said & {"inside", "outside"})
    return of_ring or is_bearing_seat(text.strip()) or _FROM.match(text.strip()) is not None


def innermost(trail: tuple[str, ...]) -> tuple[str, ...]:
    """Words around a value, from the outermost, without those of another side than the innermost one says.

    ``supporto`` is a place of a bearing and a word for its housing: what stands below ``albero`` in it is the shaft's.
    """
    sides = [(i, side.side) for i, word in enumerate(trail) if (side := side_of(word))]
    outer = [i for i, side in sides if side != sides[-1][1]]
    return trail[outer[-1] + 1 :] if outer else trail


def is_use(text: str) -> bool:
    """Whether a heading of a block says that the use of the bearing, or what holds for all, is stated below it."""
    plain = text.strip(" :.-–—=*#()[]")
    if not 0 < len(text) < 40 or caseless(plain) in _OF_USE:
        return 0 < len(text) < 40
    return all(caseless(without_data(piece)) in _OF_USE for piece in _AND.split(plain))


def without_data(text: str) -> str:
    """A heading of a block without its word for data (``Machine data``)."""
    return _DATA.sub("", _BESIDE.sub(" ", text).strip()).strip(" :.-–—")


def within(words: Words, side: Side | None, label: str) -> Heading | None:
    """What a name means below a heading of a block: with the word of the heading before it, or else by itself."""
    alone = words.heading(label)
    if side is not None and side.is_thing:
        return _of_thing(words, side, label, alone)
    if side is None or (alone is not None and alone.parameter in ("machine", "station")):
        return alone
    if not side.side:
        return None if alone is not None and alone.parameter in _OF_THE_RING else alone
    if side.side == "bearing":
        return alone if alone is not None else _of_bearing(words, side, label)
    return _of_seat(words, side, label, alone)


def _of_thing(words: Words, side: Side, label: str, alone: Heading | None) -> Heading | None:
    """What a name means of something that is no part of a position: of what turns, what is the machine's."""
    if concepts_said(side.word) - {"mounting"} != {_TURNS}:
        return None
    if alone is None and set(words.groups(label)) <= {"NAME"} and not _is_no_name(label):
        alone = words.heading(f"{side.word} {label}") or words.heading(f"{_TURNS} {label}")
    said = alone is not None and alone.entry.level == "machine" and alone.parameter != "machine"
    return alone if said else None


def of_part_remarked(words: Words, label: str, row: Sequence[str], value: int) -> Heading | None:
    """What a name means by the other cells of its row, its value at one of them.

    A remark behind the value is the word for a part and nothing else (``shaft``), or a cell before it the rotor's.
    """
    for text in row[:value]:
        rotor = concepts_said(text) == {"rotor"} and text != label
        if rotor and (whole := words.heading(f"{text} {label}")) is not None and whole.parameter == "rotor_mass":
            return whole
    sides = {side.side: side for text in row[value + 1 :] if part_alone(text) and (side := side_of(text)) is not None}
    return within(words, next(iter(sides.values())), label) if len(sides) == 1 else None


def _of_seat(words: Words, side: Side, label: str, alone: Heading | None) -> Heading | None:
    """What a name means of shaft or housing; ``alone`` is what it means by itself."""
    place = words.names.station(label) and "seat" not in concepts_said(label)  # Seat A below Shaft: its size
    if alone is None and (words.groups(label) or _is_no_name(label) or place or concepts_said(label) == {"form"}):
        return None  # a word for a part of a value (nominal, upper) does not say of which size, a station no size
    if alone is not None and _is_bearings(alone, label):
        return alone
    if alone is not None and _is_letter_of_radius(alone, label):
        return evolve(alone, parameter=f"{side.side}_fillet_radius")
    told = words.told_of(label) if alone is None else None
    for text, station in ((label, ""), *(((told.rest, told.station),) if told is not None else ())):
        for word in (side.word, side.side, f"{side.side} seat"):
            joined = words.heading(f"{word} {text}") if text else None
            if joined is not None and joined.parameter.startswith(side.side) and not (station and joined.station):
                return evolve(joined, station=station or joined.station)
    return None if alone is not None and (alone.parameter in _OF_THE_RING or _other(alone, side)) else alone


def _is_letter_of_radius(alone: Heading, label: str) -> bool:
    """Whether a name is the letter of a radius with its limit (``ra max``), of either part; a roughness has ``Ra``."""
    said = concepts_said(label)
    return alone.parameter == "shaft_fillet_radius" and "largest" in said and not {"shaft", "fillet"} & said


def judged_within(
    words: Words, side: Side | None, label: str, heading: Heading | None, cells: Sequence[str]
) -> Heading | None:
    """What a name below a heading of a block is by its cells too; a word for a class alone may be the bearing's.

    A word for a nominal below shaft or housing is of the seat where its cells carry a class of that sort (``25m6``).
    """
    of_seat = heading is None and side is not None and side.side in _CLASSED and words.group(label) == "VALUE"
    if of_seat and side is not None and are_classed(side.side, cells):
        return Heading(f"{side.side}_seat_diameter", unit=words.unit_of(label))
    if heading is None and side is not None and side.side != "bearing" and "undercut" in concepts_said(label):
        return heading_of(f"{side.side} {label}", heading, cells, words)
    of_bearing = heading is None and side is not None and side.side == "bearing" and words.group(label) == "CLASS"
    return heading_of(f"{side.word} {label}" if of_bearing and side is not None else label, heading, cells, words)


def are_classed(part: str, cells: Iterable[str]) -> bool:
    """Whether cells are sizes with a class of a shaft or of a housing, and nothing else."""
    texts = [fold(cell).strip() for cell in cells if cell.strip()]
    return bool(texts) and all(map(_CLASSED[part].fullmatch, texts))


def _is_bearings(heading: Heading, label: str) -> bool:
    """Whether a name says the bearing itself, and no size that a seat may share with it."""
    name = heading.parameter
    of_seat = name in _OF_THE_RING or name.startswith(("shaft_", "housing_"))
    return not of_seat and "bearing" in concepts_said(label)


def _of_bearing(words: Words, side: Side, label: str) -> Heading | None:
    """What a name that means nothing by itself means of the bearing (``Designation``, ``Clearance``)."""
    if not label or _is_no_name(label) or set(words.groups(label)) - {"NAME", "KIND"}:
        return None
    joined = words.heading(f"{side.word} {label}")
    of_seat = joined is not None and (joined.parameter.startswith(("shaft_", "housing_")) or joined.station)
    return None if joined is None or joined.entry.level != "station" or of_seat else joined


def _is_no_name(label: str) -> bool:
    """Whether a text is a value or a unit."""
    return (not any(map(str.isalpha, label)) and not re.search("[Ø⌀øφΦϕ∅Ф]", label)) or known_unit(
        label.strip("[]() ")
    ) is not None


def _other(heading: Heading, side: Side) -> bool:
    """Whether a name is one of the other side, that does not belong below it; a material says whose it is."""
    other = {"shaft": "housing_", "housing": "shaft_"}[side.side]
    return heading.parameter.startswith(other) and not heading.parameter.endswith("_material")


def why(words: Words, side: Side | None, label: str) -> str:
    """Why a name below a heading of a block is not understood, as half a sentence."""
    if side is not None and words.heading(label) is not None:
        head = side.word if side.side in ("", THING) else f"a heading of the {side.side}"
        return f"below {head} it is not clear what it means"
    return words.why(label)


def says_parts(grid: Grid, column: int) -> bool:
    """Whether cells of a column name two of shaft, housing and bearing."""
    texts = {cell_text(cell) for cell in grid.columns[column].tolist()}
    return len({side.side for text in texts if any(map(str.isalpha, text)) and (side := side_of(text))}) > 1


def part_column(grid: Grid, start: int) -> int | None:
    """The column that says of the rows below a heading whether they are of a shaft, a housing or a bearing.

    Labels and values of the machine below a blank row say nothing of it.
    """
    several: dict[int, bool] = {}

    def alone(row: int) -> bool:
        if row not in several:
            filled = (cell for cell in grid.row(row) if not is_blank(cell))
            several[row] = next(filled, None) is not None and next(filled, None) is not None
        return not several[row]

    for column in range(grid.width):
        if _heads_each_group(grid, column, start):
            return column
        said: dict[str, int] = {}
        others: dict[str, int] = {}
        last = start
        for row in range(start, grid.height):
            if not (text := grid.text(row, column)):
                continue
            if (side := side_of(text)) is not None:
                last, said[side.side] = row, said.get(side.side, 0) + 1
            elif not alone(row) and not (is_use(text) or caseless(text) in _OTHERS):
                others[text] = others.get(text, 0) + 1
                if len(others) > 1 or any(map(str.isdigit, text)):
                    if len(said) > 1 and not all(grid.filled[last:row]):
                        return column
                    break  # a row of values that speaks of something else here
        else:
            # one more word (operation) may stand among them, less often than they do
            if len(said) > 1 and (not others or sum(said.values()) > 2 * sum(others.values())):
                return column
    return None


def _heads_each_group(grid: Grid, column: int, start: int) -> bool:
    """Whether a column left of all words heads groups of rows, each once, two of them parts (others: ``Drive``)."""
    rows = [r for r in range(start, grid.height) if grid.filled[r]]
    texts = {row: text for row in rows if (text := grid.text(row, column))}
    if len(texts) < 2 or 3 * len(texts) > 2 * len(rows) or rows[0] not in texts or len({*texts.values()}) < len(texts):
        return False
    words = all(any(map(str.isalpha, text)) and not any(map(str.isdigit, text)) for text in texts.values())
    beside = words and all(grid.filled[row] > 1 for row in rows)
    left = (grid.text(row, c) for row in rows for c in range(column)) if beside else ()
    return beside and not any(map(str.isalpha, "".join(left))) and says_parts(grid, column)


def parts_below(grid: Grid, column: int, start: int) -> dict[int, Side]:
    """The part of each row below a heading by the column that says it.

    A blank cell is of the part above it where the column names parts over groups of rows: each once only, or at the
    head of each group and never in two rows that follow each other.
    """
    stated = {row: side for row in range(start, grid.height) if (side := side_of(grid.merged_text(row, column)))}
    named = [side_of(text) for row in range(start, grid.height) if (text := grid.text(row, column))]
    groups = [side.side for side in named if side is not None]
    if len(groups) != len(set(groups)) and not _heads_groups(grid, start, stated):
        return stated
    result, current = {}, None
    for row in range(start, grid.height):
        current = stated.get(row, None if grid.text(row, column) else current)
        if current is not None and grid.filled[row] > 1:
            result[row] = current
    return result


def _heads_groups(grid: Grid, start: int, stated: dict[int, Side]) -> bool:
    """Whether a column says the part at the head of each group of rows: half have none, and none stand in a row.

    Rows above the first of them are of the whole machine.
    """
    rows = [r for r in range(min(stated, default=start), grid.height) if grid.filled[r] > 1]
    follows = any((one := stated.get(a)) and (two := stated.get(b)) and one.side == two.side for a, b in pairwise(rows))
    return bool(stated) and 2 * len(stated) <= len(rows) and not follows


def side_above(grid: Grid, row: int) -> Side | None:
    """The side that a heading over a whole table names: one text alone in the row above, or above blank ones.

    Behind a colon or dash it may end a title (``Seat data: Shaft``); else the sheet may carry its name.
    """
    for above in range(row - 1, max(row - _MOST_ABOVE, -1), -1):
        texts = [*grid.texts(above).values()]
        if texts:
            said = side_of(texts[0]) or side_of(_BEFORE_PART.sub("", texts[0])) if len(texts) == 1 else None
            return said or side_of_sheet(grid)
    return side_of_sheet(grid)


def side_of_sheet(grid: Grid) -> Side | None:
    """The side that the name of a sheet says, or None."""
    return side_of(grid.sheet) if grid.sheet else None
