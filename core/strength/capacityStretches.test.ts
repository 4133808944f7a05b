import { describe, expect, test } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { capacityCourse } from './capacityCourse.ts';
import { populationPrior } from './parameters.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { plainSingle } from './tests/plainSingle.ts';

const range = { fromM: 0.9, toM: 1.46 };
const reference = { load: bareLoad(range.fromM, range.toM), start: 'free' as const, range };
const before = populationPrior('squat');
const set = (day: number, changed: Partial<SetEvidence> = {}): SetEvidence => ({
  ...plainSingle,
  day,
  rigging: reference,
  barKg: 170,
  movedBodyKg: 88,
  restS: 600,
  ...changed,
});
const course = (sets: SetEvidence[]) =>
  capacityCourse({
    lift: 'squat',
    reference,
    bodyMassKg: 100,
    movedBodyKg: 88,
    sets,
    whole: [{ ...before.mean, lnTotal: Math.log(270) }],
    prior: before,
  });

const toldBy = (sets: SetEvidence[]) => course(sets.sort((a, b) => a.day - b.day)).stretches[0]!.told;

describe('the stretches of a season', () => {
  test('are five of twelve weeks, one after the other, the last one up to the newest set', () => {
    const { stretches } = course([set(0), set(600)]);
    expect(stretches.map(({ toDay }) => toDay)).toEqual([1, 2, 3, 4, 5].map((n) => 600 - (5 - n) * 7 * 12));
    for (const { fromDay, toDay } of stretches) expect(toDay - fromDay).toBe(7 * 12 - 1);
  });

  test('are read from five sets on that tell of tiring', () => {
    // A single that just goes and one that just does not, and sets of eight that end with the ninth missed: they leave no doubt.
    const days = [0, 10, 20, 30, 40];
    const singles = days.flatMap((day) => [set(day, { barKg: 180 }), set(day, { barKg: 188, made: 0 })]);
    const toldBy = (count: number) => {
      const eights = days.slice(0, count).map((day) => set(day, { barKg: 142.5, reps: 9, made: 8 }));
      const [stretch] = course([...singles, ...eights].sort((a, b) => a.day - b.day)).stretches;
      return [stretch!.setsThatTell, stretch!.told !== null];
    };
    expect(toldBy(5)).toEqual([5, true]);
    expect(toldBy(4)).toEqual([4, false]);
  });

  test('tell where they narrow the range of tiring by more than a seventh', () => {
    // Fives alone may be of a strong lifter who tires soon or of a weaker one who lasts; a single beside them tells which.
    const fives = [0, 10, 20, 30, 40].map((day) =>
      set(day, { barKg: 150, reps: 5, made: 5, repsInReserve: 2 }),
    );
    const singles = fives.map(({ day }) => set(day, { barKg: 180 }));
    expect(toldBy([...fives])).toBeNull();
    expect(toldBy([...singles, ...fives])).not.toBeNull();
  });

  test('make a change of capacity only where it is as good as sure: 0.95, not eight or nine to one', () => {
    // Eights that end with the ninth missed, twelve weeks later with a little more on the bar.
    const { better, change } = course(
      [0, 84].flatMap((from) =>
        [0, 10, 20, 30, 40].flatMap((day) => [
          set(from + day, { barKg: 180 }),
          set(from + day, { barKg: 188, made: 0 }),
          set(from + day, { barKg: from === 0 ? 142.5 : 146, reps: 9, made: 8 }),
        ]),
      ),
    );
    expect(better).toBeGreaterThan(0.8);
    expect(better).toBeLessThan(0.95);
    expect(change).toBe('cannotTell');
  });
});
