import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { newClubPath } from './newClubPath.ts';
import { openClub } from './openClub.ts';

const project = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'rackwright-kill-'));
const writer = join(folder, 'writeUntilKilled.mjs');

// Eight lives of the same program: it is translated once, not by each of them.
beforeAll(async () => {
  symlinkSync(join(project, 'node_modules'), join(folder, 'node_modules'));
  await build({
    entryPoints: [join(project, 'store/tests/writeUntilKilled.mjs')],
    outfile: writer,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
  });
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Lets another process write until it has acknowledged `count` records, kills it with -9, and returns all that it acknowledged. */
async function writtenBeforeKill(path: string, count: number, what = 'bars'): Promise<string[]> {
  const child = spawn(process.execPath, [writer, path, what], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  child.stdout.on('data', (chunk: Buffer) => {
    said += chunk.toString();
    if (said.split('\n').length > count) child.kill('SIGKILL');
  });
  await once(child, 'close');
  expect(child.signalCode).toBe('SIGKILL');
  return said.split('\n').slice(0, -1);
}

test('a process killed while it writes loses no acknowledged record', async () => {
  const path = newClubPath();
  const acknowledged: string[] = [];
  for (const count of [1, 37, 300]) acknowledged.push(...(await writtenBeforeKill(path, count)));
  // Two at once, as a server and a command in the terminal.
  const twoAtOnce = await Promise.all([writtenBeforeKill(path, 40), writtenBeforeKill(path, 60)]);
  acknowledged.push(...twoAtOnce.flat());
  const store = await openClub(path);
  const kept = new Set((await store.list('bar')).map(({ id }) => id));
  expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
  // At most the one record of each life that was on its way when it ended was kept without being acknowledged.
  expect(kept.size - acknowledged.length).toBeLessThanOrEqual(5);
  expect(await store.latestSeq()).toBe(kept.size);
  await store.close();
  const file = new Database(path, { readonly: true });
  expect(file.pragma('integrity_check', { simple: true })).toBe('ok');
  file.close();
});

test('a process killed while it logs sets loses no acknowledged set', async () => {
  const path = newClubPath();
  const founding = await openClub(path);
  await founding.create('lifter', { name: 'Ida Quill', category: 'women' });
  await founding.close();
  const acknowledged = await writtenBeforeKill(path, 150, 'sets');
  const store = await openClub(path);
  const kept = new Set((await store.loggedSets()).map(({ id }) => id));
  expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
  expect(await store.latestSeq()).toBe(1 + kept.size);
  await store.close();
});

test('a process killed while it corrects a set leaves exactly one that counts', async () => {
  const path = newClubPath();
  const founding = await openClub(path);
  const { record } = await founding.create('lifter', { name: 'Ida Quill', category: 'women' });
  const setup = { start: { way: 'free' }, barKg: 100 };
  const first = { lifterId: record.id, doneOn: '2026-11-25', lift: 'squat', setup, reps: 1, made: 1 };
  await founding.logSets([first]);
  await founding.close();
  for (const count of [1, 23, 60]) {
    const acknowledged = await writtenBeforeKill(path, count, 'corrections');
    const store = await openClub(path);
    const sets = await store.loggedSets();
    expect(sets.filter(({ struckAt }) => struckAt === null)).toHaveLength(1);
    const kept = new Set(sets.map(({ id }) => id));
    expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
    expect(await store.latestSeq()).toBe(1 + kept.size);
    await store.close();
  }
});
