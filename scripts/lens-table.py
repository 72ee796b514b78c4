#!/usr/bin/env python3
"""Writes crate/tables/lens.csv: how a lens fills, as sums of decaying terms. Wants numpy and scipy.

A lens is two equal spherical caps, half-thickness 1, radius of the rim `aspect`; aspect 1 is a ball. Fick's equation in
it by finite elements: quadratic quadrilaterals over a quarter of the section (r, z), integrated with the weight r, then
the modes of the discrete body, so that time has no step. Two courses:

  dosed a dose shared evenly over the surface, nothing passes after; what is lacking of the mean at the centre line
  held  the surface stands at 1; what is lacking of it at the centre line, and of the mean

Each is fitted, from Fo 0.005 on (by the half-thickness), with TERMS rates in geometric steps from the body's own slowest
to FASTEST; the mean with shares that are not negative, so that a bath can be hung on it. Prints what the fit misses.
"""
import csv, pathlib
import numpy as np
import scipy.linalg as la
from scipy.optimize import lsq_linear

ASPECTS = [1.0, 1.4, 2.0, 2.8, 4.0, 5.6, 8.0, 11.2]
TERMS, FASTEST, PLACES = 11, 600.0, 9


def refine(ends):
    """The ends of elements, with their middles between."""
    all = np.empty(2 * len(ends) - 1)
    all[::2], all[1::2] = ends, (ends[1:] + ends[:-1]) / 2
    return all


def body(a, across, through):
    """Stiffness, mass, load of the surface, and the nodes on the axis."""
    ball = (a * a + 1) / 2
    # Rays from the centre to the arc, finer towards the rim and towards the surface.
    widest = np.arctan2(a, ball - 1)
    even = lambda count, power: refine(1 - (1 - np.linspace(0, 1, count + 1)) ** power)
    angle, out = widest * even(across, 1.3), even(through, 1.3)
    R = ball * np.outer(np.sin(angle), out)
    Z = np.outer(ball * np.cos(angle) - (ball - 1), out)
    number = np.arange(R.size).reshape(R.shape)
    number[:, 0] = number[0, 0]
    used, number = np.unique(number, return_inverse=True)
    number = number.reshape(R.shape)
    n = len(used)
    K, M, b = np.zeros((n, n)), np.zeros((n, n)), np.zeros(n)
    g, w = np.polynomial.legendre.leggauss(4)
    one = lambda x: np.array([x * (x - 1) / 2, 1 - x * x, x * (x + 1) / 2])
    slope = lambda x: np.array([x - 0.5, -2 * x, x + 0.5])
    for i in range(0, 2 * across, 2):
        for j in range(0, 2 * through, 2):
            ids = number[i:i + 3, j:j + 3].ravel()
            x, z = R[i:i + 3, j:j + 3].ravel(), Z[i:i + 3, j:j + 3].ravel()
            for p, wp in zip(g, w):
                for q, wq in zip(g, w):
                    N = np.outer(one(p), one(q)).ravel()
                    dp, dq = np.outer(slope(p), one(q)).ravel(), np.outer(one(p), slope(q)).ravel()
                    J = np.array([[dp @ x, dp @ z], [dq @ x, dq @ z]])
                    area = abs(np.linalg.det(J)) * wp * wq * (N @ x)
                    D = np.linalg.solve(J, np.array([dp, dq]))
                    # A node may stand in an element more than once: at the centre.
                    np.add.at(K, np.ix_(ids, ids), area * D.T @ D)
                    np.add.at(M, np.ix_(ids, ids), area * np.outer(N, N))
        ids, x, z = number[i:i + 3, -1], R[i:i + 3, -1], Z[i:i + 3, -1]
        for p, wp in zip(g, w):
            N = one(p)
            b[ids] += wp * np.hypot(slope(p) @ x, slope(p) @ z) * (N @ x) * N
    return K, M, b, number[0], Z[0], number[:, -1]


def courses(a, across=22, through=12):
    K, M, b, axis, z, rim = body(a, across, through)
    ones = np.ones(len(b))
    volume, area = ones @ M @ ones, b.sum()
    assert abs(volume / ((3 * a * a + 1) / 12) - 1) < 1e-3, volume / ((3 * a * a + 1) / 12)
    assert abs(area / ((a * a + 1) / 2) - 1) < 1e-3
    places = np.linspace(0, 1, PLACES)
    at = lambda v: np.array([np.interp(p, z, v[axis]) if p in (0, 1) else quad(z, v[axis], p) for p in places])
    rate, shape = la.eigh(K, M)
    load = shape.T @ b * volume / area
    dose = (rate[1:], -np.array([load[k] * at(shape[:, k]) for k in range(1, len(rate))]))
    free = np.setdiff1d(np.arange(len(b)), rim)
    rate, inner = la.eigh(K[np.ix_(free, free)], M[np.ix_(free, free)])
    shape = np.zeros((len(b), len(rate)))
    shape[free] = inner
    load = shape.T @ M @ ones
    line = np.array([load[k] * at(shape[:, k]) for k in range(len(rate))])
    return dose, (rate, np.c_[line, load ** 2 / volume])


def quad(z, v, p):
    """By the parabola of the element in which p lies."""
    e = min(np.searchsorted(z[2::2], p), (len(z) - 3) // 2)
    z, v = z[2 * e:2 * e + 3], v[2 * e:2 * e + 3]
    return sum(v[i] * np.prod([(p - z[j]) / (z[i] - z[j]) for j in range(3) if j != i]) for i in range(3))


def fit(rate, lacks, slowest, means):
    fo = np.geomspace(0.005, 8 / slowest, 500)
    rates = np.geomspace(slowest, FASTEST, TERMS)
    basis = np.exp(-np.outer(fo, rates))
    wanted = np.exp(-np.outer(fo, rate)) @ lacks
    found = []
    for column in range(wanted.shape[1]):
        y = wanted[:, column]
        mean = means and column == wanted.shape[1] - 1
        weight = 1 / np.maximum(1, np.abs(y))
        ridge = 1e-5
        A = np.r_[basis * weight[:, None], ridge * np.eye(TERMS)]
        low = 1e-4 if mean else -np.inf
        found.append(lsq_linear(A, np.r_[y * weight, np.zeros(TERMS)], bounds=(low, np.inf)).x)
    found = np.array(found)
    miss = np.abs(basis @ found.T - wanted)
    return found, miss, fo


if __name__ == '__main__':
    path = pathlib.Path(__file__).parent.parent / 'crate/tables/lens.csv'
    rows = []
    for a in ASPECTS:
        dose, held = courses(a)
        for name, (rate, lacks), means in [('dosed', dose, False), ('held', held, True)]:
            found, miss, fo = fit(rate, lacks, rate[0], means)
            late = fo > 0.02
            print(f'{a:5} {name} slowest {rate[0]:.4f}; missed at most, from Fo 0.02: '
                  + ' '.join(f'{m:.4f}' for m in miss[late].max(0)), f'largest {np.abs(found).max():.2f}', flush=True)
            for place, shares in enumerate(found):
                if means and place == PLACES - 1:
                    continue
                at = 'mean' if place == PLACES else str(place)
                rows.append([f'{a:g}', name, f'{rate[0]:.4f}', at, *(f'{s:.4f}' for s in shares)])
    with path.open('w', newline='') as file:
        file.write('# How a lens of two spherical caps fills, by scripts/lens-table.py (computed). aspect: radius of the rim over half the\n'
                   '# thickness. dosed: shared over the surface, then sealed; held: the surface stands at 1. What is lacking at a place of the\n'
                   '# centre line, 0 the centre and 8 the surface, or of the mean, is the sum of share * exp(-rate * Fo); the rates go from\n'
                   f'# slowest to {FASTEST:g} in equal ratios.\n')
        out = csv.writer(file, lineterminator='\n')
        out.writerow(['aspect', 'around', 'slowest', 'place', *(f't{n}' for n in range(TERMS))])
        out.writerows(rows)
