"""Simulates reps and finds maxima with SciPy, apart from the program, and writes reps.json beside this file.

Run from the project's root with Debian's python3-scipy:  /usr/bin/python3 core/checks/reference/reps.py
"""

import datetime
import json
import pathlib
import platform

import numpy
import scipy
from scipy import integrate, optimize

HERE = pathlib.Path(__file__).parent
G = 9.80665
REST = 1.04
BOTTOM, LOCKOUT = 0.9, 1.5
PATH_Z, PATH_X = [0.9, 1.2, 1.6], [-0.05, 0.02, 0.0]
CHAIN_MU, CHAIN_LENGTH, CHAIN_BELOW = 3.8, 1.2, 0.1

# name: strength N, rebound, dip depth, bar kg, doubled bands low, single bands from above, chains, with bar path,
# build-up time s, share built, easing
CASES = {
    "straight squat": (3400, 0.35, 0.2, 240, 0, 0, 0, False, 0, 0, 0),
    "straight squat, too heavy": (3400, 0.35, 0.2, 345, 0, 0, 0, False, 0, 0, 0),
    "doubled bands": (3400, 0.35, 0.2, 75, 2, 0, 0, False, 0, 0, 0),
    "dead stop, bands and chains on a bent path": (3600, 0.0, 0.1, 55, 2, 0, 2, True, 0, 0, 0),
    "bands from above and chains": (3000, 0.2, 0.25, 230, 0, 2, 2, True, 0, 0, 0),
    "a light squat that is eased": (3400, 0.35, 0.2, 120, 0, 0, 0, False, 0.08, 1.0, 1.4),
    "a push from a pause that builds up, eased, bands and chains": (3600, 0.15, 0.1, 50, 2, 0, 2, True, 0.12, 0.4, 1.4),
}


def mooney_rivlin(x):
    return 0.0 if x <= 1 else 2 * (x - x**-2) * (150 + 70 / x)


def vertical(z, low, above, bent):
    x = numpy.interp(z, PATH_Z, PATH_X) if bent else 0.0
    total = 0.0
    if low:
        length = numpy.sqrt((x - 0.08) ** 2 + 0.05**2 + (z - 0.1) ** 2)
        total += low * 2 * mooney_rivlin(2 * length / REST) * (z - 0.1) / length
    if above:
        length = numpy.sqrt(x**2 + (z - 2.7) ** 2)
        total += above * mooney_rivlin(length / REST) * (z - 2.7) / length
    return total


def hanging(z, chains):
    return chains * CHAIN_MU * min(max(z - CHAIN_BELOW, 0), CHAIN_LENGTH)


def ascent(case, bar):
    strength, rebound, depth, _, low, above, chains, bent, build_up, built, easing = case

    def motion(t, y):
        z, v = y
        s = (z - BOTTOM) / (LOCKOUT - BOTTOM)
        held = strength * numpy.exp(
            1.2 * s - 0.5 * s * s - depth * (numpy.exp(-(((s - 0.4) / 0.2) ** 2)) - numpy.exp(-4.0))
        )
        strain = (1 + rebound * numpy.exp(-t / 0.7)) * (numpy.exp(-(t - 2.5) / 6) if t > 2.5 else 1)
        mass = bar + 88 + hanging(z, chains)
        lifted = chains * CHAIN_MU if CHAIN_BELOW <= z < CHAIN_BELOW + CHAIN_LENGTH else 0
        braked = G + vertical(z, low, above, bent) / mass
        part = 1 - (1 - built) * numpy.exp(-t / build_up) if build_up else 1
        needed = v * v / (2 * (max(0, LOCKOUT - z) + 0.002))
        gain = part * (held * (1 - v / 1.6) * strain / mass - braked) - easing * needed**2 / braked
        return [v, gain - lifted * v * v / mass]

    def top(_, y):
        return y[0] - LOCKOUT

    def still(t, y):
        return y[1] if t > 1e-4 else 1.0

    top.terminal = still.terminal = True
    still.direction = -1
    # What could be pushed with everything decides whether the bar leaves the bottom: the push may only build up.
    held = strength * (1 + rebound)
    if held <= (bar + 88 + hanging(BOTTOM, chains)) * G + vertical(BOTTOM, low, above, bent):
        return False, 0.0, BOTTOM
    out = integrate.solve_ivp(
        motion, (0, 60), [BOTTOM, 0], method="DOP853", rtol=1e-11, atol=1e-13, max_step=0.005, events=[top, still]
    )
    return len(out.t_events[0]) > 0, float(out.t[-1]), float(out.y[0, -1])


def heaviest(case):
    return optimize.bisect(lambda bar: 1 if ascent(case, bar)[0] else -1, 20, 500, xtol=5e-4)


def answer(case):
    made, seconds, height = ascent(case, case[3])
    return {"made": bool(made), "durationS": seconds, "endM": height, "maxBarKg": heaviest(case)}


names = ["strengthN", "rebound", "dipDepth", "barKg", "lowBands", "bandsAbove", "chains", "bentPath", "buildUpTimeS", "builtShare", "easing"]
out = {
    "quantity": "Duration and end of single reps, and heaviest bars, of made-up lifters and setups",
    "source": "SciPy: integrate.solve_ivp (DOP853, rtol 1e-11), optimize.bisect",
    "versions": {"python": platform.python_version(), "numpy": numpy.__version__, "scipy": scipy.__version__},
    "command": "/usr/bin/python3 core/checks/reference/reps.py",
    "retrieved": datetime.date.today().isoformat(),
    "unit": "s, m, kg",
    "tolerance": "duration 1e-5 relative, end 1e-6 m, heaviest bar 0.01 kg",
    "values": {name: {**dict(zip(names, case)), **answer(case)} for name, case in CASES.items()},
}
(HERE / "reps.json").write_text(json.dumps(out, indent=1) + "\n")
