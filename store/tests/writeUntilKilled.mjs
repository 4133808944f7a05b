/** Writes bars into the club file named on the command line without end, and prints each id once its write is acknowledged. */
import { writeSync } from 'node:fs';
import { openClubStore } from '../openClubStore.ts';

const store = await openClubStore(process.argv[2]);
for (let i = 0; ; i += 1) {
  const { record } = await store.create('bar', { label: `Bar ${process.pid} ${i}`, massKg: 20 });
  writeSync(1, `${record.id}\n`);
}
