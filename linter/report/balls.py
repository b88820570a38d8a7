"""Steel against ceramic balls, in one small table of a machine's page: inertia, stress, heat, expansion, limit."""

from collections.abc import Iterable, Mapping
from typing import Any

import numpy as np
from attrs import frozen

from linter.mechanics import hertz, kinematics, materials
from linter.model.possible import outside
from linter.model.vocabulary import parameter
from linter.model.wording import quantity_text
from linter.rulebook.model import Rulebook

CERAMIC = "silicon nitride"
_REFERENCE = 20.0  # degC, temperature of the drawing (ISO 1)
_RINGS = "bearing steel"


@frozen
class BallsRow:
    """One quantity with steel and with ceramic balls, in words."""

    quantity: str
    steel: str
    ceramic: str


@frozen
class BallsTable:
    """The comparison of one or more stations that are alike; ``now`` is the material stated there."""

    stations: tuple[str, ...]
    now: str
    rows: tuple[BallsRow, ...]


def ball_tables(stations: Iterable[tuple[str, Mapping[str, Any]]], rulebook: Rulebook) -> tuple[BallsTable, ...]:
    """The comparisons of a machine, one for stations that come to the same figures.

    Parameters
    ----------
    stations : iterable of (str, mapping)
        Names and values in canonical units.
    rulebook : Rulebook
        One without the chapter on heat has none.

    Returns
    -------
    tuple of BallsTable
        Empty where no station states its balls and speed.
    """
    if "heat.balance" not in rulebook.clauses:
        return ()
    found: dict[tuple[str, tuple[BallsRow, ...]], list[str]] = {}
    for name, values in stations:
        rows = _rows(values, rulebook)
        if rows:
            found.setdefault((str(values.get("ball_material") or "steel"), rows), []).append(name)
    return tuple(BallsTable(tuple(names), now, rows) for (now, rows), names in found.items())


def _rows(values: Mapping[str, Any], rulebook: Rulebook) -> tuple[BallsRow, ...]:
    ball, pitch, speed = (_number(values, name) for name in ("ball_diameter", "pitch_diameter", "speed_max"))
    if not (0.0 < ball < pitch and speed > 0.0) or str(values.get("bearing_type") or "").endswith("roller"):
        return ()
    angle = _number(values, "contact_angle")
    angle = angle if 0.0 <= angle <= 60.0 else 0.0
    outer = values.get("rotating_ring") == "outer"
    cage = kinematics.speeds(0.0 if outer else speed, 7, ball, pitch, angle, speed if outer else 0.0).cage
    both = ("steel", CERAMIC)
    density = [float(materials.density(word, ball=True)) for word in both]
    rings = str(values.get("ring_material") or _RINGS)
    moduli = [
        float(
            hertz.effective_modulus(
                materials.elastic_modulus(word, ball=True), materials.poisson_ratio(word, ball=True),
                materials.elastic_modulus(rings), materials.poisson_ratio(rings),
            )
        )
        for word in both
    ]  # fmt: skip
    stress = (moduli[1] / moduli[0]) ** (2.0 / 3.0)
    rows = [
        _pair("mass of one ball", [1e6 * float(kinematics.ball_mass(ball, rho)) for rho in density], "mg"),
        _pair(
            "centrifugal force of a ball at the highest speed",
            [float(kinematics.centrifugal_force(ball, pitch, cage, rho)) for rho in density],
            "N",
        ),
        BallsRow("contact stress under the same load", "1", quantity_text(stress, "1")),
        BallsRow("static load rating at the same stress", "1", quantity_text(stress**-3, "1")),
    ]
    low, high = (100.0 * share for share in rulebook.clauses["heat.balance"].limits["ceramic_share"].value)
    rows.append(BallsRow("friction at high speed", "100 %", f"{quantity_text(low, '1')} to {quantity_text(high, '%')}"))
    temperature = _number(values, "operating_temperature")
    if not np.isnan(temperature):
        rise = temperature - _REFERENCE
        growth = [1e3 * ball * rise * float(materials.expansion(word, ball=True)) for word in both]
        gain = [2e3 * ball * rise * float(materials.expansion(rings)) - 2.0 * one for one in growth]
        rows.append(_pair(f"growth of a ball from 20 to {quantity_text(temperature, 'degC')}", growth, "um"))
        rows.append(_pair("radial clearance gained by it, rings as warm as balls", gain, "um"))
    factor = rulebook.clauses["speed.factor"].limits["hybrid_factor"].value if "speed.factor" in rulebook.clauses else 1
    rows.append(BallsRow("general speed limits", "1", f"{quantity_text(float(factor), '1')} times"))
    return tuple(rows)


def _number(values: Mapping[str, Any], name: str) -> float:
    """A value that can be; NaN for none and for one that was set aside."""
    value = values.get(name)
    number = np.asarray(value if isinstance(value, (int, float)) else np.nan, dtype=np.float64)
    return float(np.where(outside(parameter(name), number), np.nan, number))


def _pair(quantity: str, values: list[float], unit: str) -> BallsRow:
    """Both values to three digits, what is only rounding as nothing."""
    steel, ceramic = (quantity_text(float(f"{0.0 if abs(value) < 1e-9 else value:.3g}"), unit) for value in values)
    return BallsRow(quantity, steel, ceramic)
