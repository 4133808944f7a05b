import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BandCurve } from '#core/band/BandCurve.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import type { Load } from '#core/load/Load.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import type { Capability } from '#core/rep/Capability.ts';
import { maxBar } from '#core/rep/maxBar.ts';
import { repOf, simulateRep } from '#core/rep/simulateRep.ts';

const REPS = 20_000;
const BATCHES = 10;
const curve: BandCurve = {
  model: 'neoHookean',
  parameters: [120],
  parameterNames: ['muN'],
  covariance: [[0]],
  restLengthM: 1.04,
  measuredToM: 3,
  known: 'measured',
  direction: 'loading',
  residualScale: 1,
  degreesOfFreedom: 8,
};
const load: Load = {
  barKg: 0,
  bands: [
    {
      curves: { loading: curve, unloading: curve },
      hookup: { way: 'doubled' },
      anchor: { xM: 0.05, yM: 0, zM: 0.1 },
      count: 2,
    },
  ],
  hungBands: [],
  chains: [],
  bottomM: 0.95,
  lockoutM: 1.55,
  gravityMps2: STANDARD_GRAVITY_MPS2,
  path: [],
};
const squatter: Capability = {
  strengthN: 3242,
  slope: 1.2,
  curvature: -0.5,
  dip: { depth: 0.2, at: 0.4, width: 0.2 },
  maxSpeedMps: 1.6,
  rebound: 0.35,
  reboundTimeS: 0.7,
  strainAfterS: 2.5,
  strainTimeS: 6,
  buildUpTimeS: 0.08,
  builtShare: 0.44,
  easing: 1.4,
  movedBodyKg: 88,
  range: { fromM: 0.95, toM: 1.55 },
};

/** One rep against the same scheme in plain C, and a maximum counted in reps; a banded squat throughout. */
export async function run(): Promise<void> {
  const most = maxBar(load, squatter)!.barKg;
  for (const share of [0.6, 0.8, 0.95]) {
    const barKg = share * most;
    const compiled = compileLoad({ ...load, barKg });
    const nsPerRep = timed(REPS, () => repOf(compiled, squatter, 0));
    const reference = plainC(barKg);
    const durationS = simulateRep({ ...load, barKg }, squatter).durationS;
    const against =
      reference === null
        ? 'no C compiler here, no ratio'
        : `C -O2 ${us(reference.nsPerRep)}, ratio ${(nsPerRep / reference.nsPerRep).toFixed(2)} (goal <= 3); durations differ by ${Math.abs(durationS - reference.durationS).toExponential(1)} s`;
    console.log(`rep at ${100 * share} % of the maximum: ${us(nsPerRep)}; ${against}`);
  }
  const heavy = compileLoad({ ...load, barKg: 0.95 * most });
  const nsPerRep = timed(REPS, () => repOf(heavy, squatter, 0));
  const nsPerMax = timed(REPS / 50, () => maxBar(load, squatter));
  console.log(`max-bar: ${us(nsPerMax)} = ${(nsPerMax / nsPerRep).toFixed(1)} reps at 95 % (goal <= 15)`);
}

/** Nanoseconds a call: the best of several batches, since other work on the machine only ever slows one down. */
function timed(times: number, work: () => unknown): number {
  const batch = Math.ceil(times / BATCHES);
  const nsPerCall = Array.from({ length: BATCHES }, () => {
    const from = process.hrtime.bigint();
    for (let i = 0; i < batch; i++) work();
    return Number(process.hrtime.bigint() - from) / batch;
  });
  return Math.min(...nsPerCall);
}

function plainC(barKg: number): { nsPerRep: number; durationS: number } | null {
  if (spawnSync('cc', ['--version']).status !== 0) return null;
  const folder = mkdtempSync(join(tmpdir(), 'rackwright-bench-'));
  try {
    const program = join(folder, 'rep');
    execFileSync('cc', ['-O2', join(import.meta.dirname, 'rep.c'), '-lm', '-o', program]);
    const batches = Array.from({ length: BATCHES }, () => {
      const printed = execFileSync(program, [String(barKg), String(REPS / BATCHES)], { encoding: 'utf8' });
      const [nsPerRep, durationS] = printed.trim().split(' ').map(Number);
      return { nsPerRep: nsPerRep!, durationS: durationS! };
    });
    return batches.reduce((best, batch) => (batch.nsPerRep < best.nsPerRep ? batch : best));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function us(ns: number): string {
  return `${(ns / 1000).toFixed(1)} us`;
}
