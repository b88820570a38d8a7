"""JSON: a document whose leaves hold codes.

A list that begins with ``"*"`` stands once for each position (``"**"`` once for each rotor), and so does a member whose
key holds ``{p}``; ``{p}`` alone is the name of the position. The habit ``named`` is the member that names a value.
"""

import json
import re
from typing import Any

from practice_sixteenth.office import Office, code
from practice_sixteenth.sheet import Truth
from practice_sixteenth.shown import Hand, Told, show
from practice_sixteenth.trade import Machine


class Tree:
    """A document with the truth of its leaves, noted by their pointers."""

    def __init__(self, office: Office, hand: Hand, machines: list[Machine]) -> None:
        self.office, self.hand, self.machines = office, hand, machines
        self.truth = Truth()
        self.count = 0
        self.document = self._node(json.loads("\n".join(office.sections["body"])), "", 0, -1, "")

    def bytes(self, encoding: str) -> bytes:
        return json.dumps(self.document, ensure_ascii=False, indent=2).encode(encoding)

    def _node(self, node: Any, path: str, m: int, s: int, word: str) -> Any:
        if isinstance(node, dict):
            return self._members(node, path, m, s)
        if isinstance(node, list):
            return self._items(node, path, m, s, word)
        return self._leaf(node, path, m, s, word) if isinstance(node, str) else node

    def _members(self, node: dict[str, Any], path: str, m: int, s: int) -> dict[str, Any]:
        found: dict[str, Any] = {}
        runs = [(key, at) for key in node for at in self._places(key, s)]
        name = next((str(node[k]) for k in self.office.habit("named", "name").split() if k in node), "")
        for key, at in runs:
            own = key.replace("{p}", self.machines[m].positions[at]) if "{p}" in key else key
            pointer = f"{path}/{own.replace('~', '~0').replace('/', '~1')}"
            label = name.replace("{p}", self.machines[m].positions[at]) if name and "<" not in name else own
            value = self._node(node[key], pointer, m, at, label)
            if value != "":
                found[own] = value
        return found

    def _places(self, key: str, s: int) -> list[int]:
        return list(range(len(self.machines[0].positions))) if "{p}" in key and s < 0 else [s]

    def _items(self, node: list[Any], path: str, m: int, s: int, word: str) -> list[Any]:
        found: list[Any] = []
        repeat = node[0] if node and node[0] in ("*", "**") else ""
        if repeat == "**":
            for index in range(len(self.machines)):
                found += [self._node(item, f"{path}/{len(found)}", index, s, word) for item in node[1:]]
            return found
        for item in node if not repeat else []:
            if isinstance(item, list) and item and item[0] == "*":
                self._positions(item, path, m, found, word)
            else:
                found.append(self._node(item, f"{path}/{len(found)}", m, s, word))
        if repeat:
            self._positions(node, path, m, found, word)
        return found

    def _positions(self, node: list[Any], path: str, m: int, found: list[Any], word: str) -> None:
        for at in range(len(self.machines[m].positions)):
            for item in node[1:]:
                found.append(self._node(item, f"{path}/{len(found)}", m, at, word))

    def _leaf(self, text: str, path: str, m: int, s: int, word: str) -> Any:
        machine = self.machines[m]
        if text == "{p}":
            key = path.rpartition("/")[2]
            self.truth.note([Told(m, s, "station", machine.positions[s])], path, {path: key})
            return machine.positions[s]
        if text == "{i}":
            self.count += 1
            return self.count
        found = re.fullmatch(r"<([^<>]+)>", text)
        if found is None:
            return text.replace("{p}", machine.positions[s]) if s >= 0 else text
        own = code(found[1])
        shown, told = show(self.hand, machine, own, s)
        self.truth.note(told, path, {path: word})
        number = shown.lstrip("+")
        if self.office.habit("strings") or own.name in ("des", "dwg", "rev"):
            return shown
        if re.fullmatch(r"-?(0|[1-9]\d*)", number):
            return int(number)
        return float(number) if re.fullmatch(r"-?\d+\.\d+", number) else shown
