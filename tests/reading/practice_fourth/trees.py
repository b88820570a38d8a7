"""JSON in four common shapes: records, parts within positions, arrays of attributes, dotted keys."""

import json
from typing import Any

from practice.grammar import Expected, Size

from .blocks import code
from .pen import IN_CELL, SIZES, Cell, Piece
from .rows import GROUPS, Job, group_of, heading, value_of


def pointer(*steps: str | int) -> str:
    return "".join("/" + str(step).replace("~", "~0").replace("/", "~1") for step in steps)


def _state(job: Job, where: tuple[int, int], name: str, own: list[str], words: list[str]) -> None:
    value = value_of(job.machines[where[0]], where[1], name)
    parameter, meant, verdict, form = job.style.meant(name, value)
    cells = tuple(dict.fromkeys(own))
    job.book.expected.append(Expected(*where, parameter, meant, verdict, form, cells, tuple(words), cells))


def _key(job: Job, piece: Piece, snake: bool) -> str:
    text = heading(job.style, piece)
    return code(text).lower() if snake else text


def _common(job: Job, m: int, into: dict[str, Any], path: tuple[str | int, ...], snake: bool) -> None:
    """Values of the whole machine as members of an object."""
    style = job.style
    for name in ("machine", *job.common):
        if name in job.machines[m].values:
            piece = style.pieces(name)[0]
            key = _key(job, piece, snake)
            into[key] = piece.text(job.machines[m].values)
            _state(job, (m, -1), name, [pointer(*path, key)], [key])


def records(job: Job) -> Any:
    """A list of flat objects, one a position."""
    snake = job.style.rng.random() < 0.5
    rows: list[dict[str, Cell]] = []
    common: dict[tuple[int, str], tuple[list[str], list[str]]] = {}
    for m, s, position in job.positions():
        row: dict[str, Cell] = {}
        number = len(rows)
        for name in ("machine", *job.common):
            if name in job.machines[m].values:
                piece = job.style.pieces(name)[0]
                key = _key(job, piece, snake)
                row[key] = piece.text(job.machines[m].values)
                own, words = common.setdefault((m, name), ([], []))
                own.append(pointer(number, key))
                words.append(key)
        key = code(job.style.word("station")).lower() if snake else job.style.word("station")
        row[key] = position.name
        _state(job, (m, s), "station", [pointer(number, key)], [key])
        for name in job.own:
            keys = []
            for piece in job.style.pieces(name):
                keys.append(_key(job, piece, snake))
                row[keys[-1]] = piece.text(position.values)
            _state(job, (m, s), name, [pointer(number, key) for key in keys], keys)
        rows.append(row)
    for (m, name), (own, words) in common.items():
        _state(job, (m, -1), name, own, words)
    return rows


def _member(job: Job, name: str, values: dict[str, Any]) -> dict[str, Any]:
    """A value as an object with its unit, a size with its tolerance in members of its own."""
    style, size = job.style, values[name]
    unit = style.unit(name)
    found: dict[str, Any] = {}
    if name in SIZES and isinstance(size, Size) and style.tolerance not in IN_CELL:
        lower, upper = size.lower or 0.0, size.upper or 0.0
        if style.tolerance == "limit columns":
            found["max"] = style.shown(name, size.nominal + upper)
            found["min"] = style.shown(name, size.nominal + lower)
        else:
            found["nominal"] = style.shown(name, size.nominal)
        if style.tolerance in ("class column", "class and deviation columns"):
            found["tolerance_class"] = size.tolerance_class
        if style.tolerance in ("deviation columns", "class and deviation columns"):
            found["upper_deviation"] = style.shown(name, upper)
            found["lower_deviation"] = style.shown(name, lower)
        if style.tolerance == "deviation columns um":
            found["upper_deviation_um"] = round(upper * 1000, 3)
            found["lower_deviation_um"] = round(lower * 1000, 3)
        if style.tolerance == "plus-minus column":
            found["plus_minus"] = style.shown(name, upper)
    else:
        found["value"] = style.pieces(name, single=True)[0].text(values)
    if unit:
        found["unit"] = unit
    return found


def nested(job: Job) -> Any:
    """Machines, in them positions, in them parts, in them features with value and unit."""
    top: dict[str, Any] = {"machines": []}
    for m, machine in enumerate(job.machines):
        path: tuple[str | int, ...] = ("machines", m)
        into: dict[str, Any] = {}
        top["machines"].append(into)
        _common(job, m, into, path, False)
        into["positions"] = []
        for s, position in enumerate(machine.positions):
            own: dict[str, Any] = {}
            into["positions"].append(own)
            key = job.style.word("station")
            own[key] = position.name
            here = (*path, "positions", s)
            _state(job, (m, s), "station", [pointer(*here, key)], [key])
            for group in GROUPS:
                for name in (n for n in job.own if group_of(n) == group):
                    part, label = job.style.frame(group), job.style.word(name, True)
                    member = _member(job, name, position.values)
                    own.setdefault(part, {})[label] = member
                    places = [pointer(*here, part, label, k) for k in member if k != "unit"]
                    _state(job, (m, s), name, places, [label])
    return top


def arrays(job: Job) -> Any:
    """Items with an array of attributes, each with name, value and unit."""
    items: list[dict[str, Any]] = []
    top: dict[str, Any] = {}
    _common(job, 0, top, (), False)
    top["items"] = items
    for m, s, position in job.positions():
        attributes: list[dict[str, Any]] = []
        here = ("items", len(items))
        items.append({"position": position.name, "attributes": attributes})
        _state(job, (m, s), "station", [pointer(*here, "position")], ["position"])
        for name in job.own:
            own, words = [], []
            for piece in job.style.pieces(name):
                own.append(pointer(*here, "attributes", len(attributes), "value"))
                words.append(piece.heading)
                attributes.append({"name": piece.heading, "value": piece.text(position.values), "unit": piece.unit})
            _state(job, (m, s), name, own, words)
    return top


def dotted(job: Job) -> Any:
    """One flat object whose keys are position, part and feature with dots between."""
    top: dict[str, Any] = {}
    _common(job, 0, top, (), False)
    for m, s, position in job.positions():
        for group in GROUPS:
            for name in (n for n in job.own if group_of(n) == group):
                keys = []
                for piece in job.style.pieces(name, True):
                    keys.append(f"{position.name}.{job.style.frame(group)}.{heading(job.style, piece)}")
                    top[keys[-1]] = piece.text(position.values)
                _state(job, (m, s), name, [pointer(key) for key in keys], keys)
    return top


def content(document: Any) -> bytes:
    return json.dumps(document, ensure_ascii=False, indent=1).encode()
