import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Start } from '#contract/records/lift.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { lowestStop, missStops, onRange, stopWords } from './missStops.ts';
import { startOnRange } from './startOnRange.ts';

/** Measured from the floor: bar centre 22.5 cm at the bottom, 82.5 cm at lockout, 60 cm of way. */
const club = () => {
  const records = twoLifters();
  const [lifter] = records.lifter;
  return {
    ...records,
    liftHeights: [
      {
        id: 'measured',
        lifterId: lifter!.id,
        lift: 'deadlift' as const,
        start: { way: 'free' as const, heightM: null },
        measuredOn: '2026-01-01',
        bottomM: 0.225,
        lockoutM: 0.825,
        bottomForwardM: null,
        note: '',
      },
    ],
  };
};
const startOf = (start: Start) => {
  const records = club();
  const lifterId = records.lifter[0]!.id;
  return startOnRange(records, {
    lifterId,
    lift: 'deadlift',
    doneOn: '2026-11-25',
    setup: { rackId: null, start },
  });
};

describe('where a pull can stop', () => {
  test('on a deficit of 6 cm it reaches a tenth of a 60 cm range below its bottom, and is told in cm', () => {
    const start = startOf({ way: 'deficit', heightM: 0.06 });
    expect(start?.startS).toBeCloseTo(-0.06 / 0.6, 9);
    expect(lowestStop(start)).toBe(-0.1);
    expect(stopWords(-0.05, start, 'cm')).toBe(
      '3 cm below the bottom of the competition range. This start begins 6 cm below it.',
    );
  });

  test('off blocks of 15 cm it begins a quarter of the way up', () => {
    const start = startOf({ way: 'blocks', heightM: 0.15 });
    expect(start?.startS).toBeCloseTo(0.25, 9);
    expect(lowestStop(start)).toBe(0.25);
    expect(stopWords(0.5, start, 'cm')).toContain('This start begins at 25 %.');
  });

  test('from the floor it begins at the bottom, which needs no more words', () => {
    expect(stopWords(0.4, startOf({ way: 'free', heightM: null }), 'cm')).toBe(
      '40 % of the way from the bottom to lockout.',
    );
  });

  test('nobody named, or a height not typed yet, tells nothing', () => {
    expect(startOf({ way: 'deficit', heightM: null })).toBeNull();
    const setup = { rackId: null, start: { way: 'free' as const, heightM: null } };
    expect(
      startOnRange(club(), { lifterId: null, lift: 'deadlift', doneOn: '2026-11-25', setup }),
    ).toBeNull();
  });
});

test('the usual stops rise from the start to lockout and stay within what the log keeps', () => {
  fc.assert(
    fc.property(fc.double({ min: -0.2, max: 0.5, noNaN: true }), (startS) => {
      const start = { startS, rangeM: 0.6 };
      const at = [lowestStop(start), ...missStops(start).map(({ s }) => s), 1];
      expect(at).toEqual(at.toSorted((a, b) => a - b));
      expect(at[0]).toBeGreaterThanOrEqual(-0.2);
      expect(onRange(0, start)).toBeCloseTo(startS, 12);
      expect(onRange(1, start)).toBeCloseTo(1, 12);
    }),
  );
});
