"""Which of the objects beside each other in a JSON document are in which: by keys that refer to others, or by paths."""

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from typing import Any

from attrs import define, field

from linter.reading.files.grids import cell_text
from linter.reading.files.json_text import DEEPEST
from linter.reading.layouts.json_keys import Path, bare, local
from linter.reading.words.dictionary import word_key

# Words of a key that says what an object is in, and of one for what is in it, in eight languages (common practice).
_AROUND = re.compile(
    r"(?:parent|owner|father|container|host|belongs? to|part of|member of|child of|within|inside|is ?in|in|of|up|super"
    r"|assembly|assy|machine|unit|node|position|station|über(?:geordnet(?:es)?|element)|uebergeordnet|eltern(?:element)?"
    r"|gehört zu|gehoert zu|teil von|baugruppe|maschine|obergruppe|vater|appartient [àa]|parenté?|père|ensemble"
    r"|padre|pertenece a|parte de|conjunto|máquina|maquina|appartiene a|assieme|macchina|genitore|superior"
    r"|родитель|входит в|узел|машина|принадлежит|上级|父级|父节点|父项|所属|上层|属于|所属机器|设备|親|上位|所属先"
    r"|親部品|親要素)(?: ?(?:[a-z]?id|i ?d|ref|reference|key|pk|no|nr|nummer|number|num|code|name|uid|uuid|guid|node"
    r"|object|obj|item|element|entity|index|idx|handle|link|pointer|номер|编号|标识符?|代号|番号|号|名|コード|識別子))*"
)
#: Ends of keys that refer to another object, and words of those that refer to one beside (common practice).
_REFERS = re.compile(r"(?:.*[ _])?(?:[a-z]{0,2}id|i d|ref|reference|key|pk|no|nr|code|handle|link)")
_BESIDE = re.compile(r"(?:.* )?(?:next|prev|previous|sibling|mate|mating|counter|opposite|pair|partner|successor"
                     r"|predecessor|neighbou?r|replaces?|replaced|copy|template|base|related)(?: .*)?")  # fmt: skip
_IDS = frozenset(
    ("id", "ref", "$ref", "key", "code", "uid", "uuid", "guid", "name", "no", "nr", "编号", "编码", "番号")
)
#: Numbers and marks of a store, which name nothing.
STORED = re.compile(r"(?i)[{(]?(?:[0-9a-f]{6,}(?=.*\d)|[0-9a-f]{8}(?:-[0-9a-f]{4,12})+|\d+)[)}]?")
_BETWEEN = re.compile(r"\s*(?:/|\\|\||>|→|::|»)\s*")
#: What refers to nothing.
_NONE = ("", "0", "-1")
LONGEST = 80


@define(eq=False)
class Node:
    """One object: where it stands, its name and the key that holds it, what is around and in it, what it is.

    ``kind`` is machine, station, part, or empty; ``left`` are keys that only link it; ``lost`` is why it is not read.
    """

    item: dict[str, Any]
    at: Path
    name: str = ""
    key: str = ""
    around: "Node | None" = None
    inner: list["Node"] = field(factory=list)
    kind: str = ""
    station: str = ""
    part: str = ""
    lost: str = ""
    left: set[str] = field(factory=set)

    def outer(self) -> Iterator["Node"]:
        """The objects around it, from the innermost."""
        node = self.around
        for _ in range(DEEPEST):
            if node is None:
                return
            yield node
            node = node.around


def by_keys(nodes: Sequence[Node], names: Sequence[str]) -> bool:
    """Link objects by keys that say what is around each, or what is in it; whether there are such keys."""
    key, own = _join(nodes, names)
    held = [(node, node.around) for node in nodes if node.around is not None]
    if not held or any(outer is node or node in node.outer() for node, outer in held):
        for node in nodes:
            node.around, node.lost = None, ""
        return False
    for node, outer in held:
        outer.inner.append(node)
    for node in nodes:
        stored = own != "" and STORED.fullmatch(_reference(node.item.get(own))) is not None
        node.left |= ({key, "relationships"} & node.item.keys()) | ({own} if stored else set())
    for name, node in zip(names, nodes, strict=False):
        node.name = "" if STORED.fullmatch(name) else name
    return True


def _join(nodes: Sequence[Node], names: Sequence[str]) -> tuple[str, str]:
    """Set what is around each object; the key that says so and the key of what it refers to, empty where none does."""
    links = _links(nodes)
    lists = any(_lists(node) for node in nodes) if not links else False
    texts = _texts(nodes)
    ids = _ids(nodes, names) if links or lists or texts else {}
    key, own = _link(links, ids)
    if not key and lists:
        own = next((own for own, known in ids.items() if _by_lists(nodes, known)), "")
    if texts and not key and all(node.around is None for node in nodes):
        links = texts
        key, own = next(_trees(links, ids, len(nodes)), ("", ""))
    for node in nodes if key else ():
        said = links[key].get(id(node), "")
        node.around = ids[own].get(said)
        if node.around is None and said not in _NONE:
            node.lost = f"{key} refers to no object beside it"
    return key, own


def _ids(nodes: Sequence[Node], names: Sequence[str]) -> dict[str, dict[str, Node]]:
    """Texts that stand once under each key, which others may refer to, with their objects."""
    ids = {"": dict(zip(names, nodes, strict=True))} if names else {}
    for key in dict.fromkeys(key for node in nodes for key in node.item):
        held = [(text, node) for node in nodes if (text := _reference(node.item.get(key)))]
        count = Counter(text for text, _ in held)
        if 2 * len(held) > len(nodes) and (once := {text: node for text, node in held if count[text] == 1}):
            ids[key] = once
    return ids


def _link(links: dict[str, dict[int, str]], ids: dict[str, dict[str, Node]]) -> tuple[str, str]:
    """The key that says what is around most objects, and the key of what it refers to; empty where none does."""
    best = (0, "", "")
    for key, said in links.items():
        for own, known in ids.items():
            found = sum(text in known for text in said.values())
            if own != key and 2 * found > len(said) and found > best[0]:
                best = (found, key, own)
    return best[1:]


def _links(nodes: Sequence[Node]) -> dict[str, dict[int, str]]:
    """What each key that says what is around an object refers to, by object; one of its relations too."""
    links: dict[str, dict[int, str]] = {}
    said: dict[str, bool] = {}
    for node in nodes:
        relations = node.item.get("relationships", {})
        inner = relations.items() if isinstance(relations, dict) else ()
        for key, value in (*inner, *node.item.items()):
            if key not in said:
                said[key] = _AROUND.fullmatch(word_key(bare(key))) is not None
            if said[key] and (text := _reference(value)):
                links.setdefault(key, {})[id(node)] = text
    return links


def _texts(nodes: Sequence[Node]) -> dict[str, dict[int, str]]:
    """The texts of each key that may refer to an object around, by object: most objects have one, and not all."""
    texts: dict[str, dict[int, str]] = {}
    for key in dict.fromkeys(key for node in nodes for key in node.item):
        word = word_key(bare(key))
        if _REFERS.fullmatch(word) and not _BESIDE.fullmatch(word):
            said = {id(node): text for node in nodes if (text := _reference(node.item.get(key))) not in _NONE}
            texts |= {key: said} if len(nodes) > len(said) > len(nodes) / 2 else {}
    return texts


def _trees(links: dict[str, dict[int, str]], ids: dict[str, dict[str, Node]], count: int) -> Iterator[tuple[str, str]]:
    """Keys of whatever word by which all objects but a few refer to another one, as a tree; and keys of those."""
    for key, said in links.items():
        for own, known in ids.items():
            around = {number: known[text] for number, text in said.items() if text in known}
            several = max(Counter(map(id, around.values())).values(), default=0) > 1
            whole = len(known) == count and len(around) == len(said)
            if key != own and whole and several and all(_ends(number, around) for number in around):
                yield key, own


def _ends(number: int, around: dict[int, Node]) -> bool:
    """Whether the objects around one come to an end."""
    for _ in range(DEEPEST):
        if number not in around:
            return True
        number = id(around[number])
    return False


def _lists(node: Node) -> dict[str, list[str]]:
    """The texts or numbers of each list of them in an object."""
    lists = {key: [*map(_reference, value)] for key, value in node.item.items() if isinstance(value, list) and value}
    return {key: texts for key, texts in lists.items() if all(texts)}


def _reference(value: Any) -> str:
    """The text or number that a value is, alone or as the number of another object (``{"id": 7}``)."""
    for _ in range(3):
        if isinstance(value, dict):
            named = [inner for key, inner in value.items() if local(key) in _IDS or local(key) == "data"]
            value = named[0] if len(named) >= 1 and len(value) <= 3 else None
    plain = isinstance(value, (str, int)) and not isinstance(value, bool)
    text = cell_text(value).strip() if plain else ""
    return text if len(text) <= LONGEST else ""


def _by_lists(nodes: Sequence[Node], known: dict[str, Node]) -> bool:
    """Link objects by keys that list what is in each; whether there is such a key."""
    found = False
    for node in nodes:
        for key, texts in _lists(node).items():
            inner = [child for text in texts if (child := known.get(text)) is not None and child.around is None]
            if len(inner) == len(texts):
                for child in inner:
                    child.around, found = node, True
                node.left.add(key)
    return found


def by_paths(nodes: list[Node], names: Sequence[str]) -> bool:
    """Link objects by names that are paths (``PUMP-12/DE/shaft``); whether they are. Objects that lack are added."""
    keys = dict.fromkeys(key for node in nodes for key in node.item)
    every = {key: [node.item.get(key) for node in nodes] for key in keys} | ({"": [*names]} if names else {})
    for key, values in every.items():
        texts = [value for value in values if isinstance(value, str)]
        steps = [tuple(filter(None, _BETWEEN.split(text.strip()))) for text in texts]
        if len(steps) < len(nodes) or len({*steps}) < len(steps) or not all(steps):
            continue
        first = Counter(path[0] for path in steps if len(path) > 1)
        if not first or 2 * sum(count for count in first.values() if count > 1) < len(steps):
            continue
        known = dict(zip(steps, nodes, strict=True))
        for path, node in [*known.items()]:
            node.name, node.key = path[-1], key
            while len(path) > 1 and node.around is None:
                path = path[:-1]
                outer = known.get(path)
                if outer is None:
                    outer = known[path] = Node({}, node.at, path[-1])
                    nodes.append(outer)
                node.around = outer
                outer.inner.append(node)
                node = outer
        return True
    return False
