"""A lifter's log from standard input through a grid filter and 400 Metropolis steps.

Prints processor seconds of the tables and of the steps, and the median of the straight total mass (kg).
"""

import json
import pathlib
import sys
import time

import numpy as np

sys.path.insert(0, str(pathlib.Path(__file__).parent.parent / "core/checks/reference"))
from strength import NAMES, Posterior, summary  # noqa: E402

STEPS = 400
data = json.load(sys.stdin)
begun = time.process_time()
posterior = Posterior(data["lifter"], data)
tabulated = time.process_time()
random = np.random.default_rng(1)
here = np.array([data["prior"]["mean"][k] for k in NAMES])
step = 0.15 * np.array([data["prior"]["sd"][k] for k in NAMES])
ln, strength = (part[0] for part in posterior.filtered(here[None]))
visited = np.zeros_like(posterior.grid)
for i in range(STEPS):
    there = here + step * random.standard_normal(len(NAMES))
    other, moved = (part[0] for part in posterior.filtered(there[None]))
    if np.log(random.random()) < other - ln:
        here, ln, strength = there, other, moved
    if i >= STEPS // 4:
        visited += strength / strength.sum()
median = np.exp(summary(posterior.grid, visited / visited.sum())["median"])
print(tabulated - begun, time.process_time() - tabulated, median)
