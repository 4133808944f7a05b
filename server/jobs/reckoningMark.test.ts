import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { reckoningMark } from './reckoningMark.ts';

test('any change of the code that works answers out is another program; tests and what only shows them are not', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'program-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  const write = async (path: string, text: string) => {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
    return reckoningMark(folder);
  };
  for (const floor of ['core', 'contract', 'reckon', 'store', 'server'])
    await mkdir(join(folder, floor), { recursive: true });
  const first = await write('package-lock.json', '{}');
  const marks = [
    first,
    await write('core/rep/speed.ts', 'export const g = 9.81;'),
    await write('core/rep/speed.ts', 'export const g = 9.82;'),
    await write('reckon/day/aim.ts', ''),
    await write('server/jobs/jobs.ts', 'x'),
    await write('package-lock.json', '{ }'),
  ];
  expect(new Set(marks).size).toBe(marks.length);
  const last = marks.at(-1);
  expect(await write('core/rep/speed.test.ts', 'x')).toBe(last);
  expect(await write('store/tests/club.ts', 'x')).toBe(last);
  expect(await write('web/main.tsx', 'x')).toBe(last);
  expect(await write('core/rep/speed.ts', 'export const g = 9.81;')).not.toBe(last);
});
