import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it, test, vi } from 'vitest';
import type { EstimateProgress } from '#contract/strength/strengthSummary.ts';
import { openOneClub } from '#server/oneClub.ts';
import type { Given } from '#store/ClubStore.ts';
import { type Hold, holdFile } from '#store/open/holdFile.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { callCli } from '../tests/callCli.ts';

// The screens are not looked at here.
vi.mock('../buildScreens.ts', () => ({ buildScreensWhenStale: async () => {} }));

const folder = await mkdtemp(join(tmpdir(), 'rackwright-serve-'));
afterAll(() => rm(folder, { recursive: true, force: true }));

/** What is said at the start; the server is stopped as Ctrl-C does it. */
async function saidAtStart(...args: string[]): Promise<string> {
  const once = vi.spyOn(process, 'once').mockReturnValue(process);
  const { stdout } = await callCli(['serve', '--port', '0', ...args]);
  const stop = once.mock.calls.find(([signal]) => signal === 'SIGINT')?.[1];
  once.mockRestore();
  stop?.('SIGINT');
  return stdout;
}

/** A club that is there before the program starts. */
async function clubFile(invented: boolean, sets: readonly Given[] = []): Promise<string> {
  const file = join(await mkdtemp(join(folder, 'club-')), 'club.sqlite');
  const store = await openOneClub(file, { name: 'a test' });
  const records = smallClub();
  await store.importRecords({ ...records, club: records.club.map((club) => ({ ...club, invented })) });
  for (const set of sets) await store.logSets([set]);
  await store.close();
  return file;
}

it('says that a club that was there is served as it is where the demo was asked for, and else nothing of it', async () => {
  const file = await clubFile(false);
  const sentence = `${file} already exists and is not the demo club: it is served as it is`;
  expect(await saidAtStart('--club', file, '--demo')).toContain(sentence);
  expect(await saidAtStart('--club', file)).not.toContain('demo');
});

it('says nothing of it where the invented club was there already', async () => {
  expect(await saidAtStart('--club', await clubFile(true), '--demo')).not.toContain('not the demo');
});

test('a club that is served already is not served twice: the second says where the first is and changes nothing', async () => {
  const file = await clubFile(false);
  const hold = holdFile(file) as Hold;
  hold.tell('http://127.0.0.1:4747');
  const { status, stderr } = await callCli(['serve', '--port', '0', '--club', file]);
  expect(status).toBe(1);
  expect(stderr).toMatch(/^\S*club\.sqlite is already served .* at http:\/\/127\.0\.0\.1:4747: .*\.\n$/);
  hold.release();
  expect(await saidAtStart('--club', file)).toContain('Rackwright is running');
});

test('where everybody is to be known first, the address is said when nothing is left to work out', async () => {
  const file = await clubFile(false, [squatSet()]);
  const once = vi.spyOn(process, 'once').mockReturnValue(process);
  const { stdout } = await callCli(['serve', '--port', '0', '--club', file, '--known-first']);
  const answer = await fetch(`${/http:\S+/.exec(stdout)![0]}/api/estimates/progress`);
  const { done, total } = (await answer.json()) as EstimateProgress;
  once.mock.calls.find(([signal]) => signal === 'SIGINT')?.[1]('SIGINT');
  once.mockRestore();
  expect(total).toBeGreaterThan(0);
  expect(done).toBe(total);
});

test('where no port is free, that is said and the file is let go', async () => {
  const file = await clubFile(false);
  const last = createServer().listen(65_535, '127.0.0.1');
  await once(last, 'listening');
  const { status, stderr } = await callCli(['serve', '--port', '65535', '--club', file]);
  last.close();
  expect([status, stderr]).toEqual([
    1,
    'The ports 65535 to 65535 are all in use; end another program or choose another port with --port.\n',
  ]);
  expect(holdFile(file)).toHaveProperty('tell');
});

test('telephones can read the calendar where that is asked for, at an address of a local network alone', async () => {
  const file = await clubFile(false);
  const said = await saidAtStart('--club', file, '--calendar-on', '127.0.0.1', '--calendar-port', '0');
  expect(said).toMatch(/Telephones .* http:\/\/127\.0\.0\.1:\d+, by the addresses under Gear, Club;/);
  expect(await saidAtStart('--club', file)).not.toContain('Telephones');
  // An address that RFC 5737 keeps for books.
  const refused = await callCli(['serve', '--club', file, '--calendar-on', '203.0.113.9']);
  expect(refused).toMatchObject({ status: 1, stderr: expect.stringMatching(/^--calendar-on is .*\.\n$/) });
});
