import { readFileSync, writeFileSync } from 'node:fs';
import { createApp } from '#server/app.ts';
import { openOneClub, restoreOneClub } from '#server/oneClub.ts';
import { exportArchive } from '#store/archive.ts';
import { keptCopies, snapshotFolderOf } from '#store/copies/keptCopies.ts';
import { takeSnapshot } from '#store/copies/takeSnapshot.ts';
import { Refusal } from '#store/Refusal.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import type { Draw, Tally } from './tally.ts';

const who = { name: 'a test' };
const json = { 'content-type': 'application/json' };
const pageBytes = 4096;

/** Pages of a club's file are overwritten: it is read, refused or told of in one sentence, never with a failure, and its snapshot comes back whole. */
export async function damage(path: string, draw: Draw): Promise<Tally> {
  const club = await openOneClub(path, who, async (made) => void (await made.importRecords(smallClub())));
  await takeSnapshot(path, snapshotFolderOf(path));
  const wanted = await exportArchive(club);
  await club.close();
  const sound = readFileSync(path);
  const tally: Tally = { tried: { 'damaged files': 0 }, survived: 0, faults: [] };
  for (let i = 0; i < 6; i += 1) {
    const bytes = Buffer.from(sound);
    for (let pages = draw(1, 5); pages > 0; pages -= 1) {
      const at = draw(0, bytes.length / pageBytes - 1) * pageBytes + draw(0, pageBytes - 200);
      for (let j = at; j < at + 200; j += 1) bytes[j] = draw(0, 255);
    }
    writeFileSync(path, bytes);
    tally.tried['damaged files']! += 1;
    const fault = await use(path);
    if (fault !== null) tally.faults.push(fault);
    else tally.survived += 1;
  }
  writeFileSync(path, sound.fill(0x2a, 0, pageBytes));
  const [snapshot] = await keptCopies(path, snapshotFolderOf(path));
  await restoreOneClub(path, snapshot!, who);
  const again = await openOneClub(path, who);
  if ((await exportArchive(again)) !== wanted) tally.faults.push('the snapshot of a damaged club is another');
  await again.close();
  return tally;
}

/** What is wrong with how a damaged file is met; null: nothing. */
async function use(path: string): Promise<string | null> {
  const said: unknown[] = [];
  const store = await openOneClub(path, who).catch((error: unknown) => void said.push(error));
  if (!store) return said[0] instanceof Refusal ? null : `opening said ${String(said[0])}`;
  try {
    const app = createApp({ store, webRoot: '' });
    const body = JSON.stringify({ label: 'After', massKg: 20 });
    for (const [method, address] of [
      ['GET', '/api/club'],
      ['GET', '/api/archive'],
      ['GET', '/api/sets'],
      ['GET', '/api/changes'],
      ['POST', '/api/records/bar'],
    ] as const) {
      const init = method === 'POST' ? { method, headers: json, body } : { method };
      const answer = await app.request(address, init);
      if (answer.status === 500) return `${method} ${address}: ${await answer.text()}`;
    }
    return null;
  } finally {
    await store.close();
  }
}
