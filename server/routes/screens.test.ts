import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';

async function withScreens() {
  const { app, webRoot } = await testApp();
  await mkdir(join(webRoot, 'assets'));
  await writeFile(join(webRoot, 'index.html'), '<!doctype html><title>The page</title>');
  await writeFile(join(webRoot, 'assets', 'main-Ab12.js'), 'export {}');
  await writeFile(join(webRoot, 'assets', 'main-Ab12.js.gz'), gzipSync('export {}'));
  return app;
}

test('the page is asked for each time, its hashed files are kept for a year', async () => {
  const app = await withScreens();
  expect((await app.request('/')).headers.get('cache-control')).toBe('no-cache');
  const script = await app.request('/assets/main-Ab12.js');
  expect(script.headers.get('cache-control')).toContain('immutable');
  expect(script.headers.get('content-type')).toContain('javascript');
});

test('every place within the app is the page; a file that is not there is missing', async () => {
  const app = await withScreens();
  for (const path of ['/', '/day', '/day/0mww/print', '/lifters/a%20b']) {
    const answer = await app.request(path);
    expect(answer.status).toBe(200);
    expect(await answer.text()).toContain('The page');
  }
  expect((await app.request('/assets/gone.js')).status).toBe(404);
  expect((await app.request('/..%2fclub.sqlite')).status).toBe(404);
});

test('a file that lies compressed beside itself is sent so', async () => {
  const app = await withScreens();
  const answer = await app.request('/assets/main-Ab12.js', { headers: { 'accept-encoding': 'gzip' } });
  expect(answer.headers.get('content-encoding')).toBe('gzip');
  expect(Buffer.from(await answer.arrayBuffer())).toEqual(gzipSync('export {}'));
});

test("a day's page tells the browser where its loads are before any script is read; its papers and other places do not", async () => {
  const app = await withScreens();
  const link = (await app.request('/day/d%20%3E1')).headers.get('link');
  expect(link).toBe('</api/days/d%20%3E1/prescription>; rel=preload; as=fetch; crossorigin');
  for (const path of ['/day', '/day/', '/day/new', '/day/d1/sheet', '/lifters/d1'])
    expect((await app.request(path)).headers.get('link')).toBeNull();
});
