"""Filters signals forward and backward with SciPy, apart from the program, and writes zeroPhase.json beside this file.

Run from the project's root with Debian's python3-scipy:  /usr/bin/python3 core/checks/reference/zeroPhase.py
"""

import datetime
import json
import math
import pathlib
import platform

import numpy
import scipy
from scipy import signal

HERE = pathlib.Path(__file__).parent
TWO_PASSES = (math.sqrt(2) - 1) ** 0.25  # so that both passes together let 1/sqrt(2) through at the cut-off

cases = {}
for rate, cutoff in [(30, 6), (50, 6), (100, 6), (240, 6), (100, 15), (1000, 8)]:
    t = numpy.arange(80) / rate
    # A bar that goes down and up, a wobble far above the cut-off, and a drift that does not end where it began.
    x = 1.2 - 0.5 * numpy.sin(math.pi * t / t[-1]) ** 2 + 0.004 * numpy.sin(2 * math.pi * 0.37 * rate * t) + 0.05 * t
    design = math.atan(math.tan(math.pi * cutoff / rate) / TWO_PASSES) * rate / math.pi
    b, a = signal.butter(2, design, fs=rate)
    cases[f"{cutoff} Hz of {rate} Hz"] = {
        "rateHz": rate, "cutoffHz": cutoff, "in": x.tolist(), "out": signal.filtfilt(b, a, x).tolist(),
    }

out = {
    "quantity": "Butterworth low-pass of second order run forward and backward (scipy.signal.butter, filtfilt)",
    "source": f"SciPy {scipy.__version__}, NumPy {numpy.__version__}, Python {platform.python_version()}, zeroPhase.py",
    "unit": "as the signal",
    "tolerance": 1e-10,
    "retrieved": datetime.date.today().isoformat(),
    "values": cases,
}
(HERE / "zeroPhase.json").write_text(json.dumps(out, indent=1) + "\n")
