import { expect, test } from 'vitest';
import { solveDay } from '#contract/assemble/solveDay.ts';
import { millraceClub } from '../../demo/millraceClub.ts';
import { firstAim } from './firstAim.ts';

test('the first share of capability is what the percentages of the trade make of the squats of the demo', () => {
  const records = millraceClub('2026-11-28');
  const day = structuredClone(records.day.find(({ id }) => id === 'day-speed-squat')!);
  // The middle of 50 to 60 % on the bar with 25 % in bands at lockout: common practice, no source.
  day.groups[0]!.aim = {
    by: 'percent',
    targets: [
      { basis: 'bar', share: 0.55 },
      { basis: 'lockout', share: 0.8 },
    ],
  };
  const lines = solveDay(records, day).groups[0]!.places.map(({ solved }) =>
    lineThrough(solved!.blocks.at(-1)!.explanation.shares.filter(({ s }) => s < 0.86)),
  );
  const mean = (pick: (line: { atBottom: number; atLockout: number }) => number) =>
    lines.reduce((sum, line) => sum + pick(line), 0) / lines.length;
  const aim = firstAim.capability;
  if (aim.by !== 'capability') throw new Error('a capability aim');
  expect(Math.abs(mean(({ atBottom }) => atBottom) - aim.bottomShare)).toBeLessThan(0.05);
  expect(Math.abs(mean(({ atLockout }) => atLockout) - aim.lockoutShare)).toBeLessThan(0.05);
});

/** Least squares, carried on to lockout. */
function lineThrough(points: readonly { s: number; share: number }[]) {
  const meanS = points.reduce((sum, { s }) => sum + s, 0) / points.length;
  const meanShare = points.reduce((sum, { share }) => sum + share, 0) / points.length;
  const slope =
    points.reduce((sum, { s, share }) => sum + (s - meanS) * (share - meanShare), 0) /
    points.reduce((sum, { s }) => sum + (s - meanS) ** 2, 0);
  return { atBottom: meanShare - slope * meanS, atLockout: meanShare + slope * (1 - meanS) };
}
