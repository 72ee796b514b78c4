"""When pieces over a fire will be done, by a fit of the page's own model with scipy.

Reads one request of the page on stdin, prints one JSON line: the likely end of each class in milliseconds and the time
it all took. The model is that of crate/src/smoke: shells of equal thickness, Crank-Nicolson, evaporation by the
convective part from a surface that dries, ten standard-normal parameters. Prints nothing where scipy is not there.
"""

import json
import math
import sys
import time

try:
    import numpy as np
    from scipy.linalg import solve_banded
    from scipy.optimize import least_squares
except ImportError:
    sys.exit(0)

CELLS, DENSITY, NUDGE = 12, 1055.0, 0.05


class Cook:
    def __init__(self, half, m, k, celsius):
        self.half, self.m, self.k, self.c = half, m, k, DENSITY * 3600.0
        edge = np.linspace(0, 1, CELLS + 1)
        moment = lambda p: (edge[1:] ** (m + p) - edge[:-1] ** (m + p)) / (m + p)
        self.volume = moment(1)
        first, square = moment(2) / self.volume, moment(3) / self.volume
        self.square = square
        self.passes = 2 * edge[1:-1] ** (m + 1) / (square[1:] - square[:-1])
        self.skin = 1 - first[-1] + m / 2 * (1 - 2 * first[-1] + square[-1])
        self.u = np.full(CELLS, celsius)
        self.surface, self.loss, self.fresh = celsius, 0.0, True

    def stride(self):
        fo = 0.012 / (1 + self.m)
        return 5 * min(max(fo * self.half**2 * self.c / self.k, 1.0), 300.0)

    def centre(self):
        u, s = self.u, self.square
        return u[0] - (u[1] - u[0]) / (s[1] - s[0]) * s[0]

    def advance(self, ahead, on, biot, ambient):
        whole = 1 + biot * self.skin
        offered, taken = biot * ambient / whole, biot / whole
        hold = self.volume / ahead
        main = hold.copy()
        main[:-1] += self.passes
        main[1:] += self.passes
        main[-1] += taken
        band = np.zeros((3, CELLS))
        band[0, 1:], band[1], band[2, :-1] = -self.passes, main, -self.passes
        right = hold * self.u
        right[-1] += offered
        v = solve_banded((1, 1), band, right, check_finite=False)
        flux = np.zeros(CELLS + 1)
        flux[1:-1] = self.passes * np.diff(v)
        flux[-1] = offered - taken * v[-1]
        self.u = self.u + on / self.volume * np.diff(flux)
        return on * flux[-1] * (self.m + 1)

    def step(self, seconds, air, s):
        wet = s["wet"] * math.exp(-max(self.loss / s["dries"], 0.0) ** s["sharp"])
        flux = lambda t: wet * latent(t) * evaporation(s["conv"], t, air, s["dew"])
        at, h = self.surface, s["conv"] + s["rad"]
        here = flux(at)
        slope = (flux(at + 0.05) - here) / 0.05
        whole = h + slope
        ambient = (h * air - here + slope * at) / whole
        biot = whole * self.half / self.k
        fo = self.k / self.c * seconds / self.half**2
        if self.fresh:
            rise = self.advance(fo / 2, fo / 2, biot, ambient) + self.advance(fo / 2, fo / 2, biot, ambient)
            self.fresh = False
        else:
            rise = self.advance(fo / 2, fo, biot, ambient)
        entered = rise * self.c * self.half / (self.m + 1)
        water = (h * (air - ambient) * seconds + h / whole * entered - entered) / latent(at)
        self.loss += water * (self.m + 1) / (self.half * DENSITY)
        whole = 1 + biot * self.skin
        self.surface = self.u[-1] + self.skin * (biot * ambient - biot * self.u[-1]) / whole


def saturation(t):
    return 610.94 * math.exp(17.625 * t / (t + 243.04))


def latent(t):
    return 2.501e6 - 2361.0 * t


def evaporation(h, surface, air, dew):
    film = 101325.0 / 287.05 / ((surface + air) / 2 + 273.15)
    vapour = saturation(surface) / (surface + 273.15) - saturation(dew) / (air + 273.15)
    return h / (film * 1007.0 * 0.904) * vapour / 461.5


def at_point(thickness, z):
    """An open smoker with a fan, a breast."""
    part = {
        "conv": 21.0 * math.exp(0.22 * z[1]),
        "rad": 6.5 * math.exp(0.15 * z[9]),
        "wet": min(0.8 * math.exp(0.15 * z[2]), 1.0),
        "dries": 0.03 * math.exp(0.30 * z[3]),
        "sharp": 1.2 * math.exp(0.2 * z[4]),
        "dew": 22.0 + 7.0 * z[5],
    }
    body = (thickness * math.exp(0.10 * z[0]) / 2, min(max(0.3 + 0.25 * z[6], 0.0), 2.0), 0.47 * math.exp(0.05 * z[8]))
    return body, part, z[7]


class Piece:
    def __init__(self, thickness, target, readings, cabinet, now):
        self.thickness, self.target, self.readings, self.now = thickness, target, readings, now
        self.times, self.airs = zip(*cabinet)
        self.air = max(sorted(self.airs[-5:])[2], self.airs[-1])

    def around(self, t):
        return self.air if t > self.times[-1] else float(np.interp(t, self.times, self.airs))

    def go(self, cook, part, begin, until, target=None):
        at, stride = begin, cook.stride()
        while at < until:
            before = (at, cook.centre())
            step = min(stride, until - at)
            cook.step(step, self.around(at + step / 2), part)
            at += step
            if target is not None and cook.centre() >= target:
                c = cook.centre()
                return before[0] + (at - before[0]) * (target - before[1]) / (c - before[1])
        return None

    def follow(self, z, now):
        (half, m, k), part, offset = at_point(self.thickness, z)
        at, start = self.readings[0]
        cook, off = Cook(half, m, k, start), []
        for t, read in self.readings:
            self.go(cook, part, at, t)
            at = max(at, t)
            off.append(cook.centre() + offset - read)
        self.go(cook, part, at, now)
        return np.array(off), cook, part, offset

    def finish(self, z):
        _, cook, part, offset = self.follow(z, self.now)
        return self.go(cook, part, self.now, self.now + 86400, self.target - offset)

    def likely(self):
        residuals = lambda z: np.concatenate([z, self.follow(z, self.readings[-1][0])[0]])
        found = least_squares(residuals, np.zeros(10), method="lm", ftol=1e-2, diff_step=NUDGE)
        end = self.finish(found.x)
        # The slopes that the band needs.
        for i in range(10):
            self.finish(found.x + NUDGE * np.eye(10)[i])
        # Past half-way in an open smoker the readings' own tail has its share.
        return self.now + 0.65 * (end - self.now) + 0.35 * (self.tail(end) - self.now)

    def tail(self, end):
        last = self.readings[-1][1] - self.readings[0][1]
        rows = [(t, math.log(self.air - c)) for t, c in self.readings[-4:] if c < self.air - 1]
        if last <= 0.5 * (self.target - self.readings[0][1]) or len(rows) < 3 or self.target >= self.air - 1:
            return end
        slope, level = np.polyfit(*zip(*rows), 1)
        at = (math.log(self.air - self.target) - level) / slope
        return at if slope < 0 and at > self.now else end


def main():
    batch, now = (lambda ask: (ask["batch"], ask["now"]))(json.load(sys.stdin)["fire_log"])
    number = lambda text: float(text.split()[0])
    readings = batch["fire"]["readings"]
    origin = min(r["at"] for r in readings)
    of = lambda place: [((r["at"] - origin) / 1000, number(r["temperature"])) for r in readings if r.get("class") == place]
    target = number(batch["fire"]["target"])
    begun = time.perf_counter()
    ends = []
    for place, piece in enumerate(batch["pieces"]):
        one = Piece(number(piece["thickness"]) / 1000, target, of(place), of(None), (now - origin) / 1000)
        ends.append(origin + 1000 * one.likely())
    print(json.dumps({"ends": ends, "ms": (time.perf_counter() - begun) * 1000}))


main()
