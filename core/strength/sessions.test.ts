import { describe, expect, it } from 'vitest';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { sessionsOf, sessionsWith } from './sessions.ts';
import type { SetModel } from './setModel.ts';
import { readStops } from './stops.ts';
import { plainSingle } from './tests/plainSingle.ts';

const model = {} as SetModel;
const set = (changed: Partial<SetEvidence> = {}): SetEvidence => ({
  ...plainSingle,
  day: 1,
  rigging: {} as Rigging,
  barKg: 100,
  movedBodyKg: 80,
  ...changed,
});
const read = (...sets: SetEvidence[]) =>
  sessionsOf(
    sets,
    sets.map(() => model),
  );

describe('what a day says', () => {
  it('takes a rest that nobody wrote down for three minutes', () => {
    expect(read(set())).toEqual(read(set({ restS: 3 * 60 })));
  });

  it('tells the fastest rep and, only where each was measured, the last one', () => {
    const [group] = read(set({ reps: 3, made: 3, meanSpeedsMps: [0.5, 0.55, 0.4] }))[0]!.groups;
    expect([group!.fastestMps.mean, group!.lastMps.mean]).toEqual([0.55, 0.4]);
    const [single] = read(set({ reps: 3, made: 3, meanSpeedsMps: [0.55] }))[0]!.groups;
    expect([single!.fastestMps.count, single!.lastMps.count]).toEqual([1, 0]);
    const [alone] = read(set({ meanSpeedsMps: [0.4] }))[0]!.groups;
    expect([alone!.fastestMps, alone!.lastMps.count]).toEqual([{ mean: 0.4, count: 1 }, 0]);
    // Peak speeds are asked where no mean was read; a missed single tells no speed.
    const [peak] = read(set({ peakSpeedsMps: [0.7] }))[0]!.groups;
    expect([peak!.fastestMps.count, peak!.peakMps]).toEqual([0, { mean: 0.7, count: 1 }]);
    const [both] = read(set({ meanSpeedsMps: [0.4], peakSpeedsMps: [0.7] }))[0]!.groups;
    expect(both!.peakMps.count).toBe(0);
    const [missed] = read(set({ made: 0, meanSpeedsMps: [0.1], peakSpeedsMps: [0.2] }))[0]!.groups;
    expect([missed!.fastestMps.count, missed!.peakMps.count]).toEqual([0, 0]);
  });

  it('takes the mean of what alike sets told, reps left of made sets and the places of missed ones', () => {
    const [made] = read(set({ repsInReserve: 2 }), set({ repsInReserve: 1, stoppedAtS: 0.4 }))[0]!.groups;
    expect([made!.count, made!.reserve, made!.stopped.count]).toEqual([2, { mean: 1.5, count: 2 }, 0]);
    const [missed] = read(set({ made: 0, repsInReserve: 0, stoppedAtS: 0.4 }))[0]!.groups;
    expect([missed!.reserve.count, missed!.stopped]).toEqual([0, { mean: 0.4, count: 1 }]);
  });
});

const counts = (...sets: SetEvidence[]) =>
  read(...sets)[0]!.groups.map(({ count, members }) => [count, members]);

describe('sets of a day', () => {
  it('count together where they were alike and followed each other, whatever they told', () => {
    expect(counts(set({ meanSpeedsMps: [0.5] }), set({ repsInReserve: 2 }))).toEqual([[2, [0, 1]]]);
    expect(counts(set(), set({ reps: 2, made: 2 }), set())).toHaveLength(3);
    for (const other of [{ made: 0 }, { reps: 2 }, { platform: true }, { equipment: 'wraps' as const }])
      expect(counts(set(), set(other)), JSON.stringify(other)).toEqual([
        [1, [0]],
        [1, [1]],
      ]);
    const [one, two] = [{} as SetModel, {} as SetModel];
    expect(sessionsOf([set(), set()], [one, two])[0]!.groups.map(({ model: of }) => of)).toEqual([one, two]);
  });

  it('stand by the day, oldest first, those of one day in their order, without those left out', () => {
    const sets = [set({ day: 9 }), set({ day: 2, made: 0 }), set({ day: 2 }), set({ day: 4 })];
    const days = sessionsOf(sets, [model, model, model, null]);
    expect(days.map(({ day, groups }) => [day, groups.map(({ members }) => members)])).toEqual([
      [2, [[1], [2]]],
      [9, [[0]]],
    ]);
  });

  it('with one more are those of all sets together, and leave those given as they are', () => {
    const first = [
      set({ repsInReserve: 2, meanSpeedsMps: [0.4] }),
      set({ day: 2, made: 0, stoppedAtS: 0.3 }),
    ];
    for (const more of [
      set({ day: 2, made: 0, stoppedAtS: 0.5, restS: 60 }),
      set({ day: 2, peakSpeedsMps: [0.7] }),
      set({ day: 3 }),
    ]) {
      const before = read(...first);
      const kept = structuredClone(before);
      expect(sessionsWith(before, more, 2, model)).toEqual(read(...first, more));
      expect(before).toEqual(kept);
    }
    expect(sessionsWith([], set(), 0, model)).toEqual(read(set()));
  });
});

describe('where misses stopped', () => {
  it.each([
    [3, 3],
    [4, 4],
    [5, 4],
    [40, 4],
  ])('%d of them count as no more than %d answers', (count, worth) => {
    const sessions = read(
      ...Array.from({ length: count }, (_, day) => set({ day, made: 0, stoppedAtS: 0.4 })),
    );
    readStops(sessions);
    const shares = sessions.flatMap(({ groups }) => groups.map(({ stopShare }) => stopShare));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(worth, 12);
  });
});
