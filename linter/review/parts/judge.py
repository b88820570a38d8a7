"""A list of measured values judged: against the drawing that asked for the parts, and against function."""

from attrs import evolve, field, frozen

from linter.model.stations import Stations
from linter.reading.measured import MeasuredList
from linter.review.parts.conformity import VERDICTS
from linter.review.parts.drawing import Judged, against_drawing, placed, same_drawing
from linter.review.parts.function import PartVerdict, functions
from linter.rulebook.model import Rulebook


@frozen
class PartsReview:
    """A list of measured values judged."""

    judged: tuple[Judged, ...]
    parts: tuple[PartVerdict, ...]
    not_on_drawing: tuple[str, ...] = field(default=())

    @property
    def status(self) -> str:
        """``does not conform``, ``not proven`` or ``conforms`` over all, function included."""
        verdicts = {item.verdict for item in self.judged}
        if VERDICTS[2] in verdicts or any(part.gate == "closed" for part in self.parts):
            return VERDICTS[2]
        if VERDICTS[1] in verdicts or self.not_on_drawing or any(part.gate == "undecided" for part in self.parts):
            return VERDICTS[1]
        return VERDICTS[0]


def judge(
    stations: Stations, rulebook: Rulebook, found: MeasuredList, *, uncertainty: float | None = None,
    gate: str = "major",
) -> PartsReview:  # fmt: skip
    """Judge every measured value of a list.

    Parameters
    ----------
    stations : Stations
        The design, with the rulebook's defaults. It is left as it is: a measured value never enters its review.
    rulebook : Rulebook
        What judges function.
    found : MeasuredList
        The list.
    uncertainty : float, optional
        Expanded uncertainty of lengths in mm where the list states none; without it the comparison is with the bare
        limits, and says so.
    gate : str
        Lowest severity that is outside function.

    Returns
    -------
    PartsReview
        Values in the order of the list.

    Raises
    ------
    WrongList
        If the list states another drawing or revision than the design.
    """
    same_drawing(stations, found)
    judged: list[Judged] = []
    strangers: list[str] = []
    for item in found.values:
        row = placed(stations, item)
        if isinstance(row, str):
            strangers.append(f"{item.place}: {row}")
        else:
            judged.append(against_drawing(stations, item, row, uncertainty))
    strangers += [f"{place}: {name!r} is no characteristic that is known here" for name, place in found.unknown]
    groups: dict[tuple[str, str], list[Judged]] = {}
    for one in judged:
        groups.setdefault((one.machine, one.measured.part), []).append(one)
    results: dict[int, Judged] = {}
    parts = []
    for (of_part, in_function), (key, items) in zip(
        functions(stations, rulebook, groups, gate), groups.items(), strict=True
    ):
        parts.append(evolve(of_part, part=key[1]))
        results |= {id(item): result for item, result in zip(items, in_function, strict=True)}
    return PartsReview(tuple(results[id(item)] for item in judged), tuple(parts), tuple(strangers))
