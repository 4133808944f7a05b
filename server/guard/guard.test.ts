import { EventEmitter, once } from 'node:events';
import { Readable } from 'node:stream';
import { Hono } from 'hono';
import { describe, expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { noBodyBeyondBounds } from './noBodyBeyondBounds.ts';

describe('a page of another origin', () => {
  test.each([
    ['its name points here', { host: 'club.example:4747' }],
    ['it reads', { host: '127.0.0.1:4747', origin: 'http://club.example' }],
    ['it is sandboxed', { host: '127.0.0.1:4747', origin: 'null' }],
    ['it is served from another port', { host: '127.0.0.1:4747', origin: 'http://127.0.0.1:3000' }],
    ['the browser says so', { host: '127.0.0.1:4747', 'sec-fetch-site': 'cross-site' }],
  ])('gets nothing of the club: %s', async (_why, headers) => {
    const { app } = await testApp();
    const answer = await app.request('/api/club', { headers });
    expect(answer.status).toBe(403);
    expect(await answer.text()).not.toContain('Our club');
  });

  test('cannot write by a plain form, which sends only other types than JSON', async () => {
    const { app, store } = await testApp();
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data']) {
      const body = JSON.stringify({ label: 'A', massKg: 20 });
      const answer = await app.request('/api/records/bar', {
        method: 'POST',
        body,
        headers: { 'content-type': type },
      });
      expect(answer.status).toBe(400);
    }
    expect(await store.list('bar')).toEqual([]);
  });

  test('may link to our page', async () => {
    const { app } = await testApp();
    const headers = { host: '127.0.0.1:4747', 'sec-fetch-site': 'cross-site' };
    expect((await app.request('/day', { headers })).status).not.toBe(403);
  });
});

test.each(['127.0.0.1:4747', 'localhost:4747', '[::1]:4747'])('our own page at %s gets in', async (host) => {
  const { app } = await testApp();
  const headers = { host, origin: `http://${host}`, 'sec-fetch-site': 'same-origin' };
  expect((await app.request('/api/club', { headers })).status).toBe(200);
});

test('no answer lets another origin in or a foreign script run', async () => {
  const { app } = await testApp();
  const { headers } = await app.request('/api/club');
  expect(headers.get('access-control-allow-origin')).toBeNull();
  expect(headers.get('cache-control')).toBe('no-store');
  expect(headers.get('x-content-type-options')).toBe('nosniff');
  const policy = headers.get('content-security-policy') ?? '';
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src 'self';");
  expect(policy).toContain("frame-ancestors 'none'");
});

test.each([
  ['/api/records/bar', 17, 413],
  ['/api/compute/plates', 17, 413],
  ['/api/records/bar/csv', 17, 400],
  ['/api/archive?dryRun=1', 17, 400],
  ['/api/archive?dryRun=1', 257, 400],
  ['/api/archive?dryRun=1', 4097, 413],
  ['/api/sets/import', 257, 413],
])(
  'a body to %s of %i MB is answered %i: what is beyond the limit is refused before it is read',
  async (path, mb, status) => {
    const { app } = await testApp();
    const headers = { 'content-type': 'application/json', 'content-length': String(mb * 1024 * 1024) };
    const answer = await app.request(path, { method: 'POST', body: '{}', headers });
    expect(answer.status).toBe(status);
    expect(await answer.json()).toMatchObject({ error: { field: expect.any(String) } });
  },
);

/** A request whose body has no length that could be announced. */
function inPieces(pieces: Iterable<string> | AsyncIterable<string>) {
  const text = Readable.toWeb(Readable.from(pieces)) as ReadableStream<string>;
  const body = text.pipeThrough(new TextEncoderStream());
  return { method: 'POST', body, headers: { 'content-type': 'application/json' }, duplex: 'half' };
}

test('of a body that comes piece by piece each is passed on before the next one comes, and none is held', async () => {
  const handler = new EventEmitter();
  const hasFirst = once(handler, 'first');
  const app = new Hono().use(noBodyBeyondBounds).post('/api/archive', async (c) => {
    const seen: string[] = [];
    const text = new TextDecoder();
    for await (const piece of c.req.raw.body!) {
      seen.push(text.decode(piece));
      handler.emit('first');
    }
    return c.json(seen);
  });
  async function* pieces() {
    yield 'one';
    await hasFirst;
    yield 'two';
  }
  const answer = await app.request('/api/archive', inPieces(pieces()));
  expect(await answer.json()).toEqual(['one', 'two']);
});

test.each(['/api/records/bar', '/api/compute/plates'])(
  'a body to %s that comes piece by piece is refused with one sentence where it goes beyond the limit',
  async (path) => {
    const { app } = await testApp();
    const answer = await app.request(
      path,
      inPieces(Array.from({ length: 17 }, () => ' '.repeat(1024 * 1024))),
    );
    expect([answer.status, await answer.json()]).toEqual([
      413,
      { error: { field: '', message: 'The body is larger than 16 MB, more than this address takes.' } },
    ]);
  },
);

test('a list that is longer than any season, and a table longer than any log, are refused before they are understood', async () => {
  const { ask } = await testApp();
  const list = `[${'1,'.repeat(300_000)}1]`;
  for (const [path, body] of [
    ['/api/sets', `{"sets":${list}}`],
    ['/api/records/bar', `{"label":${list}}`],
    ['/api/sets/import', `{"text":"a","columns":{"date":${list}}}`],
  ] as const) {
    const { status, json } = await ask('POST', path, body);
    expect([status, json.error.message]).toEqual([
      400,
      'The body holds more than 250000 values, more than is taken at once.',
    ]);
  }
  const table = await ask('POST', '/api/records/bar/csv', `label\n${'a\n'.repeat(1_000_001)}`, 'text/csv');
  expect(table.status).toBe(400);
  expect(table.json.problems).toHaveLength(1);
  expect(table.json.error.message).toContain('more than 1000000 lines');
});
