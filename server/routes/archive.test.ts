import { expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

test('an archive takes the place of a whole club only when asked to', async () => {
  const from = await testApp(smallClub());
  const text = await (await from.app.request('/api/archive')).text();
  const into = await testApp();
  const before = await into.store.records();
  expect(await into.ask('POST', '/api/archive', text)).toMatchObject({
    status: 400,
    json: { error: { field: 'replace' } },
  });
  expect(await into.store.records()).toEqual(before);
  const { status, json } = await into.ask('POST', '/api/archive?replace=1', text);
  expect(status).toBe(200);
  expect(json).toEqual({ seq: await into.store.latestSeq(), keptAs: expect.stringContaining(into.folder) });
  expect(await (await into.app.request('/api/archive')).text()).toBe(text);
});

test("an archive is named after the day that the club's own clock shows", async () => {
  const { app, store } = await testApp(smallClub());
  const { id, ...club } = (await store.list('club'))[0]!;
  const namedIn = async (timeZone: string) => {
    await store.update('club', id, { ...club, timeZone });
    return (await app.request('/api/archive')).headers.get('content-disposition');
  };
  // 25 hours apart: it is never the same day in both.
  expect(await namedIn('Pacific/Kiritimati')).not.toBe(await namedIn('Pacific/Pago_Pago'));
});

test('what is no archive is refused', async () => {
  const { ask, store } = await testApp(smallClub());
  const answer = await ask('POST', '/api/archive?replace=1', { format: 'something else' });
  expect(answer).toMatchObject({ status: 400, json: { error: { field: 'format' } } });
  expect((await store.records()).records).toEqual(smallClub());
});

test('a dry run says what the file holds beside what is here, and changes nothing', async () => {
  const from = await testApp(smallClub());
  const text = await (await from.app.request('/api/archive')).text();
  const into = await testApp();
  const before = await into.store.records();
  const { status, json } = await into.ask('POST', '/api/archive?dryRun=1', text);
  expect(status).toBe(200);
  const { bar, bandPair, lifter } = smallClub();
  expect(json.archive).toMatchObject({
    name: 'Quarry Lane',
    counts: { bar: bar.length, bandPair: bandPair.length, lifter: lifter.length, sets: 0 },
  });
  expect(json.here).toMatchObject({ name: 'Our club', counts: { bar: 0, lifter: 0 }, newestOn: null });
  expect(await into.store.records()).toEqual(before);
});

test('a dry run names every wrong place by its line, and what does not fit together without one', async () => {
  const { app, ask } = await testApp(smallClub());
  const text = await (await app.request('/api/archive')).text();
  const lines = text.split('\n');
  const ofBar = lines.findIndex((line) => line.includes('"bar-2"'));
  const ofDisc = lines.findIndex((line) => line.includes('"disc-1"'));
  const wrong = lines
    .with(ofBar, lines[ofBar]!.replace('"massKg":15', '"massKg":-15'))
    .with(ofDisc, lines[ofDisc]!.replace('"pairs":4', '"pairs":"four"'))
    .join('\n');
  expect(await ask('POST', '/api/archive?dryRun=1', wrong)).toMatchObject({
    status: 400,
    json: {
      error: { field: 'records.bar[1].massKg' },
      problems: [
        { line: ofBar + 1, field: 'records.bar[1].massKg' },
        { line: ofDisc + 1, field: 'records.disc[0].pairs' },
      ],
    },
  });
  expect(await ask('POST', '/api/archive?dryRun=1', lines.slice(0, 4).join('\n'))).toMatchObject({
    status: 400,
    json: { problems: [{ line: 4 }] },
  });
  const nobody = text.replaceAll('"barId":"bar-1"', '"barId":"bar-9"');
  expect(nobody).not.toBe(text);
  expect(await ask('POST', '/api/archive?dryRun=1', nobody)).toMatchObject({
    status: 400,
    json: { problems: [{ line: null, message: expect.stringContaining('bar-9') }] },
  });
});
