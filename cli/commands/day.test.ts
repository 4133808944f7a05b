import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { parseTable } from '#contract/csv/parseTable.ts';
import { dayPlan } from '#contract/day/dayPlan.ts';
import { signedPrescription } from '#contract/day/signedPrescription.ts';
import type { RecordOf } from '#contract/records/allKinds.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { openOneClub } from '#server/oneClub.ts';
import { callCli } from '../tests/callCli.ts';

const records = millraceClub('2026-11-25');
/** The day with the fewest lifters, so that it is worked out soon. */
const day = records.day.reduce((least, one) => (placesOf(one).length < placesOf(least).length ? one : least));
/** Longer than a line of the terminal. */
const note =
  'The doors close at nine: begin on time, clear the north rack first, and bring your own belt and shoes.';
day.note = note;
const noted = day.groups[0]!.places[0]!;
noted.note = 'Stop at the first pain, "any" pain';
let folder = '';
const sheet = (...args: string[]) =>
  callCli(['day', '--date', day.date, '--club', join(folder, 'club.sqlite'), ...args]);

function placesOf({ groups }: RecordOf<'day'>) {
  return groups.flatMap(({ places, blocks }) =>
    places.map(({ lifterId }) => ({ lifterId, steps: blocks.length })),
  );
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rackwright-day-'));
  const store = await openOneClub(join(folder, 'club.sqlite'), { name: 'a test' });
  await store.importRecords(records);
  await store.close();
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

describe('rackwright day', () => {
  it('writes every lifter of the day on sheets that fit a terminal, and says how bands are handled safely', async () => {
    const { status, stdout, stderr } = await sheet();
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    for (const { lifterId } of placesOf(day)) {
      expect(stdout).toContain(records.lifter.find(({ id }) => id === lifterId)?.name);
    }
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(stdout).toContain('Not a substitute for qualified coaching');
  });

  it("prints the coach's title and note on every sheet, broken to the width of a terminal", async () => {
    const { stdout } = await sheet();
    const flat = stdout.replace(/\s+/g, ' ');
    const pages = (stdout.match(/page \d+ of \d+/g) ?? []).length;
    expect(flat.split(`Note: ${note}`)).toHaveLength(1 + pages);
    expect(flat.split(` ${day.title} `)).toHaveLength(1 + pages);
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  it('prints a note for one lifter beside that lifter alone', async () => {
    const flat = (await sheet()).stdout.replace(/\s+/g, ' ');
    expect(flat.split(`note ${noted.note} `)).toHaveLength(2);
  });

  it('refuses what is no date by name and value', async () => {
    const { status, stdout, stderr } = await sheet('--date', '2026-02-30');
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/^--date is "2026-02-30"; it must be a date such as [\d-]+\.\n$/);
  });

  it.each(['csv', 'json'])('refuses a unit for %s, which has one alone, by name and value', async (form) => {
    const { status, stdout, stderr } = await sheet('--form', form, '--unit', 'lb');
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(new RegExp(`^--unit is "lb"; with --form ${form} it must be left out, .*\\.\n$`));
  });

  it('gives the same plan to programs, once worked out', async () => {
    const first = await sheet('--form', 'json');
    const { fingerprint, number, solvedAt } = signedPrescription.shape;
    const notes = z.array(z.strictObject({ groupId: z.string(), lifterId: z.string(), note: z.string() }));
    const written = dayPlan.extend({ fingerprint, number, solvedAt, notes });
    const [plan] = written.array().parse(JSON.parse(first.stdout));
    expect(plan?.date).toBe(day.date);
    expect(plan?.notes).toEqual([{ groupId: day.groups[0]!.id, lifterId: noted.lifterId, note: noted.note }]);
    expect((await sheet('--form', 'json')).stdout).toBe(first.stdout);
  });

  it('writes a spreadsheet with a line for each step of each lifter', async () => {
    const file = join(folder, 'day.csv');
    const { status, stdout, stderr } = await sheet('--form', 'csv', '--out', file);
    expect({ status, stdout }).toEqual({ status: 0, stdout: '' });
    expect(stderr).toContain(file);
    const table = parseTable(await readFile(file, 'utf8'));
    const lines = 'lines' in table ? table.lines : [];
    expect(lines).toHaveLength(1 + placesOf(day).reduce((sum, { steps }) => sum + steps, 0));
    // A line for each step of the one lifter, and of nobody else.
    const ofNote = lines.filter(({ cells }) => cells.at(-1) === noted.note);
    expect(ofNote).toHaveLength(day.groups[0]!.blocks.length);
  });

  it("takes the club's clock for today, wherever the computer stands", async () => {
    // Their clocks are 25 hours apart by the time zone database (+14 and -11), so that it is never the same day in both.
    for (const timeZone of ['Pacific/Kiritimati', 'Pacific/Pago_Pago']) {
      const file = join(folder, `${timeZone.slice(8)}.sqlite`);
      const store = await openOneClub(file, { name: 'a test' });
      const club = records.club.map((one) => ({ ...one, timeZone }));
      await store.importRecords({ ...records, club, day: [{ ...day, date: '1999-01-01' }] });
      await store.close();
      const today = () => new Date().toLocaleDateString('sv-SE', { timeZone });
      const before = today();
      const { stderr } = await callCli(['day', '--club', file]);
      const named = /no training day on ([\d-]+);/.exec(stderr)?.[1];
      expect([before, today()]).toContain(named);
    }
  });

  it('names the days there are where there is none', async () => {
    const club = ['--club', join(folder, 'club.sqlite')];
    const { status, stdout, stderr } = await callCli(['day', '--date', '1999-01-01', ...club]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(day.date);
  });
});
