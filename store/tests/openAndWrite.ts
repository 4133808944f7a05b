import { openStore } from '../openStore.ts';

/** Opens the club named on the command line, reads and writes, and prints as JSON what came of it. */
const said = (error: unknown) => (error instanceof Error ? `${error.name}: ${error.message}` : String(error));
try {
  const house = await openStore(process.argv[2]!);
  const store = await house.forClub('club', { name: 'a test' });
  const written = await store.create('bar', { label: 'New', massKg: 20 }).then(() => null, said);
  process.stdout.write(
    JSON.stringify({ read: (await store.list('club')).length, trouble: store.trouble(), written }),
  );
} catch (error) {
  process.stdout.write(JSON.stringify({ refused: said(error) }));
}
