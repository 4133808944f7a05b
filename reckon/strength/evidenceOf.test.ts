import { describe, expect, test } from 'vitest';
import type { RecordOf } from '#contract/records/allKinds.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { evidenceOf } from './evidenceOf.ts';

const ON = '2026-06-01';

function best(doneOn: string, barKg: number): RecordOf<'best'> {
  const { lifterId, lift, equipment, setup } = loggedSquat('', doneOn, barKg);
  return {
    id: `best ${barKg}`,
    lifterId,
    lift,
    doneOn,
    equipment,
    setup,
    place: '',
    platform: false,
    note: '',
  };
}

function evidence(log: ReturnType<typeof loggedSquat>[], bests: RecordOf<'best'>[] = []) {
  const records = { ...twoLifters(), best: bests };
  return evidenceOf(records, log, 'short', 'squat', ON);
}

describe('what the log says of a lift', () => {
  test('counts what stands up to the day: no struck set, nothing later, nobody else', () => {
    const { ids } = evidence([
      loggedSquat('counts', '2026-05-01', 100),
      loggedSquat('struck', '2026-05-01', 100, { struckAt: '2026-05-02T08:00:00Z' }),
      loggedSquat('later', '2026-06-02', 100),
      loggedSquat('other', '2026-05-01', 100, { lifterId: 'tall' }),
    ]);
    expect(ids).toEqual(['counts']);
  });

  test('takes a best once, as a single with less than a rep left, whether it was logged or not', () => {
    const alone = evidence([], [best('2026-05-01', 120)]);
    const logged = evidence([loggedSquat('set', '2026-05-01', 120)], [best('2026-05-01', 120)]);
    expect(alone.ids).toEqual(['best 120']);
    expect(logged.ids).toEqual(['set']);
    for (const { sets } of [alone, logged]) expect(sets[0]!.repsInReserve).toBeLessThan(0.5);
    expect(evidence([loggedSquat('set', '2026-05-01', 120)]).sets[0]!.repsInReserve).toBeNull();
  });

  test('shares one rigging among sets of one setup, and leaves out with a reason what the records lack', () => {
    const gone = { bands: [{ bandPairId: 'gone', hookupId: 'doubled' }] };
    const { sets, leftOut } = evidence([
      loggedSquat('a', '2026-05-01', 100),
      loggedSquat('b', '2026-05-08', 110),
      loggedSquat('c', '2026-05-08', 90, { with: gone }),
    ]);
    expect(sets[0]!.rigging).toBe(sets[1]!.rigging);
    expect(leftOut.map(({ id }) => id)).toEqual(['c']);
    expect(leftOut[0]!.reason).toMatch(/\.$/);
  });
});
