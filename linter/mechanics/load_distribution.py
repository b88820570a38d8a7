"""Ball bearing under radial and combined load: who carries what, and how far the ring moves.

Lengths in mm, loads in N, angles in degrees, stiffness in N/mm, load-deflection constants in N/mm^1.5. Rigid rings; a
ball stands on the load line. Stations are solved together in blocks, ball by ball along the second axis; rows with
fewer balls than the largest are padded. The description of a bearing is that of `ball_bearing`.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain

_BLOCK = 4096  # stations solved at a time, so that the ball-by-ball arrays stay in the cache


class RadialState(NamedTuple):
    """Bearing under pure radial load: displacement [mm], largest ball load [N], load zone, tangent stiffness [N/mm]."""

    displacement: NDArray[np.float64]
    max_ball_load: NDArray[np.float64]
    load_zone: NDArray[np.float64]
    stiffness: NDArray[np.float64]


class CombinedState(NamedTuple):
    """Bearing under radial and axial load; see `combined_load`."""

    axial_displacement: NDArray[np.float64]
    radial_displacement: NDArray[np.float64]
    max_ball_load: NDArray[np.float64]
    contact_angle: NDArray[np.float64]
    min_ball_load: NDArray[np.float64]
    loaded_balls: NDArray[np.float64]
    axial_stiffness: NDArray[np.float64]
    radial_stiffness: NDArray[np.float64]
    coupling_stiffness: NDArray[np.float64]


def sjovall_integral(load_zone: ArrayLike) -> NDArray[np.float64]:
    """Radial load distribution integral J_r(ε) of a ball bearing (exponent 1.5).

    J_r(ε) = 1/(2π) ∫ [1 − (1 − cos ψ)/(2ε)]^1.5 cos ψ dψ over the loaded arc, so that F_r = Z Q_max J_r(ε) cos α.

    Parameters
    ----------
    load_zone
        ε > 0: share of the diameter inside the load zone; 0.5 without clearance, above 0.5 with interference.

    Returns
    -------
    ndarray
        J_r, of the shape of ``load_zone``.

    Raises
    ------
    ValueError
        ε not positive.

    Notes
    -----
    Gauss quadrature with 64 points after a substitution that removes the root at the edge of the zone; relative error
    below 1e-9. Source: Harris, Rolling Bearing Analysis, Sjövall integrals (from memory).

    """
    from scipy.special import roots_legendre  # slow to import, wanted by few

    eps = domain.positive("load zone", load_zone)
    edge = np.arccos(np.maximum(1.0 - 2.0 * eps, -1.0))
    node, weight = roots_legendre(64)
    t = np.pi / 4.0 * (node + 1.0)  # ψ = edge·sin t bends the end of the arc so that the integrand stays smooth
    psi = edge[..., None] * np.sin(t)
    base = np.maximum(1.0 - (1.0 - np.cos(psi)) / (2.0 * eps[..., None]), 0.0)
    integrand = base**1.5 * np.cos(psi) * np.cos(t) * np.pi / 4.0
    return np.asarray(edge / np.pi * (integrand @ weight))


def _ball_cosines(
    count: NDArray[np.float64],
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Cosine of each ball's position from the load line, and how many balls share it (0 pads short rows).

    A ball stands on the load line; the two halves are mirror images, so only positions 0..180 deg are listed.
    """
    z = np.where(np.isnan(count), 2.0, count)[..., None]
    j = np.arange(int(np.max(z, initial=2.0)) // 2 + 1)
    share = np.where((j == 0) | (2 * j == z), 1.0, np.where(2 * j < z, 2.0, 0.0))
    return np.cos(2.0 * np.pi * j / z), share


def radial_load(
    load: ArrayLike,
    ball_count: ArrayLike,
    stiffness_constant: ArrayLike,
    radial_clearance: ArrayLike = 0.0,
    contact_angle: ArrayLike = 0.0,
) -> RadialState:
    """Load distribution under a radial load at a fixed contact angle, by summing over the balls.

    Parameters
    ----------
    load
        Radial load, N, > 0.
    ball_count
        Number of balls, 2..200.
    stiffness_constant
        K_n, N/mm^1.5, > 0.
    radial_clearance
        Radial clearance in use, mm; negative for an interference.
    contact_angle
        deg, 0..90 (below 90).

    Returns
    -------
    RadialState
        Radial displacement of the inner ring from the centred position, load of the ball on the load line, load zone
        ε, and dF/dδ. All of the broadcast shape.

    Raises
    ------
    ValueError
        An argument outside its range.

    Notes
    -----
    F = K_n cos α Σ [(δ_r cos ψ_j − P_d/2) cos α]^1.5 cos ψ_j over the loaded balls; a ball stands on the load line.
    Newton's method on a convex increasing function. Source: Harris, Rolling Bearing Analysis (from memory).

    """
    f, z = domain.positive("radial load", load), domain.ball_count(ball_count)
    k_n, p_d = domain.positive("load-deflection constant", stiffness_constant), np.asarray(radial_clearance, np.float64)
    cos_a = np.cos(np.deg2rad(domain.contact_angle(contact_angle)))
    f, z, k_n, p_d, cos_a = np.broadcast_arrays(f, z, k_n, p_d, cos_a)
    shape = f.shape
    columns = [x.reshape(-1) for x in (f, z, k_n * cos_a**2.5, p_d, k_n * cos_a**1.5)]
    out = np.empty((4, f.size))
    for start in range(0, f.size, _BLOCK):
        rows = slice(start, start + _BLOCK)
        out[:, rows] = _radial_block(*(x[rows] for x in columns))
    return RadialState(*(x.reshape(shape) for x in out))


def _radial_block(
    f: NDArray[np.float64],
    z: NDArray[np.float64],
    k: NDArray[np.float64],
    p_d: NDArray[np.float64],
    k_ball: NDArray[np.float64],
) -> NDArray[np.float64]:
    cosine, share = _ball_cosines(z)
    half = 0.5 * p_d
    weight, slope = share * cosine, share * cosine**2
    # The ball on the load line touches at the start, so that the first step, whatever its size, lands above the root.
    delta = np.maximum(half, 0.0) + (5.0 * f / (z * k)) ** (2.0 / 3.0)
    stiffness = np.ones_like(f)
    for _ in range(60):
        squeeze = np.maximum(delta[:, None] * cosine - half[:, None], 0.0)
        root = np.sqrt(squeeze)
        force = k * np.einsum("ij,ij,ij->i", root, squeeze, weight)
        stiffness = 1.5 * k * np.einsum("ij,ij->i", root, slope)
        step = (force - f) / stiffness
        delta = delta - step
        if not np.any(np.abs(step) > 1e-8 * np.abs(delta)):  # the error after this step is of the order of its square
            break
    q = k_ball * np.maximum(delta - half, 0.0) ** 1.5
    return np.stack([delta, q, 0.5 * (1.0 - half / delta), stiffness])


def combined_load(
    radial_load: ArrayLike,
    axial_load: ArrayLike,
    ball_count: ArrayLike,
    groove_distance: ArrayLike,
    radial_clearance: ArrayLike,
    stiffness_constant: ArrayLike,
) -> CombinedState:
    """Bearing under radial and axial load with the contact angle of every ball free to change.

    Parameters
    ----------
    radial_load, axial_load
        N, >= 0; not both zero unless the bearing has an interference.
    ball_count
        2..200.
    groove_distance
        A, mm, > 0.
    radial_clearance
        Clearance in use, mm, < 2A; negative for an interference. `clearance_of_angle` gives it for a bearing known by
        its free contact angle.
    stiffness_constant
        K_n, N/mm^1.5, > 0, taken as constant over the change of angle.

    Returns
    -------
    CombinedState
        Axial and radial displacement of the inner ring from the centred position [mm]; load and contact angle of the
        heaviest loaded ball [N, deg]; load of the lightest ball; number of loaded balls; tangent stiffnesses
        dF_a/du, dF_r/dδ and dF_a/dδ [N/mm], each with the other displacement held.

    Raises
    ------
    ValueError
        An argument outside its range.

    Notes
    -----
    For the ball at ψ the groove centres stand s = hypot(u, A − P_d/2 + δ cos ψ) − A further apart than with the ball
    just touching. The sum of the balls' strain energies 2/5 K_n s^2.5 is convex in (u, δ); its gradient is set equal to
    the loads by Newton's method, with halved steps where a step would go past the minimum.
    Source: Harris, Rolling Bearing Analysis, ball bearings under combined load (from memory); solution derived.

    """
    f_r, f_a = domain.not_negative("radial load", radial_load), domain.not_negative("axial load", axial_load)
    z, a = domain.ball_count(ball_count), domain.positive("distance of the groove centres", groove_distance)
    p_d, k_n = np.asarray(radial_clearance, np.float64), domain.positive("load-deflection constant", stiffness_constant)
    if np.any(p_d >= 2.0 * a):
        raise ValueError("radial clearance must be smaller than twice the distance of the groove centres")
    if np.any((f_r == 0.0) & (f_a == 0.0) & (p_d >= 0.0)):
        raise ValueError("a bearing with clearance needs a radial or an axial load greater than 0")
    f_r, f_a, z, a, p_d, k_n = np.broadcast_arrays(f_r, f_a, z, a, p_d, k_n)
    shape = f_r.shape
    columns = [x.reshape(-1) for x in (f_r, f_a, z, a, p_d, k_n)]
    out = np.empty((9, f_r.size))
    for start in range(0, f_r.size, _BLOCK):
        rows = slice(start, start + _BLOCK)
        out[:, rows] = _combined_block(*(x[rows] for x in columns))
    u, d, q_max, alpha, q_min, loaded, k_a, k_r, k_ar = (x.reshape(shape) for x in out)
    return CombinedState(u, d, q_max, alpha, q_min, loaded, k_a, k_r, k_ar)


def _combined_block(
    f_r: NDArray[np.float64],
    f_a: NDArray[np.float64],
    z: NDArray[np.float64],
    a: NDArray[np.float64],
    p_d: NDArray[np.float64],
    k_n: NDArray[np.float64],
) -> NDArray[np.float64]:
    cosine, share = _ball_cosines(z)
    # Lengths in units of A, loads in units of K_n A^1.5: every number below is of order one or smaller.
    unit = k_n * a**1.5
    r_load, a_load, play = f_r / unit, f_a / unit, 0.5 * p_d / a
    w_0 = 1.0 - play

    # Start from the rigid bearing. Where the load points below the free contact angle, the ball on the load line alone
    # touches and turns into the direction of the load; above it the ring goes straight to its axial stop.
    total = np.hypot(r_load, a_load)
    safe_total = np.where(total > 0.0, total, 1.0)
    squeeze = (total * 5.0 / z) ** (2.0 / 3.0)
    u_way, d_way = a_load / safe_total, r_load / safe_total
    one_ball = d_way >= w_0
    u = np.where(one_ball, (1.0 + squeeze) * u_way, np.sqrt(np.maximum(play * (2.0 - play), 0.0)) + squeeze * u_way)
    u = np.where(a_load > 0.0, u, 0.0)
    d = np.where(one_ball, (1.0 + squeeze) * d_way - w_0, squeeze * d_way)
    live = np.arange(u.size)
    tangent = np.stack(_gradient(u, d, play, cosine, share, a_load, r_load))
    for _ in range(100):
        g_u, g_d, h_uu, h_dd, h_ud = tangent[:, live]
        free_u, free_d = (
            a_load[live] > 0.0,
            r_load[live] > 0.0,
        )  # a pure radial or axial load keeps its line of symmetry
        # Out of balance: beyond 1e-11 of the load and beyond what the last digits of the displacements can settle.
        off_u = free_u & (np.abs(g_u) > 1e-11 * a_load[live] + 1e-15 * (h_uu + np.abs(h_ud)))
        off_d = free_d & (np.abs(g_d) > 1e-11 * r_load[live] + 1e-15 * (h_dd + np.abs(h_ud)))
        moving = off_u | off_d
        if not np.any(moving):
            break
        both = free_u & free_d
        determinant = np.where(both, np.maximum(h_uu * h_dd - h_ud**2, 1e-12 * h_uu * h_dd), 1.0)
        move_u = np.where(both, (h_ud * g_d - h_dd * g_u) / determinant, np.where(free_u, -g_u / h_uu, 0.0))
        move_d = np.where(both, (h_ud * g_u - h_uu * g_d) / determinant, np.where(free_d, -g_d / h_dd, 0.0))
        slope = np.abs(g_u * move_u + g_d * move_d)[moving]
        move_u, move_d, live = move_u[moving], move_d[moving], live[moving]
        size = np.ones(live.size)
        search = np.arange(live.size)
        for _ in range(40):
            at, step = live[search], size[search]
            try_u, try_d = u[at] + step * move_u[search], d[at] + step * move_d[search]
            trial = _gradient(try_u, try_d, play[at], cosine[at], share[at], a_load[at], r_load[at])
            tangent[:, at] = trial
            past = trial[0] * move_u[search] + trial[1] * move_d[search] > 0.5 * slope[search]
            if not np.any(past):
                break
            search = search[past]
            size[search] *= 0.5
        u[live] += size * move_u
        d[live] += size * move_d
    else:
        raise ValueError(f"no equilibrium found for {live.size} of {u.size} stations")
    _, _, h_uu, h_dd, h_ud = tangent
    w, _, s = _stretch(u, d, play, cosine)
    s = np.where(share > 0.0, s, 0.0)
    heaviest = np.argmax(s, axis=1)
    pick = np.arange(u.size)
    q_max = unit * s[pick, heaviest] ** 1.5
    q_min = unit * np.min(np.where(share > 0.0, s, np.inf), axis=1) ** 1.5
    alpha = np.rad2deg(np.arctan2(u, w[pick, heaviest]))
    count = np.where(np.isnan(q_max), np.nan, np.sum(np.where(s > 0.0, share, 0.0), axis=1))
    stiff = k_n * np.sqrt(a)
    return np.stack([u * a, d * a, q_max, alpha, q_min, count, stiff * h_uu, stiff * h_dd, stiff * h_ud])


def _stretch(
    u: NDArray[np.float64], d: NDArray[np.float64], play: NDArray[np.float64], cosine: NDArray[np.float64]
) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Radial distance of the groove centres of each ball, their distance, and its growth beyond 1 (0 if loose).

    The growth is (length² − 1)/(length + 1), taken from the small terms so that light loads keep their digits.
    """
    e = d[:, None] * cosine - play[:, None]
    w = 1.0 + e
    square = (u * u)[:, None]
    length = np.sqrt(square + w * w)
    return w, length, np.maximum((square + e * (2.0 + e)) / (length + 1.0), 0.0)


def _gradient(
    u: NDArray[np.float64],
    d: NDArray[np.float64],
    play: NDArray[np.float64],
    cosine: NDArray[np.float64],
    share: NDArray[np.float64],
    a_load: NDArray[np.float64],
    r_load: NDArray[np.float64],
) -> tuple[NDArray[np.float64], ...]:
    """Out-of-balance loads and tangent stiffnesses of the dimensionless bearing."""
    w, length, s = _stretch(u, d, play, cosine)
    along = share * np.sqrt(s)
    load = along * s
    along *= 1.5
    w /= length  # from here on the cosine and sine of the contact angle
    sine = u[:, None] / length
    turn = load / length
    g_u = np.einsum("ij,ij->i", load, sine) - a_load
    load *= cosine
    g_d = np.einsum("ij,ij->i", load, w) - r_load
    along -= turn
    along_u = along * sine
    h_uu = np.einsum("ij,ij->i", along_u, sine) + np.sum(turn, axis=1)
    along *= w
    along *= cosine
    h_ud = np.einsum("ij,ij->i", along, sine)
    along *= w
    along += turn * cosine
    h_dd = np.einsum("ij,ij->i", along, cosine)
    return g_u, g_d, h_uu, h_dd, h_ud
