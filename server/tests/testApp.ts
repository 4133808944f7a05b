import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { createApp } from '../app.ts';
import { openOneClub } from '../oneClub.ts';

/** The whole server without a socket, on a club file of its own that goes when the test ends. */
export async function testApp(records?: ClubRecords) {
  const folder = await mkdtemp(join(tmpdir(), 'club-'));
  const store = await openOneClub(join(folder, 'club.sqlite'), { name: 'a test' });
  onTestFinished(async () => {
    await store.close();
    await rm(folder, { recursive: true });
  });
  if (records) await store.importRecords(records);
  const webRoot = join(folder, 'screens');
  await mkdir(webRoot);
  const app = createApp({ store, webRoot });

  /** Sends JSON (or text of another type) and reads JSON. */
  async function ask(method: string, path: string, body?: unknown, type = 'application/json') {
    const text = typeof body === 'string' ? body : JSON.stringify(body);
    const init = body === undefined ? { method } : { method, body: text, headers: { 'content-type': type } };
    const answer = await app.request(path, init);
    return { status: answer.status, json: await answer.json() };
  }

  return { app, ask, store, folder, webRoot };
}
