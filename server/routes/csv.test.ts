import { expect, test } from 'vitest';
import { kindNames } from '#contract/records/allKinds.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

test('files of every kind, put into an empty club one after another, make the same club', async () => {
  const from = await testApp(smallClub());
  const into = await testApp({
    ...smallClub(),
    ...Object.fromEntries(kindNames.slice(1).map((kind) => [kind, []])),
  });
  for (const kind of kindNames) {
    const file = await from.app.request(`/api/records/${kind}/csv`);
    expect(file.headers.get('content-type')).toBe('text/csv; charset=utf-8');
    const added = kind === 'club' ? 0 : smallClub()[kind].length;
    const taken = await into.ask('POST', `/api/records/${kind}/csv`, await file.text(), 'text/csv');
    expect(taken).toMatchObject({ status: 200, json: { rows: smallClub()[kind].length, added } });
  }
  expect((await into.store.records()).records).toEqual(smallClub());
});

test('a dry run checks and changes nothing', async () => {
  const { ask, store } = await testApp(smallClub());
  const csv = 'label,mass_kg\nThick bar,25\n';
  const seq = await store.latestSeq();
  const dry = await ask('POST', '/api/records/bar/csv?dryRun=1', csv, 'text/csv');
  const counts = { rows: 1, added: 1, changed: 0, unchanged: 0 };
  expect(dry).toEqual({ status: 200, json: { ...counts, dryRun: true, seq } });
  expect((await store.records()).records).toEqual(smallClub());
  await ask('POST', '/api/records/bar/csv', csv, 'text/csv');
  expect((await store.list('bar')).map(({ label }) => label)).toContain('Thick bar');
});

test('a file that was downloaded and not touched changes nothing, and says so', async () => {
  const { app, ask, store } = await testApp(smallClub());
  const seq = await store.latestSeq();
  for (const kind of kindNames) {
    const csv = await (await app.request(`/api/records/${kind}/csv`)).text();
    const rows = smallClub()[kind].length;
    const counts = { rows, added: 0, changed: 0, unchanged: rows };
    const taken = await ask('POST', `/api/records/${kind}/csv`, csv, 'text/csv');
    expect(taken).toEqual({ status: 200, json: { ...counts, dryRun: false, seq } });
  }
});

test('a file with one wrong line is refused whole, by line and column, and one undo takes a file back', async () => {
  const { ask, store } = await testApp(smallClub());
  const wrong = await ask('POST', '/api/records/bar/csv', 'label,mass_kg\nA,20\nB,-1\nC,x\n', 'text/csv');
  expect(wrong.status).toBe(400);
  expect(wrong.json.error.field).toBe('line 3, mass_kg');
  expect(wrong.json.problems).toMatchObject([
    { line: 3, column: 'mass_kg' },
    { line: 4, column: 'mass_kg' },
  ]);
  expect((await store.records()).records).toEqual(smallClub());
  const good = await ask('POST', '/api/records/bar/csv', 'label,mass_kg\nA,20\nB,15\n', 'text/csv');
  await ask('POST', `/api/undo/${good.json.seq}`);
  expect((await store.records()).records).toEqual(smallClub());
});

test('of a file in which everything is wrong the first places are told, and how many there are', async () => {
  const { ask, store } = await testApp(smallClub());
  const lines = Array.from({ length: 5000 }, (_, i) => `Bar ${i},-1`);
  const wrong = await ask('POST', '/api/records/bar/csv', ['label,mass_kg', ...lines].join('\n'), 'text/csv');
  expect(wrong.status).toBe(400);
  expect(wrong.json.problemCount).toBe(5000);
  expect(wrong.json.problems).toHaveLength(50);
  expect(wrong.json.problems[0]).toMatchObject({ line: 2, column: 'mass_kg' });
  expect((await store.records()).records).toEqual(smallClub());
});
