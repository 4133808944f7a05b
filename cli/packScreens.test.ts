import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { screenRoutes } from '#server/routes/screens.ts';
import { packScreens } from './packScreens.ts';

const bytes = async (answer: Response) => Buffer.from(await answer.arrayBuffer());

test('a browser that unpacks gets a script packed, one that does not as it is, and both read the same', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'packed-'));
  const script = 'console.log("a bar and its bands");\n'.repeat(500);
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'assets/day-1a2b.js'), script);
  packScreens(folder);
  const app = screenRoutes(folder);
  const asked = async (accepts?: string) =>
    app.request('/assets/day-1a2b.js', accepts ? { headers: { 'accept-encoding': accepts } } : {});

  const plain = await asked();
  expect(plain.headers.get('content-encoding')).toBeNull();
  expect(await plain.text()).toBe(script);
  const [br, gz] = [await asked('gzip, br'), await asked('gzip')];
  expect([br, gz].map(({ headers }) => headers.get('content-encoding'))).toEqual(['br', 'gzip']);
  expect(brotliDecompressSync(await bytes(br)).toString()).toBe(script);
  expect(gunzipSync(await bytes(gz)).toString()).toBe(script);
  expect(readFileSync(join(folder, 'assets/day-1a2b.js.br')).length).toBeLessThan(script.length / 10);
  rmSync(folder, { recursive: true });
});
