import { expect, test } from 'vitest';
import { InputError } from '#contract/compute/InputError.ts';
import { runOperation } from '#contract/compute/runOperation.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { clubSeason } from './clubSeason.ts';
import { planClubSeasonOperation } from './planClubSeasonOperation.ts';
import { planSeasonOperation } from './planSeasonOperation.ts';

const today = '2026-11-25';
const records = millraceClub(today);
const asked = { records, seasonId: 'season-early', today };
const planned = async (document: unknown) =>
  planClubSeasonOperation.outputSchema.parse(await runOperation(planClubSeasonOperation, document));

test("a season planned from the club's records is the one that its screen shows, with its warnings in words", async () => {
  const { says, ...season } = await planned(asked);
  expect(season).toEqual(clubSeason(records, 'season-early', today));
  const warnings = [...season.plans, ...season.lifters].flatMap((one) => one.warnings);
  expect(warnings.length).toBeGreaterThan(0);
  expect(
    says
      .filter(({ lifterId }) => lifterId === 'lifter-maribel')
      .map((one) => one.says)
      .join(),
  ).toMatch(/restrict/i);
});

test('another method in its place plans the same lifters for the same meets, and changes nothing else', async () => {
  const without = await planned({ ...asked, shipped: 'without-bands' });
  const own = await planned(asked);
  expect(without.method).toEqual(shippedMethods.find(({ id }) => id === 'without-bands'));
  const meetsOf = ({ plans }: typeof own) => plans.map(({ meets }) => meets.map(({ date }) => date));
  expect(new Set(meetsOf(without).flat())).toEqual(new Set(meetsOf(own).flat()));
  expect(without.lifters.map(({ lifterId }) => lifterId)).toEqual(
    own.lifters.map(({ lifterId }) => lifterId),
  );
});

test.each([
  [
    'an id that nobody has',
    { records: { ...records, method: [] } },
    /^records\.season\[0\]\.methodId is ".*"; the club has no method with that id\.$/,
  ],
  [
    'a season that is not there',
    { seasonId: 'none' },
    /^seasonId is "none"; it must be the id of one of the seasons/,
  ],
  [
    'no club',
    { records: { ...records, club: [] } },
    /^records\.club is \[\]; it must be a list of one club\.$/,
  ],
  [
    'two methods at once',
    { method: shippedMethods[0], shipped: 'raw-with-bands' },
    /^shipped is "raw-with-bands"; it must be left out beside a method\.$/,
  ],
])('%s is refused with its place', async (_what, change, sentence) => {
  const refused = runOperation(planClubSeasonOperation, { ...asked, ...change });
  await expect(refused).rejects.toThrow(InputError);
  await expect(refused).rejects.toThrow(sentence);
});

test('a field that nobody knows, within what the records know, is refused in one sentence', async () => {
  const season = { from: '2027-01-04', meets: [{ title: 'Regional', date: '2027-05-08' }], id: null };
  await expect(runOperation(planSeasonOperation, { shipped: 'without-bands', season })).rejects.toThrow(
    /^season\.id is not a field that is known here\.$/,
  );
});
