import { mkdtemp, readFile, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { readCalendar } from '#contract/tests/readCalendar.ts';
import { openOneClub } from '#server/oneClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { callCli } from '../tests/callCli.ts';

const folder = await mkdtemp(join(tmpdir(), 'rackwright-calendar-'));
afterAll(() => rm(folder, { recursive: true, force: true }));
const club = join(folder, 'club.sqlite');
const store = await openOneClub(club, { name: 'a test' });
const records = smallClub();
const [lifter] = records.lifter;
const year = (await store.today()).slice(0, 4);
const day = records.day.map((one) => ({ ...one, date: `${year}-11-25`, title: 'Käse; squat' }));
await store.importRecords({ ...records, day, meet: [], season: [], seasonEntry: [], plannedByHand: [] });
const name = 'Ada Newly';
await store.putAll('lifter', [
  { ...lifter!, id: 'twin-1', name },
  { ...lifter!, id: 'twin-2', name },
]);
await store.close();

test('the calendar goes to standard output, or to a file for its owner alone', async () => {
  const { status, stdout } = await callCli(['calendar', '--club', club]);
  expect(status).toBe(0);
  expect(readCalendar(stdout).events).toMatchObject([{ title: 'Käse; squat', start: `${year}-11-25` }]);
  const out = join(folder, 'club.ics');
  expect(await callCli(['calendar', '--club', club, '--out', out])).toMatchObject({ status: 0 });
  expect(await readFile(out, 'utf8')).toBe(stdout);
  expect((await stat(out)).mode & 0o777).toBe(0o600);
});

test('of one lifter by name; a name that nobody or several have is refused in a sentence', async () => {
  const { stdout } = await callCli(['calendar', '--club', club, '--lifter', lifter!.name.toUpperCase()]);
  expect(readCalendar(stdout).events).toHaveLength(1);
  const nobody = await callCli(['calendar', '--club', club, '--lifter', 'Nobody']);
  expect(nobody).toMatchObject({
    status: 2,
    stderr: expect.stringMatching(/^--lifter is "Nobody"; .*\.\n$/),
  });
  const twins = await callCli(['calendar', '--club', club, '--lifter', name]);
  expect(twins).toMatchObject({
    status: 2,
    stderr: expect.stringMatching(/^--lifter is "Ada Newly"; .*\.\n$/),
  });
});
