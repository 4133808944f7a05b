import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { freshPlace } from '#contract/day/freshPlace.ts';
import type { Place } from '#contract/records/day.ts';
import { clearRack, movePlace, onRack } from './movePlace.ts';

const place = (lifterId: string, rackId: string): Place => freshPlace(lifterId, rackId);
const ids = (places: readonly Place[]) => places.map((p) => p.lifterId);

const anyPlaces = fc
  .array(fc.constantFrom('north', 'south', 'east'), { minLength: 1, maxLength: 12 })
  .map((racks) => racks.map((rack, i) => place(`l${i}`, rack)));

test('a moved lifter stands where it was put and nobody else changes order', () => {
  fc.assert(
    fc.property(
      anyPlaces,
      fc.nat(),
      fc.constantFrom('north', 'south', 'east'),
      fc.nat(15),
      (places, pick, rack, order) => {
        const { lifterId } = places[pick % places.length]!;
        const moved = movePlace(places, lifterId, rack, order);
        const before = onRack(places, rack).filter((p) => p.lifterId !== lifterId);
        const expected = [...ids(before)];
        expected.splice(order, 0, lifterId);
        expect(ids(onRack(moved, rack))).toEqual(expected);
        for (const other of ['north', 'south', 'east'].filter((r) => r !== rack)) {
          expect(ids(onRack(moved, other))).toEqual(
            ids(onRack(places, other)).filter((id) => id !== lifterId),
          );
        }
      },
    ),
  );
});

test('what the coach fixed stays with the order and goes with the rack', () => {
  const fixed = { ...place('a', 'north'), byCoach: { barKg: 100, bands: null, chains: null } };
  const places = [fixed, place('b', 'north'), place('c', 'south')];
  expect(movePlace(places, 'a', 'north', 1).find((p) => p.lifterId === 'a')?.byCoach?.barKg).toBe(100);
  expect(movePlace(places, 'a', 'south', 0).find((p) => p.lifterId === 'a')?.byCoach).toBeNull();
});

test('a cleared rack has nobody, nobody is lost, and the others differ by one at most where they began alike', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), (count) => {
      const before = Array.from({ length: count }, (_, i) => place(`${i}`, 'north'));
      const after = clearRack(before, 'north', ['south', 'east']);
      expect(onRack(after, 'north')).toEqual([]);
      expect(ids(after).sort()).toEqual(ids(before).sort());
      const crowds = ['south', 'east'].map((rack) => onRack(after, rack).length);
      expect(Math.abs(crowds[0]! - crowds[1]!)).toBeLessThanOrEqual(1);
    }),
  );
});
