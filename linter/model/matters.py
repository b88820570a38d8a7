"""What matters most of a machine, as plain records: its nearest limit, and what one step of each parameter does."""

from typing import Any

from attrs import asdict, frozen


@frozen
class NearLimit:
    """A limit and how far the machine is from it.

    ``margin`` is the distance from the observed value to the limit as a share of the limit, of the band where there are
    two; negative beyond it. ``station`` is None for a clause about the machine; values are in ``unit``.
    """

    clause: str
    title: str
    station: str | None
    margin: float
    observed: float
    lower: float | None
    upper: float | None
    unit: str


@frozen
class Matter:
    """What one step of a parameter does.

    Attributes
    ----------
    parameter : str
        Moved at every position that states it.
    step : str
        How far, in words.
    moves : float
        By how much the smallest margin of the machine changes, where it changes most; 0 where it stays.
    limit : NearLimit
        The limit that comes nearest of those that the step moves, as it stands now.
    less, more : float or None
        Its margin after the step down and the step up (to the word before and after); None where there is no such step
        or nothing is judged then.
    """

    parameter: str
    step: str
    moves: float
    limit: NearLimit
    less: float | None
    more: float | None

    @property
    def worst(self) -> float:
        """The smaller of the margins after a step."""
        return min(m for m in (self.less, self.more) if m is not None)


@frozen
class Matters:
    """The nearest limit of a machine, and its parameters in the order of what their steps move."""

    machine: str
    nearest: NearLimit
    matters: tuple[Matter, ...]

    def as_dict(self) -> dict[str, Any]:
        """The keys of the result file."""
        return {
            "machine": self.machine,
            "nearest": asdict(self.nearest),
            "parameters": [asdict(matter) for matter in self.matters],
        }
