import { expect, it } from 'vitest';
import { raisedAim } from '#contract/day/raisedAim.ts';
import type { Place } from '#contract/records/day.ts';
import { tiringOf } from '#core/effort/Tiring.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { aimOf } from './aimOf.ts';
import { solveDay } from './solveDay.ts';

const tiring = tiringOf('squat');
const zone = { by: 'speed' as const, fromMps: 0.5, toMps: 0.6 };
const block = (reps: number, shareOfAim: number) => ({ sets: 1, reps, restSeconds: 60, shareOfAim });

it('seeks the speed of a whole set over the reps of the heaviest step, the last one where there are several', () => {
  const reps = (...blocks: ReturnType<typeof block>[]) => {
    const aim = aimOf({ aim: { ...zone, of: 'set' }, blocks }, tiring);
    return aim.by === 'speed' ? (aim.over?.reps ?? 1) : null;
  };
  expect(reps(block(5, 0.8), block(3, 1), block(4, 0.9))).toBe(3);
  expect(reps(block(3, 1), block(2, 1))).toBe(2);
  // A single is its own mean.
  expect(reps(block(5, 0.8), block(1, 1))).toBe(1);
});

it('seeks the speed of a first rep whatever the reps, and any other aim as it stands', () => {
  expect(aimOf({ aim: zone, blocks: [block(5, 1)] }, tiring)).toEqual(zone);
  const other = { by: 'capability' as const, bottomShare: 0.8, lockoutShare: 0.7 };
  expect(aimOf({ aim: other, blocks: [block(5, 1)] }, tiring)).toBe(other);
});

it('a lifter with points more is worked out as a group with those points more is', () => {
  const club = millraceClub('2026-11-25');
  const day = club.day.find(({ id }) => id === 'day-speed-squat')!;
  const [group] = day.groups;
  const one = (place: Partial<Place>, aim = group!.aim) =>
    solveDay(club, {
      ...day,
      groups: [{ ...group!, aim, places: [{ ...group!.places[0]!, ...place }] }],
    }).groups[0]!.places[0]!.solved!;
  const own = one({ moreShare: 0.05 });
  const asGroup = one({}, raisedAim(group!.aim, 0.05));
  expect(own.barKg).toBe(asGroup.barKg);
  expect(own.set).toEqual(asGroup.set);
  expect(own.barKg).toBeGreaterThan(one({}).barKg);
});
