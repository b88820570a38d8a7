"""Positions and machines that a JSON document shows by what it states of each: the same parameters again and again.

No list of words holds every name that a firm gives its bearing positions. Objects beside each other that state the same
parameters of a seat or bearing are positions, and objects that hold positions each are machines, whatever their keys.
Parts (shaft, housing), parts of a value, and words for one of several statements or states never are.
"""

from collections import Counter
from collections.abc import Iterable, Sequence
from itertools import islice
from typing import Any

from attrs import define, evolve, field, frozen

from linter.reading.files.grids import cell_text
from linter.reading.layouts.json_items import unwrapped
from linter.reading.layouts.json_keys import CALLED, key_text, local, names_place, part_key
from linter.reading.layouts.json_records import CONTEXT, Here, aspect_of, is_aspect, is_nominal, is_quantity
from linter.reading.layouts.json_units import says_unit
from linter.reading.layouts.sides import Side, is_use, side_of, within
from linter.reading.words.column_words import KEYS
from linter.reading.words.designations import designation_strength
from linter.reading.words.dictionary import dictionary, word_key
from linter.reading.words.headings import Words
from linter.reading.words.own_stations import is_no_position
from linter.reading.words.part_evidence import PARTS
from linter.reading.words.parts import concepts_said, is_bearing, tells_feature

#: Parameters that positions state alike, at least.
_ENOUGH = 2
#: Words of a layout that say a place in a machine as well.
_OVER_ANOTHER = frozenset(("UPPER", "LOWER"))
#: Items of a list that are looked at, and the longest name of one.
_LOOKED_AT, _LONGEST = 40, 60
#: Keys of the model of a machine (common practice).
_MODELS = frozenset(
    ("model", "modell", "baumuster", "modèle", "modele", "modelo", "modello", "модель", "型号", "型式", "機種", "机型")
)
#: Keys of the number of an entry in a parts list (common practice).
_ENTRY_NUMBERS = frozenset((
    "number", "no", "nr", "part_number", "partnumber", "part_no", "partno", "item_number", "itemnumber", "itemno",
    "item_no", "material_number", "materialnumber", "nummer", "teilenummer", "sachnummer", "artikelnummer",
    "materialnummer", "numéro", "numero", "référence", "reference", "código", "codigo", "codice", "номер", "编号",
    "物料号", "品番", "番号",
))  # fmt: skip


@frozen
class Group:
    """Objects beside each other that are positions or machines.

    Attributes
    ----------
    level : {"", "station", "machine"}
        What they are; empty where they are neither.
    members : tuple of str
        Keys of an object that name them.
    name : str
        Key inside each item of a list that tells its name; empty where none does.
    assumed : frozenset of str
        Members that no word for a position names.
    unnamed : bool
        True for items of a list that nothing names.
    """

    level: str = ""
    members: tuple[str, ...] = ()
    name: str = ""
    assumed: frozenset[str] = frozenset()
    unnamed: bool = False


@define(eq=False)
class Groups:
    """Finds positions and machines of one document; what is stated below each object is worked out once.

    ``places`` are keys that are positions somewhere in the document: where they stand again they are the same.
    """

    words: Words
    places: set[str] = field(factory=set)
    _stated: dict[tuple[int, str], frozenset[str]] = field(factory=dict)
    _holds: dict[int, bool] = field(factory=dict)
    _kept: list[Any] = field(factory=list)

    def stated(self, node: Any, side: Side | None = None) -> frozenset[str]:
        """Parameters of a position that are stated below a node without naming the position themselves."""
        key = (id(node), side.word if side else "")
        if key not in self._stated:
            self._kept.append(node)  # so that no other object gets its number
            self._stated[key] = frozenset(self._below(node, side))
        return self._stated[key]

    def _below(self, node: Any, side: Side | None) -> Iterable[str]:
        if isinstance(node, list):
            for item in islice((item for item in node if isinstance(item, (dict, list))), _LOOKED_AT):
                texts = [v for v in item.values() if isinstance(v, str)] if isinstance(item, dict) else item
                inner = next((s for text in texts if isinstance(text, str) and (s := side_of(text))), side)
                yield from filter(None, (self._named(t, inner) for t in texts if isinstance(t, str)))
                yield from self.stated(item, inner) if isinstance(item, dict) else ()
        for key, value in node.items() if isinstance(node, dict) else ():
            named = self._named(key, side)
            quantity = isinstance(value, dict) and any(map(is_aspect, value))
            if named and (quantity or not isinstance(value, (dict, list))):
                yield named
            elif isinstance(value, str) and _is_designation(key, value):
                yield "bearing_designation"
            elif isinstance(value, (dict, list)):
                yield from self.stated(value, side_of(key) or side)

    def _named(self, text: str, side: Side | None) -> str:
        heading = within(self.words, side, text)
        own = heading is not None and heading.entry.level == "station" and not heading.station
        return heading.parameter if heading is not None and own and heading.parameter != "station" else ""

    def freed(self, here: Here, node: Any, *, of_ring: bool) -> Here:
        """The place above a node without a part around it: a size of a ring, or what holds seats of another part too.

        A spindle that bears its bearings with their seats is the machine. A name that means the part's own seat below
        it (``albero: {sede}``) is no other's.
        """
        sides = [side for word in here.trail if (side := side_of(word)) is not None and side.side in PARTS]
        if of_ring:
            return evolve(here, trail=())
        if not sides or not isinstance(node, (dict, list)):
            return here
        stated, own = self.stated(node), self.stated(node, sides[-1]) - self.stated(node)
        seats = [name.partition("_") for name in stated if "_seat_" in name]
        if all(part == sides[-1].side or f"{sides[-1].side}_{of}" in own for part, _, of in seats):
            return here
        rest = (word for word in here.trail if (side := side_of(word)) is None or side.side not in PARTS)
        return evolve(here, trail=tuple(rest))

    def states_seats(self, node: Any) -> bool:
        """Whether sizes of seats of the shaft and of the housing stand below a node."""
        return all(f"{part}_seat_diameter" in self.stated(node) for part in PARTS)

    def numbers_of(self, node: dict[str, Any], trail: Sequence[str]) -> frozenset[str]:
        """Keys of the number of an entry of a parts list that are no designation: its bearing states that elsewhere."""
        numbers = [key for key in node if local(key) in _ENTRY_NUMBERS]
        side = (
            next((side for word in reversed(trail) if (side := side_of(word)) is not None), None) if numbers else None
        )
        return frozenset(
            key
            for key in numbers
            if "bearing_designation" in self.stated({k: v for k, v in node.items() if k != key}, side)
        )

    def holds_positions(self, node: Any) -> bool:
        """Whether objects below a node are positions."""
        if id(node) not in self._holds:
            self._kept.append(node)
            self._holds[id(node)] = False
            inner = node.values() if isinstance(node, dict) else node if isinstance(node, list) else ()
            here = self.of_object(node) if isinstance(node, dict) else self.of_items(node) if inner else Group()
            self._holds[id(node)] = bool(here.level) or any(
                self.holds_positions(child)
                for child in islice(inner, _LOOKED_AT)
                if isinstance(child, (dict, list)) and len(child) > 0
            )
        return self._holds[id(node)]

    def find_places(self, node: Any) -> None:
        """Note the keys of a document that are positions in one of its objects."""
        if isinstance(node, dict) and (group := self.of_object(node)).level == "station":
            self.places.update(group.members)
        for child in node.values() if isinstance(node, dict) else node if isinstance(node, list) else ():
            if isinstance(child, (dict, list)):
                self.find_places(child)

    def _placed(self, node: dict[str, Any]) -> tuple[str, ...]:
        """Keys of an object that are positions elsewhere in the document: two at least, and no machines over others."""
        placed = tuple(key for key, value in node.items() if key in self.places and isinstance(value, dict))
        return placed if len(placed) > 1 and not any(self.holds_positions(node[key]) for key in placed) else ()

    def over_stations(self, node: Any, named: bool) -> bool:
        """Whether positions stand below a key that says so, or their bearings alone below any.

        Seats that each say their part are none: what they name is the position that they are at.
        """
        return (named and not (isinstance(node, list) and part_key(node))) or self.over_designations(node)

    def over_designations(self, node: Any) -> bool:
        """Whether an object holds nothing but the bearing of each of some positions."""
        texts = node if isinstance(node, dict) and len(node) > 1 else {}
        placed = bool(texts) and all(key in self.places or names_place(key, self.words) for key in texts)
        return placed and all(isinstance(t, str) and designation_strength(t) != "no" for t in texts.values())

    def of_object(self, node: dict[str, Any]) -> Group:
        """The members of an object that are positions or machines."""
        if placed := self._placed(node):
            return self._stations(placed)
        inner = {key: value for key, value in node.items() if isinstance(value, dict)}
        known = {k for k, v in inner.items() if names_place(k, self.words) or self._is_over_another(k, v, False)}
        objects = [key for key, value in node.items() if isinstance(value, dict) and self._may_be_name(key, value)]
        if len(objects) < 2:
            return Group()
        members = self._alike(node, objects, known)
        if len(members) < 2 or any(is_no_position(key) for key in members if key not in known):
            return Group()
        if any(key_text(node[key], "station", self.words)[1] for key in members):
            return Group("machine" if any(map(self.holds_positions, (node[k] for k in members))) else "")
        of_machines = any(self.holds_positions(node[key]) for key in members)
        of_machines |= not known and all(self._states_machine(node[key]) for key in members)
        level = "machine" if of_machines else "station"
        return Group(level, tuple(members), assumed=frozenset(members) - known)

    def below(self, node: dict[str, Any], trail: Sequence[str]) -> Group:
        """The members of an object below some keys that are positions or machines."""
        sizes = self._over_sizes(node, trail)
        return sizes if sizes.members else self.of_object(node)

    def _over_sizes(self, node: dict[str, Any], trail: Sequence[str]) -> Group:
        """The members of an object right below a part that are positions over the size of their seat.

        Two at least, which words name or which the document has elsewhere, or which say nothing and state the same.
        """
        side = side_of(trail[-1]) if trail else None
        if side is None or side.side not in ("shaft", "housing"):
            return Group()
        keys = [key for key, value in node.items() if isinstance(value, dict) and _is_seat_size(value)]
        known = {key for key in keys if key in self.places or names_place(key, self.words)}
        if len(known) < len(keys) and all(node[key].keys() == node[keys[0]].keys() for key in keys):
            known |= {key for key in keys if self._says_nothing(key) and not is_no_position(key)}
        members = tuple(key for key in keys if key in known)
        if len(members) < 2 or len(members) < len(keys):
            return Group()
        return self._stations(members)

    def _stations(self, keys: tuple[str, ...]) -> Group:
        return Group("station", keys, assumed=frozenset(key for key in keys if not names_place(key, self.words)))

    def _alike(self, node: dict[str, Any], keys: Sequence[str], known: set[str]) -> list[str]:
        """Keys of an object over the same parameters: two at least, one where a word says that they are positions."""
        stated = {key: self.stated(node[key]) for key in keys}
        count = Counter(name for names in stated.values() for name in names)
        shared = {name for name, times in count.items() if times > 1}
        return [key for key in keys if len(stated[key] & shared) >= (1 if key in known else _ENOUGH)]

    def _states_machine(self, node: dict[str, Any]) -> bool:
        """Whether an object states a parameter of a whole machine itself."""
        found = (self.words.heading(key) for key in node)
        return any(h is not None and h.entry.level == "machine" and h.parameter != "machine" for h in found)

    def _may_be_name(self, key: str, value: dict[str, Any]) -> bool:
        """Whether a key says nothing that is known but a position or machine."""
        if is_quantity(value):
            return False
        return self._says_nothing(key) or self._is_over_another(key, value, True)

    def _says_nothing(self, key: str) -> bool:
        """Whether a key says nothing that is known but a position or machine."""
        if not key.strip() or len(key) > _LONGEST:
            return False
        if names_place(key, self.words):
            return True
        heading = self.words.heading(key)
        if heading is not None and heading.parameter not in ("machine", "station"):
            return False
        parts = all(map(tells_feature, word_key(key).split()))  # inner ring
        return not (parts or side_of(key) or is_use(key) or is_aspect(key) or self.words.groups(key))

    def _is_over_another(self, key: str, value: dict[str, Any], several: bool) -> bool:
        """Whether a word of a layout is a place: a bearing, or more than a part of one value, stands under ``oben``."""
        said = {*self.words.groups(key), *(concept.upper() for concept in concepts_said(key))}
        stated = self.stated(value) if said and said <= _OVER_ANOTHER else frozenset()
        return "bearing_designation" in stated or (several and len(stated) >= _ENOUGH)

    def of_items(self, nodes: list[Any]) -> Group:
        """Whether the items of a list are positions or machines, and which key tells their names."""
        nodes, _ = unwrapped(nodes)
        items = list(islice((node for node in nodes if isinstance(node, dict)), _LOOKED_AT))
        if len(items) < 2 or len(items) < min(len(nodes), _LOOKED_AT):
            return Group()
        count = Counter(name for item in items for name in self.stated(item))
        shared = {name for name, times in count.items() if times > 1}
        enough = 1 if self._named_positions(items) else _ENOUGH
        if not all(len(self.stated(item) & shared) >= enough for item in items):
            return Group()
        places = {key for key, texts in self._telling(items).items() if all(map(self.words.names.station, texts))}
        if any(is_no_position(key) and key not in places and _is_mark(key, value) for key, value in items[0].items()):
            return Group()  # variants or trials of the same
        level = "machine" if any(map(self.holds_positions, items)) else "station"
        if any(key_text(item, level, self.words)[1] for item in items):
            return Group(level)
        if level == "station" and all(key_text(item, "machine", self.words)[1] for item in items):
            name = self._name_key(items)
            return Group(level, name=name) if name else Group()  # machines of one position each
        name = self._name_key(items)
        return Group(level, name=name, unnamed=not name)

    def of_machines(self, nodes: list[Any]) -> Group | None:
        """Items of a list in whose names the names of the document show several positions: machines; else None."""
        items = [node for node in nodes[:_LOOKED_AT] if isinstance(node, dict)]
        told = [{told.station for key in item if (told := self.words.told_of(key)) is not None} for item in items]
        if len(items) < 2 or len(items) < min(len(nodes), _LOOKED_AT) or min(map(len, told)) < 2:
            return None
        if any(key_text(item, "machine", self.words)[1] for item in items):
            return Group("machine")
        name = self._name_key(items)
        return Group("machine", name=name, unnamed=not name)

    def lone_machine(self, node: dict[str, Any]) -> str:
        """The only key of an object over positions, where it is a name of its own and no word for a group; or empty."""
        if key_text(node, "machine", self.words)[1] or self.of_object(node).level:
            return ""
        over = [k for k, v in node.items() if isinstance(v, (dict, list)) and self.stated(v)]
        if len(over) != 1 or not isinstance(node[over[0]], dict) or not self._may_be_name(over[0], node[over[0]]):
            return ""
        inner, own = node[over[0]], any(sign.isdigit() or sign == " " for sign in over[0])
        if not own or names_place(over[0], self.words) or not self.holds_positions(inner):
            return ""
        return "" if key_text(inner, "machine", self.words)[1] else over[0]

    def own_name(self, node: dict[str, Any], *, inner: bool) -> str:
        """The key that holds the name of an object that holds positions, where no key says machine; or empty.

        Of an object ``inner`` to the document the model names it too.
        """
        if key_text(node, "machine", self.words)[1] or not self.holds_positions(node) or self._is_group(node):
            return ""
        texts = [key for key, value in node.items() if isinstance(value, str) and value.strip()]
        called = [key for key in texts if local(key) in CALLED or self._names_machine(key)]
        models = [key for key in texts if inner and local(key) in _MODELS]
        return next(iter([*called, *models]), "")

    def _names_machine(self, key: str) -> bool:
        """Whether a key says the name of a machine (``project-name``)."""
        of, _, name = word_key(local(key) if "-" in key else key).rpartition(" ")
        heading = self.words.heading(of) if name in CALLED else None
        return heading is not None and heading.parameter == "machine"

    def _is_group(self, node: dict[str, Any]) -> bool:
        """Whether an object names its position itself."""
        return bool(key_text(node, "station", self.words)[1])

    def _name_key(self, items: Sequence[dict[str, Any]]) -> str:
        """The key that tells items apart: by names of positions in it, or by a word for a name, a place or a label."""
        texts = self._telling(items)
        keys = list(texts)
        words = [key for key in keys if not all(text.isdigit() for text in texts[key])]
        for fitting in (
            [key for key in words if all(map(self.words.names.station, texts[key]))],
            [key for key in words if _is_name(key)],
            words if len(words) == 1 else [],
            [key for key in keys if _is_name(key)],
            keys if len(keys) == 1 else [],
        ):
            if fitting:
                return fitting[0]
        return ""

    def _named_positions(self, items: Sequence[dict[str, Any]]) -> bool:
        """Whether a key of the items holds words for positions, another one in each."""
        return any(all(map(self.words.names.station, texts)) for texts in self._telling(items).values())

    def _telling(self, items: Sequence[dict[str, Any]]) -> dict[str, list[str]]:
        """Keys that tell items apart and name nothing that is known, each with its texts; no designations."""
        machines = [key_text(item, "machine", self.words)[1] for item in items]
        found = {}
        for key in items[0]:
            cells = [item.get(key) for item in items]
            texts = [cell_text(cell) for cell in cells if isinstance(cell, (str, int)) and not isinstance(cell, bool)]
            fits = len(texts) == len(items) and all(0 < len(text) <= _LONGEST for text in texts)
            unnamed = (self.words.heading(key) is None and self.words.told_of(key) is None) or local(key) == "id"
            if fits and unnamed and len({*zip(machines, texts, strict=True)}) == len(items):
                found[key] = texts
        return {k: t for k, t in found.items() if not all(designation_strength(text) == "certain" for text in t)}


def _is_seat_size(value: dict[str, Any]) -> bool:
    """Whether an object holds a nominal size and its tolerance as plain values, or in objects for them, alone."""
    said = {aspect_of(key)[0] for key in value}
    rest = [key for key in value if not is_aspect(key) and not says_unit(key) and local(key) not in CONTEXT]
    return any(map(is_nominal, value)) and len(said & {"upper", "lower", "tolerance", "half"}) > 0 and not rest


def _is_mark(key: str, value: Any) -> bool:
    """Whether a key holds a plain value and is no word for a name over one (``nom: turbine``)."""
    named = local(key) in CALLED and not any(map(str.isdigit, cell_text(value)))
    return not isinstance(value, (dict, list)) and not named


def _is_designation(key: str, text: str) -> bool:
    """Whether a text designates a bearing beyond doubt, or may below a word for one."""
    return designation_strength(text) in (("certain", "possible") if is_bearing(key) else ("certain",))


def _is_name(key: str) -> bool:
    """Whether a word of a key says a name, a label or a place."""
    called = {"name", "label", "title", "caption", "id", "tag"}
    plain = word_key(local(key))
    groups = dictionary().group_words.get(plain, ())
    pieces = set(plain.split())
    return bool(pieces & called) or "NAME" in groups or plain in KEYS["place"] or bool(pieces & set(KEYS["place"]))
