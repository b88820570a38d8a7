"""A sheet that remembers which of its cells carry what, and how it becomes a file."""

import csv
import io
from dataclasses import dataclass, field

import xlsxwriter

from .shown import Fact, Item, Office, Text
from .trade import Values
from .words import Words


def column(c: int) -> str:
    return (chr(64 + c // 26) if c >= 26 else "") + chr(65 + c % 26)


@dataclass
class Sheet:
    """Cells by row and column from 0; what stands in them is put there once."""

    cells: dict[tuple[int, int], Text] = field(default_factory=dict)
    merged: list[tuple[int, int, int]] = field(default_factory=list)
    row: int = 0

    def put(self, r: int, c: int, text: Text, *items: Item, head: bool = False) -> None:
        if text == "":
            return
        assert self.cells.get((r, c), text) == text, (r, c, text, self.cells[r, c])
        self.cells[r, c] = text
        for item in items:
            (item.heads if head else item.own).append(f"{column(c)}{r + 1}")
            if head:
                item.words.append(str(text))

    def next(self, *texts: Text) -> None:
        """One more row of plain texts."""
        for c, text in enumerate(texts):
            self.put(self.row, c, text)
        self.row += 1

    def text(self, separator: str, padded: bool) -> str:
        wide = max(c for _, c in self.cells) + 1
        out = io.StringIO()
        writer = csv.writer(out, delimiter=separator, lineterminator="\r\n")
        for r in range(max(r for r, _ in self.cells) + 1):
            row = [str(self.cells.get((r, c), "")) for c in range(wide)]
            while not padded and len(row) > 1 and row[-1] == "":
                row.pop()
            writer.writerow(row) if row != [""] else out.write("\r\n")
        return out.getvalue()


def workbook(sheets: list[tuple[str, Sheet]]) -> bytes:
    """An xlsx file of the sheets, in their order."""
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {"in_memory": True})
    bold = book.add_format({"bold": True})
    for name, sheet in sheets:
        page = book.add_worksheet(name)
        for (r, c), text in sorted(sheet.cells.items()):
            page.write(r, c, text) if isinstance(text, int | float) else page.write_string(r, c, text)
        for r, first, last in sheet.merged:
            page.merge_range(r, first, r, last, sheet.cells[r, first], bold)
    book.close()
    return out.getvalue()


@dataclass
class Draft:
    """A table in the making: its office, what it states, and the facts it has shown so far."""

    office: Office
    values: Values
    machines: list[str]
    stations: list[str]
    whole: list[str]
    parts: list[str]
    noise: list[tuple[str, list[str]]]
    facts: list[Fact] = field(default_factory=list)
    sheet: Sheet = field(default_factory=Sheet)

    @property
    def words(self) -> Words:
        return self.office.words

    def items(self, m: int, s: int, parameter: str) -> list[Item]:
        """The cells of one parameter; what they mean is noted down."""
        if parameter.startswith("noise:"):
            texts = dict(self.noise)[parameter[6:]]
            shown = texts[max(s, 0)]
            plain = shown.replace(",", ".")
            text = self.office.number(float(plain), 2) if plain.replace(".", "").isdigit() else shown
            return [Item(m, s, parameter, "value", text)]
        facts = self.office.facts(self.values, m, s, parameter)
        self.facts += facts
        return facts[0].items

    def with_noise(self, parameters: list[str], most: int = 3) -> list[str]:
        """The parameters with some of the columns that mean nothing here among them."""
        mixed = list(parameters)
        for name, _ in self.noise[: self.office.rng.randint(1, most)]:
            mixed.insert(self.office.rng.randint(1, len(mixed)), f"noise:{name}")
        return mixed

    def head(self, item: Item, position: str = "", bare: bool = False, units: bool = True) -> str:
        name = self.office.name(item.parameter, item.aspect, position, bare)
        if self.office.place == "title":
            unit = self.office.title_unit(item.unit)
            return self.office.unit_form.format(n=name, u=unit) if unit else name
        return self.office.with_unit(name, item.unit) if units and self.office.place != "none" else name


def title_block(d: Draft, kind: int, machine: bool) -> None:
    """Rows above the table: title, who and what, what the lengths are in."""
    sheet, words = d.sheet, d.words
    if kind == 0:
        return
    if kind not in (3, 4):
        sheet.next(words("title"))
    mm = words("inchnote" if d.office.inch else "mmnote")
    if d.office.place == "title" or kind == 2:
        sheet.next(mm)
    pairs = ["drawing_number", "drawing_revision"]
    if machine:
        pairs = ["machine", *pairs]
    plain, d.office.case = d.office.case, "free"
    if kind == 4:
        shown = [d.items(0, -1, name)[0] for name in pairs]
        texts = [f"{d.office.name(i.parameter).rstrip(':')}: {i.text}" for i in shown]
        for text, items in (
            ((texts[0], shown[:1]), (", ".join(texts[1:]), shown[1:])) if machine else ((", ".join(texts), shown),)
        ):
            sheet.put(sheet.row, 0, text, *items)
            sheet.row += 1
    elif kind == 3:
        c = 0
        for name in pairs:
            (item,) = d.items(0, -1, name)
            sheet.put(sheet.row, c, d.office.name(name), item, head=True)
            sheet.put(sheet.row, c + 1, item.text, item)
            c += 2
        sheet.row += 1
        if d.office.place == "title":
            sheet.next(mm)
    else:
        colon = ":" if kind == 2 else ""
        for name in pairs:
            (item,) = d.items(0, -1, name)
            sheet.put(sheet.row, 0, d.office.name(name) + colon, item, head=True)
            sheet.put(sheet.row, 1, item.text, item)
            sheet.row += 1
    d.office.case = plain
    sheet.row += d.office.rng.choice([0, 1, 1])


def foot(d: Draft) -> None:
    """Notes below the table."""
    if d.office.rng.random() < 0.5:
        d.sheet.row += d.office.rng.choice([0, 1])
        for note in d.office.rng.sample(d.words.known["notes"], 2):
            d.sheet.next(note)
