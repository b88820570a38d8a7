"""One cause, one entry: findings that say the same at several positions, and those that follow from another."""

import re
from collections.abc import Iterable, Sequence

from attrs import field, frozen

from linter.model.findings import SEVERITIES, Assessment, at_least

_FIGURES = re.compile(r"[+\-\u2212±]?\d[\d\u00a0.,]*")
_CELLS = re.compile(r"\b[A-Z]{1,3}\d+\b")


@frozen
class Entry:
    """A finding or concession with its number in this report.

    Attributes
    ----------
    number : int
        Of the entry; what follows from it has the same one.
    items : tuple of Assessment
        The same finding at one or more positions of a machine, by position.
    following : tuple of Entry
        Findings that follow from it, by gravity.
    """

    number: int
    items: tuple[Assessment, ...]
    following: "tuple[Entry, ...]" = field(default=())

    @property
    def item(self) -> Assessment:
        """The first of them: what they have in common can be read off it."""
        return self.items[0]

    @property
    def anchor(self) -> str:
        """Id of its block."""
        return f"f{self.number}"

    @property
    def everything(self) -> tuple[Assessment, ...]:
        """Its own findings and those that follow."""
        return (*self.items, *(item for entry in self.following for item in entry.everything))

    @property
    def alike(self) -> bool:
        """Whether message, remedy and changes read the same at every position."""
        return len({(i.message, i.remedy, i.clears_with) for i in self.items}) == 1


def entries_of(found: Iterable[Assessment]) -> tuple[Entry, ...]:
    """Findings and concessions as entries, numbered by gravity.

    Parameters
    ----------
    found : iterable of Assessment
        Findings and concessions of any machines.

    Returns
    -------
    tuple of Entry
        Findings first, the gravest first, concessions last. Each assessment stands in one entry. A finding follows the
        one it names where that is a finding too and at least as grave; one that is conceded explains nothing.
    """
    items = list(found)
    place = {(i.machine, i.clause, i.station): k for k, i in enumerate(items)}
    for k, item in enumerate(items):  # a clause about the machine names a clause about stations without a station
        place.setdefault((item.machine, item.clause, None), k)
    roots = [_root(k, items, place) for k in range(len(items))]
    leading = _twins([k for k, root in enumerate(roots) if root == k], items)
    below: dict[int, list[int]] = {}
    for k, root in enumerate(roots):
        if root != k:
            below.setdefault(root, []).append(k)
    leading.sort(key=lambda group: _gravity(items[group[0]]))
    made = []
    for number, group in enumerate(leading, 1):
        twins = sorted(
            _twins([k for head in group for k in below.get(head, ())], items), key=lambda g: _gravity(items[g[0]])
        )
        following = tuple(Entry(number, tuple(items[k] for k in twin)) for twin in twins)
        made.append(Entry(number, tuple(items[k] for k in group), following))
    return tuple(made)


def _gravity(item: Assessment) -> tuple[bool, int]:
    return (item.outcome == "conceded", SEVERITIES.index(item.severity or "remark"))


def _root(k: int, items: Sequence[Assessment], place: dict[tuple[str, str, str | None], int]) -> int:
    """The finding that the chain of causes ends at; the finding itself where nothing or only itself explains it."""
    seen = [k]
    while items[seen[-1]].outcome == "finding" and (cause := items[seen[-1]].follows) is not None:
        above = place.get((items[k].machine, cause.clause, cause.station))
        if above in seen:
            return k
        if above is None or items[above].outcome != "finding":
            break
        if not at_least(items[above].severity, items[seen[-1]].severity or "remark"):
            break
        seen.append(above)
    return seen[-1]


def _twins(found: Sequence[int], items: Sequence[Assessment]) -> list[list[int]]:
    """Findings that say the same of several positions of one machine, together; in the order of the first."""
    groups: dict[tuple[object, ...], list[int]] = {}
    for k in found:
        item = items[k]
        same: tuple[object, ...] = (k,)
        if item.station is not None:
            same = (item.machine, item.clause, item.outcome, item.severity, item.concession, wording(item))
        groups.setdefault(same, []).append(k)
    return list(groups.values())


def wording(item: Assessment) -> str:
    """The message without its figures, cells and the name of its position."""
    text = item.message
    if item.station:
        text = re.sub(rf"(?<!\w){re.escape(item.station)}(?!\w)", "@", text)
    return _FIGURES.sub("#", _CELLS.sub("@", text))


def same_observed(items: Iterable[Assessment]) -> tuple[tuple[Assessment, ...], ...]:
    """Findings of one entry by what was observed: together where figures and limits are the same."""
    groups: dict[object, list[Assessment]] = {}
    for item in items:
        figures = (item.observed, item.lower, item.upper)
        groups.setdefault(figures if item.observed else item.message, []).append(item)
    return tuple(map(tuple, groups.values()))
