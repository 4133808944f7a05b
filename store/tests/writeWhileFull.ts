import { openClub } from './openClub.ts';

/**
 * Writes bars into the club named on the command line until the file may not grow any more, then reads, and prints as JSON how many
 * writes were acknowledged, what each refusal said, and how many bars are read after it.
 */
const store = await openClub(process.argv[2]!);
const [said, ids] = [new Set<string>(), new Set<string>()];
for (let i = 0; i < 400; i += 1) {
  try {
    const { record } = await store.create('bar', { label: `Bar ${i}`, massKg: 20, note: 'n'.repeat(400) });
    ids.add(record.id);
  } catch (error) {
    said.add(String(error));
  }
}
const bars = await store.list('bar');
process.stdout.write(JSON.stringify({ ids: [...ids], said: [...said], read: bars.map(({ id }) => id) }));
