import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { clubSeason } from '#contract/season/clubSeason.ts';
import { gearWarning } from '#contract/season/gearWarning.ts';
import { nearDay } from '#contract/season/nearDay.ts';
import { nearLine } from '#contract/season/nearLine.ts';
import { dateText } from '#contract/words/dateText.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { openOneClub } from '#server/oneClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { type LifterNearDay } from '../nearDaysOf.ts';
import { nearDaysText } from '../nearDaysText.ts';
import { callCli } from '../tests/callCli.ts';

const folder = await mkdtemp(join(tmpdir(), 'rackwright-season-'));
afterAll(() => rm(folder, { recursive: true, force: true }));

async function clubOf(name: string, records: ReturnType<typeof smallClub>): Promise<string> {
  const file = join(folder, name);
  const store = await openOneClub(file, { name: 'a test' });
  await store.importRecords(records);
  await store.close();
  return file;
}

test('the seasons of a club are told week by week with their meets and what to look at, and the same as JSON', async () => {
  const today = new Date().toISOString().slice(0, 10);
  const records = millraceClub(today);
  const club = await clubOf('demo.sqlite', records);
  const { status, stdout } = await callCli(['season', '--club', club]);
  expect(status).toBe(0);
  for (const { title } of [...records.season, ...records.meet]) expect(stdout).toContain(title);
  for (const { lifterId } of records.seasonEntry)
    expect(stdout).toContain(records.lifter.find(({ id }) => id === lifterId)!.name);
  expect(stdout).toMatch(/Deload\s+1\s+\d+/);
  expect(stdout).toContain('Racks and bands ahead');
  const json = JSON.parse((await callCli(['season', '--club', club, '--json'])).stdout);
  expect(clubSeason.array().parse(json.seasons)).toHaveLength(records.season.length);
  gearWarning.array().parse(json.gear);
});

test('asked for bars it tells each near day of a lifter with its bar, as JSON and in the words of the sheet', async () => {
  const today = new Date().toISOString().slice(0, 10);
  const whole = millraceClub(today);
  const entry = whole.seasonEntry.find(({ lifterId }) => lifterId === 'lifter-lars')!;
  const season = whole.season.filter(({ id }) => id === entry.seasonId);
  const method = whole.method.map(({ methodDocument, ...one }) => ({
    ...one,
    methodDocument: { ...methodDocument, nearWeeks: 1 },
  }));
  const records = { ...whole, method, season, day: [], seasonEntry: [entry], plannedByHand: [] };
  const club = await clubOf('near.sqlite', records);
  const { stdout } = await callCli(['season', '--club', club, '--bars', '--json']);
  const near: LifterNearDay[] = JSON.parse(stdout).near;
  expect(near.length).toBeGreaterThan(0);
  const text = nearDaysText(records, near, today);
  expect(text).toContain(`worked out on what is known on ${dateText(today)}`);
  for (const { lifterId, day } of near) {
    nearDay.parse(day);
    expect(lifterId).toBe('lifter-lars');
    for (const work of day.works) {
      const { line } = nearLine(day, work, { mass: 'kg', length: 'cm' });
      const row = text
        .split('\n')
        .find((one) => one.startsWith(dateText(day.date)) && one.includes(work.title))!;
      for (const word of [`${line!.bar} kg`, line!.lockout.load]) expect(row).toContain(word);
    }
  }
}, 120_000);

test('a club without a season is told where to make one', async () => {
  const club = await clubOf('none.sqlite', {
    ...smallClub(),
    season: [],
    seasonEntry: [],
    plannedByHand: [],
  });
  expect(await callCli(['season', '--club', club])).toMatchObject({
    status: 0,
    stdout: 'The club has no season yet: make one on the page Season.\n',
  });
});
