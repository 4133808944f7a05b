import { readFileSync, writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { exportArchive } from '#store/archive.ts';
import { newClubPath } from '#store/tests/newClubPath.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { createApp } from './app.ts';
import { openOneClub } from './oneClub.ts';

const who = { name: 'a test' };
const json = { 'content-type': 'application/json' };

/** A club in whose file the page is overwritten on which a table begins. */
async function withoutPageOf(table: string): Promise<string> {
  const path = newClubPath();
  await (await openOneClub(path, who, async (club) => void (await club.importRecords(smallClub())))).close();
  const file = new Database(path, { readonly: true });
  const page = file.prepare('select rootpage from sqlite_master where name = ?').pluck().get(table) as number;
  const pageBytes = file.pragma('page_size', { simple: true }) as number;
  file.close();
  const bytes = readFileSync(path);
  writeFileSync(path, bytes.fill(0x2a, (page - 1) * pageBytes, page * pageBytes));
  return path;
}

test('the server of a damaged club answers what can be read, and all else with the one sentence that every screen is told', async () => {
  const path = await withoutPageOf('disc');
  const store = await openOneClub(path, who);
  onTestFinished(() => store.close());
  const app = createApp({ store, webRoot: '' });
  expect((await app.request('/api/records/lifter')).status).toBe(200);
  const body = JSON.stringify({ label: 'New', massKg: 20 });
  for (const asked of [
    app.request('/api/records/disc'),
    app.request('/api/club'),
    app.request('/api/records/bar', { method: 'POST', headers: json, body }),
  ]) {
    const answer = await asked;
    const { error } = await answer.json();
    expect(answer.status).toBe(503);
    expect(error.message).toMatch(/^The club's file .* is damaged .*\.$/);
  }
  const events = await app.request('/api/events');
  const reader = events.body!.getReader();
  let told = '';
  while (!told.includes('event: trouble')) told += new TextDecoder().decode((await reader.read()).value);
  await reader.cancel();
  expect(told).toContain('is damaged');
});

test('where what was there cannot be kept since the disk is full, nothing is replaced and one sentence says so', async () => {
  const path = newClubPath();
  const store = await openOneClub(path, who, async (club) => void (await club.importRecords(smallClub())));
  onTestFinished(() => store.close());
  const before = await exportArchive(store);
  const content = {
    records: { ...smallClub(), best: [] },
    prescriptions: [],
    takenPlans: [],
    sets: [],
    former: [],
  };
  const full = store.replaceAll(content, () =>
    Promise.reject(Object.assign(new Error('no space left on device'), { code: 'ENOSPC' })),
  );
  await expect(full).rejects.toMatchObject({
    reason: 'unavailable',
    message: expect.stringMatching(/the disk is full or takes no more\. .*\.$/),
  });
  expect(await exportArchive(store)).toBe(before);
});
