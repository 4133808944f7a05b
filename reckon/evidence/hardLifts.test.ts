import { describe, expect, it } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { hardLifts } from './hardLifts.ts';

const nothingHung = () => ({ bandKg: 0, chainKg: 0 });
const found = (...sets: ReturnType<typeof loggedSquat>[]) =>
  hardLifts(sets, [], nothingHung).map(({ barKg }) => barKg);
const day = '2026-03-01';

describe('which lifts were hard', () => {
  it('a miss and few reps left say so, many reps left say the opposite', () => {
    expect(found(loggedSquat('a', day, 150, { reps: 2, made: 1 }))).toEqual([150]);
    expect(found(loggedSquat('a', day, 150, { repsInReserve: 0 }))).toEqual([150]);
    expect(found(loggedSquat('a', day, 150, { repsInReserve: 4 }))).toEqual([]);
  });

  it('so does the speed of the last rep: powerlifters end at 0.23 m/s in the squat (Helms et al. 2017)', () => {
    expect(found(loggedSquat('a', day, 150, { meanSpeedsMps: [0.23] }))).toEqual([150]);
    expect(found(loggedSquat('a', day, 150, { meanSpeedsMps: [0.7] }))).toEqual([]);
  });

  it('without a word only the top of a rise counts: neither its steps nor speed work', () => {
    const rise = [120, 140, 150].map((barKg, i) => loggedSquat(`${i}`, day, barKg, { order: i + 1 }));
    expect(found(...rise)).toEqual([150]);
    const speedWork = Array.from({ length: 8 }, (_, i) =>
      loggedSquat(`${i}`, day, 100, { order: i + 1, reps: 2, made: 2 }),
    );
    expect(found(...speedWork)).toEqual([]);
    expect(found(...speedWork, loggedSquat('typed wrong', day, 170, { order: 9, reps: 2, made: 2 }))).toEqual(
      [],
    );
  });

  it('struck sets, meets and long sets do not count', () => {
    const hard = { repsInReserve: 0 };
    expect(found(loggedSquat('a', day, 150, { ...hard, struckAt: '2026-03-02T00:00:00Z' }))).toEqual([]);
    expect(found(loggedSquat('a', day, 150, { ...hard, platform: true }))).toEqual([]);
    expect(found(loggedSquat('a', day, 150, { ...hard, reps: 8, made: 8 }))).toEqual([]);
  });

  it('a figure turned round is left out where the weeks around it say otherwise', () => {
    const weeks = ['2026-03-01', '2026-03-08', '2026-03-15'].map((doneOn, i) =>
      loggedSquat(doneOn, doneOn, 150 + i, { repsInReserve: 0 }),
    );
    expect(found(...weeks, loggedSquat('x', '2026-03-22', 105, { repsInReserve: 0 }))).toEqual([
      150, 151, 152,
    ]);
  });
});

describe('what a set of several reps is worth as a single', () => {
  it('is (30 + reps) / 31 of all that was lifted, bands with it (Epley 1985: 1 + reps / 30, a single for itself)', () => {
    const triple = loggedSquat('a', day, 100, { reps: 3, made: 3, repsInReserve: 1 });
    // Four reps were in it: 34 / 31 of 100 kg; with 31 kg of bands 34 / 31 of 131 kg less the bands.
    expect(found(triple)[0]).toBeCloseTo((100 * 34) / 31, 9);
    const [banded] = hardLifts([triple], [], () => ({ bandKg: 31, chainKg: 0 }));
    expect(banded!.barKg).toBeCloseTo((131 * 34) / 31 - 31, 9);
  });
});
