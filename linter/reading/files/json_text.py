"""JSON to plain values, strictly: no duplicate keys, no NaN or Infinity, no depth or size without bound."""

import json
import math
from functools import partial
from typing import Any

from linter.reading.files.intake import Source, to_utf8, visible

LARGEST = 24 * 2**20
MOST_CONTAINERS = 400_000
#: Different keys of a document: each is looked up in the words for parameters once.
MOST_KEYS = 50_000
#: Values of a document: each becomes a Python object.
MOST_VALUES = 1_500_000
DEEPEST = 40
_LONGEST_INTEGER = 30


class _Refused(Exception):
    def __init__(self, code: str, read: str, expected: str) -> None:
        super().__init__(code)
        self.code, self.read, self.expected = code, read, expected


def _object(pairs: list[tuple[str, Any]], keys: set[str]) -> dict[str, Any]:
    keys.update(key for key, _ in pairs[: MOST_KEYS + 1])  # of more than that one comes again, or there are too many
    if len(keys) > MOST_KEYS:
        raise _Refused("too-many-cells", f"more than {MOST_KEYS} different keys", f"at most {MOST_KEYS}")
    result = dict(pairs)
    if len(result) < len(pairs):
        seen: set[str] = set()
        twice = next(key for key, _ in pairs if key in seen or seen.add(key))  # type: ignore[func-returns-value]
        raise _Refused("duplicate-key", f"the key {visible(twice)!r} twice in one object", "every key once")
    return result


def _constant(text: str) -> Any:
    raise _Refused("not-a-number", text, "a finite number")


def _integer(text: str) -> int:
    if len(text) > _LONGEST_INTEGER:
        raise _Refused("number-out-of-range", f"an integer of {len(text)} digits", "a number of at most 30 digits")
    return int(text)


def _number(text: str) -> float:
    value = float(text)
    if not math.isfinite(value):
        raise _Refused("number-out-of-range", visible(text, 40), "a finite number")
    return value


def read_json(source: Source, declared_encoding: str = "") -> tuple[Any, tuple[str, ...]]:
    """The document as plain values.

    Raises
    ------
    InputError
        For text that is not JSON, a key that stands twice, NaN or Infinity, or a document beyond the caps.
    """
    data, encoding = to_utf8(source, declared_encoding)
    if len(data) > LARGEST:
        raise source.refuse("file-too-large", f"{len(data) / 2**20:.0f} MiB of JSON", f"at most {LARGEST // 2**20} MiB")
    containers = data.count(b"{") + data.count(b"[")
    if containers > MOST_CONTAINERS:
        raise source.refuse("too-many-cells", f"{containers} objects and lists", f"at most {MOST_CONTAINERS}")
    values = data.count(b",") + containers
    if values > MOST_VALUES:
        raise source.refuse("too-many-cells", f"about {values} values", f"at most {MOST_VALUES}")
    too_deep = source.refuse("too-deep", "objects nested too deeply", f"at most {DEEPEST} levels")
    try:
        value = json.loads(
            data.decode("utf-8"),
            object_pairs_hook=partial(_object, keys=set()),
            parse_constant=_constant,
            parse_int=_integer,
            parse_float=_number,
        )
    except _Refused as error:
        raise source.refuse(error.code, error.read, error.expected) from None
    except json.JSONDecodeError as error:
        at = f"line {error.lineno} column {error.colno}"
        raise source.refuse("not-json", f"text that is not JSON ({error.msg})", "valid JSON", cell=at) from None
    except RecursionError:
        raise too_deep from None
    level = [value]
    for _ in range(DEEPEST):
        level = [child for node in level for child in _children(node)]
        if not level:
            return value, (f"encoding {encoding}",)
    raise too_deep


def _children(node: Any) -> list[Any]:
    values = node.values() if isinstance(node, dict) else node if isinstance(node, list) else ()
    return [value for value in values if isinstance(value, (dict, list))]


def pointer(parts: tuple[str | int, ...]) -> str:
    """JSON Pointer (RFC 6901) of a path of keys and indices."""
    return "".join("/" + str(part).replace("~", "~0").replace("/", "~1") for part in parts)
