"""What a review does not know: values to state, clauses left open, assumptions; each once, with the positions."""

from collections.abc import Iterable, Sequence

from attrs import frozen

from linter.model.findings import Assumed, ReviewResult
from linter.model.vocabulary import vocabulary
from linter.report.language import say, told

SHOWN_PLACES = 6


@frozen
class Wanted:
    """A parameter that is not stated, the clauses that wait for it, where, and the cells that it is wanted in."""

    parameter: str
    clauses: tuple[str, ...]
    where: str
    cells: tuple[str, ...]
    decides: bool


@frozen
class AssumedOnce:
    """An assumption, named once for all places; ``carries`` where a clause that must be judged rests on it."""

    assumed: Assumed
    where: str
    carries: bool


def place_name(machine: str, station: str | None) -> str:
    """A position in words."""
    return machine if station is None else f"{machine}\u00a0· {station}"


def _everywhere(result: ReviewResult) -> list[tuple[str, str]]:
    return [(m.machine, station) for m in result.machines for station in m.stations]


def _where(
    result: ReviewResult, everywhere: Sequence[tuple[str, str]], places: Iterable[tuple[str, str | None]]
) -> str:
    """Positions in words, short where they are many; ``everywhere`` are all of them."""
    found = dict.fromkeys(places)
    if len(everywhere) > 1 and all(place in found for place in everywhere):
        return say("both positions") if len(everywhere) == 2 else say("all {count} positions", count=len(everywhere))
    if len(result.machines) == 1:
        names = [station or say("the machine as a whole") for _, station in found]
    else:
        names = [place_name(*place) for place in found]
    if len(names) > SHOWN_PLACES:
        return f"{', '.join(names[: SHOWN_PLACES - 1])} {say('and {count} more', count=len(names) - SHOWN_PLACES + 1)}"
    return ", ".join(names)


def wanted(result: ReviewResult) -> tuple[Wanted, ...]:
    """Values that are not stated: those that decide the gate first, then those that most clauses wait for."""
    clauses: dict[str, dict[str, None]] = {}
    places: dict[str, list[tuple[str, str | None]]] = {}
    for item in result.to_act_on:
        for name in item.missing:
            clauses.setdefault(name, {})[item.clause] = None
            places.setdefault(name, []).append((item.machine, item.station))
    order = {name: k for k, name in enumerate(vocabulary())}
    names = sorted(clauses, key=lambda n: (-len(clauses[n]), order.get(n, len(order)), n))
    cells: dict[str, dict[str, None]] = {}
    for entry in result.needed:
        cells.setdefault(entry.parameter, {})[entry.place.short() if entry.place else entry.near] = None
    deciding = {name for item in result.unjudged for name in item.missing}
    whole, made = _everywhere(result), []
    for name in names:
        found = tuple(filter(None, cells.get(name, ())))
        where = _where(result, whole, places[name])
        made.append(Wanted(name, tuple(clauses[name]), where, found, name in deciding))
    return tuple(sorted(made, key=lambda entry: not entry.decides))


def unsolved(result: ReviewResult) -> tuple[tuple[str, str], ...]:
    """Not assessed without a parameter that is wanted: message and where."""
    places: dict[tuple[str, str], list[tuple[str, str | None]]] = {}
    for item in result.to_act_on:
        if item.outcome == "not assessed" and not item.missing:
            places.setdefault((item.title, item.message), []).append((item.machine, item.station))
    whole = _everywhere(result)
    return tuple(
        (f"{told(title)}: {told(text)}", _where(result, whole, where)) for (title, text), where in places.items()
    )


def assumed(result: ReviewResult) -> tuple[AssumedOnce, ...]:
    """Assumptions in the order of the vocabulary."""
    places: dict[Assumed, list[tuple[str, str | None]]] = {}
    carries = set()
    for at in result.assumed:
        places.setdefault(at.assumed, []).append((at.machine, at.station))
        if at.carries:
            carries.add(at.assumed)
    whole = _everywhere(result)
    order = {name: k for k, name in enumerate(vocabulary())}
    entries = sorted(places, key=lambda a: (order.get(a.parameter, len(order)), a.parameter, str(a.value), a.reason))
    where = {a: sorted(places[a], key=lambda p: (p[0], p[1] is not None, p[1] or "")) for a in entries}
    return tuple(AssumedOnce(a, _where(result, whole, where[a]), a in carries) for a in entries)
