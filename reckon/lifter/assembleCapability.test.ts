import { describe, expect, it } from 'vitest';
import type { RecordOf } from '#contract/records/allKinds.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { bestToGoBy, bodyMassOf, isStraight } from './assembleCapability.ts';

const records = twoLifters();
const given = records.best.find(({ lifterId }) => lifterId === 'tall')!;
const best = (id: string, doneOn: string, barKg: number, change: Partial<RecordOf<'best'>> = {}) => ({
  ...given,
  id,
  doneOn,
  setup: { ...given.setup, barKg },
  ...change,
});
const goneBy = (...bests: RecordOf<'best'>[]) =>
  bestToGoBy({ ...records, best: bests }, 'tall', 'squat', '2026-03-01')?.id ?? null;

/** Whatever the order in which the two were entered. */
function expectFirst(leader: RecordOf<'best'>, other: RecordOf<'best'>) {
  expect([goneBy(leader, other), goneBy(other, leader)]).toEqual([leader.id, leader.id]);
}

describe('the best that a day goes by', () => {
  it('is of that day or before it', () => {
    expect(goneBy(best('today', '2026-03-01', 200))).toBe('today');
    expect(goneBy(best('tomorrow', '2026-03-02', 200))).toBeNull();
    expectFirst(best('done', '2026-01-01', 190), best('to come', '2026-04-01', 220));
  });

  it('is one of the last year before a heavier old one, and of those the heaviest', () => {
    expectFirst(best('fresh', '2025-09-01', 190), best('old', '2024-09-01', 220));
    expectFirst(best('heavy', '2025-09-01', 200), best('light', '2026-02-01', 190));
  });

  it('is one in the equipment that the lifter wears before any other', () => {
    const wraps = best('wraps', '2026-02-01', 240, { equipment: 'wraps' });
    expectFirst(best('raw', '2024-09-01', 180), wraps);
    expect(goneBy(wraps)).toBe('wraps');
  });
});

const weighed = (takenOn: string, massKg: number) => ({ id: takenOn, lifterId: 'tall', takenOn, massKg });

const { setup } = given;
const straight = (change: Partial<typeof setup>) => isStraight({ ...given, setup: { ...setup, ...change } });

describe('a straight best', () => {
  const bands = [{ bandPairId: 'heavy', hookupId: 'doubled' }];
  const chains = [{ chainPairId: 'chain', pairs: 1 }];
  const box = { way: 'box' as const, heightM: 0.4 };

  it('is one from a free start or paused, with nothing hung', () => {
    expect([straight({}), straight({ start: { way: 'paused', heightM: null } })]).toEqual([true, true]);
    expect([straight({ bands }), straight({ chains }), straight({ start: box })]).toEqual([
      false,
      false,
      false,
    ]);
  });

  it('goes before a newer and heavier one that is none', () => {
    const boxed = { ...best('boxed', '2026-02-20', 260), setup: { ...setup, start: box, barKg: 260 } };
    expectFirst(best('plain', '2026-01-20', 200), boxed);
    // Of those that are none the newest.
    const older = { ...boxed, id: 'older', doneOn: '2026-02-10', setup: { ...boxed.setup, barKg: 280 } };
    expectFirst(boxed, older);
  });
});

describe('the body mass of a day', () => {
  const bodyMass = [weighed('2026-02-20', 108), weighed('2026-03-05', 106), weighed('2026-01-01', 110)];
  const on = (day: string) => bodyMassOf({ bodyMass }, 'tall', day);

  it('is the newest weighing up to that day, and the first one before any', () => {
    expect(on('2026-03-01').massKg).toBe(108);
    expect(on('2026-03-05').massKg).toBe(106);
    expect(on('2026-02-19').massKg).toBe(110);
    expect(on('2025-12-31')).toEqual({ massKg: 110, known: 'measured' });
  });
});
