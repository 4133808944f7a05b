import { describe, expect, it } from 'vitest';
import type { Lift } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { normalQuantile } from '../numeric/normal.ts';
import { beliefOfMixture, sdOfBelief } from './belief.ts';
import { estimateStrength } from './estimateStrength.ts';
import { openDraws } from './openDraws.ts';
import { lnPrior, type ParameterName, parameterNames, populationPrior } from './parameters.ts';

/** The table of docs/model.md, "strength": mean and standard deviation; where a row has three, squat, bench, deadlift. */
const lifts = ['squat', 'bench', 'deadlift'] as const;
type Row = [mean: number | number[], sd: number | number[]];
const table: Record<ParameterName, Row> = {
  lnMaxSpeed: [0, 0.3],
  slope: [0, 0.2],
  lnRebound: [0, 0.3],
  heldRebound: [0, 1],
  lnTiring: [0, 0.35],
  tiringBend: [0, 0.3],
  bandError: [0, 0.1],
  startError: [0, 0.04],
  speedOffset: [0, 0.04],
  speedSlope: [
    [0.3, 0.1, 0],
    [0.35, 0.25, 0.25],
  ],
  wraps: [[0.06, 0.02, 0.01], 0.04],
  singlePly: [[0.1, 0.12, 0.03], 0.06],
  multiPly: [[0.2, 0.25, 0.06], 0.09],
  otherGear: [0.08, 0.1],
  platform: [0.005, 0.02],
  weekGain: [0.001, 0.0015],
  lnDaySd: [0, 0.35],
  lnWeekSd: [0, 0.5],
};
const DRAWS = 400;

describe.each(lifts)('a lifter of whom nothing was logged: %s', (lift) => {
  it('may differ from the others in all that is learned as the table of the model says', () => {
    const prior = populationPrior(lift);
    const draws = Array.from({ length: DRAWS }, () => ({ ...prior.mean, lnTotal: Math.log(200) }));
    const open = openDraws(draws, [], prior);
    for (const name of parameterNames) {
      const values = open.map((draw) => draw[name]);
      const mean = values.reduce((sum, value) => sum + value, 0) / DRAWS;
      const sd = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / DRAWS);
      const [wantedMean, wantedSd] = table[name].map((value) =>
        typeof value === 'number' ? value : value[lifts.indexOf(lift)]!,
      ) as [number, number];
      expect(Math.abs(mean - wantedMean), name).toBeLessThan(0.05 * wantedSd);
      expect(Math.abs(sd / wantedSd - 1), name).toBeLessThan(0.05);
    }
  });

  it('is believed to lift so many body masses, bar and moved body, from a beginner’s to a record', () => {
    // Straight total masses over body mass: 2.5, 1.1 and 2.3, within 0.33, 0.45 and 0.33 in ln (docs/model.md).
    const share = { squat: 2.5, bench: 1.1, deadlift: 2.3 }[lift];
    const sdLn = { squat: 0.33, bench: 0.45, deadlift: 0.33 }[lift];
    const believed = lnTotalOf(lift, 80);
    expect(Math.exp(believed.median) / 80).toBeCloseTo(share, 2);
    expect(sdOfBelief(believed) / sdLn).toBeCloseTo(1, 2);
    expect((believed.high95 - believed.median) / sdLn).toBeCloseTo(normalQuantile(0.975), 2);
  });
});

function lnTotalOf(lift: Lift, bodyMassKg: number) {
  const range = { fromM: 0.3, toM: 0.9 };
  const reference = {
    load: bareLoad(range.fromM, range.toM),
    start: lift === 'bench' ? ('paused' as const) : ('free' as const),
    range,
  };
  const prior = populationPrior(lift);
  const { particles } = estimateStrength({ lift, reference, bodyMassKg, sets: [], onDay: 0, prior });
  return beliefOfMixture(particles, (lnTotal) => lnTotal);
}

it('finds a value a standard deviation and a half off as much less likely as a normal density has it, on either side', () => {
  // Tables of the standard normal: density 0.3989 in the middle, 0.1295 at 1.5.
  const prior = populationPrior('bench');
  for (const by of [-1.5, 1.5]) {
    const off = lnPrior(prior, 'wraps', 0.02 + by * 0.04) - lnPrior(prior, 'wraps', 0.02);
    expect(Math.exp(off)).toBeCloseTo(0.1295 / 0.3989, 3);
  }
});
