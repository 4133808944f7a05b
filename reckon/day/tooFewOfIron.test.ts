import { expect, test } from 'vitest';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { solveDay } from './solveDay.ts';

/** What is said of a group whose lifters lift at two racks at once, or both at the first. */
function said(barIds: [string, string], pairs: number, racksInUse = 2) {
  const records = twoLifters();
  const [rack] = records.rack;
  records.bar = ['bar', 'other'].map((id) => ({ ...records.bar[0]!, id }));
  records.collarPair = [{ id: 'collars', label: 'Springs', pairMassKg: 0.5, pairs, note: '' }];
  records.rack = barIds.map((barId, i) => ({
    ...rack!,
    id: i === 0 ? rack!.id : 'second',
    barId,
    collarPairId: 'collars',
  }));
  const day = structuredClone(records.day[0]!);
  if (racksInUse === 2) day.groups[0]!.places[1]!.rackId = 'second';
  const { cautions } = solveDay(records, day).groups[0]!;
  return cautions.filter(({ code }) => code === 'tooFew');
}
const rackIds = ['rack', 'second'];

test('one bar cannot lie on two racks that are used at once', () => {
  expect(said(['bar', 'bar'], 2)).toEqual([{ code: 'tooFew', sort: 'bar', gearId: 'bar', rackIds, has: 1 }]);
  expect(said(['bar', 'other'], 2)).toEqual([]);
});

test('nor can one pair of collars', () => {
  expect(said(['bar', 'other'], 1)).toEqual([
    { code: 'tooFew', sort: 'collarPair', gearId: 'collars', rackIds, has: 1 },
  ]);
  expect(said(['bar', 'other'], 0)).toHaveLength(1);
});

test('a rack where nobody lifts holds nothing that another wants', () => {
  expect(said(['bar', 'bar'], 1, 1)).toEqual([]);
});
