import { expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

const stranger = 'The club has no lifter with the id "ida".';

test.each([
  ['/api/sets?lifterId=ida', 404, stranger],
  ['/api/sets/csv?lifterId=ida', 404, stranger],
  ['/api/estimates?lifterId=ida', 404, stranger],
  ['/api/estimates/capacity?lifterId=ida&lift=squat', 404, stranger],
  ['/api/evidence?lifterId=ida', 404, stranger],
  ['/api/projection?lifterId=ida&on=2026-12-01', 404, stranger],
  ['/api/sets?lifterId=', 404, 'The club has no lifter with the id "".'],
  ['/api/sets?dayId=monday', 404, 'The club has no training day with the id "monday".'],
  [
    '/api/sets/csv?from=2026-11-21&to=2026-11-20',
    400,
    'from is "2026-11-21"; it must be no later than to, "2026-11-20".',
  ],
  ['/api/sets?from=', 400, 'from is ""; it must be a calendar date such as 2026-11-25.'],
  [
    '/api/sets?lifter=ida',
    400,
    'lifter is not a field here; this address takes lifterId, lift, dayId, from, to, words, most, after.',
  ],
  ['/api/sets?to=2026-11-20&to=2026-11-21', 400, 'to stands 2 times; it must stand once at most.'],
  ['/api/backtest?lifterId=ida', 400, 'lifterId is not a field here; this address takes none.'],
  ['/api/estimates/all?lifterId=ida', 400, 'lifterId is not a field here; this address takes none.'],
  ['/api/records/best?lifterId=ida', 400, 'lifterId is not a field here; this address takes none.'],
  ['/api/events?after=', 400, 'after is ""; it must be the number of a change, such as 12.'],
] as const)('%s is refused, not answered as if nothing were there', async (path, status, message) => {
  const { ask } = await testApp(smallClub());
  expect(await ask('GET', path)).toMatchObject({ status, json: { error: { message } } });
});

test.each([
  '/api/club',
  '/api/openapi.json',
  '/api/compute',
  '/api/days/day-1/prescription',
  '/api/days/day-1/prescriptions/1',
  '/api/days/day-1/retelling',
  '/api/days/day-1/moved',
  '/api/estimates/progress',
])('%s takes no query and says so', async (path) => {
  const { ask } = await testApp(smallClub());
  expect(await ask('GET', `${path}?on=2026-11-20`)).toMatchObject({
    status: 400,
    json: { error: { field: 'on', message: 'on is not a field here; this address takes none.' } },
  });
});

test.each(['', ' ', '0x3', 'two', '5.1', '-1', 'Infinity'])('a taper of "%s" is no number', async (given) => {
  const { ask } = await testApp(smallClub());
  const query = new URLSearchParams({ lifterId: 'lifter-1', on: '2026-12-01', taperPercent: given });
  const { status, json } = await ask('GET', `/api/projection?${query}`);
  expect(status).toBe(400);
  expect(json.error.message).toBe(`taperPercent is "${given}"; it must be a number from 0 to 5.`);
});

test('a dry run is not passed over where there is none', async () => {
  const { ask, store } = await testApp(smallClub());
  const text = 'date,lifter,lift,bar,reps\n2026-01-13,Ida Quill,squat,100,5\n';
  for (const [path, body] of [
    ['/api/sets/import', { text }],
    ['/api/sets', { sets: [squatSet()] }],
    ['/api/records/bar', { label: 'Thick bar', massKg: 25 }],
  ] as const) {
    expect(await ask('POST', `${path}?dryRun=1`, body)).toMatchObject({
      status: 400,
      json: { error: { field: 'dryRun' } },
    });
  }
  expect(await store.latestSeq()).toBe(1);
});

test('a dry run that is misspelled is refused; it is not taken for the real one', async () => {
  const { ask, store } = await testApp(smallClub());
  const csv = 'label,mass_kg\nThick bar,25\n';
  for (const query of ['dryRun=true', 'dryRun=', 'dryrun=1', 'dry=1']) {
    const { status, json } = await ask('POST', `/api/records/bar/csv?${query}`, csv, 'text/csv');
    expect(status).toBe(400);
    expect(json.error.message).toMatch(/^[^.].*\.$/s);
  }
  expect((await store.records()).records).toEqual(smallClub());
});
