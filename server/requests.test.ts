import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { exportArchive } from '#store/archive.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { openApiDocument } from './openApi/openApiDocument.ts';
import { type AnyRequest, arbitraryRequest } from './tests/requests/arbitraryRequest.ts';
import { examples } from './tests/requests/examples.ts';
import { deep } from './tests/requests/spoilt.ts';
import { testApp } from './tests/testApp.ts';

/** A season of estimates, plans and evidence takes a hundred times longer than a record. */
const isSlow = (path: string) => /estimates|evidence|backtest|projection|days/.test(path);
const every = arbitraryRequest(openApiDocument().paths, idsOfTheClub(), await examples(), isSlow);
const requestsInARow = 50;
const numRuns = Number(process.env.PROPERTY_RUNS ?? 50);
/** For the slowest machine that others keep busy. */
const mostMsOfRun = 12_000;

/** Each run asks one club fifty things in a row: `PROPERTY_RUNS=200` asks ten thousand, and `PROPERTY_SEED` draws others. */
test(
  'no request makes the server fail: refusals are one sentence each and leave the club as it was',
  async () => {
    const said = vi.spyOn(console, 'error').mockImplementation(() => {});
    const rows = fc.array(every, { minLength: requestsInARow, maxLength: requestsInARow });
    await fc.assert(
      fc.asyncProperty(rows, async (requests) => {
        const { app, store } = await testApp(smallClub());
        let before = await exportArchive(store);
        for (const request of requests) {
          const answer = await app.request(asRequest(request));
          expect(answer.status, 'is no failure').toBeLessThan(500);
          const refused = answer.status >= 400;
          if (refused) expectOneSentence(await answer.text(), request.body ?? '');
          else await answer.body?.cancel();
          if (request.method === 'GET' || request.method === 'HEAD') continue;
          const after = await exportArchive(store);
          if (refused) expect(after, 'changed nothing').toBe(before);
          before = after;
        }
        expect(said).not.toHaveBeenCalled();
      }),
      { numRuns, endOnFailure: numRuns > 100 },
    );
  },
  numRuns * mostMsOfRun,
);

test.each([
  ['POST', '/api/sets/import', (value: string) => `{"text":${value}}`],
  ['POST', '/api/sets/import', (value: string) => `{"text":"a","columns":${value}}`],
  ['POST', '/api/sets/import', (value: string) => `{"text":"date\\n1","columns":{"date":${value}}}`],
  ['POST', '/api/sets', (value: string) => `{"sets":{"a":${value}}}`],
  ['POST', '/api/records/bar', (value: string) => `{"id":${value}}`],
  ['PUT', '/api/records/bar/bar-1', (value: string) => `{"id":${value}}`],
  [
    'POST',
    '/api/archive?dryRun=1',
    (value: string) => `{"format":"rackwright club archive","version":${value}}`,
  ],
  ['POST', '/api/compute/plates', (value: string) => `{"bar_kg":${value}}`],
])(
  '%s %s refuses what is nested, long or no text at all, in a sentence of one line',
  async (method, path, bodyWith) => {
    const { ask } = await testApp(smallClub());
    for (const value of [
      deep(60),
      deep(20_000),
      '{"toString":1}',
      `[${'1,'.repeat(9000)}1]`,
      `"${'\\n'.repeat(9000)}"`,
    ]) {
      const { status, json } = await ask(method, path, bodyWith(value));
      expect(status).toBe(400);
      expectOneSentence(JSON.stringify(json));
    }
  },
);

/** What was `sent` may be named in the sentence; else it is in words. */
function expectOneSentence(text: string, sent = ''): void {
  const { error } = JSON.parse(text);
  expect(error).toEqual({
    field: expect.any(String),
    message: expect.stringMatching(/^\P{Cc}{10,1000}\.$/u),
  });
  for (const unspelt of ['undefined', 'NaN', '[object ']) {
    if (!sent.includes(unspelt)) expect(error.message).not.toContain(unspelt);
  }
}

function asRequest({ method, path, headers, body }: AnyRequest): Request {
  const sent = body !== null && method !== 'GET' && method !== 'HEAD' ? { body } : {};
  return new Request(`http://127.0.0.1${path}`, { method, headers, ...sent });
}

/** Ids are drawn from those that there are, of the kind that a field's name says; a search ends soon. */
function idsOfTheClub() {
  const club: Record<string, { id: string }[]> = { ...smallClub() };
  const ids = (kind: string) => (club[kind] ?? []).map(({ id }) => id);
  const all = Object.keys(club).flatMap(ids);
  return (field: string) => {
    if (field === 'timeLimit_s') return fc.constant(0.01);
    const known = field === 'id' ? all : ids(/^(\w+)Id$/.exec(field)?.[1] ?? '');
    return known.length === 0 ? null : fc.constantFrom(...known);
  };
}
