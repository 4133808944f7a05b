import { describe, expect, it } from 'vitest';
import { repsOfTrack } from './repsOfTrack.ts';

// The limits of docs/model.md, "track", each met from both sides by tracks whose truth is known. All in all they are assumptions.

const RATE_HZ = 100;
/** A way to a height in a time: at even speed, or from rest to rest along half a cosine. */
type Way = [toM: number, lastsS: number, even?: 'even'];
/** Readings of ways one after the other from a height, with a tremor of 40 Hz that smoothing takes away whole. */
function trackOf(fromM: number, ways: readonly Way[], tremorM = 0) {
  const heights: number[] = [];
  let startM = fromM;
  for (const [toM, lastsS, even] of ways) {
    const steps = Math.round(lastsS * RATE_HZ);
    for (let i = 0; i < steps; i++) {
      const share = even ? i / steps : (1 - Math.cos((Math.PI * i) / steps)) / 2;
      heights.push(startM + (toM - startM) * share);
    }
    startM = toM;
  }
  return heights.map((zM, i) => ({
    tS: i / RATE_HZ,
    zM: zM + tremorM * Math.sin(2 * Math.PI * 40 * (i / RATE_HZ)),
    xM: null,
  }));
}
/** Reps of a metre: whole ones, unless a share is given, each from rest at the bottom and back to it. */
const bottomToBottom = (...shares: number[]): Way[] => [
  [0, 1],
  ...shares.flatMap((share): Way[] => [
    [share, 1],
    [share, 0.5],
    [0, 1],
    [0, 0.5],
  ]),
];
const repsOf = (fromM: number, ways: readonly Way[]) => repsOfTrack(trackOf(fromM, ways)).reps;
const madeOf = (...shares: number[]) => repsOf(0, bottomToBottom(...shares)).map(({ made }) => made);

describe('smoothing', () => {
  it.each([
    [100, 6],
    [16, 4],
  ])('at %d readings a second leaves 1/√2 of what swings %d times a second', (rateHz, cutoffHz) => {
    const swingM = 0.1;
    const points = Array.from({ length: 20 * rateHz }, (_, i) => ({
      tS: i / rateHz,
      zM: swingM * Math.cos(2 * Math.PI * cutoffHz * (i / rateHz)),
      xM: null,
    }));
    const { zM } = repsOfTrack(points);
    const middle = zM.subarray(zM.length / 4, (3 * zM.length) / 4);
    const meanSquare = middle.reduce((sum, z) => sum + z * z, 0) / middle.length;
    expect(Math.sqrt(2 * meanSquare) / swingM).toBeCloseTo(Math.SQRT1_2, 2);
  });
});

const fromPart = (fromM: number) =>
  repsOf(0, [...bottomToBottom(1, 1), [1, 1], [fromM, 1], [1, 1], [1, 0.5]]);

const shortLift = (bounceM: number) =>
  repsOf(0, [...bottomToBottom(0.2, 0.2), [bounceM, 0.5], [0, 0.5], [0, 0.5]]).map(({ made }) => made);

describe('a way up is a rep', () => {
  it('where it is more than a tenth of all that was travelled', () => {
    expect(madeOf(1, 1, 0.15)).toEqual([true, true, false]);
    expect(madeOf(1, 1, 0.07)).toEqual([true, true]);
  });

  it('and more than three centimetres, however short the lift', () => {
    expect(shortLift(0.026)).toEqual([true, true]);
    expect(shortLift(0.04)).toEqual([true, true, false]);
  });

  it('where it begins in the lowest three tenths', () => {
    expect(fromPart(0.26)).toHaveLength(4);
    expect(fromPart(0.35)).toHaveLength(3);
  });

  it('made within a tenth of lockout', () => {
    expect(madeOf(1, 1, 0.92)).toEqual([true, true, true]);
    expect(madeOf(1, 1, 0.88)).toEqual([true, true, false]);
  });

  it('over a range of which ways from 0.8 of the longest on are the measure', () => {
    expect(madeOf(1, 0.85, 0.85, 0.85)).toEqual([true, true, true, true]);
    expect(madeOf(1, 0.75, 0.75, 0.75)).toEqual([true, false, false, false]);
  });
});

/** When the third rep begins, less when the first part of it did. */
const begins = (first: readonly Way[], tremorM = 0) => {
  const before: Way[] = [...bottomToBottom(1, 1)];
  const startS = before.reduce((sum, [, lastsS]) => sum + lastsS, 0);
  const points = trackOf(0, [...before, ...first, [1, 1], [1, 0.5]], tremorM);
  return repsOfTrack(points).reps[2]!.startS - startS;
};

/** At an even speed for half a second first. */
const creeping = (speedMps: number, tremorM = 0) => begins([[speedMps / 2, 0.5, 'even']], tremorM);

describe('a rep lasts', () => {
  it('from the last standstill before a twentieth of its way', () => {
    expect(
      begins([
        [0.03, 0.5],
        [0.03, 1],
      ]),
    ).toBeCloseTo(1.5, 1);
    expect(
      begins([
        [0.15, 0.5],
        [0.15, 1],
      ]),
    ).toBeCloseTo(0, 1);
  });

  it('from where it is faster than a centimetre a second, where nothing trembles', () => {
    expect(creeping(0.02)).toBeCloseTo(0, 1);
    expect(creeping(0.005)).toBeGreaterThan(0.4);
  });

  it('from where it is faster than three standard deviations of what trembling adds, to five centimetres a second', () => {
    // Of even noise a low-pass of 6 Hz at 100 readings a second keeps 0.12 of the variance, its slope (2 pi 6)^2 / 3 of that. A
    // sine of this height has half its square: noise of the speed 0.01 m/s, three of it 0.03; corners lose a bit too.
    const tremorM = (Math.SQRT2 * 0.01 * Math.sqrt(0.88 / 0.12) * Math.sqrt(3)) / (2 * Math.PI * 6);
    expect(creeping(0.042, tremorM)).toBeCloseTo(0, 1);
    expect(creeping(0.025, tremorM)).toBeGreaterThan(0.4);
    expect(creeping(0.07, 5 * tremorM)).toBeCloseTo(0, 1);
    expect(creeping(0.045, 5 * tremorM)).toBeGreaterThan(0.4);
  });
});
