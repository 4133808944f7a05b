import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { toldComparison } from '#contract/comparison/toldComparison.ts';
import { openOneClub } from '#server/oneClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { callCli } from '../tests/callCli.ts';

const folder = await mkdtemp(join(tmpdir(), 'rackwright-comparison-'));
afterAll(() => rm(folder, { recursive: true, force: true }));

async function clubOf(name: string, records: ReturnType<typeof smallClub>): Promise<string> {
  const file = join(folder, name);
  const store = await openOneClub(file, { name: 'a test' });
  await store.importRecords(records);
  await store.close();
  return file;
}

test('a comparison of the club is told in words with what could be seen of it, and the same as JSON', async () => {
  const records = smallClub();
  const club = await clubOf('one.sqlite', records);
  const { status, stdout } = await callCli(['comparison', '--club', club]);
  expect(status).toBe(0);
  expect(stdout).toContain(records.comparison[0]!.title);
  expect(stdout).toContain('This cannot be seen: 1 lifter over 8 weeks');
  expect(stdout).toContain('Minors are never drawn');
  const json = JSON.parse((await callCli(['comparison', '--club', club, '--json'])).stdout);
  expect(
    toldComparison
      .array()
      .parse(json)
      .map(({ comparisonId }) => comparisonId),
  ).toEqual(['comparison-1']);
});

test('a club that compares nothing is told where to plan it', async () => {
  const club = await clubOf('none.sqlite', { ...smallClub(), comparison: [], takenOut: [] });
  expect(await callCli(['comparison', '--club', club])).toMatchObject({
    status: 0,
    stdout: 'The club has no comparison of two ways: plan one on the page Season.\n',
  });
});
