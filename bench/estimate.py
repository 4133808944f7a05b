"""A lifter's log from standard input through a grid filter and 400 Metropolis steps; prints seconds of tables and of steps."""

import json
import pathlib
import sys
import time

import numpy as np

sys.path.insert(0, str(pathlib.Path(__file__).parent.parent / "core/checks/reference"))
from strength import NAMES, Posterior  # noqa: E402

data = json.load(sys.stdin)
begun = time.perf_counter()
posterior = Posterior(data["lifter"], data)
tabulated = time.perf_counter()
random = np.random.default_rng(1)
here = np.array([data["prior"]["mean"][k] for k in NAMES])
step = 0.15 * np.array([data["prior"]["sd"][k] for k in NAMES])
ln = posterior.filtered(here[None])[0][0]
for _ in range(400):
    there = here + step * random.standard_normal(len(NAMES))
    other = posterior.filtered(there[None])[0][0]
    if np.log(random.random()) < other - ln:
        here, ln = there, other
print(tabulated - begun, time.perf_counter() - tabulated)
