"""Objects of a list that say which other one they are in, as the tree of machines, positions and parts that they are.

``objects: [{"id": "Pump P-3", "attributes": [...]}, {"id": "DE", "parent": "Pump P-3", "attributes": [...]}]``: stores
of data hold machines, positions and parts beside each other. Which is around which a key tells (``parent``,
``ownerId``, ``children``), or a path for a name (``PUMP-12/DE/shaft``).
"""

import re
from collections import Counter
from collections.abc import Sequence
from itertools import groupby
from typing import Any

from attrs import define, field

from linter.reading.files.grids import cell_text
from linter.reading.layouts.json_flat import Unflattened
from linter.reading.layouts.json_groups import Groups
from linter.reading.layouts.json_keys import INNER, OF_DOCUMENT, Path, bare, key_text, local
from linter.reading.layouts.json_links import LONGEST, STORED, Node, by_keys, by_paths
from linter.reading.layouts.json_shapes import record_shape
from linter.reading.layouts.json_things import is_other_thing, names_seat
from linter.reading.layouts.sides import is_use, side_of
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.own_stations import is_no_position
from linter.reading.words.parts import concepts_said

#: Keys of what names an object, the surest first; those of a store only where nothing else does.
_CALLED = (
    re.compile(
        r"(?:.* )?(?:name|title|label|bezeichnung|benennung|nom|libellé|nombre|nome|denominazione|denominación"
        r"|désignation|имя|название|наименование|名称|名前|品名)"
    ),
    re.compile(r"description|beschreibung|desc|descripción|descrizione|описание|描述|説明|caption|text"),
    re.compile(r"(?:.* )?(?:type|kind|class|category|art|typ|objekttyp|tipo|clase|тип|类型|类别|種類|種別)"),
    re.compile(r"id|key|code|tag|no|nr|number|ref|ident|kennung|codice|código|код|编号|代号|番号|コード"),
)
_APART = re.compile(r"[\s_/,:;–—-]+")
_DEEPEST, _FEWEST, _MOST = 4, 2, 20_000
#: Parameters of a position that alike objects state, at least.
_ENOUGH = 2
_MACHINES, _STATIONS = f"{INNER}machines", f"{INNER}stations"


def linked(flat: Unflattened, words: Words) -> Unflattened:
    """The document with each list of objects that say which one they are in as machines with positions and parts."""
    flat.document = _Trees(words, flat.origin, flat.left).of(flat.document)
    return flat


@define(eq=False)
class _Trees:
    """Finds the trees of a document; ``origin`` and ``left`` as in it."""

    words: Words
    origin: dict[Path, Path]
    left: dict[Path, str]
    groups: Groups = field(init=False)

    def __attrs_post_init__(self) -> None:
        self.groups = Groups(self.words)

    def of(self, node: Any, at: Path = ()) -> Any:
        """A document with each list of such objects as machines with positions and parts; itself where none is."""
        children = [*node.values()] if isinstance(node, dict) else node if isinstance(node, list) else []
        nodes = []
        if _FEWEST <= len(children) <= _MOST and all(isinstance(child, dict) for child in children):
            steps = node if isinstance(node, dict) else range(len(node))
            nodes = [Node(item, (*at, step)) for step, item in zip(steps, children, strict=True)]
        if nodes and (tree := self._tree(nodes, at, [*node] if isinstance(node, dict) else [])) is not None:
            return tree
        if not isinstance(node, dict) or len(at) > _DEEPEST:
            return node
        result: dict[str, Any] = {}
        for key, value in node.items():
            new = self.of(value, (*at, key)) if isinstance(value, (dict, list)) else value
            result |= new if new is not value and isinstance(value, list) else {key: new}
        return result if any(result.get(key) is not value for key, value in node.items()) else node

    def _tree(self, nodes: list[Node], at: Path, names: list[str]) -> dict[str, Any] | None:
        """Objects beside each other as a tree, in place of what holds them; None where nothing links them."""
        linked = by_keys(nodes, names) or by_paths(nodes, names)
        if not (linked or self._in_order(nodes)) or record_shape([node.item for node in nodes], self.words) is not None:
            return None
        self._name(nodes)
        self._judge(nodes)
        self._tell_alike(nodes)
        stations = {(node.station, id(node.around)) for node in nodes if node.station}
        if len(stations) < _FEWEST and not any(node.kind == "machine" for node in nodes):
            return None
        result: dict[str, Any] = {}
        where = at if names else at[:-1]
        for node in nodes:
            if node.around is None:
                self._put(node, result, where, at)
        return result

    def _in_order(self, nodes: Sequence[Node]) -> bool:
        """Link positions to the machine before them in a list of both, each with what it states in it; whether so."""
        held = all(any(isinstance(value, (dict, list)) for value in node.item.values()) for node in nodes)
        items = [{key: value for key, value in node.item.items() if local(key) != "id"} for node in nodes]
        if not held or self.groups.of_items(items).level:
            return False
        self._name(nodes)
        said = [self._split(node.name)[0] for node in nodes]
        if len({*filter(None, said)}) < _FEWEST or said[0] or all(said) or _named_again(said):
            return False
        machine = None
        for node, station in zip(nodes, said, strict=True):
            if station and machine is not None:
                node.around = machine
                machine.inner.append(node)
            elif not station and not self._split(node.name)[1] and not self._says_nothing(node.name):
                machine = node if self._states_machine(node.item) else machine
        self._parts_in_order(nodes, said)
        return True

    def _parts_in_order(self, nodes: Sequence[Node], said: Sequence[str]) -> None:
        """Link parts to the position before them where the same stand behind each; else they are told."""
        behind: list[list[Node]] = []
        for node, station in zip(nodes, said, strict=True):
            if station:
                behind.append([node])
            elif behind and self._split(node.name)[1]:
                behind[-1].append(node)
        names = [Counter(node.name for node in row[1:]) for row in behind]
        if all(name == names[0] for name in names) and max(names[0].values(), default=0) == 1:
            for position, *parts in behind:
                for node in parts:
                    node.around = position
                    position.inner.append(node)
            return
        between = any(len(row) > 1 for row in behind[:-1])
        for node in (node for row in behind for node in row[1:]):
            if between or names[-1][node.name] > 1:
                node.lost = "it does not say which position it is of"

    def _tell_alike(self, nodes: Sequence[Node]) -> None:
        """Parts of the same name in the same object, which are not told apart, are told."""
        rows = Counter((id(node.around), node.name) for node in nodes)
        for node in nodes:
            several = rows[(id(node.around), node.name)] > 1 and node.kind not in ("machine", "station")
            if several and not self._says_nothing(node.name):
                node.lost = node.lost or "another object beside it has the same name"
            if node.kind in ("machine", "station") or (node.around is None and node.inner):
                node.lost = ""

    def _name(self, nodes: Sequence[Node]) -> None:
        """Give each object its name: by the key of a machine or position, else by one of the keys that hold names."""
        keys = [key for key in dict.fromkeys(key for node in nodes for key in node.item) if self._may_name(key, nodes)]
        texts = {key: [cell_text(node.item.get(key)).strip() for node in nodes] for key in keys}
        places = [key for key in keys if sum(bool(self._split(text)[0]) for text in texts[key]) >= _FEWEST]
        by_word = [[key for key in keys if said.fullmatch(word_key(bare(key)))] for said in _CALLED]
        ordered = [key for key in by_word[0] if key in places] + places + [key for keys in by_word for key in keys]
        for node in nodes:
            machine = key_text(node.item, "machine", self.words)[0]
            for key in [] if node.name else [*filter(None, [machine]), *ordered]:
                text = cell_text(node.item.get(key)).strip()
                if text and key not in node.left and not STORED.fullmatch(text):
                    node.name, node.key = text, key
                    break

    def _may_name(self, key: str, nodes: Sequence[Node]) -> bool:
        """Whether a key holds short texts and is no word for a parameter."""
        values = [node.item[key] for node in nodes if node.item.get(key) not in (None, "") and key not in node.left]
        heading = self.words.heading(key)
        known = heading is not None and heading.parameter not in ("machine", "station") and local(key) != "id"
        plain = all(isinstance(value, (str, int)) and not isinstance(value, bool) for value in values)
        return plain and bool(values) and not known and all(len(cell_text(value)) <= LONGEST for value in values)

    def _split(self, text: str) -> tuple[str, str]:
        """The position and the part that a name says (``DE shaft seat``); empty where it says none."""
        if text.isdigit():
            return "", ""
        if self.words.names.station(text) and not names_seat(text):
            return text, ""
        words = [word for word in _APART.split(text) if word]
        for count in range(1, min(len(words), 4)):
            for place, rest in (
                (" ".join(words[:count]), " ".join(words[count:])),
                (" ".join(words[-count:]), " ".join(words[:-count])),
            ):
                counted = place.isdigit() and not concepts_said(rest)  # the number of a machine
                if names_seat(rest) and not names_seat(place) and self.words.names.station(place) and not counted:
                    return place, rest
        if own := self.words.station_said(text):
            return own, ""
        return "", text if names_seat(text) else ""

    def _judge(self, nodes: Sequence[Node]) -> None:
        """Say of each object whether it is a machine, a position, a part, or something else."""
        for node in nodes:
            key, said = self._place(node)
            node.station, node.part = self._split(node.name)
            if said and key != node.key and key not in node.left:
                node.station, node.part = said, node.part or node.name
            node.kind = "station" if node.station else "part" if node.part else ""
        self._alike(nodes)
        self._find_machines(nodes)

    def _find_machines(self, nodes: Sequence[Node]) -> None:
        """Say of the objects around positions, or around parts where no object is a position, which are machines."""
        stations = any(node.kind == "station" for node in nodes)
        for node in nodes:
            if node.kind == "station" or (node.kind == "part" and not stations):
                around = [outer for outer in node.outer() if not self._says_nothing(outer.name)]
                stating = [outer for outer in around if self._states_machine(outer.item)]
                own = [outer for outer in stating if not outer.kind] or [outer for outer in around if not outer.kind]
                named = any(outer.kind == "machine" for outer in around)
                if not named and (machine := next(iter(own or stating), None)) is not None:
                    machine.kind = "machine"

    def _place(self, node: Node) -> tuple[str, str]:
        """Key and text of the position that an object, or a plain object in it, names itself."""
        inner = [(key, value) for key, value in node.item.items() if isinstance(value, dict)]
        for outer, item in (("", node.item), *inner):
            key, said = key_text(item, "station", self.words)
            if said and (not outer or self.words.names.station(said)):
                return f"{outer}{INNER}{key}" if outer else key, said
        return "", ""

    def _says_nothing(self, name: str) -> bool:
        """Whether a name says only that positions or data stand there."""
        place = self.words.heading(name) == Heading("station")
        return not name or place or local(name) in OF_DOCUMENT or is_use(name) or self.words.says_machine(name)

    def _states_machine(self, item: Any) -> bool:
        """Whether an object states a parameter of a whole machine."""
        if isinstance(item, str):
            heading = self.words.heading(item)
            return heading is not None and heading.entry.level == "machine" and heading.parameter != "machine"
        children = item if isinstance(item, list) else [*item, *item.values()] if isinstance(item, dict) else []
        return any(self._states_machine(child) for child in children)

    def _alike(self, nodes: Sequence[Node]) -> None:
        """Objects in the same one whose names say nothing are positions where they state the same of a position."""
        rows: dict[int, list[Node]] = {}
        for node in nodes:
            if node.kind in ("", "station") and node.around is not None:
                rows.setdefault(id(node.around), []).append(node)
        for row in rows.values():
            stated = {id(node): self._stated(node) for node in row}
            count = Counter(name for names in stated.values() for name in names)
            shared = {name for name, times in count.items() if times > 1}
            alike = [node for node in row if len(stated[id(node)] & shared) >= _ENOUGH]
            if len(alike) < _FEWEST or len({node.name for node in alike}) < len(alike):
                continue
            for node in alike:
                if not node.kind and node.name and not is_no_position(node.name) and not self._says_nothing(node.name):
                    node.kind, node.station = "station", node.name

    def _stated(self, node: Node) -> frozenset[str]:
        own = self.groups.stated(node.item, side_of(node.part or node.name))
        return own.union(*(self._stated(child) for child in node.inner))

    def _put(self, node: Node, into: dict[str, Any], path: Path, outer: Path) -> None:
        """Put an object, and what is in it, where the walk down the document understands it."""
        own = {key: value for key, value in node.item.items() if key != node.key and key not in node.left}
        named = (*node.at, node.key) if node.key else node.at
        if node.kind in ("machine", "station"):
            plural = _MACHINES if node.kind == "machine" else _STATIONS
            held = into.setdefault(plural, [])
            here: Path = (*path, plural, len(held))
            said = node.name if node.kind == "machine" else node.station
            self.origin |= {(*path, plural): outer, here: node.at, (*here, node.kind): named}
            if node.part and node.kind == "station":
                held.append({node.kind: said, node.part: own})
                here = (*here, node.part)
                self.origin[here] = node.at
            else:
                own = {node.kind: said} | {key: value for key, value in own.items() if key != node.kind}
                held.append(own)
        else:
            key = f"{node.at[-1]}{INNER}data" if self._says_nothing(node.name) else node.name
            here = (*path, key)
            if key in into:
                key = f"{node.at[-1]}{INNER}{node.name}"
                here = (*path, key)
                self.left[here] = "another object beside it has the same name"
            elif node.lost:
                self.left[here] = node.lost
            elif not self._says_nothing(node.name) and is_other_thing(node.name, self.words):
                self.left[here] = "it is of another part"
            into[key] = own
            self.origin[here] = node.at
        side = side_of(node.part or node.name)
        on_part = node.kind in ("machine", "station") or (side is not None and side.side in ("shaft", "housing"))
        for child in node.inner:
            if on_part or child.kind not in ("machine", "station"):
                self._put(child, own, here, outer)
            else:
                self._put(child, into, path, outer)


def _named_again(said: Sequence[str]) -> bool:
    """Whether a position comes twice with no other object between: each part of it is an object of its own."""
    runs = (list(run) for named, run in groupby(said, key=bool) if named)
    return any(len({*run}) < len(run) for run in runs)
