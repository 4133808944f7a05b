/**
 * Writes `bars`, `sets` of one lifter or `corrections` of the set that counts into the club file named on the command line
 * without end, and prints each id once its write is acknowledged.
 */
import { writeSync } from 'node:fs';
import { openClub } from './openClub.ts';

const [, , path, what] = process.argv;
const store = await openClub(path);
const write = { bars: createBar, sets: logSet, corrections: correctSet }[what];
for (let i = 0; ; i += 1) writeSync(1, `${await write(i)}\n`);

async function createBar(i) {
  const { record } = await store.create('bar', { label: `Bar ${process.pid} ${i}`, massKg: 20 });
  return record.id;
}

async function logSet(i) {
  const { sets } = await store.logSets([await squat(i)]);
  return sets[0].id;
}

async function correctSet(i) {
  const [mistaken] = (await store.loggedSets()).filter(({ struckAt }) => struckAt === null);
  const { sets } = await store.correctSets([{ id: mistaken.id, set: await squat(i) }]);
  return sets[0].id;
}

async function squat(i) {
  const [{ id: lifterId }] = await store.list('lifter');
  const setup = { start: { way: 'free' }, barKg: i % 1000 };
  return { lifterId, doneOn: '2026-11-25', order: 1 + (i % 1000), lift: 'squat', setup, reps: 1, made: 1 };
}
