"""What a layout finds in a grid: how well it fits, where it begins, and how it is read.

A layout is a module with ``find(grid, words) -> Candidate | None``. The list of layouts stands in
:mod:`linter.reading.layouts.sheet`; the candidate with the highest score is read.
"""

from collections.abc import Callable, Sequence

from attrs import frozen

from linter.reading.files.grids import Grid
from linter.reading.layouts.strips import Block, Found
from linter.reading.words.headings import Words


@frozen
class Outside:
    """What is stated outside a table and holds for all of it; empty where nothing is.

    Attributes
    ----------
    length_unit : str
        Unit of lengths.
    machine : str
        Machine that the title block names.
    station : str
        Station that the title block of this table names.
    """

    length_unit: str = ""
    machine: str = ""
    station: str = ""


@frozen(eq=False)
class Candidate:
    """One reading of a grid.

    Attributes
    ----------
    score : int
        Number of names that this layout explains.
    where : str
        Where it finds them: ``in one row``.
    start : int
        First row of the table; what stands above it is its title block.
    heading : range
        Rows of the heading.
    headed : bool
        True where a heading of names and values settles that this is the layout.
    alone : bool
        True where the table names its own stations or parameters, so that it can stand beside another.
    words : sequence of str
        Words that say what the table is about, for a refusal.
    layout_of : callable
        The layout in words, from the block that was read.
    read : callable
        From what was found so far and what is stated outside, the table as a block.
    settled : bool
        True where the rows below the heading leave no doubt that this is the layout.
    one_station : bool
        True for a table that is of one station and does not name it.
    """

    score: int
    where: str
    start: int
    heading: range
    headed: bool
    alone: bool
    words: Sequence[str]
    layout_of: Callable[[Block], str]
    read: Callable[[Found, Outside], Block]
    one_station: bool = False
    settled: bool = False


#: A layout looks for its best reading of a grid.
Find = Callable[[Grid, Words], Candidate | None]
