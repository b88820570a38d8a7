"""An empty list of bearings to fill in: one row for each designation."""

from linter.model.vocabulary import parameter
from linter.reading.settling.bearing_list import OF_BEARING


def empty_bearing_list() -> str:
    """The heading of a list of bearings as CSV, each parameter with its unit.

    Returns
    -------
    str
        One line; rows below it are read by :func:`linter.reading.read_bearings`.
    """
    units = {name: parameter(name).unit for name in OF_BEARING}
    names = [f"{name} [{unit}]" if unit not in ("", "1") else name for name, unit in units.items()]
    return ",".join(["bearing_designation", *names]) + "\n"
