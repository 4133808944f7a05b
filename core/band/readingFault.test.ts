import { describe, expect, it } from 'vitest';
import type { BandReading } from './BandCurve.ts';
import { type ReadingFault, readingFault } from './readingFault.ts';

const sound: BandReading = { lengthM: 1.5, forceN: 100, direction: 'loading' };
const band = { restLengthM: 1, readings: [] };
const read = (...changes: Partial<BandReading>[]) => ({
  ...band,
  readings: changes.map((change) => ({ ...sound, ...change })),
});

type Field = ReadingFault['field'];

describe('readingFault', () => {
  it.each<[Parameters<typeof readingFault>[0], number | null, Field, string]>([
    [{ ...band, restLengthM: 0 }, null, 'restLengthM', 'The rest length is 0 m; it must be above 0.'],
    [
      { ...band, restLengthM: Number.NaN },
      null,
      'restLengthM',
      'The rest length is NaN m; it must be above 0.',
    ],
    [
      { ...band, restLengthM: Infinity },
      null,
      'restLengthM',
      'The rest length is Infinity m; it must be above 0.',
    ],
    [{ ...band, widthMm: 0 }, null, 'widthMm', 'The width is 0 mm; it must be above 0.'],
    [{ ...band, widthMm: Infinity }, null, 'widthMm', 'The width is Infinity mm; it must be above 0.'],
    [read({}, { lengthM: 0 }), 1, 'lengthM', 'Reading 2: the length is 0 m; it must be above 0.'],
    [
      read({}, { lengthM: Infinity }),
      1,
      'lengthM',
      'Reading 2: the length is Infinity m; it must be above 0.',
    ],
    [read({ forceN: -1 }), 0, 'forceN', 'Reading 1: the force is -1 N; it must be 0 or more.'],
    [read({ forceN: Infinity }), 0, 'forceN', 'Reading 1: the force is Infinity N; it must be 0 or more.'],
    [
      read({}, {}, { lengthM: 1, forceN: 0.5 }),
      2,
      'lengthM',
      'Reading 3: a length of 1 m with 0.5 N is not above the rest length of 1 m, where a band is slack.',
    ],
    [
      read({ forceN: 0 }),
      0,
      'forceN',
      'Reading 1: the force is 0 N at 1.5 m, beyond the rest length of 1 m; it must be above 0.',
    ],
  ])(
    '%j is refused where the fault is, in one sentence with the value and what is allowed',
    (typed, reading, field, message) => {
      expect(readingFault(typed)).toEqual({ reading, field, message });
    },
  );

  it('has nothing against sound readings and a slack look, however small the band', () => {
    const slack = { lengthM: 0.98, forceN: 0 };
    expect(readingFault({ ...read({}, slack, { lengthM: 1, forceN: 0 }), widthMm: 41 })).toBeNull();
    const small = { ...sound, lengthM: 0.9, forceN: 0.5 };
    expect(readingFault({ restLengthM: 0.5, widthMm: 0.5, readings: [small] })).toBeNull();
  });
});
