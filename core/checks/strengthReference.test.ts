import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bareLoad } from '#core/load/bareLoad.ts';
import { beliefOfMixture } from '#core/strength/belief.ts';
import { estimateStrength } from '#core/strength/estimateStrength.ts';
import type { Prior } from '#core/strength/parameters.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import { plainSingle } from '#core/strength/tests/plainSingle.ts';

/** Posteriors by a long-run sampler, the model written anew in Python: core/checks/reference/strength.py. */
interface Logs {
  prior: Prior;
  values: Record<
    string,
    {
      bodyMassKg: number;
      movedBodyKg: number;
      onDay: number;
      range: Rigging['range'];
      riggings: {
        start: Rigging['start'];
        bottomM: number;
        lockoutM: number;
        band: { zM: number; forceN: number }[] | null;
      }[];
      /** Day, rigging, kg on the bar, reps asked, reps made, speed, reps in reserve. */
      sets: [number, number, number, number, number, number | null, number | null][];
    }
  >;
}
interface Quantiles {
  low95: number;
  low80: number;
  median: number;
  high80: number;
  high95: number;
}

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`./reference/${name}`, import.meta.url), 'utf8')) as unknown;
const { prior, values: lifters } = read('strengthLogs.json') as Logs;
const { values: sampled } = read('strength.json') as { values: Record<string, { lnTotal: Quantiles }> };

test.each(Object.keys(lifters))(
  'the lifter %s: medians within 1.5 per cent of kg and widths within 15 of a long-run sampler',
  (name) => {
    const { bodyMassKg, movedBodyKg, onDay, range, riggings, sets } = lifters[name]!;
    const rigged = riggings.map(
      ({ start, bottomM, lockoutM, band }): Rigging => ({
        load: {
          ...bareLoad(bottomM, lockoutM),
          hungBands: band === null ? [] : [{ verticalAt: band, count: 1 }],
        },
        start,
        range,
      }),
    );
    const evidence = sets.map(
      ([day, rigging, barKg, reps, made, speedMps, reserve]): SetEvidence => ({
        ...plainSingle,
        day,
        rigging: rigged[rigging]!,
        barKg,
        movedBodyKg,
        reps,
        made,
        meanSpeedsMps: speedMps === null ? [] : [speedMps],
        repsInReserve: reserve,
        restS: 180,
      }),
    );
    const { particles } = estimateStrength({
      lift: 'deadlift',
      reference: rigged[0]!,
      bodyMassKg,
      sets: evidence,
      onDay,
      prior,
    });
    const ours = beliefOfMixture(particles, (lnTotal) => lnTotal);
    const theirs = sampled[name]!.lnTotal;
    const kg = (lnTotal: number) => Math.exp(lnTotal) - movedBodyKg;
    // The chains themselves scatter by 0.3 % from one to the next.
    expect(Math.abs(kg(ours.median) / kg(theirs.median) - 1)).toBeLessThan(0.015);
    expect(Math.abs((ours.high80 - ours.low80) / (theirs.high80 - theirs.low80) - 1)).toBeLessThan(0.15);
    expect(Math.abs((ours.high95 - ours.low95) / (theirs.high95 - theirs.low95) - 1)).toBeLessThan(0.15);
  },
);
