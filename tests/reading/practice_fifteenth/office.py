"""The sixty offices: what each exports, in which layout, language, units, tolerances, file.

A plan names the fields in their order: ``b:`` of the bearing, ``s:`` of the shaft seat, ``h:`` of the housing seat
(``=`` as of the shaft), ``m:`` of the machine.
"""

from dataclasses import dataclass, field
from typing import Any


@dataclass(frozen=True)
class Office:
    """``more`` goes to the layout, ``style`` to :class:`practice_fifteenth.style.Style`."""

    language: str
    layout: str
    form: str
    file: str
    plan: str
    units: str = "heading"
    voice: int = 0
    pair: int = 0
    positions: str = ""
    machines: int = 1
    kind: str = "ball"
    suffix: str = ""
    more: dict[str, Any] = field(default_factory=dict)
    style: dict[str, Any] = field(default_factory=dict)
    second: str = ""
    holes: str = ""


UM = {"fine": "um", "small": "um"}
SMALL = {"small": "um"}
INCH = {"inch": True, "force": "lbf", "rating": "lbf", "mass": "lb", "temp": "F"}
