/**
 * Writes bars, or with `sets` sets of one lifter, into the club file named on the command line without end, and prints each id
 * once its write is acknowledged.
 */
import { writeSync } from 'node:fs';
import { openClubStore } from '../openClubStore.ts';

const [, , path, what] = process.argv;
const store = await openClubStore(path);
for (let i = 0; ; i += 1) writeSync(1, `${what === 'sets' ? await logSet(i) : await createBar(i)}\n`);

async function createBar(i) {
  const { record } = await store.create('bar', { label: `Bar ${process.pid} ${i}`, massKg: 20 });
  return record.id;
}

async function logSet(i) {
  const [{ id: lifterId }] = await store.list('lifter');
  const setup = { start: { way: 'free' }, barKg: i % 1000 };
  const done = {
    lifterId,
    doneOn: '2026-11-25',
    order: 1 + (i % 1000),
    lift: 'squat',
    setup,
    reps: 1,
    made: 1,
  };
  const { sets } = await store.logSets([done]);
  return sets[0].id;
}
