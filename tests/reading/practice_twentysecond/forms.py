"""From an office's form to the cells or the tree of a table.

A line of a form is a row of cells with ``|`` between. ``^`` begins a row of headings, ``p`` a row that comes once for
each position, ``m`` one that comes once for each machine; between ``[p`` or ``[m`` and ``]`` lie rows that come again
together. A cell that begins with ``*`` comes once for each position of all machines beside each other, with ``**`` it
stands over the positions of a machine. ``~`` in a row of headings is an empty cell that belongs to no group.
"""

import re
from collections.abc import Sequence
from typing import Any

from practice_nineteenth.office import Line
from practice_nineteenth.sheet import Sheet, Tree
from practice_nineteenth.trade import Rotor

from practice_twentysecond.firm import Filled, Firm, fill, of_edition

TEXTS = ("bearing_designation", "machine", "drawing_number", "drawing_revision", "station")


class Form:
    """A form on its way to cells."""

    def __init__(self, firm: Firm, rotors: Sequence[Rotor]) -> None:
        self.firm = firm
        self.sheet = Sheet(firm, rotors)
        self.headings: list[int] = []
        self.alone: set[tuple[int, int]] = set()
        self.ended = True
        self.number = 0

    def write(self) -> Sheet:
        """All rows of the form."""
        self._rows(self.firm.lines.strip("\n").split("\n"), 0, -1)
        return self.sheet

    def _rows(self, rows: list[str], m: int, s: int) -> None:
        """Rows for a machine and a position."""
        n = 0
        while n < len(rows):
            row = of_edition(rows[n], self.firm.edition)
            n += 1
            if row is None:
                continue
            kind, _, rest = row.partition(" ")
            if kind in ("[p", "[m"):
                depth, first = 1, n
                while depth:
                    depth += rows[n].startswith("[") - (rows[n] == "]")
                    n += 1
                for own_m, own_s in self._each(kind[1], m):
                    self._rows(rows[first : n - 1], own_m, own_s)
            elif kind in ("p", "m"):
                for own_m, own_s in self._each(kind, m):
                    self._row(rest, own_m, own_s)
            else:
                self._row(row, m, s)

    def _each(self, kind: str, m: int) -> list[tuple[int, int]]:
        """What rows come again for."""
        if kind == "m":
            return [(k, -1) for k in range(len(self.sheet.rotors))]
        return [(m, k) for k in range(len(self.sheet.rotors[m].positions))]

    def _row(self, row: str, m: int, s: int) -> None:
        """One row."""
        heading = row.startswith("^")
        if heading and self.ended:
            self.headings = []
        self.ended = not heading
        r = self.sheet.row
        if heading:
            self.headings.append(r)
            row = row[1:]
        elif not row.strip(" |"):
            self.headings = []
        self.number += "{#}" in row
        c = 1
        for text in (cell.strip() for cell in row.split("|")):
            own = of_edition(text, self.firm.edition)
            if own is None:
                continue
            if own.startswith("*"):
                for k, one in enumerate(self.sheet.rotors):
                    for p in range(len(one.positions)):
                        if own[:2] != "**" or p == 0:
                            self._cell(r, c, own.lstrip("*"), k, p, heading)
                        c += 1
                    if own[:2] == "**":
                        self.sheet.merge(r, c - len(one.positions), r, c - 1)
                continue
            if own == "~":
                self.alone.add((r, c))
            else:
                self._cell(r, c, own, m, s, heading)
            c += 1
        self.sheet.row += 1
        if heading and "merge" in self.firm.more and len(self.headings) > 1:
            self._merge(r - 1, c - 1)

    def _merge(self, r: int, last: int) -> None:
        """Merge the groups of a row of headings."""
        own = [c for c in range(1, last + 1) if (r, c) in self.sheet.grid or (r, c) in self.alone]
        for c, after in zip(own, [*own[1:], last + 1], strict=True):
            if (r, c) in self.sheet.grid:
                self.sheet.merge(r, c, r, after - 1)

    def _cell(self, r: int, c: int, text: str, m: int, s: int, heading: bool) -> None:
        """One cell."""
        filled = fill(self.firm, self.sheet.rotors[m], text, s, self.number)
        self.sheet.put(r, c, filled.text)
        for line, own in filled.told:
            self.sheet.known(r, c, line, m, own, self._heads(r, c, heading))

    def _heads(self, r: int, c: int, heading: bool) -> list[tuple[int, int]]:
        """The cells that say what a cell holds."""
        if heading:
            return []
        found = []
        for row in self.headings:
            own = c
            while own > 0 and (row, own) not in self.sheet.grid and (row, own) not in self.alone:
                own -= 1
                if row == self.headings[-1]:
                    own = 0
            found.append((row, own))
        if self.headings and "label" in self.firm.more:
            found += [(r, int(column)) for column in self.firm.more["label"].split() if int(column) != c]
        elif not self.headings:
            before = [k for k in range(1, c) if (r, k) in self.sheet.grid]
            found += [(r, k) for k in before[-1:]]
        return found


def grown(firm: Firm, rotors: Sequence[Rotor]) -> Tree:
    """The JSON document of an office's ``tree``.

    ``@p`` or ``@m`` first in a list: its items come for each position or machine; a key with ``{P}`` comes for each
    position. ``name`` in ``more`` is the key of an attribute's name, ``boxed`` the keys of values in an object.
    """
    tree = Tree(firm, rotors)
    boxed = firm.more.get("boxed", "").split()

    def leaf(text: str, path: list[str | int], word: str, m: int, s: int) -> Any:
        filled: Filled = fill(firm, rotors[m], text, s, 0)
        pointer = "".join("/" + str(p).replace("~", "~0").replace("/", "~1") for p in path)
        for line, own in filled.told:
            tree.note(pointer, line, m, own, {pointer: word})
        if filled.told and filled.told[0][0].parameter not in TEXTS:
            if re.fullmatch(r"[+-]?\d+", filled.text):
                return int(filled.text)
            if re.fullmatch(r"[+-]?\d+\.\d+", filled.text):
                return float(filled.text)
        return filled.text

    def grow(node: Any, path: list[str | int], word: str, m: int, s: int) -> Any:
        if isinstance(node, list):
            each = {"@p": [(m, k) for k in range(len(rotors[m].positions))], "@m": [(k, s) for k in range(len(rotors))]}
            several = each.get(node[0]) if isinstance(node[0], str) else None
            grown_list: list[Any] = []
            for own_m, own_s in several or [(m, s)]:
                for item in node[1:] if several else node:
                    if isinstance(item, dict) and str(firm.edition) not in item.get("@", str(firm.edition)):
                        continue
                    grown_list.append(grow(item, [*path, len(grown_list)], word, own_m, own_s))
            return grown_list
        if not isinstance(node, dict):
            return leaf(node, path, word, m, s) if isinstance(node, str) else node
        word = str(node.get(firm.more.get("name", ""), word))
        found: dict[str, Any] = {}
        for key, value in node.items():
            own_key = of_edition(key, firm.edition)
            if own_key is None or key == "@":
                continue
            for p in range(len(rotors[m].positions)) if "{P}" in own_key else [s]:
                shown = own_key.replace("{P}", rotors[m].positions[p])
                below = [*path, shown]
                if "{P}" in own_key:
                    pointer = "".join(f"/{k}" for k in path)
                    tree.note(pointer, Line((), "", "station"), m, p, {})
                named = firm.more.get("name", "") in node or shown in boxed
                found[shown] = grow(value, below, word if named else shown, m, p)
        return found

    tree.document = grow(firm.tree, [], "", 0, -1)
    return tree
