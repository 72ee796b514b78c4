"""The Fo at which the centre of a slab under a sealed dose is at 90 %, by a general PDE solver; exact 0.30352.

Prints one JSON line: the Fo found and the median time in milliseconds, at 20 cells as the page's own. The solver is
py-pde; where only scipy is there, its BDF integrator on the same cells. Prints nothing where neither is.
"""

import json
import time

CELLS = 20
END = 0.32


def crossing(times, centres):
    """When the centre crosses 0.9, straight between two outputs."""
    for (t0, c0), (t1, c1) in zip(zip(times, centres), zip(times[1:], centres[1:])):
        if c0 < 0.9 <= c1:
            return t0 + (t1 - t0) * (0.9 - c0) / (c1 - c0)
    return None


def by_pde():
    import numpy as np
    import pde

    grid = pde.CartesianGrid([[0, 1]], CELLS)
    start = np.zeros(CELLS)
    start[-1] = CELLS
    equation = pde.DiffusionPDE(bc={"derivative": 0})

    def once():
        store = pde.MemoryStorage()
        field = pde.ScalarField(grid, start)
        equation.solve(field, t_range=END, dt=5e-4, solver="crank-nicolson", tracker=store.tracker(2e-3))
        # The centre by the parabola through the two innermost cells, as the page does.
        centres = [f.data[0] - (f.data[1] - f.data[0]) / 6 for _, f in store.items()]
        return crossing(list(store.times), centres)

    return "py-pde", once


def by_scipy():
    import numpy as np
    from scipy.integrate import solve_ivp

    width = 1 / CELLS
    start = np.zeros(CELLS)
    start[-1] = CELLS

    def change(_, u):
        flux = np.diff(u, prepend=u[0], append=u[-1]) / width
        return np.diff(flux) / width

    times = np.linspace(0, END, 161)

    def once():
        found = solve_ivp(change, (0, END), start, method="BDF", t_eval=times, rtol=1e-4, atol=1e-6)
        u = found.y
        return crossing(list(times), list(u[0] - (u[1] - u[0]) / 6))

    return "scipy", once


for make in (by_pde, by_scipy):
    try:
        name, once = make()
        fo = once()
    except ImportError:
        continue
    if fo is None:
        continue
    took = []
    for _ in range(15):
        begun = time.perf_counter()
        once()
        took.append((time.perf_counter() - begun) * 1000)
    print(json.dumps({"solver": name, "fo": fo, "ms": sorted(took)[7]}))
