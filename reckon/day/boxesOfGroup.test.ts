import { describe, expect, test } from 'vitest';
import type { Place } from '#contract/records/day.ts';
import type { Box } from '#contract/records/gear.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { boxesOfGroup } from './boxesOfGroup.ts';

const piece = (id: string, sort: Box['sort'], heightM: number, pieces: number) => ({
  id,
  label: id,
  sort,
  heightM,
  pieces,
  note: '',
});
const lifter = (rackId: string, boxM: number | null): Place => ({
  lifterId: `${rackId} ${boxM}`,
  rackId,
  start: boxM === null ? null : { way: 'box', heightM: boxM },
  byCoach: null,
  moreShare: 0,
  note: '',
});
const start = { way: 'free' as const, heightM: null };

const rack = twoLifters().rack[0]!;
const boxesAt = (box: Box[], group: Parameters<typeof boxesOfGroup>[1]) =>
  boxesOfGroup({ box, rack: ['north', 'south'].map((id) => ({ ...rack, id })) }, group);

describe('boxes of a group, whose racks are used at once', () => {
  test('a height is told by its pieces, none for a lifter without a box or for a height that cannot be built', () => {
    const gear = [piece('Box 33', 'box', 0.33, 1), piece('Mat 3', 'mat', 0.03, 2)];
    const places = [lifter('north', 0.39), lifter('north', null), lifter('north', 0.4)];
    const { stackOf, tooFew } = boxesAt(gear, { start, places });
    expect(places.map(stackOf)).toEqual([['Box 33', '2 × Mat 3'], [], []]);
    expect(tooFew).toEqual([]);
  });

  test('lifters of one rack take turns on one box, those of two racks cannot', () => {
    const gear = [piece('Box 33', 'box', 0.33, 1), piece('Mat 3', 'mat', 0.03, 2)];
    const sameRack = [lifter('north', 0.33), lifter('north', 0.36), lifter('north', 0.39)];
    expect(boxesAt(gear, { start, places: sameRack }).tooFew).toEqual([]);
    const places = [lifter('north', 0.33), lifter('south', 0.36)];
    const twoRacks = boxesAt(gear, { start, places });
    expect(twoRacks.tooFew).toEqual([
      { code: 'tooFew', sort: 'box', gearId: 'Box 33', rackIds: ['north', 'south'], has: 1 },
    ]);
    expect(places.map(twoRacks.stackOf)).toEqual([['Box 33'], ['Box 33', 'Mat 3']]);
    // A second box, and all is well.
    const two = gear.map((one) => ({ ...one, pieces: 2 }));
    expect(boxesAt(two, { start, places }).tooFew).toEqual([]);
  });

  test('a rack builds its height of other pieces where the rack before it holds those that would do at once', () => {
    const gear = [
      piece('Box 33', 'box', 0.33, 1),
      piece('Box 30', 'box', 0.3, 1),
      piece('Mat 3', 'mat', 0.03, 1),
    ];
    const places = [lifter('north', 0.33), lifter('south', 0.33)];
    const { stackOf, tooFew } = boxesAt(gear, { start, places });
    expect(places.map(stackOf)).toEqual([['Box 33'], ['Box 30', 'Mat 3']]);
    expect(tooFew).toEqual([]);
  });

  test('mats that two racks want are counted over both', () => {
    const gear = [piece('Box 30', 'box', 0.3, 2), piece('Mat 3', 'mat', 0.03, 3)];
    const places = [lifter('north', 0.36), lifter('south', 0.36)];
    expect(boxesAt(gear, { start, places }).tooFew).toEqual([
      { code: 'tooFew', sort: 'box', gearId: 'Mat 3', rackIds: ['north', 'south'], has: 3 },
    ]);
  });
});
