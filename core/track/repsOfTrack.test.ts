import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { squatCapability } from '#core/rep/tests/capabilities.ts';
import { simulateRep } from '../rep/simulateRep.ts';
import { repsOfTrack } from './repsOfTrack.ts';
import type { TrackPoint } from './Track.ts';

const TOP_M = 1.5;
const RANGE_M = 0.6;

/** A stretch of motion: height from where it begins, over its time. */
interface Stretch {
  lastsS: number;
  heightM: (tS: number) => number;
}
const still = (lastsS: number, zM: number): Stretch => ({ lastsS, heightM: () => zM });
/** Half a cosine: mean speed `rise / time`, peak `pi / 2` of that. */
const move = (fromM: number, toM: number, lastsS: number): Stretch => ({
  lastsS,
  heightM: (tS) => fromM + ((toM - fromM) * (1 - Math.cos((Math.PI * tS) / lastsS))) / 2,
});
const down = move(TOP_M, TOP_M - RANGE_M, 1.1);
const up = (lastsS: number) => move(TOP_M - RANGE_M, TOP_M, lastsS);

/** Readings of stretches one after the other, with noise of a standard deviation, evenly or not. */
function trackOf(
  stretches: readonly Stretch[],
  { rateHz = 60, noiseM = 0, jitter = 0, seed = 1 } = {},
): TrackPoint[] {
  const random = randomFrom(seed);
  const ends = stretches.map((_, i) =>
    stretches.slice(0, i + 1).reduce((sum, { lastsS }) => sum + lastsS, 0),
  );
  const points: TrackPoint[] = [];
  for (let i = 0; i / rateHz < ends.at(-1)!; i++) {
    const tS = (i + jitter * (random() - 0.5)) / rateHz;
    const at = Math.max(
      0,
      ends.findIndex((end) => tS <= end),
    );
    const heightM = stretches[at]!.heightM(tS - (ends[at - 1] ?? 0));
    const bell = random() + random() + random() - 1.5;
    points.push({ tS, zM: heightM + 2 * noiseM * bell, xM: 0.02 * Math.sin(tS) });
  }
  return points;
}

/** Numbers in [0, 1) that look random and come back (Park & Miller 1988, Commun ACM 31:1192). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}

describe('reps of a track', () => {
  it('finds every rep of a squat set with its mean and peak speed, in noise and uneven readings', () => {
    const times = fc.array(fc.double({ min: 0.8, max: 2.5, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(
        times,
        fc.integer({ min: 1, max: 1e6 }),
        fc.integer({ min: 30, max: 200 }),
        (lasts, seed, rateHz) => {
          const set = lasts.flatMap((lastsS) => [down, up(lastsS), still(1, TOP_M)]);
          const track = trackOf([still(1.5, TOP_M), ...set], { rateHz, noiseM: 0.001, jitter: 0.5, seed });
          const { reps, range } = repsOfTrack(track);
          expect(reps.map(({ made }) => made)).toEqual(lasts.map(() => true));
          expect(range!.bottomM).toBeCloseTo(TOP_M - RANGE_M, 1);
          expect(range!.lockoutM).toBeCloseTo(TOP_M, 1);
          reps.forEach((rep, i) => {
            const meanMps = RANGE_M / lasts[i]!;
            expect(Math.abs(rep.meanSpeedMps - meanMps)).toBeLessThan(0.03 + 0.05 * meanMps);
            expect(Math.abs(rep.peakSpeedMps - (Math.PI / 2) * meanMps)).toBeLessThan(0.06);
          });
        },
      ),
      { numRuns: 40 },
    );
  });

  it('takes no step back from the rack, no breath and no racking for a rep', () => {
    const track = trackOf(
      [
        still(1, TOP_M - 0.09),
        move(TOP_M - 0.09, TOP_M, 0.6),
        move(TOP_M, TOP_M - 0.03, 0.3),
        move(TOP_M - 0.03, TOP_M, 0.3),
        still(2, TOP_M),
        down,
        up(1),
        still(1, TOP_M),
        move(TOP_M, TOP_M - 0.09, 0.8),
        still(1, TOP_M - 0.09),
      ],
      { noiseM: 0.001 },
    );
    expect(repsOfTrack(track).reps).toHaveLength(1);
  });

  it('begins a paused rep when the bar leaves the chest, and ends it on straight arms', () => {
    const track = trackOf([still(1, TOP_M), down, still(1.2, TOP_M - RANGE_M), up(1.5), still(2, TOP_M)], {
      noiseM: 0.001,
    });
    const [rep] = repsOfTrack(track).reps;
    expect(rep!.startS).toBeCloseTo(1 + 1.1 + 1.2, 1);
    expect(rep!.endS).toBeCloseTo(1 + 1.1 + 1.2 + 1.5, 1);
    expect(rep!.meanSpeedMps).toBeCloseTo(RANGE_M / 1.5, 1);
  });

  it('reads a deadlift set from the floor, where the bar bounces a little', () => {
    const floor = 0.225;
    const pull = [move(floor, 0.75, 1.4), still(0.5, 0.75), move(0.75, floor, 0.7)];
    const bounce = [move(floor, floor + 0.045, 0.12), move(floor + 0.045, floor, 0.12), still(0.8, floor)];
    const track = trackOf([still(1, floor), ...pull, ...bounce, ...pull, ...bounce], { noiseM: 0.001 });
    expect(repsOfTrack(track).reps.map(({ made }) => made)).toEqual([true, true]);
  });

  it('finds the missed rep and where it stopped', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 0.8, noNaN: true }), (stop) => {
        const bottomM = TOP_M - RANGE_M;
        const stopM = bottomM + stop * RANGE_M;
        const set = [still(1, TOP_M), down, up(1.2), still(1, TOP_M), down];
        const miss = [move(bottomM, stopM, 1), still(0.6, stopM), move(stopM, bottomM - 0.05, 0.5)];
        const { reps } = repsOfTrack(trackOf([...set, ...miss, still(1, bottomM - 0.05)], { noiseM: 0.001 }));
        expect(reps.map(({ made }) => made)).toEqual([true, false]);
        expect(Math.abs(reps[1]!.stoppedAtS! - stop)).toBeLessThan(0.03);
      }),
      { numRuns: 30 },
    );
  });

  it('keeps a rep in one piece through a sticking region in which the bar sinks a little', () => {
    const middleM = TOP_M - 0.3;
    const grind = [
      move(TOP_M - RANGE_M, middleM, 1),
      move(middleM, middleM - 0.02, 0.4),
      move(middleM - 0.02, TOP_M, 1.5),
    ];
    const { reps } = repsOfTrack(trackOf([still(1, TOP_M), down, ...grind, still(1, TOP_M)]));
    expect(reps).toHaveLength(1);
    expect(reps[0]!.meanSpeedMps).toBeCloseTo(RANGE_M / 2.9, 1);
  });

  it('agrees with the rep that a simulated lifter makes', () => {
    const load = {
      barKg: 150,
      bands: [],
      hungBands: [],
      chains: [],
      bottomM: TOP_M - RANGE_M,
      lockoutM: TOP_M,
      gravityMps2: 9.80665,
      path: [],
    };
    const lifter = {
      ...squatCapability,
      strengthN: 3200,
      movedBodyKg: 80,
      range: { fromM: TOP_M - RANGE_M, toM: TOP_M },
    };
    const rep = simulateRep(load, lifter, { samples: 2001 });
    const rise: Stretch = {
      lastsS: rep.durationS,
      heightM: (tS) => rep.samples[Math.min(2000, Math.round((2000 * tS) / rep.durationS))]!.zM,
    };
    const track = trackOf([still(1, TOP_M), down, rise, still(1, TOP_M)], { rateHz: 100 });
    const [found] = repsOfTrack(track).reps;
    // The simulated bar stops dead at lockout, a corner that smoothing rounds off.
    expect(Math.abs(found!.meanSpeedMps / rep.meanSpeedMps - 1)).toBeLessThan(0.08);
    expect(found!.swayM).toBeLessThan(0.04);
  });

  it('says how long nothing was read on the way up', () => {
    const whole = trackOf([still(1, TOP_M), down, up(1.4), still(1, TOP_M)]);
    const holed = whole.filter(({ tS }) => tS < 2.6 || tS > 2.9);
    const [rep] = repsOfTrack(holed).reps;
    expect(rep!.gapS).toBeCloseTo(0.3, 1);
    expect(rep!.made).toBe(true);
  });

  it('finds nothing in a bar that hangs still', () => {
    expect(repsOfTrack(trackOf([still(5, 1)], { noiseM: 0.001 })).range).toBeNull();
  });
});
