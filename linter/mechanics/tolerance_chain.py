"""Chains of toleranced dimensions: worst case, root sum square, Monte Carlo, and the text form of a chain.

A chain is held as arrays whose last axis runs over its members: ``sign`` (+1 or -1), ``nominal``, ``lower`` and
``upper`` deviation (mm, lower <= upper, each belonging to the dimension itself, before its sign). All rows of a batch
have the same number of members; shorter chains are padded with zero members. Standard arithmetic and statistical
tolerancing; from memory of DIN 7186 for the names.
"""

import re
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics.normal import normal_cdf

Array = NDArray[np.float64]

SIGMA_PER_HALF_TOLERANCE = 3.0
"""Half a tolerance is taken as three standard deviations of a normal dimension (common practice)."""

_BLOCK_VALUES = 4_000_000  # simulated values held at a time


class Chain(NamedTuple):
    """Members of a chain on the last axis of each array; deviations in the unit of the nominals."""

    sign: Array
    nominal: Array
    lower: Array
    upper: Array


def chain(sign: ArrayLike, nominal: ArrayLike, lower: ArrayLike, upper: ArrayLike) -> Chain:
    """Checked chain from broadcastable arrays.

    Raises
    ------
    ValueError
        If a sign is not +1 or -1, or a lower deviation exceeds the upper one.
    """
    parts = np.broadcast_arrays(
        *(np.atleast_1d(np.asarray(x, dtype=np.float64)) for x in (sign, nominal, lower, upper))
    )
    s, _, low, high = parts
    if not np.all(np.isin(s, (1.0, -1.0)) | np.isnan(s)):
        raise ValueError(f"sign = {s[~np.isin(s, (1.0, -1.0))].flat[0]:g}: expected 1 or -1")
    if np.any(low > high):
        at = low > high
        raise ValueError(f"deviations {low[at].flat[0]:g}/{high[at].flat[0]:g}: expected lower <= upper")
    return Chain(*parts)


def worst_case(members: Chain) -> tuple[Array, Array]:
    """Least and largest closing dimension, shape of a member array without its last axis."""
    s, x, low, high = members
    a, b = s * (x + low), s * (x + high)
    return np.minimum(a, b).sum(axis=-1), np.maximum(a, b).sum(axis=-1)


def root_sum_square(members: Chain) -> tuple[Array, Array]:
    """Mean closing dimension and half width of its band by root sum square of the members' half tolerances."""
    s, x, low, high = members
    half = (high - low) / 2.0
    return (s * (x + (low + high) / 2.0)).sum(axis=-1), np.sqrt((half**2).sum(axis=-1))


def monte_carlo(members: Chain, draws: int, seed: int) -> Array:
    """Simulated closing dimensions, shape (..., draws).

    Members are independent and normal about the middle of their tolerance, half a tolerance being three standard
    deviations. The same draws serve every row, so a row's result does not depend on the rows beside it.

    Parameters
    ----------
    members : Chain
        One or many chains.
    draws : int
        Number of simulated assemblies, 1 or more.
    seed : int
        Seed of the generator (PCG64); the same seed gives the same figures.

    Returns
    -------
    ndarray
        Shape (..., draws); lengths in the unit of the chain.

    Raises
    ------
    ValueError
        If there are no draws.
    """
    if draws < 1:
        raise ValueError(f"draws = {draws}: expected 1 or more")
    mean, _ = root_sum_square(members)
    sigma = (members.upper - members.lower) / (2.0 * SIGMA_PER_HALF_TOLERANCE)
    z = np.random.default_rng(seed).standard_normal((sigma.shape[-1], draws))
    return mean[..., np.newaxis] + sigma @ z


def share_outside(members: Chain, lowest: ArrayLike, highest: ArrayLike, draws: int, seed: int) -> Array:
    """Share of simulated assemblies outside ``lowest..highest``, 0 to 1 (see ``monte_carlo``).

    Limits broadcast against the rows; many rows are worked in blocks so that memory stays bounded.
    """
    rows = members.nominal.shape[:-1]
    low = np.broadcast_to(np.asarray(lowest, dtype=np.float64), rows)
    high = np.broadcast_to(np.asarray(highest, dtype=np.float64), rows)
    if np.any(low > high):
        raise ValueError("limits: expected lowest <= highest")
    flat = Chain(*(part.reshape(-1, part.shape[-1]) for part in members))
    low, high = low.reshape(-1, 1), high.reshape(-1, 1)
    share = np.empty(len(flat.nominal))
    step = max(1, _BLOCK_VALUES // max(draws, 1))
    for start in range(0, len(share), step):
        block = slice(start, start + step)
        lengths = monte_carlo(Chain(*(part[block] for part in flat)), draws, seed)
        outside = np.mean((lengths < low[block]) | (lengths > high[block]), axis=-1)
        share[block] = np.where(np.isnan(lengths[:, 0] + low[block, 0] + high[block, 0]), np.nan, outside)
    return share.reshape(rows)


def normal_share_outside(members: Chain, lowest: ArrayLike, highest: ArrayLike) -> Array:
    """Share outside ``lowest..highest`` of a normal closing dimension, 0 to 1, in closed form.

    The limit of ``share_outside`` for many draws; a chain without tolerance is either in (0) or out (1).
    """
    mean, half = root_sum_square(members)
    low, high = np.asarray(lowest, dtype=np.float64), np.asarray(highest, dtype=np.float64)
    sigma = half / SIGMA_PER_HALF_TOLERANCE
    safe = np.where(sigma > 0.0, sigma, 1.0)
    spread = normal_cdf((low - mean) / safe) + normal_cdf((mean - high) / safe)
    fixed = np.where(np.isnan(mean + low + high), np.nan, (mean < low) | (mean > high))
    return np.where(sigma == 0.0, fixed, spread)


# ---------------------------------------------------------------------------------------------------- text form

_NUMBER = r"(?:\d+(?:[.,]\d+)?|[.,]\d+)(?![\d.,])"
_SIGN = r"[+\-−–]"
_PLUS_MINUS = r"±|\+/[-−–]|\+[-−–]"
_MEMBER = re.compile(
    rf"(?P<sign>{_SIGN})?[ \t]*(?P<nominal>{_NUMBER})"
    rf"(?:\s*(?:{_PLUS_MINUS})\s*(?P<half>{_NUMBER})"
    rf"|\s*(?P<first>{_SIGN}?\s?{_NUMBER})\s*/\s*(?P<second>{_SIGN}?\s?{_NUMBER}))?"
)
_MAYBE_THOUSANDS = re.compile(r"[1-9]\d{0,2},\d{3}")


def _check_decimals(text: str) -> None:
    """ValueError where a number is malformed or its decimal mark cannot be told."""
    numbers = [(m.start(), m.group()) for m in re.finditer(r"[\d.,]*\d[\d.,]*", text)]
    for at, number in numbers:
        if not re.fullmatch(_NUMBER, number):
            raise ValueError(f"position {at + 1}: {number!r} is not a number with one decimal mark")
    commas = [(at, number) for at, number in numbers if "," in number]
    points = [(at, number) for at, number in numbers if "." in number]
    if commas and points:
        at, number = max(commas[0], points[0])
        raise ValueError(f"position {at + 1}: {number!r} mixes decimal comma and decimal point in one chain")
    if commas and all(_MAYBE_THOUSANDS.fullmatch(number) for _, number in commas):
        at, number = commas[0]
        raise ValueError(f"position {at + 1}: {number!r} may be a decimal or a thousands comma; write a decimal point")


def _value(text: str) -> float:
    plain = re.sub(r"\s", "", text).replace(",", ".").replace("−", "-").replace("–", "-")
    return float(plain)


def parse_chain(text: str) -> Chain:
    """Chain from text such as ``+41.2±0.05 -12±0.02 -4 0/-0.12``.

    Each member is a sign (which only the first may omit, then plus), a nominal, and either nothing, ``±`` with one
    deviation (``+/-`` and ``+-`` also read) or two deviations with a slash in either order. The deviations belong to
    the dimension; the member's sign then applies to the toleranced dimension as a whole. Decimal point or decimal
    comma, one of them throughout.

    Parameters
    ----------
    text : str
        The chain, mm.

    Returns
    -------
    Chain
        One row, arrays of shape (members,).

    Raises
    ------
    ValueError
        With the position (counted from 1), what was read there and what was expected.

    Examples
    --------
    >>> low, high = worst_case(parse_chain("+41.2±0.05 -12±0.02 -4 0/-0.12"))
    >>> round(float(low), 3), round(float(high), 3)
    (25.13, 25.39)
    """
    _check_decimals(text)
    members: list[tuple[float, float, float, float]] = []
    at = len(text) - len(text.lstrip())
    end = len(text.rstrip())
    if at >= end:
        raise ValueError("position 1: the chain is empty; expected for example '+41.2±0.05 -12±0.02'")
    while at < end:
        match = _MEMBER.match(text, at, end)
        if match is None:
            raise ValueError(f"position {at + 1}: {text[at:end][:20]!r} read, expected a signed dimension")
        if match["sign"] is None and members:
            raise ValueError(f"position {at + 1}: {match.group()!r} read, expected + or - before this member")
        if match["half"] is not None:
            low, high = -_value(match["half"]), _value(match["half"])
        elif match["first"] is not None:
            low, high = _deviations(match)
        else:
            low = high = 0.0
        members.append((-1.0 if match["sign"] in ("-", "−", "–") else 1.0, _value(match["nominal"]), low, high))
        at = match.end()
        rest = text[at:end]
        if rest and not rest[0].isspace() and not re.match(_SIGN, rest):
            raise ValueError(f"position {at + 1}: {rest[:20]!r} read, expected a deviation or the next signed member")
        at += len(rest) - len(rest.lstrip())
    return chain(*np.array(members).T)


def _deviations(match: "re.Match[str]") -> tuple[float, float]:
    """Lower and upper deviation of ``first/second``; a deviation other than 0 carries its sign."""
    values = []
    for name in ("first", "second"):
        if not re.match(_SIGN, match[name]) and _value(match[name]) != 0.0:
            raise ValueError(
                f"position {match.start(name) + 1}: deviation {match[name]!r} has no sign; expected + or - before it"
            )
        values.append(_value(match[name]))
    return min(values), max(values)
