import { describe, expect, it } from 'vitest';
import { readingFault } from './readingFault.ts';

const loading = 'loading' as const;
const sound = { lengthM: 1.5, forceN: 100, direction: loading };

describe('readingFault', () => {
  it.each([
    [
      { restLengthM: 0, readings: [] },
      { reading: null, field: 'restLengthM' },
    ],
    [
      { restLengthM: Number.NaN, readings: [] },
      { reading: null, field: 'restLengthM' },
    ],
    [
      { restLengthM: 1, widthMm: -3, readings: [] },
      { reading: null, field: 'widthMm' },
    ],
    [
      { restLengthM: 1, readings: [sound, { ...sound, lengthM: 0 }] },
      { reading: 1, field: 'lengthM' },
    ],
    [
      { restLengthM: 1, readings: [{ ...sound, forceN: -1 }] },
      { reading: 0, field: 'forceN' },
    ],
    [
      { restLengthM: 1, readings: [{ ...sound, forceN: Infinity }] },
      { reading: 0, field: 'forceN' },
    ],
    [
      { restLengthM: 1, readings: [sound, sound, { ...sound, lengthM: 1 }] },
      { reading: 2, field: 'lengthM' },
    ],
    [
      { restLengthM: 1, readings: [{ ...sound, forceN: 0 }] },
      { reading: 0, field: 'forceN' },
    ],
  ])('%j is refused where the fault is', (band, fault) => {
    expect(readingFault(band)).toMatchObject(fault);
  });

  it('has nothing against sound readings and a slack look', () => {
    const slack = { lengthM: 0.98, forceN: 0, direction: loading };
    expect(readingFault({ restLengthM: 1, widthMm: 41, readings: [sound, slack] })).toBeNull();
  });

  it('says it in one sentence with the value and what is allowed', () => {
    expect(readingFault({ restLengthM: 1, readings: [{ ...sound, forceN: -1 }] })!.message).toBe(
      'Reading 1: the force is -1 N; it must be 0 or more.',
    );
  });
});
