"""What sentences beside a table state of its machine: ``Shafts to be balanced to G 2.5, operating speed 2900 rpm``.

A sentence stands alone in its row, maybe behind a number or the word for a note. Each of its clauses is read where it
is nothing else than a name of the machine and its value, a grade of balance or the attitude of the shaft. One that
denies or doubts says nothing, what the table states itself goes first, and a clause that names something known beside
a figure and is not read is told with its cell.
"""

import re
from collections.abc import Collection, Iterator, Sequence
from itertools import pairwise

from attrs import evolve, frozen

from linter.model.places import Place
from linter.model.stations import Unused
from linter.model.vocabulary import parameter
from linter.reading.cells.choices import read_choice
from linter.reading.cells.signs import LONGEST_TEXT, caseless
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid
from linter.reading.files.intake import visible
from linter.reading.layouts.foot import strips_for_all
from linter.reading.layouts.in_passing import NOT_SAID
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.lone import machine_heading, name_and_quantity
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.layouts.title import MOST_IN_TITLE, TitleCell, pair_in_cell
from linter.reading.words.headings import Heading, Words

#: Rows of a sheet that is looked at, and filled cells of the row of a sentence: a number, a word for a note, its text.
_MOST_ROWS, _MOST_CELLS = 1000, 2
_SHORTEST, _MOST_CLAUSES, _MOST_WORDS = 8, 12, 5
#: Between clauses: a sign with a blank behind it, one of the east, a word for *and* (common practice).
_BETWEEN = re.compile(
    r"[,;]\s+|[;；、，。]\s*|\s+[–—|]\s+|\s+(?:and|und|et|y|e|и)\s+(?=[^\W\d])",
)
_FULL_STOP, _LONG = re.compile(r"\.\s+(?=[^\W\d_a-zß-ÿа-я])"), 7
_NUMBERED = re.compile(r"\d{1,2}[.)]\s+")
#: Words before what a clause states, between its name and its value, and behind it, that say no more (common practice).
_BEFORE = re.compile(
    r"(?:notes?|remarks?|hinweise?|anmerkung(?:en)?|bemerkung(?:en)?|remarques?|notas?|nota|note|observaciones"
    r"|примечани[ея]|備考|注記?|备注|说明)(?![^\W\d_])\s*\d*\s*[:：.]?\s*"
    r"|(?:at|with|for|the|an?|bei|mit|für|der|die|das|à|avec|pour|les?|la|con|para|el|los|una?|il|gli|per|при|с)\s+",
    re.IGNORECASE,
)
_IS = re.compile(
    r"\s+(?:is|are|of|shall be|ist|sind|beträgt|von|est|sont|de|es|son|è|di|sono|составляет|равна)\s+(?=\d)"
    r"|[はが为是]\s*(?=\d)",
    re.IGNORECASE,
)
#: Words for a lowest value, which a life that must be reached may have beside it.
_AT_LEAST = re.compile(
    r"\s*(?:at least|not less than|min\.?|mindestens|mind\.|au moins|al menos|almeno|не менее|以上|[≥>]=?)\s*(?=\d)"
    r"|(?<=[hч間时時])\s*以上",
    re.IGNORECASE,
)
_SIGN_AND_FIGURE = re.compile(r"(?<=[\u3040-\u30ff\u4e00-\u9fff）])(?=\d)")
_FIGURE_FIRST = re.compile(r"(?P<value>\d[\d.,' \u00a0\u202f]*\s*(?:1/)?[^\d\s=.,'][^\s=,;]{0,11})\s+(?P<name>\D{4,})")
#: A grade of ISO 21940-11 and the words of a clause about it, which may name the rotor, its shaft and the standard.
_GRADE = re.compile(r"(?<![A-Za-z0-9-])G\s?-?\s?(?:0[.,]4|1|2[.,]5|6[.,]3|16|40)(?![\w]|[.,]\d)")
_BALANCE = re.compile(
    r"balanc|wucht|équilibr|equilibr|балансир|уравновеш|釣合|釣り合|つり合|バランス|平衡", re.IGNORECASE
)
_OF_BALANCE = re.compile(
    r"(?:iso|din|en|jis|gb|t|гост|исо)|(?:b|\d{3,5}(?:-\d+)?(?::\d+)?)|quality|grade|class|to|be|in|as|per|acc|according|the|is|are|all|"
    r"shafts?|rotors?|spindles?|dynamically|with|"
    r"wellen?|rotor(?:en)?|läufer|spindeln?|nach|gemäß|gem|auf|zu|mit|der|die|des|ist|sind|werden|dynamisch|güte|gütestufe|stufe|klasse|"
    r"arbres?|broches?|selon|à|au|le|les|la|du|de|qualité|degré|classe|suivant|dynamiquement|"
    r"ejes?|rotores|husillos?|según|a|al|el|los|del|grado|clase|calidad|deben|debe|se|dinámicamente|"
    r"alber[oi]|rotor[ei]|mandrin[oi]|secondo|da|il|gli|i|grado|classe|qualità|dinamicamente|"
    r"вал[ыа]?|ротор[аы]?|шпиндел[ья]|по|до|класс[ау]?|точности|качество|согласно|динамическ\w+|на",
    re.IGNORECASE,
)
_SIGNS_OF_BALANCE = re.compile(
    r"[は・（）()による動的動不にじ準拠级級等级等級品質质量精度转转子轴的達达到按ロータ軸回転体スピンドル主軸を]*"
)
#: Words of a clause about the attitude of the shaft beside that for the shaft itself (common practice).
_MOUNTED = re.compile(
    r"(?<!\w)(?:mounted|arranged|installed|mounting|installation|position|is|in|the|eingebaut|angeordnet|liegt|steht|einbau(?:lage)?|lage|ist"
    r"|monté|montée|disposé|implantation|montado|montada|dispuesto|montato|montata|disposto|montaggio|montaje|montage"
    r"|установлен|расположен|расположение|установка)(?!\w)",
    re.IGNORECASE,
)
#: Things that are not the rotor, and what makes a statement hold for some cases only (common practice).
_OTHER = re.compile(
    r"(?<!\w)(?:e?-?motor|engine|drive|belt|gear(?:box)?|pulley|coupling|impeller|wheel|fan|test\w*|trial|variant|option\w*|size"
    r"|version|for|if|when|during|elektromotor|antriebsmotor|getriebe|riemen\w*|kupplung|laufrad|lüfterrad|prüf\w*|probe\w*"
    r"|variante|ausführung|baugröße|für|bei|wenn|falls|moteur|courroie|réducteur|poulie|accouplement|roue|essai\w*|option"
    r"|taille|pour|correa|reductor|polea|acoplamiento|rodete|ensayo|prueba|tamaño|opción|para|cinghia|riduttore"
    r"|puleggia|giunto|girante|prova|opzione|taglia|двигател\w*|электродвигател\w*|ремен\w*|редуктор\w*|шкив\w*|муфт\w*"
    r"|колес\w*|испытани\w*|вариант\w*|исполнени\w*|для)(?!\w)"
    r"|モータ|電動機|ベルト|減速|プーリ|カップリング|羽根車|試験|電机|电机|皮带|带轮|联轴器|叶轮|试验|场合|場合|オプション|选项",
    re.IGNORECASE,
)
_STANDARD = re.compile(
    r"(?<!\w)(?:DIN|ISO|EN|JIS|GB|ANSI|VDI|ГОСТ|ИСО)(?:[\s/-]*(?:DIN|ISO|EN|T|B|ИСО))*[\s-]*[A-Z]?\s?\d[\d:.-]*(?:-?[mfcvKHL]{1,3})?"
)
_NAMED_BY_TEXT = frozenset(("shaft_material", "housing_material", "shaft_orientation", "lubrication", "duty"))
_OF_SENTENCE = "a sentence beside the table"
_NOT_READ = "a sentence names something known beside a figure and says more or less than its value"
_STATED = "the table states it itself"
_SEVERAL = "the tables are of several machines, and nothing says whose it is"
_WORD = re.compile(r"[^\s,;:()]+")


@frozen
class _Said:
    """What a clause states: the name, the words that say so, and its value."""

    heading: Heading
    label: str
    value: str


@frozen(eq=False)
class _Sentence:
    """A sentence of a sheet and its clauses, each with what it states."""

    grid: Grid
    row: int
    column: int
    clauses: Sequence[tuple[str, _Said | None]]

    @property
    def text(self) -> str:
        """The whole of it."""
        return self.grid.text(self.row, self.column)

    @property
    def place(self) -> Place:
        """Where it stands."""
        return self.grid.place(self.row, self.column)


def take_sentences(grids: Sequence[Grid], found: Found, words: Words) -> None:
    """Add what sentences of the sheets state of the one machine that the tables are of.

    Parameters
    ----------
    grids : sequence of Grid
        The sheets as they stand.
    found : Found
        What was found; strips and unused cells are added to it.
    words : Words
        The names that are understood.
    """
    places = [(grid, *at) for grid in grids if grid.height <= _MOST_ROWS for at in _texts_alone(grid)]
    tables = [block for block in found.blocks if block.strips]
    if not places or not tables:
        return
    used = {(s.sheet, s.at(k)) for b in tables for s in b.strips if s.lines is not None for k in range(len(s.cells))}
    sentences = [
        _Sentence(grid, row, column, read_clauses(grid.text(row, column), words))
        for grid, row, column in places
        if (grid.sheet, grid.place(row, column).cell) not in used
    ]
    values: dict[str, set[str]] = {}
    for one in sentences:
        for _, said in one.clauses:
            if said is not None:
                values.setdefault(said.heading.parameter, set()).add(said.value)
    twice = {name for name, said in values.items() if len(said) > 1}
    for one in sentences:
        _take(one, tables, twice, found, words)


def without_sentences(grid: Grid, words: Words) -> Grid:
    """The grid without sentences that state something of the machine: no layout takes one for a row of a table.

    What a title block reads as one label with its value stays.
    """
    if grid.height > _MOST_ROWS or grid.whole_lines:
        return grid
    broad = next((row for row, count in enumerate(grid.filled) if count > MOST_IN_TITLE), grid.height)
    gone = {row for row, column in _texts_alone(grid) if _is_sentence(grid.text(row, column), words)}
    spanned = {row for top, _, bottom, _ in grid.merged if bottom > top for row in range(top, bottom + 1)}
    gone -= spanned
    rows: list[tuple[int, dict[int, str] | None]] = [
        (row, {} if row in gone else None) for row in range(grid.height) if row not in gone or row > broad
    ]
    return of_rows(grid, rows) if gone else grid


def _is_sentence(text: str, words: Words) -> bool:
    """Whether a text states something of the machine in more than one label and its value."""
    read = read_clauses(text, words)
    return any(said for _, said in read) and (len(read) > 1 or not pair_in_cell(text, words)[1])


def _texts_alone(grid: Grid) -> Iterator[tuple[int, int]]:
    """Row and column of texts of several words that stand alone in a row, or behind a number or a word for a note."""
    for row in range(grid.height):
        if not 0 < grid.filled[row] <= _MOST_CELLS:
            continue
        filled = [*grid.texts(row)]
        column = filled[-1]
        text, before = grid.text(row, column), grid.text(row, filled[0]) if len(filled) > 1 else ""
        if not _SHORTEST <= len(text) <= LONGEST_TEXT or type(grid.columns[column][row]) is not str:
            continue
        if not before or before.strip(" .:()*").isdigit() or _BEFORE.fullmatch(f"{before} "):
            yield row, column


def _take(one: _Sentence, tables: Sequence[Block], twice: Collection[str], found: Found, words: Words) -> None:
    """Add strips for what a sentence states, and tell what it holds that is not read."""
    blocks = [b for b in tables if any(s.sheet == one.grid.sheet for s in b.strips)] or tables
    left: list[tuple[str, str]] = []
    taken = False
    for clause, said in one.clauses:
        if said is None:
            left += [(clause, _NOT_READ)] if names_known(clause, words) else []
        elif reason := _why_not(said.heading, one, tables, blocks, twice):
            left.append((clause, reason))
        else:
            cell = TitleCell(said.heading, said.label, one.grid, one.row, one.column)
            block = blocks[-1]
            block.strips += [_with_text(s, said.value, one.text) for s in strips_for_all([cell], block, found)]
            taken = True
    told = [k for k, unused in enumerate(found.unused) if unused.place == one.place]
    if taken:
        found.unused[:] = [unused for k, unused in enumerate(found.unused) if k not in told]
    for clause, reason in left if taken or not told else ():
        found.leave(Unused(_OF_SENTENCE, visible(clause), one.place, reason))


def _why_not(
    heading: Heading, one: _Sentence, tables: Sequence[Block], blocks: Sequence[Block], twice: Collection[str]
) -> str:
    """Why a thing that a sentence states is not taken; empty where it is."""
    if len({machine for block in blocks for machine in block.machines if machine}) > 1:
        return _SEVERAL
    if heading.parameter in twice or not _may_hold(heading, one, blocks):
        return _NOT_READ
    stated = any(s.parameter == heading.parameter and s.aspect == "value" for b in tables for s in b.strips)
    return _STATED if stated else ""


def _may_hold(heading: Heading, one: _Sentence, blocks: Sequence[Block]) -> bool:
    """Whether what a sentence states is of the whole machine: below values of positions it may be of the last alone."""
    if heading.entry.level == "machine":
        return True
    line = int(one.grid.lines[one.row])
    return not any(
        strip.lines is not None and strip.sheet == one.grid.sheet and int(strip.lines.min()) < line
        for block in blocks
        for strip in block.strips
        if len(strip.cells) and parameter(strip.parameter).level == "station"
    )


def _with_text(strip: Strip, value: str, whole: str) -> Strip:
    """A strip whose cells hold a part of the text that stands there."""
    strip.cells[:] = value  # type: ignore[index]
    return evolve(strip, whole=dict.fromkeys(range(len(strip.cells)), whole))


def read_clauses(text: str, words: Words) -> list[tuple[str, _Said | None]]:
    """The clauses of a sentence and what each states: nothing where another of them tells of something else."""
    read = [(clause, said_in_clause(clause, words)) for clause in clauses_of(text)]
    if any(said for _, said in read):
        read = [(clause, said or _bare_attitude(clause)) for clause, said in read]
    if any(said is None and _is_of_other(clause, words) for clause, said in read):
        return [(clause, None) for clause, _ in read]
    return read


def _is_of_other(clause: str, words: Words) -> bool:
    """Whether a clause that is not read names another thing or a condition, or holds a figure of something unknown."""
    if _OTHER.search(clause):
        return True
    return bool(re.search(r"\d", _STANDARD.sub("", clause))) and not names_known(clause, words)


def clauses_of(text: str) -> list[str]:
    """The clauses of a sentence; none of one that holds very many."""
    ends = [dot.end() for dot in _FULL_STOP.finditer(text) if _ends_sentence(text[: dot.start()])]
    parts = [text[begin:end] for begin, end in pairwise([0, *ends, len(text)])]
    pieces = [piece for part in parts for piece in _BETWEEN.split(part)]
    clauses = [clause for piece in pieces if (clause := piece.strip(" .:*•-–"))]
    return clauses if len(clauses) <= _MOST_CLAUSES else []


def _ends_sentence(text: str) -> bool:
    """Whether the last word before a dot is no shortened one: a long one, a figure or a unit."""
    *before, word = text.split() or [""]
    unit = known_unit(word) is not None and any(map(str.isdigit, before[-1] if before else ""))
    return len(word) >= _LONG or any(map(str.isdigit, word)) or unit


def said_in_clause(clause: str, words: Words) -> _Said | None:
    """What one clause states of the machine, and nothing else; None where it is more or less than that."""
    if NOT_SAID.search(caseless(clause)):
        return None
    clause = _NUMBERED.sub("", clause, count=1) if _NUMBERED.match(clause) else clause
    while (before := _BEFORE.match(clause)) and before.end() < len(clause):
        clause = clause[before.end() :]
    return _balance(clause) or _quantity(clause, words) or _attitude(clause) or _by_text(clause, words)


def _quantity(clause: str, words: Words) -> _Said | None:
    """A name of the machine and its quantity, either of them first."""
    text = _SIGN_AND_FIGURE.sub(" ", _IS.sub(" ", clause, count=1))
    plain = _AT_LEAST.sub(" ", text).strip()
    first = _FIGURE_FIRST.fullmatch(plain)
    for line in (plain, f"{first['name']} {first['value']}" if first else ""):
        name, value = name_and_quantity(line, words) if line else ("", "")
        heading = machine_heading(name, value, "", words) if name else None
        if heading is None or heading.aspect != "value" or heading.version:
            continue
        if plain != text.strip() and heading.parameter != "required_life":
            return None
        return _Said(heading, name, value)
    return None


def _balance(clause: str) -> _Said | None:
    """The grade to which the rotor is balanced."""
    grades = _GRADE.findall(clause)
    if len(grades) != 1 or not _BALANCE.search(clause):
        return None
    rest = _GRADE.sub(" ", clause)
    known = (_OF_BALANCE.fullmatch(word) or _BALANCE.search(word) for word in re.findall(r"[^\s.,:;/()=]+", rest))
    plain = _BALANCE.sub("", rest)
    signs = re.sub(r"[A-Z]+\s?[A-Z]*\s?\d+[\d:-]*", "", plain)
    if all(known) or _SIGNS_OF_BALANCE.fullmatch(re.sub(r"[\s:：/-]", "", signs)):
        return _Said(Heading("balance_grade"), clause.replace(grades[0], "").strip(" :"), grades[0])
    return None


def _attitude(clause: str) -> _Said | None:
    """The attitude of the shaft, by a word for it beside that for a shaft."""
    text = " ".join(_MOUNTED.sub(" ", clause).split())
    word = read_choice("shaft_orientation", text) if text else ""
    alone = len(text.split()) == 1 and text.isascii() and text == clause
    return _Said(Heading("shaft_orientation"), clause, text) if isinstance(word, str) and word and not alone else None


def _bare_attitude(clause: str) -> _Said | None:
    """The attitude of the shaft by the word for it alone, among other things of the machine."""
    word = read_choice("shaft_orientation", clause)
    return _Said(Heading("shaft_orientation"), clause, clause) if isinstance(word, str) and word else None


def _by_text(clause: str, words: Words) -> _Said | None:
    """A name of the machine with a word for its value behind it (``Shaft material 42CrMo4``)."""
    pieces = clause.split()
    for count in range(min(len(pieces) - 1, _MOST_WORDS), 0, -1):
        name, value = " ".join(pieces[:count]).rstrip(" :=："), " ".join(pieces[count:])
        heading = words.heading(name)
        if heading is None or heading.parameter not in _NAMED_BY_TEXT or heading.station or heading.aspect != "value":
            continue
        word = read_choice(heading.parameter, value)
        return _Said(heading, name, value) if isinstance(word, str) and word else None
    return None


def names_known(clause: str, words: Words) -> bool:
    """Whether a clause holds a figure with a unit or a grade, and words that name a number of a machine or a seat."""
    if not re.search(r"\d", clause):
        return False
    if _GRADE.search(clause) and _BALANCE.search(clause):
        return True
    pieces = _WORD.findall(clause)
    for start in range(len(pieces)):
        for count in range(min(_MOST_WORDS, len(pieces) - start), 0, -1):
            name = " ".join(pieces[start : start + count])
            heading = words.heading(name) if len(name) > 2 and not re.search(r"\d", name) else None
            if heading is not None and heading.entry.kind == "number":
                return True
    return False
