"""Posteriors of two deadlifters by a long-run sampler (emcee), apart from the program; writes strength.json beside this file.

The model is written anew from docs/model.md: reps by Runge-Kutta steps of the equation of motion, strength and the day's
form summed over a grid, parameters sampled by an ensemble of walkers. NumPy, SciPy and emcee, of Debian or of pip:
python3 core/checks/reference/strength.py [iterations]
"""

import datetime
import json
import pathlib
import platform
import sys

import emcee
import numpy as np
import scipy
from scipy.integrate import trapezoid
from scipy.special import ndtr

HERE = pathlib.Path(__file__).parent
G = 9.80665
# The deadlift's population shape, tiring and noise: core/lifter/populationShape.ts, core/effort/Tiring.ts, core/strength/noise.ts.
SLOPE, CURVE, DIP, DIP_AT, DIP_WIDTH, TOP, STRAIN_AFTER, STRAIN = 0.5, -0.1, 0.135, 0.45, 0.25, 3.0, 3.0, 6.0
BUILD_UP, EASING, LANDING = 0.08, 1.4, 0.002
PER_SECOND, LOWERING, FAST_SHARE, FAST, SLOW = 0.0132, 1.2, 0.85, 22 / np.log(2), 170 / np.log(2)
# A set of eight costs the same whatever the bend of tiring: the geometric mean of 1 to 7.
PIVOT = 3.38
SET_SD, SLIP, SLIP_SD, WILD = 0.012, 0.02, 0.12, 0.003
SPEED_SD, SHARED_SD, UNSAID, RESERVE_SD, RESERVE_PER = 0.03, 0.025, 0.4, 0.7, 0.2
DAY_SD, WEEK_SD, BAD, BAD_BELOW, BAD_WIDER, REST = 0.018, 0.006, 0.06, 1.5, 2.0, 180.0
# Falls and pauses: core/strength/change.ts.
FALLS, LEAST_FALL, FURTHER_FALL, AGAIN, SHAKEN, TRAINED = 0.05, 0.04, 0.06, 0.25, 2.0, 3.0
LOST, LOST_WEEKS, LOST_SD = 0.16, 20.0, 0.5
NAMES = ["lnMaxSpeed", "slope", "lnTiring", "tiringBend", "bandError", "startError", "speedOffset", "speedSlope", "weekGain", "lnDaySd", "lnWeekSd"]
LN_TOP = np.array([-0.36, 0.0, 0.36])
SLOPES = np.array([-0.5, -0.25, 0.0, 0.25, 0.5])
ROOTS = np.linspace(0, 1.4, 29)
STEP = 0.005


def load_n(rigging, total, z):
    band = rigging["band"]
    return total * G + (0 if band is None else np.interp(z, [p["zM"] for p in band], [p["forceN"] for p in band]))


def held(z, slope, span):
    s = (z - span["fromM"]) / (span["toM"] - span["fromM"])
    dip = np.exp(-(((s - DIP_AT) / DIP_WIDTH) ** 2)) - np.exp(-((DIP_AT / DIP_WIDTH) ** 2))
    return np.exp((SLOPE + slope) * s + CURVE * s * s - DIP * dip)


def ascents(rigging, total, span, strength, top, slope, dt=0.002):
    """Many ascents at once: made or not, seconds, seconds of full effort."""
    z = np.full(strength.shape, rigging["bottomM"])
    v, t, effort = np.zeros_like(z), np.zeros_like(z), np.zeros_like(z)
    going, made = np.ones(z.shape, bool), np.zeros(z.shape, bool)

    def accelerate(now, z, v):
        tired = np.where(now > STRAIN_AFTER, np.exp(-(now - STRAIN_AFTER) / STRAIN), 1.0)
        push = strength * held(z, slope, span) * (1 - v / top) * tired
        load = load_n(rigging, total, z)
        built = 1 - np.exp(-now / BUILD_UP)
        needed = v * v / (2 * (np.maximum(0, rigging["lockoutM"] - z) + LANDING))
        return built * (push - load) / total - EASING * needed**2 / (load / total)

    now = 0.0
    while going.any() and now < 60:
        a1 = accelerate(now, z, v)
        a2 = accelerate(now + dt / 2, z + dt / 2 * v, v + dt / 2 * a1)
        a3 = accelerate(now + dt / 2, z + dt / 2 * (v + dt / 2 * a1), v + dt / 2 * a2)
        a4 = accelerate(now + dt, z + dt * (v + dt / 2 * a2), v + dt * a3)
        nz = z + dt * v + dt * dt / 6 * (a1 + a2 + a3)
        nv = v + dt / 6 * (a1 + 2 * a2 + 2 * a3 + a4)
        share = np.minimum(1, load_n(rigging, total, z) / (strength * held(z, slope, span)))
        over = going & (nz >= rigging["lockoutM"])
        stuck = going & ~over & (nv <= 0)
        part = np.where(over, (rigging["lockoutM"] - z) / np.where(nz > z, nz - z, 1), 1.0)
        effort += np.where(going, part * dt * share, 0)
        t += np.where(going, part * dt, 0)
        made |= over
        going &= ~(over | stuck)
        z, v = np.where(going, nz, z), np.where(going, nv, v)
        now += dt
    heights = np.linspace(rigging["bottomM"], rigging["lockoutM"], 41)
    shares = [np.minimum(1, load_n(rigging, total, h) / (strength * held(h, slope, span))) for h in heights]
    return made, t, effort + LOWERING * trapezoid(shares, dx=1 / 40, axis=0)


def table(rigging, total, span):
    """Over ln top speed and slope: ln(limit / weight), then speed and effort at the squares of ROOTS."""
    top = TOP * np.exp(LN_TOP)[:, None] * np.ones(5)
    slope = SLOPES[None, :] * np.ones((3, 1))
    low, high = np.full((3, 5), np.log(total * G) - 1), np.full((3, 5), np.log(total * G) + 1.5)
    for _ in range(14):
        middle = (low + high) / 2
        made, _, _ = ascents(rigging, total, span, np.exp(middle), top, slope)
        low, high = np.where(made, low, middle), np.where(made, middle, high)
    surplus = np.maximum(2e-4, ROOTS**2)
    wide = np.ones(len(ROOTS))
    made, t, effort = ascents(
        rigging, total, span, np.exp(high[:, :, None] + surplus), top[:, :, None] * wide, slope[:, :, None] * wide
    )
    speed = (rigging["lockoutM"] - rigging["bottomM"]) / t
    heights = np.linspace(rigging["bottomM"], rigging["lockoutM"], 201)
    loads = load_n(rigging, total, heights)
    return high - np.log(total * G), speed, effort, np.mean(loads - total * G) / np.mean(loads)


def polynomial(nodes, x):
    """Weights of the nodes of the polynomial through all of them, for many x."""
    weights = np.ones((len(x), len(nodes)))
    for i, node in enumerate(nodes):
        for j, other in enumerate(nodes):
            if i != j:
                weights[:, i] *= (x - other) / (node - other)
    return weights


class Posterior:
    def __init__(self, lifter, data):
        self.data = data
        span = lifter["range"]
        straight = {"start": "free", "bottomM": span["fromM"], "lockoutM": span["toM"], "band": None}
        self.reference = table(straight, 100, span)
        self.start = np.log(lifter["bodyMassKg"]) + data["strengthPrior"]["meanLn"]
        self.moved = lifter["movedBodyKg"]
        self.on_day = lifter["onDay"]
        tables, self.days = {}, []
        for day, r, bar, reps, made, speed, reserve in lifter["sets"]:
            rigging = lifter["riggings"][r]
            total = bar + self.moved
            key = (rigging["start"], rigging["bottomM"], rigging["band"] is not None and total)
            if key not in tables:
                tables[key] = table(rigging, total, span)
            if not self.days or self.days[-1][0] != day:
                self.days.append((day, []))
            group = {"key": key, "total": total, "reps": reps, "made": made, "speeds": [], "reserves": [], "n": 0}
            alike = self.days[-1][1] and self.days[-1][1][-1]
            if alike and all(alike[k] == group[k] for k in ["key", "total", "made", "reps"]):
                group = alike
            else:
                self.days[-1][1].append(group)
            group["n"] += 1
            group["speeds"] += [] if speed is None else [speed]
            group["reserves"] += [] if reserve is None or made < reps else [reserve]
        self.tables = tables
        # Both lifters test their maximum on the first day: all that is possible lies near the best straight lift.
        straight_best = max(
            bar for _, r, bar, _, made, *_ in lifter["sets"] if made and lifter["riggings"][r] == straight
        )
        self.grid = np.arange(-0.3, 0.45, STEP) + np.log(straight_best + self.moved)

    def readings(self, p):
        shape = np.einsum("wi,wj->wij", polynomial(LN_TOP, p["lnMaxSpeed"]), polynomial(SLOPES, p["slope"]))
        mix = lambda values: np.tensordot(shape, values, ([1, 2], [0, 1]))
        base = mix(self.reference[0])
        out = {}
        for key, (limit, speed, effort, bands) in self.tables.items():
            offset = mix(limit) - base + p["bandError"] * bands + (0 if key[0] == "free" else p["startError"])
            loss = PER_SECOND * np.exp(p["lnTiring"])[:, None] * mix(effort)
            lighter = p["speedOffset"][:, None] + p["speedSlope"][:, None] * ROOTS**2
            out[key] = offset, mix(speed) + lighter, loss, p["tiringBend"][:, None], bands
        return out

    def filtered(self, theta):
        """ln of prior times likelihood for every walker, and strength on the day asked for over the grid."""
        p = dict(zip(NAMES, theta.T))
        prior = self.data["prior"]
        ln = sum(-0.5 * ((p[k] - prior["mean"][k]) / prior["sd"][k]) ** 2 for k in NAMES)
        x, walkers = self.grid, len(theta)
        sd = self.data["strengthPrior"]["sdLn"]
        state = np.exp(-0.5 * ((x - self.start) / sd) ** 2) * np.ones((walkers, 1))
        state /= state.sum(1, keepdims=True)
        readings = self.readings(p)
        frequency = np.fft.rfftfreq(2 * len(x), STEP) * 2 * np.pi

        def spread(values, transform):
            padded = np.fft.rfft(values, 2 * len(x), axis=1)
            return np.fft.irfft(padded * transform, 2 * len(x), axis=1)[:, : len(x)]

        def drift(values, weeks):
            lost = LOST * (1 - np.exp(-max(0, weeks - TRAINED) / LOST_WEEKS))
            var = WEEK_SD**2 * np.exp(2 * p["lnWeekSd"]) * weeks + (LOST_SD * lost) ** 2
            shift = min(weeks, TRAINED) * p["weekGain"] - lost
            return np.maximum(
                0, spread(values, np.exp(-0.5 * var[:, None] * frequency**2 - 1j * shift[:, None] * frequency))
            )

        def fallen(values):
            return np.maximum(0, spread(values, np.exp(1j * LEAST_FALL * frequency) / (1 - 1j * FURTHER_FALL * frequency)))

        day_sd = (DAY_SD * np.exp(p["lnDaySd"]))[:, None]
        form = (1 - BAD) * np.exp(-0.5 * (day_sd * frequency) ** 2) + BAD * np.exp(
            -0.5 * (BAD_WIDER * day_sd * frequency) ** 2 + 1j * BAD_BELOW * day_sd * frequency
        )
        before = self.days[0][0]
        shaken = np.zeros((walkers, 1))
        for day, groups in self.days:
            weeks = (day - before) / 7
            before = day
            state = drift(state, weeks) if weeks > 0 else state
            shaken = shaken * np.exp(-weeks / SHAKEN)
            chance = 1 - np.exp(-min(weeks, TRAINED) * (FALLS + AGAIN * shaken))
            like = np.ones((walkers, len(x)))
            fast, slow = np.zeros_like(like), np.zeros_like(like)
            for group in groups:
                like *= self.likelihood(group, readings[group["key"]], x, fast, slow)
            # The likelihood of the average strength: over all forms of the day. Beyond the grid nothing is known.
            smooth = np.maximum(1e-300, spread(like, np.conj(form)))
            stayed = (1 - chance) * state * smooth
            fell = chance * fallen(state) * smooth
            state = stayed + fell
            total = state.sum(1, keepdims=True)
            ln = ln + np.log(total[:, 0])
            state = state / total
            recent = fell.sum(1, keepdims=True) / total
            shaken = recent + (1 - recent) * shaken
        return ln, drift(state, (self.on_day - before) / 7)

    def likelihood(self, group, reading, x, fast, slow):
        offset, speed, loss, bend, bands = reading
        # Tiring counts by the part of strength that is left once the body is carried.
        body = (1 - bands) * self.moved / group["total"]
        loss = loss * np.maximum(0, 1 - body * np.exp(-(ROOTS**2)))
        rows = np.arange(len(offset))[:, None]
        level = x - np.log(group["total"]) - offset[:, None]

        def at(values, surplus):
            place = np.clip(np.sqrt(np.maximum(surplus, 0)) / ROOTS[1], 0, len(ROOTS) - 1.001)
            i = place.astype(int)
            return values[rows, i] + (place - i) * (values[rows, i + 1] - values[rows, i])

        def after(surplus, reps):
            for rep in range(1, reps + 1):
                surplus = surplus - (rep / PIVOT) ** bend * at(loss, surplus)
            return surplus

        def cost_of_set(surplus, reps):
            # What a set leaves missing for the next ones does not bend.
            lost = 0
            for rep in range(1, reps + 1):
                now = at(loss, surplus)
                lost, surplus = lost + now, surplus - (rep / PIVOT) ** bend * now
            return lost

        made, missed = group["made"], group["made"] < group["reps"]
        carried = np.zeros_like(level)
        for _ in range(group["n"]):
            fast *= np.exp(-REST / FAST)
            slow *= np.exp(-REST / SLOW)
            left = level - fast - slow
            carried += (fast + slow) / group["n"]
            lost = np.minimum(0.5, cost_of_set(left, made + missed))
            fast += FAST_SHARE * lost
            slow += (1 - FAST_SHARE) * lost
        level = level - carried
        # What is left before the last rep made, and before the one missed, decides.
        spare = np.inf if made == 0 else after(level, made - 1)
        lacks = after(level, made) if missed else None
        go = lambda sd: ndtr(spare / sd) - (0 if lacks is None else ndtr(lacks / sd))
        one = (1 - SLIP - WILD) * go(SET_SD) + SLIP * go(SLIP_SD) + WILD / 2
        like = one ** min(group["n"], 3) * np.ones_like(level)
        if group["speeds"]:
            sd = np.sqrt(SPEED_SD**2 / len(group["speeds"]) + SHARED_SD**2)
            like *= (1 + ((np.mean(group["speeds"]) - at(speed, level)) / sd) ** 2 / 4) ** -2.5 / sd
        if group["reserves"]:
            possible, left, going = np.zeros_like(level), level.copy(), level > 0
            for rep in range(1, 41):
                cost = (rep / PIVOT) ** bend * at(loss, left)
                possible += np.where(going, np.minimum(1, left / cost), 0)
                left = left - cost
                going &= left > 0
            possible = np.where(level > 0, possible + 0.5, 0.5 + level / ((1 / PIVOT) ** bend * at(loss, level)))
            count = len(group["reserves"])
            sd = (RESERVE_SD + RESERVE_PER * np.maximum(0, possible - made)) / np.sqrt(count)
            said = made + np.mean(group["reserves"]) + UNSAID
            like *= (1 + ((said - possible) / sd) ** 2 / 4) ** -2.5 / sd
        return like


def summary(values, weights=None):
    if weights is None:
        return dict(zip(["low95", "low80", "median", "high80", "high95"], np.quantile(values, [0.025, 0.1, 0.5, 0.9, 0.975])))
    below = np.cumsum(weights) - weights / 2
    return dict(zip(["low95", "low80", "median", "high80", "high95"], np.interp([0.025, 0.1, 0.5, 0.9, 0.975], below, values)))


def sampled(lifter, data, iterations, walkers=36):
    posterior = Posterior(lifter, data)
    prior = data["prior"]
    start = np.random.default_rng(1).normal(
        [prior["mean"][k] for k in NAMES], [0.5 * prior["sd"][k] for k in NAMES], (walkers, len(NAMES))
    )
    np.random.seed(1)
    sampler = emcee.EnsembleSampler(walkers, len(NAMES), lambda th: np.nan_to_num(posterior.filtered(th)[0], nan=-1e30), vectorize=True)
    sampler.run_mcmc(start, iterations)
    chain = sampler.get_chain(discard=iterations // 4)
    flat = chain.reshape(-1, len(NAMES))
    some = flat[:: max(1, len(flat) // 1200)]
    states = np.concatenate([posterior.filtered(part)[1] for part in np.array_split(some, 30)])
    weights = (states / states.sum(1, keepdims=True)).mean(0)
    out = {"lnTotal": summary(posterior.grid, weights)}
    out.update({name: summary(flat[:, k]) for k, name in enumerate(NAMES)})
    time = emcee.autocorr.integrated_time(chain, quiet=True)
    return out, float(np.max(time)), float(np.mean(sampler.acceptance_fraction))


if __name__ == "__main__":
    data = json.loads((HERE / "strengthLogs.json").read_text())
    iterations = int(sys.argv[1]) if len(sys.argv) > 1 else 3000
    values, notes = {}, {}
    for name, lifter in data["values"].items():
        values[name], time, accepted = sampled(lifter, data, iterations)
        notes[name] = f"autocorrelation at most {time:.0f} iterations, {100 * accepted:.0f} % accepted"
    out = {
        "quantity": "Posterior quantiles of ln total mass and of each parameter for the lifters of strengthLogs.json",
        "source": f"emcee {emcee.__version__}, 36 walkers, {iterations} iterations, the first quarter left out",
        "notes": notes,
        "versions": {"python": platform.python_version(), "numpy": np.__version__, "scipy": scipy.__version__},
        "command": f"/usr/bin/python3 core/checks/reference/strength.py {iterations}",
        "retrieved": datetime.date.today().isoformat(),
        "unit": "ln kg, and the units of core/strength/parameters.ts",
        "tolerance": "median 1.5 % of kg, widths 15 %",
        "values": values,
    }
    (HERE / "strength.json").write_text(json.dumps(out, indent=1) + "\n")
