"""From a template of JSON to a document.

An element ``{"@p": ...}`` of a list comes once for each position, ``{"@m": ...}`` for each machine, and spreads a list;
``{"@0": ...}`` is of one table of the office. A key ``@p {p}`` comes for each position, ``@0 key`` in one table only.
Texts hold values as those of sheets do; one that is a number alone is a number, unless the office writes texts only.
"""

import json
import re
from collections.abc import Iterator, Sequence
from typing import Any

from practice_twentyfourth.office import Mark, Office, Truth
from practice_twentyfourth.trade import Rotor

VALUES = {"value", "val", "Wert", "valeur", "valore", "valor", "値", "值", "数值", "значение", "公差", "Toleranz"}
NAMES = {"name", "char", "libelle", "项目", "属性", "nombre"}
TEXTS = ("bearing_designation", "machine", "drawing_number", "drawing_revision", "station")


def pointer(path: Sequence[str | int]) -> str:
    """The JSON Pointer of a path."""
    return "".join("/" + str(part).replace("~", "~0").replace("/", "~1") for part in path)


class Tree(Truth):
    """A document with what its leaves tell."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        super().__init__(office, rotors)
        self.found: list[tuple[list[str | int], Mark]] = []
        self.document = self._built(json.loads(office.template), 0, 0, [])
        for path, mark in self.found:
            self.note(pointer(path), mark, self._heads(path, mark))

    def _each(self, sign: str, m: int, s: int) -> Iterator[tuple[int, int]]:
        """The machines or positions that ``@p``, ``@m``, ``@0`` stand for."""
        if sign == "@p":
            yield from ((m, k) for k in range(len(self.rotors[m].positions)))
        elif sign == "@m":
            yield from ((k, s) for k in range(len(self.rotors)))
        elif int(sign[1:]) == self.office.edition:
            yield m, s

    def _built(self, node: Any, m: int, s: int, path: list[str | int]) -> Any:
        """A part of the document."""
        if isinstance(node, dict):
            return self._object(node, m, s, path)
        if isinstance(node, list):
            items: list[Any] = []
            self._spread(node, m, s, path, items)
            return items
        if not isinstance(node, str):
            return node
        text, marks = self.fill(node, m, s)
        self.found += [(path, mark) for mark in marks]
        alone = len(marks) == 1 and marks[0].parameter not in TEXTS and not self.office.texts
        plain = text.replace(" ", "") if alone else ""
        if re.fullmatch(r"[+-]?\d+", plain):
            return int(plain)
        return float(plain) if re.fullmatch(r"[+-]?\d+\.\d+", plain) else text

    def _object(self, node: dict[str, Any], m: int, s: int, path: list[str | int]) -> dict[str, Any]:
        """An object with the keys of the template."""
        made: dict[str, Any] = {}
        for key, value in node.items():
            sign = re.match(r"(@\w) ", key)
            for own_m, own_s in self._each(sign[1], m, s) if sign else ((m, s),):
                name, marks = self.fill(key[sign.end() :] if sign else key, own_m, own_s)
                self.found += [(path, mark) for mark in marks]
                made[name] = self._built(value, own_m, own_s, [*path, name])
        return made

    def _spread(self, nodes: list[Any], m: int, s: int, path: list[str | int], items: list[Any]) -> None:
        """The elements of a list."""
        for node in nodes:
            sign = next(iter(node)) if isinstance(node, dict) and len(node) == 1 else ""
            if re.fullmatch(r"@\w", sign):
                inner = node[sign]
                for own_m, own_s in self._each(sign, m, s):
                    several = inner if isinstance(inner, list) and isinstance(inner[0], dict) else [inner]
                    self._spread(several, own_m, own_s, path, items)
            else:
                items.append(self._built(node, m, s, [*path, len(items)]))

    def _heads(self, path: list[str | int], mark: Mark) -> dict[str, str]:
        """The words that say what a leaf is: its key, the name beside it, the head of its column."""
        if not path or mark.parameter == "station":
            return {}
        around: Any = self.document
        for part in path[:-1]:
            around = around[part]
        if isinstance(around, dict):
            named = next((str(around[key]) for key in around if key in NAMES), "")
            own = str(path[-1])
            return {pointer(path): named or (str(path[-2]) if own in VALUES and len(path) > 1 else own)}
        first = next(iter(v for v in self.document.values() if isinstance(v, list)), [])
        return {pointer(path): str(first[int(path[-1])])} if int(path[-1]) < len(first) else {}

    def content(self, encoding: str) -> bytes:
        """The bytes of the document."""
        return (json.dumps(self.document, ensure_ascii=False, indent=2) + "\n").encode(encoding)
