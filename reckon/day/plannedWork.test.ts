import { assert, integer, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceOfDay, lightenedTo, type PlannedWork } from './plannedWork.ts';

/** Discs in steps of 2.5 kg, and a chance that falls with the bar: a straight line from 1 at 100 kg to 0 at 200 kg. */
const loadableKg = (kg: number) => Math.round(kg / 2.5) * 2.5;
const workAt = (barKg: number): PlannedWork => {
  const chanceAllReps = Math.min(1, Math.max(0, (200 - barKg) / 100));
  const firstMps = { median: 0.5, low80: 0.4, high80: 0.6, low95: 0.3, high95: 0.7 };
  return {
    barKg,
    blocks: [
      {
        loaded: { loadedKg: barKg, perSide: [], errorKg: 0 } as PlannedWork['blocks'][0]['loaded'],
        effort: null,
        expected: { chanceAllReps, chanceShorterRest: null, firstMps, zone: null, goesBy: 'log' },
      },
    ],
  };
};

describe('work made lighter until it is sure enough', () => {
  test('is the heaviest loadable bar with the wanted chance', () => {
    assert(
      property(integer({ min: 44, max: 76 }), integer({ min: 50, max: 90 }), (steps, percent) => {
        // Between two loadable bars, so that rounding decides nothing.
        const least = (percent + 0.1) / 100;
        const asked = workAt(2.5 * steps);
        const { barKg } = lightenedTo(least, asked, workAt, loadableKg);
        const wanted = 200 - 100 * least;
        if (asked.barKg <= wanted) expect(barKg).toBe(asked.barKg);
        else if (loadableKg(0.6 * asked.barKg) <= wanted) {
          expect(barKg).toBeLessThanOrEqual(wanted);
          expect(barKg + 2.5).toBeGreaterThan(wanted);
        } else expect(barKg).toBe(asked.barKg);
      }),
    );
  });

  test('is what was asked where nothing is known of the chance', () => {
    const { blocks, barKg } = workAt(150);
    const unknown = { barKg, blocks: blocks.map((block) => ({ ...block, expected: null })) };
    expect(lightenedTo(0.9, unknown, workAt, loadableKg)).toBe(unknown);
  });
});

test('the chance of a day is that of its last block, which counts all reps before it', () => {
  const [[sure], [last]] = [workAt(110).blocks, workAt(170).blocks];
  expect(chanceOfDay({ barKg: 170, blocks: [sure!, last!] })).toBeCloseTo(0.3, 12);
});
