import { expect, test } from 'vitest';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { lastTimesStand } from './lastTimesStand.ts';
import { clubKey } from './useClub.ts';

const [day] = smallClub().day;
const { id: dayId, date } = day!;
const club = { records: smallClub() };
const ofDay = { queryKey: [...clubKey, 'lastTime', dayId] };
const touched = (set: Partial<LoggedSet>) => [squatSet({ dayId: null, ...set }) as LoggedSet];

test('a set of the day itself or of one that follows is no last time of it, an earlier one may be', () => {
  expect(lastTimesStand(ofDay, club, touched({ doneOn: date }))).toBe(true);
  expect(lastTimesStand(ofDay, club, touched({ doneOn: '2000-01-01', dayId }))).toBe(true);
  expect(lastTimesStand(ofDay, club, touched({ doneOn: '2000-01-01' }))).toBe(false);
  expect(
    lastTimesStand(ofDay, club, [...touched({ doneOn: date }), ...touched({ doneOn: '2000-01-01' })]),
  ).toBe(false);
});

test('of a day that the club has not, and of other questions, nothing is known', () => {
  const set = touched({ doneOn: date });
  expect(lastTimesStand({ queryKey: [...clubKey, 'lastTime', 'gone'] }, club, set)).toBe(false);
  expect(lastTimesStand({ queryKey: [...clubKey, 'moved', dayId] }, club, set)).toBe(false);
});
