import { describe, expect, it } from 'vitest';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { sessionsOf } from './sessions.ts';
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
