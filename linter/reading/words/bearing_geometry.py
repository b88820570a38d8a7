"""Internal geometry that is printed for a size of bearing: balls, ratings, limiting speeds of one maker."""

from functools import cache

from attrs import evolve, frozen

from linter.reading.words.bearing_tables import number, rows
from linter.reading.words.designations import Designation


@frozen
class Geometry:
    """Internal geometry that is printed for a size, or solved from its printed ratings.

    A designation does not fix it: makers fill one size with other balls. It may back an estimate that says so, never a
    silent value.

    Attributes
    ----------
    bearing : str
        Number of the row.
    ball_count : int
        Number of balls Z.
    ball_diameter : float
        D_w in mm.
    pitch_diameter : float or None
        D_pw in mm; None where not printed.
    dynamic_rating, static_rating : float or None
        C and C_0 in N.
    limiting_speed_grease, limiting_speed_oil : float or None
        Limiting speeds of the same maker in r/min.
    maker : str
        Whose table it is.
    published : bool
        True where ball count and size are printed; False where they are solved from printed ratings.
    source, note : str
        Where it stands, and what is to be known of it.
    differing : tuple of str
        The other rows of this size that print other balls or another pitch diameter.
    """

    bearing: str
    ball_count: int
    ball_diameter: float
    pitch_diameter: float | None
    dynamic_rating: float | None
    static_rating: float | None
    limiting_speed_grease: float | None
    limiting_speed_oil: float | None
    maker: str
    published: bool
    source: str
    note: str
    differing: tuple[str, ...] = ()


def internal_geometry(designation: Designation) -> Geometry | None:
    """Internal geometry that is printed for the size of a designation.

    Parameters
    ----------
    designation : Designation
        As read. Its type, d, D, B and (for an angular contact bearing) contact angle must be known.

    Returns
    -------
    Geometry or None
        A published row before a solved one, and of those the one with the weakest balls. ``differing`` names the rows
        of this size that say otherwise.
    """
    if designation.bore_diameter is None or designation.ring_width is None or designation.contact_angle is None:
        return None
    return _geometry().get(
        (
            designation.bearing_type, designation.bore_diameter, designation.outside_diameter, designation.ring_width,
            designation.contact_angle,
        )
    )  # fmt: skip


@cache
def _geometry() -> dict[tuple[str | float | None, ...], Geometry]:
    by_size: dict[tuple[str | float | None, ...], list[Geometry]] = {}
    for row in rows("geometry"):
        key = (
            row["type"], float(row["bore_mm"]), float(row["outside_diameter_mm"]), float(row["width_mm"]),
            float(row["contact_angle_deg"]),
        )  # fmt: skip
        by_size.setdefault(key, []).append(
            Geometry(
                row["bearing"], int(row["ball_count"]), float(row["ball_diameter_mm"]),
                number(row["pitch_diameter_mm"]), number(row["dynamic_rating_n"]), number(row["static_rating_n"]),
                number(row["limiting_speed_grease_rpm"]), number(row["limiting_speed_oil_rpm"]), row["maker"],
                row["provenance"] == "published", row["source"], row["note"],
            )
        )  # fmt: skip

    def chosen(rows: list[Geometry]) -> Geometry:
        best = min(rows, key=lambda row: (not row.published, _strength(row)))
        others = tuple(_in_words(row) for row in rows if row is not best and _differs(row, best))
        return evolve(best, differing=others)

    return {key: chosen(rows) for key, rows in by_size.items()}


def printed_ratings(designation: Designation) -> tuple[tuple[str, float], ...]:
    """The ratings [N] that stand with the internal geometry of a designation, by parameter; those that are printed."""
    found = internal_geometry(designation)
    if found is None:
        return ()
    named = {"dynamic_rating": found.dynamic_rating, "static_rating": found.static_rating}
    return tuple((name, value) for name, value in named.items() if value is not None)


def _strength(row: Geometry) -> tuple[float, float]:
    """What orders balls by the static rating that they give (ISO 76: Z D_w^2), then by pitch."""
    return row.ball_count * row.ball_diameter**2, row.pitch_diameter or 0.0


def _differs(one: Geometry, other: Geometry) -> bool:
    """Whether two rows mean other balls: another count, a diameter off by more than its rounding, another pitch."""
    pitches = one.pitch_diameter is not None and other.pitch_diameter is not None
    return (
        one.ball_count != other.ball_count
        or abs(one.ball_diameter - other.ball_diameter) > 0.006
        or (pitches and abs(float(one.pitch_diameter or 0) - float(other.pitch_diameter or 0)) > 0.02)
    )


def _in_words(row: Geometry) -> str:
    pitch = f", D_pw {row.pitch_diameter:g} mm" if row.pitch_diameter is not None else ""
    how = "printed" if row.published else "solved from printed ratings"
    return f"{row.ball_count} balls of {row.ball_diameter:g} mm{pitch} ({row.maker}, {how}: {row.source})"
