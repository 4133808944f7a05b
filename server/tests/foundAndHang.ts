import { smallClub } from '#store/tests/smallClub.ts';
import { openOneClub } from '../oneClub.ts';

/** Makes a club in the file named on the command line, says so when it is filled, and never comes to its end. */
await openOneClub(process.argv[2]!, { name: 'a test' }, async (club) => {
  await club.importRecords(smallClub());
  process.stdout.write('filled\n');
  await new Promise(() => setInterval(() => {}, 1000));
});
