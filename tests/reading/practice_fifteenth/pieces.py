"""What all layouts share: the text of a value, title blocks, histories, feet."""

from collections.abc import Iterable, Sequence

from practice.grammar import Size

from practice_fifteenth.lexicon import NAMES
from practice_fifteenth.meaning import Machine
from practice_fifteenth.sheet import Ref, Sheet
from practice_fifteenth.style import Field, Style, fields

Plan = dict[str, str]
TITLES = {
    "en": "Bearing seat data sheet", "de": "Datenblatt Lagersitze", "fr": "Fiche portées de roulements",
    "it": "Scheda sedi cuscinetti", "es": "Ficha de asientos de rodamientos", "ru": "Карта посадок подшипников",
    "zh": "轴承位参数表", "ja": "軸受はめあい部仕様書",
}  # fmt: skip


def planned(style: Style, plan: Plan, scope: str) -> list[Field]:
    """The fields of a scope in the office's plan."""
    return fields(scope, plan.get(scope, ""), style.form)


def refs(f: Field, m: int, s: int) -> list[Ref]:
    if f.key == "size":
        return [(m, "bearing", key, s) for key in ("d", "D", "B")]
    if f.key == "pair":
        return [(m, side, "seat", s) for side in ("shaft", "housing")]
    return [] if f.key[0] == "x" else [(m, f.scope, f.key, s)]


def show(style: Style, machine: Machine, f: Field, s: int) -> str:
    """The text of a value."""
    length = Field("bearing", "d", "", "length")
    if f.key == "size":
        text = "x".join(style.number(length, float(str(machine.values["bearing", key, s]))) for key in ("d", "D", "B"))
        return text if style.voice % 2 else text.replace("x", " x ")
    if f.key == "pair":
        classes = [machine.values[side, "seat", s] for side in ("shaft", "housing")]
        return " / ".join(c.tolerance_class for c in classes if isinstance(c, Size))
    at = s if (f.scope, f.key, s) in machine.values else 0
    if (f.scope, f.key, at) in machine.words:
        return machine.words[f.scope, f.key, at]
    value = machine.values[f.scope, f.key, at]
    if isinstance(value, str):
        return value
    if isinstance(value, Size):
        text = style.seat(f, value)
        alone = (bool(f.part) and f.part != "cls") or style.form in ("class column", "deviation columns")
    else:
        text = {"ra": style.ra, "fil": style.rad}.get(f.key, "") + style.number(f, value)
        alone = True
    unit = style.unit_word(f)
    return f"{text} {unit}" if style.units == "cell" and unit and alone and f.part != "cls" else text


def title_of(f: Field, style: Style, always: bool = False, short: bool = False) -> str:
    name = style.short(f) if short else style.full(f)
    return style.heading(name, f if f.key != "size" else Field("bearing", "d", "", "length"), always)


def unit_text(f: Field, style: Style) -> str:
    """The unit in a row or column of units."""
    if f.key == "size":
        return style.unit_word(Field("bearing", "d", "", "length"))
    if f.key == "seat" and style.form in ("deviations", "class and deviations", "plus-minus") and style.fine == "um":
        return style.unit_word(f)
    return style.unit_word(f)


def data_lines(
    sheet: Sheet, machines: Sequence[Machine], found: Sequence[Field], way: str = "lines", column: int = 1
) -> None:
    """Labels and values of the machine: one below another, in pairs along a line, joined in a cell."""
    style = sheet.style
    for m, machine in enumerate(machines):
        along = column
        for f in found:
            label, text = title_of(f, style), show(style, machine, f, -1)
            unit = style.unit_word(f)
            if way == "lines" and style.units in ("row", "column"):
                label = style.heading(style.full(f), f, always=True)
            if way == "units":
                label = style.full(f)
            r = sheet.row
            if way == "joined":
                text = f"{style.full(f)}: {text} {unit if style.units != 'cell' else ''}".rstrip()
                sheet.put(r, column, text, refs(f, m, -1))
                sheet.truth.joined.update(refs(f, m, -1))
                sheet.row += 1
                continue
            sheet.put(r, along, label)
            sheet.put(r, along + 1, text, refs(f, m, -1), [(r, along)])
            if way == "units":
                sheet.put(r, along + 2, unit)
            if way == "pairs" and style.units in ("row", "column") and unit:
                raise ValueError("a unit is missing")
            if way == "pairs" and along < column + 4:
                along += 2
            else:
                along = column
                sheet.row += 1
        if along != column:
            sheet.row += 1


def head(sheet: Sheet, machines: Sequence[Machine], keys: str, way: str, extra: Iterable[str] = ()) -> None:
    """The title block: machine data, who and when, the sentence of units, an empty line."""
    style = sheet.style
    if "title" in extra:
        sheet.line(TITLES[style.language])
    if keys:
        data_lines(sheet, machines, fields("machine", keys, style.form), way)
    d = style.rng.randint(10, 28)
    words = NAMES[style.language]
    notes = [text.format(d=d) for text in words["head"]]
    if "who" in extra:
        sheet.line(*style.rng.sample(notes, 2))
    if "log" in extra:
        log_lines(sheet)
    if style.units == "title":
        sheet.line(words["mm um" if "um" in (style.fine, style.small) else "all mm"][0])
    if sheet.row > 1 and "tight" not in extra:
        sheet.row += 1


def log_lines(sheet: Sheet) -> None:
    """A history of changes."""
    words = NAMES[sheet.style.language]["log"]
    for k in range(0, len(words), 3):
        sheet.line(*words[k : k + 3])


def foot(sheet: Sheet, extra: Iterable[str]) -> None:
    """What stands below the table."""
    style = sheet.style
    words = NAMES[style.language]
    if style.units == "foot" or "foot" in extra or "log below" in extra:
        sheet.row = max(r for r, _ in sheet.grid) + 2
    if style.units == "foot":
        sheet.line(words["mm um" if "um" in (style.fine, style.small) else "all mm"][0])
    if "foot" in extra:
        sheet.line(style.rng.choice(words["foot"]))
    if "log below" in extra:
        log_lines(sheet)


def noise(style: Style, k: int) -> tuple[str, list[str]]:
    """A column that has nothing to do with seats: its heading and six texts."""
    words = NAMES[style.language]
    form = words["noise.values"][k % 5]
    rng = style.rng
    return words["noise"][k % 5], [form.format(n=rng.randint(1000, 9999), d=rng.randint(11, 28)) for _ in range(6)]
