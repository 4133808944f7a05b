"""Fits the band forms to rubber data with SciPy, apart from the program, and writes fitBands.json beside this file.

Run from the project's root with Debian's python3-scipy:  /usr/bin/python3 core/checks/reference/fitBands.py
"""

import datetime
import json
import pathlib
import platform

import numpy
import scipy
from scipy import interpolate, optimize, stats

HERE = pathlib.Path(__file__).parent
MEASURED = json.loads((HERE.parent / "elastic.json").read_text())
SECTION_MM2 = 2 * 41 * 4.5  # both legs of a loop 41 mm wide and 4.5 mm thick: MPa times this is N
INF = numpy.inf


def ogden(x, p):
    return sum(m * (x ** (a - 1) - x ** (-a / 2 - 1)) for m, a in zip(p[::2], p[1::2]))


def yeoh(x, p):
    j = x**2 + 2 / x - 3
    return 2 * (x - x**-2) * (p[0] + 2 * p[1] * j + 3 * p[2] * j**2)


# form: function, and a lower bound, an upper bound and starts for each range searched
FORMS = {
    "neoHookean": (lambda x, p: p[0] * (x - x**-2), [([0], [INF], [[100]])]),
    "mooneyRivlin": (lambda x, p: 2 * (x - x**-2) * (p[0] + p[1] / x), [([-INF] * 2, [INF] * 2, [[50, 20]])]),
    "ogden1": (ogden, [([0, 0.5], [INF, 12], [[200, 1.3], [100, 3]])]),
    "yeoh": (yeoh, [([-INF] * 3, [INF] * 3, [[60, 0, 0]])]),
    "ogden2": (
        ogden,
        [
            ([0, 0.5, 0, 3], [INF, 3, INF, 12], [[200, 1.3, 0.5, 5], [100, 2, 0.01, 8], [250, 1, 5, 3.5]]),
            ([0, 0.5, -INF, -12], [INF, 12, 0, -0.5], [[100, 2, -30, -2], [200, 1.3, -3, -4], [20, 4, -100, -1]]),
        ],
    ),
}


def fit(function, ranges, x, y, sd):
    best = None
    for lower, upper, starts in ranges:
        for start in starts:
            found = optimize.least_squares(
                lambda p: (function(x, p) - y) / sd,
                start, bounds=(lower, upper), x_scale="jac", jac="3-point", ftol=1e-15, xtol=1e-15, gtol=1e-15, max_nfev=20000,
            )
            if best is None or found.cost < best.cost:
                best = found
    free = best.active_mask == 0
    covariance = numpy.zeros((len(best.x), len(best.x)))
    covariance[numpy.ix_(free, free)] = numpy.linalg.inv(best.jac[:, free].T @ best.jac[:, free])
    return {
        "parameters": best.x.tolist(),
        "chiSquare": 2 * best.cost,
        "standardErrors": numpy.sqrt(numpy.diag(covariance)).tolist(),
        "onBound": (~free).tolist(),
    }


def rows(name, up_to):
    return [(x, s * SECTION_MM2) for x, s in MEASURED[name]["values"] if 1 < x <= up_to]


DATA = {
    "kawabata": rows("kawabata1981", 3.7),
    "treloarTo3": rows("treloar1944", 3.01),
    # An invented loop, as five looks at a hanging scale would show it.
    "fiveReadings": [(1.12, 49.0), (1.34, 103.5), (1.62, 158.0), (1.95, 207.0), (2.28, 246.5)],
}

fits = {}
for name, points in DATA.items():
    x, y = numpy.array(points).T
    sd = numpy.hypot(0.015 * y, 2)
    fits[name] = {
        "points": points,
        "forms": {form: fit(function, ranges, x, y, sd) for form, (function, ranges) in FORMS.items()},
    }



def quantile(p, n):
    """SciPy 1.10's own t.ppf is off by some 1e-9; Newton's rule on its cdf mends that."""
    t = stats.t.ppf(p, n)
    for _ in range(4):
        t -= (stats.t.cdf(t, n) - p) / stats.t.pdf(t, n)
    return float(t)


probabilities = [0.6, 0.9, 0.95, 0.975, 0.995, 0.0005]
degrees = [1, 2, 3, 4, 5, 6, 7, 10, 13, 30, 101]
knots = [[0, 0], [1, 2], [1.5, 2.1], [3, 5], [4, 4], [4.5, 3.9]]
curve = interpolate.PchipInterpolator(*zip(*knots))
at = [0.1, 0.3, 0.95, 1.2, 1.49, 2, 2.9, 3.2, 3.5, 4.1, 4.45]

(HERE / "fitBands.json").write_text(
    json.dumps(
        {
            "source": "SciPy: optimize.least_squares, stats.t (ppf, refined by cdf), interpolate.PchipInterpolator",
            "versions": {"python": platform.python_version(), "numpy": numpy.__version__, "scipy": scipy.__version__},
            "command": "/usr/bin/python3 core/checks/reference/fitBands.py",
            "retrieved": datetime.date.today().isoformat(),
            "unit": "stretch ratio and N; parameters as core/band names them; standard errors for unit residual variance",
            "tolerance": "fits: 2e-4 of a parameter's standard error or 1e-6 of its value; chiSquare 2e-8; quantiles 1e-9; curve 1e-12",
            "fits": fits,
            "studentT": [[p, n, quantile(p, n)] for p in probabilities for n in degrees],
            "monotone": {"knots": knots, "at": [[x, float(curve(x)), float(curve(x, 1))] for x in at]},
        },
        indent=1,
    )
    + "\n"
)
