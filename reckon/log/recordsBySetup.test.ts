import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { setupKey } from '#contract/log/setupKey.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { recordsBySetup } from './recordsBySetup.ts';

const box = (heightM: number) => ({ start: { way: 'box' as const, heightM } });

test('a lighter bar on a lower box is a record of its own and breaks none', () => {
  const records = recordsBySetup(
    [
      loggedSquat('high', '2026-01-05', 150, { with: box(0.4) }),
      loggedSquat('low', '2026-02-05', 130, { with: box(0.36) }),
    ],
    [],
  );
  expect(records.map(({ newest, before }) => [newest.id, before])).toEqual([
    ['low', null],
    ['high', null],
  ]);
});

test('a record names the one that it broke, by weight first and then by reps; struck and missed sets hold none', () => {
  const records = recordsBySetup(
    [
      loggedSquat('first', '2026-01-05', 150),
      loggedSquat('same again', '2026-01-12', 150),
      loggedSquat('for two', '2026-01-19', 150, { reps: 2, made: 2 }),
      loggedSquat('typed wrongly', '2026-01-20', 1500, { struckAt: '2026-01-20T19:00:00Z' }),
      loggedSquat('missed', '2026-01-26', 160, { made: 0 }),
      loggedSquat('lighter for five', '2026-02-01', 140, { reps: 5, made: 5 }),
    ],
    [],
  );
  expect(records).toHaveLength(1);
  expect(records[0]!.newest.id).toBe('for two');
  expect(records[0]!.before?.id).toBe('first');
});

test('a best written down stands against logged sets of the same setup', () => {
  const best = {
    id: 'meet',
    lifterId: 'short',
    lift: 'squat' as const,
    doneOn: '2025-11-01',
    place: 'County hall',
    platform: true,
    equipment: 'raw' as const,
    setup: loggedSquat('x', '2025-11-01', 155).setup,
    note: '',
  };
  const [record] = recordsBySetup(
    [loggedSquat('close', '2026-01-05', 152.5), loggedSquat('over', '2026-02-01', 157.5)],
    [best],
  );
  expect([record!.newest.id, record!.before?.id]).toEqual(['over', 'meet']);
});

test('the steps up to a record on its own day are not the record before it', () => {
  const [record] = recordsBySetup(
    [
      loggedSquat('old', '2026-01-05', 150),
      loggedSquat('opener', '2026-03-05', 152.5),
      loggedSquat('third', '2026-03-05', 160),
    ],
    [],
  );
  expect([record!.newest.id, record!.before?.id]).toEqual(['third', 'old']);
});

test('no made set of a setup was heavier than its record, in whatever order the sets come', () => {
  const set = fc.record({
    barKg: fc.integer({ min: 20, max: 40 }).map((n) => n * 5),
    day: fc.integer({ min: 1, max: 28 }),
    height: fc.constantFrom(0.3, 0.36),
    made: fc.integer({ min: 0, max: 3 }),
  });
  fc.assert(
    fc.property(fc.array(set, { minLength: 1, maxLength: 20 }), (given) => {
      const sets = given.map(({ barKg, day, height, made }, i) =>
        loggedSquat(`${i}`, `2026-01-${String(day).padStart(2, '0')}`, barKg, {
          reps: 3,
          made,
          with: box(height),
        }),
      );
      const records = recordsBySetup(sets, []);
      const topOf = (key: string) =>
        Math.max(...sets.filter((s) => s.made > 0 && setupKey(s) === key).map((s) => s.setup.barKg));
      for (const { key, newest, before } of records) {
        expect(newest.setup.barKg).toBe(topOf(key));
        if (before) {
          expect(before.setup.barKg).toBeLessThanOrEqual(newest.setup.barKg);
          expect(before.doneOn <= newest.doneOn).toBe(true);
        }
      }
      const tops = records.map(({ newest }) => newest.doneOn);
      expect(tops).toEqual([...tops].sort().reverse());
    }),
  );
});
