"""The room of the values of a machine as text, as JSON and as a page."""

import json
from collections.abc import Mapping, Sequence
from typing import Any

from attrs import frozen

from linter.model.findings import ReviewResult
from linter.model.matters import Matters
from linter.model.wording import number_text, quantity_text, unit_text, words_of
from linter.report.drawings.steps import after_text, limit_name, percent
from linter.report.html import environment
from linter.review.room.maps import WORDS, Map, Reach
from linter.review.room.room import Room

#: Parameters told on a terminal of those that matter most; page and document have all.
MATTERS_TOLD = 8
#: Sign and word of each grade of a map, so that colour is never needed.
SIGNS = {-1: ("?", "not judged"), **dict(enumerate(zip(("\u00b7", "r", "m", "M", "C"), WORDS, strict=True)))}


@frozen
class Rooms:
    """What was found of one machine."""

    machine: str
    stations: tuple[str, ...]
    rooms: tuple[Room, ...]
    map: Map | None = None
    reaches: tuple[Reach, ...] = ()
    matters: Matters | None = None

    def where(self, room: Room) -> str:
        """The position of a room, or that it is of the whole machine."""
        return "whole machine" if room.cell.whole else self.stations[room.cell.row]


def _value(value: float, unit: str) -> str:
    return quantity_text(float(f"{value:.6g}"), unit)


def present_text(room: Room) -> str:
    """The present value in words."""
    if room.present is None:
        return "not stated"
    return room.present if isinstance(room.present, str) else _value(room.present, room.unit)


def room_text(room: Room) -> str:
    """The allowed values in words, those that stand whatever the value is left out of account."""
    if room.kind in ("class", "choice"):
        return ", ".join(room.allowed) or "none"
    if not room.stretches:
        return "none"
    parts = []
    for low, high in room.stretches:
        if low.value == high.value:
            parts.append(f"{_value(low.value, room.unit)} alone")
        elif low.clauses and high.clauses:
            parts.append(f"{number_text(float(f'{low.value:.6g}'), room.unit)} to {_value(high.value, room.unit)}")
        elif high.clauses:
            parts.append(f"up to {_value(high.value, room.unit)}")
        elif low.clauses:
            parts.append(f"from {_value(low.value, room.unit)}")
        else:
            parts.append("any")
    return "; ".join(parts)


def bounds_text(room: Room) -> str:
    """The clauses that bound a room, below and above; of words those that forbid the others."""
    if room.kind in ("class", "choice"):
        clauses = dict.fromkeys(c for named in room.forbidden.values() for c in named)
        return ", ".join(clauses)
    parts = []
    for low, high in room.stretches:
        parts += [f"below: {', '.join(low.clauses)}"] if low.clauses else []
        parts += [f"above: {', '.join(high.clauses)}"] if high.clauses else []
    return "; ".join(parts)


def distance_text(room: Room) -> str:
    """How far the present value is from the ends, or from the room."""
    if room.inside is None:
        return ""
    if isinstance(room.present, str):
        return "" if room.inside else "not among them"
    parts = []
    for distance, down in zip(room.distances, (True, False), strict=True):
        if distance is None:
            continue
        if distance < 0 or (not room.inside):
            parts.append(f"must be {'smaller' if down else 'larger'} by {_value(abs(distance), room.unit)}")
        else:
            parts.append(f"{_value(distance, room.unit)} {'down' if down else 'up'}")
    return ", ".join(parts) if room.inside else " or ".join(parts)


def empty_text(room: Room) -> str:
    """Why there is no room, empty where there is one."""
    said = []
    if room.standing:
        said.append(f"none while these findings remain, whatever the value: {', '.join(room.standing)}")
    if room.conflict:
        said.append(f"no value meets all of these: {', '.join(room.conflict)}")
    return "; ".join(said)


def text_of(found: Sequence[Rooms], severity: str) -> str:
    """The rooms of the machines of a table as lines for a terminal."""
    lines = []
    for machine in found:
        lines.append(f"{machine.machine}: values that lead to no finding more severe than {severity}, all else fixed")
        shared = _shared(machine.rooms)
        if shared:
            lines.append(f"  remains whatever one value is, left out below: {', '.join(shared)}")
        free = [room for room in machine.rooms if room.unbounded]
        for room in machine.rooms:
            if room in free:
                continue
            head = f"  {machine.where(room)}, {words_of(room.cell.name)}: {present_text(room)}"
            own = [clause for clause in room.standing if clause not in shared]
            tail = [f"room {room_text(room)}", bounds_text(room), distance_text(room)]
            tail += [f"stands: {', '.join(own)}"] if own else []
            tail += [f"no value meets all of these: {', '.join(room.conflict)}"] if room.conflict else []
            lines.append(f"{head}; {'; '.join(filter(None, tail))}")
        if free:
            names = dict.fromkeys(words_of(room.cell.name) for room in free)
            lines.append(f"  limited by no clause: {', '.join(names)}")
        if machine.map is not None:
            lines += ["", *_map_lines(machine)]
        if machine.reaches:
            lines += ["", *_reach_lines(machine.reaches)]
        if machine.matters is not None:
            lines += ["", *_matter_lines(machine.matters)]
        lines.append("")
    return "\n".join(lines)


def _shared(rooms: Sequence[Room]) -> tuple[str, ...]:
    """Clauses that stand for most of the values: told once."""
    counts: dict[str, int] = {}
    for room in rooms:
        for clause in room.standing:
            counts[clause] = counts.get(clause, 0) + 1
    return tuple(clause for clause, count in counts.items() if 2 * count > len(rooms) > 1)


def _map_lines(machine: Rooms) -> list[str]:
    assert machine.map is not None
    found = machine.map
    width = max(map(len, found.across.words)) + 1
    side = max(map(len, found.down.words)) + 1
    names = [f"{words_of(a.cell.name)}{_at(machine, a.cell.whole, a.cell.row)}" for a in (found.down, found.across)]
    lines = [f"  {names[0]} (down) by {names[1]} (across); the present pair in brackets"]
    lines.append("  " + " " * side + "".join(word.rjust(width) for word in found.across.words))
    for k, word in enumerate(found.down.words):
        cells = []
        for j, grade in enumerate(found.grades[k].tolist()):
            sign = SIGNS[grade][0]
            here = k == found.down.present and j == found.across.present
            cells.append((f"[{sign}]" if here else sign).rjust(width))
        lines.append("  " + word.ljust(side) + "".join(cells))
    lines.append("  " + ", ".join(f"{sign} {word}" for sign, word in SIGNS.values()))
    return lines


def _at(machine: Rooms, whole: bool, row: int) -> str:
    return "" if whole else f" at {machine.stations[row]}"


def _reach_lines(reaches: Sequence[Reach]) -> list[str]:
    lines = ["  highest speed, and largest printed bearing at the present speed (chapter speed alone)"]
    for reach in reaches:
        mark = " (as it is)" if reach.present else ""
        lines.append(f"  {reach.balls}, {reach.lubrication}{mark}: {speed_text(reach)}; {reach.largest or 'none'}")
    return lines


def _matter_lines(matters: Matters) -> list[str]:
    nearest = matters.nearest
    lines = [f"  what matters most; nearest limit {limit_name(nearest)}, margin {percent(nearest.margin)}"]
    for matter in matters.matters[:MATTERS_TOLD]:
        change = f"{limit_name(matter.limit)} from {percent(matter.limit.margin)} to {after_text(matter)}"
        lines.append(f"  {words_of(matter.parameter)}, step {matter.step}: {change}")
    return lines


def speed_text(reach: Reach) -> str:
    """The highest speed with what bounds it."""
    room = reach.speed
    if not room.stretches:
        return f"no speed: {', '.join(room.conflict)}"
    high = room.stretches[-1][1]
    return f"{_value(high.value, room.unit)} ({', '.join(high.clauses) or 'no clause limits it'})"


def as_json(found: Sequence[Rooms], result: ReviewResult, severity: str) -> str:
    """The rooms as a document, keys sorted, the same bytes for the same inputs."""
    content = {
        "format": "ringseat-room",
        "format_version": 1,
        "severity": severity,
        "rulebook": {"name": result.rulebook.name, "version": result.rulebook.version},
        "input": {"file": result.input.file, "sha256": result.input.sha256},
        "machines": [
            {
                "machine": machine.machine,
                "rooms": [_room_dict(machine, room) for room in machine.rooms],
                "map": None if machine.map is None else _map_dict(machine.map),
                "reaches": [_reach_dict(reach) for reach in machine.reaches],
                "what_matters": None if machine.matters is None else machine.matters.as_dict(),
            }
            for machine in found
        ],
    }
    return json.dumps(content, ensure_ascii=False, indent=1, sort_keys=True) + "\n"


def _room_dict(machine: Rooms, room: Room) -> Mapping[str, Any]:
    down, up = room.distances
    return {
        "parameter": room.cell.name,
        "station": None if room.cell.whole else machine.stations[room.cell.row],
        "kind": room.kind,
        "unit": room.unit,
        "present": room.present,
        "inside": room.inside,
        "empty": room.empty,
        "stretches": [
            {end: {"value": e.value, "clauses": list(e.clauses)} for end, e in zip(("from", "to"), pair, strict=True)}
            for pair in room.stretches
        ],
        "allowed": list(room.allowed),
        "forbidden": {word: list(clauses) for word, clauses in room.forbidden.items()},
        "standing": list(room.standing),
        "conflict": list(room.conflict),
        "distance": {"down": down, "up": up},
    }


def _map_dict(found: Map) -> Mapping[str, Any]:
    return {
        "down": {"parameter": found.down.cell.name, "values": list(found.down.words), "present": found.down.present},
        "across": {
            "parameter": found.across.cell.name, "values": list(found.across.words), "present": found.across.present,
        },
        "severity": [[SIGNS[grade][1] for grade in row] for row in found.grades.tolist()],
    }  # fmt: skip


def _reach_dict(reach: Reach) -> Mapping[str, Any]:
    ends = [high for _, high in reach.speed.stretches[-1:]]
    return {
        "balls": reach.balls,
        "lubrication": reach.lubrication,
        "present": reach.present,
        "speed": ends[0].value if ends else None,
        "clauses": list(ends[0].clauses if ends else reach.speed.conflict),
        "largest": reach.largest or None,
    }


def html_of(found: Sequence[Rooms], result: ReviewResult, severity: str) -> str:
    """The rooms as one page without script, colours never alone."""
    return environment().get_template("room.html.j2").render(
        found=found, result=result, severity=severity, signs=SIGNS, present_text=present_text, room_text=room_text,
        bounds_text=bounds_text, distance_text=distance_text, speed_text=speed_text, shared=_shared, unit=unit_text,
    )  # fmt: skip
