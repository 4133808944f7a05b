import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { freshPlace } from '#contract/day/freshPlace.ts';
import { lastTime, rackFor } from '#contract/day/rackFor.ts';
import type { Day, Group } from '#contract/records/day.ts';
import { startingGroup } from '#web/setup/startingPoints.ts';
import { backFrom, comesTo, everybodyBack, isAway } from './whoIsHere.ts';

const racks = ['north', 'south'];
const group = (places: [string, string][], work: Group['work'] = 'speed'): Group => ({
  ...startingGroup('group-1', work, 'squat', null),
  places: places.map(([lifterId, rackId]) => freshPlace(lifterId, rackId)),
});
const day = (date: string, ...groups: Group[]): Day => ({
  id: date,
  date,
  title: '',
  groups,
  oneSetPull: 0.5,
  note: '',
});
const ids = ({ places }: Group) => places.map(({ lifterId }) => lifterId);

test('who goes and comes back has everything that was set for them, and nobody is twice or lost', () => {
  const set = {
    ...freshPlace('b', 'north'),
    note: 'Stay tight.',
    byCoach: { barKg: 90, bands: null, chains: null },
  };
  const moves = fc.array(fc.tuple(fc.constantFrom('a', 'b', 'c'), fc.constantFrom(...racks), fc.boolean()));
  fc.assert(
    fc.property(moves, (made) => {
      const start: Group = {
        ...group([
          ['a', 'south'],
          ['c', 'south'],
        ]),
        away: [set],
      };
      const end = made.reduce<Group>(
        (now, [lifter, rack, here]) => (here ? comesTo(now, lifter, rack) : isAway(now, lifter)),
        start,
      );
      expect([...end.places, ...end.away].map(({ lifterId }) => lifterId).sort()).toEqual(['a', 'b', 'c']);
      expect([...end.places, ...end.away].find(({ lifterId }) => lifterId === 'b')!.note).toBe('Stay tight.');
    }),
  );
  expect(comesTo({ ...group([]), away: [set] }, 'b', 'north').places).toEqual([set]);
});

test('who is ticked off and on again stands where they stood, though another came meanwhile and one of another rack left', () => {
  const before = group([
    ['a', 'north'],
    ['b', 'north'],
    ['c', 'south'],
    ['d', 'north'],
  ]);
  const earlier = ids(before);
  expect(comesTo(isAway(before, 'b'), 'b', 'north', earlier)).toEqual(before);
  const since = isAway(comesTo(isAway(before, 'b'), 'e', 'north', earlier), 'c');
  expect(ids(comesTo(since, 'b', 'north', earlier))).toEqual(['a', 'b', 'd', 'e']);
});

test('who was away is expected again on a copy of the day', () => {
  expect(ids(everybodyBack({ ...group([['a', 'south']]), away: [freshPlace('b', 'north')] }))).toEqual([
    'a',
    'b',
  ]);
});

test('a bar set by hand at one rack does not come to another', () => {
  const set = { ...freshPlace('b', 'north'), byCoach: { barKg: 90, bands: null, chains: null } };
  expect(comesTo({ ...group([]), away: [set] }, 'b', 'south').places[0]).toMatchObject({
    rackId: 'south',
    byCoach: null,
  });
});

test('last time is the newest earlier day of the lift with somebody in it, of the same work if there was one', () => {
  const speed = day('2026-11-10', group([['a', 'north']]));
  const heavy = day('2026-11-17', group([['b', 'north']], 'maximal'));
  const empty = day('2026-11-20', group([]));
  const later = day('2026-11-25', group([['c', 'north']]));
  const today = { id: 'today', date: '2026-11-24' };
  const found = (days: Day[]) => lastTime(days, today, group([]))?.date;
  expect(found([later, heavy, empty, speed])).toBe('2026-11-10');
  expect(found([later, heavy, empty])).toBe('2026-11-17');
  expect(found([later, empty])).toBeUndefined();
});

test('who comes goes to the rack of the last time, else to the emptier one', () => {
  const now = group([
    ['a', 'north'],
    ['b', 'north'],
    ['c', 'south'],
  ]);
  expect(rackFor(now, 'd', racks, group([['d', 'north']]))).toBe('north');
  expect(rackFor(now, 'd', racks, group([['d', 'gone']]))).toBe('south');
  expect(ids(comesTo(now, 'd', 'south'))).toEqual(['a', 'b', 'c', 'd']);
});

test('who is taken back leaves again, to where they were, and what was changed since stays', () => {
  const before = { ...group([['a', 'north']]), away: [freshPlace('b', 'south')] };
  const taken = comesTo(comesTo(before, 'b', 'south'), 'c', 'north');
  const since = isAway(comesTo(taken, 'd', 'south'), 'a');
  const after = backFrom(since, before, ['b', 'c']);
  expect(ids(after)).toEqual(['d']);
  expect(after.away.map(({ lifterId }) => lifterId)).toEqual(['a', 'b']);
});
