import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { strengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { openOneClub } from '#server/oneClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { callCli } from '../tests/callCli.ts';

let folder = '';
const estimate = (...args: string[]) => callCli(['estimate', '--club', join(folder, 'club.sqlite'), ...args]);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rackwright-estimate-'));
  const store = await openOneClub(join(folder, 'club.sqlite'), { name: 'a test' });
  await store.importRecords(smallClub());
  const setup = { rackId: null, start: { way: 'free', heightM: null }, barKg: 90, bands: [], chains: [] };
  await store.logSets([squatSet({ lift: 'deadlift', setup })]);
  await store.close();
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

describe('rackwright estimate', () => {
  it('writes the maximum of every lift with its intervals, and says that it is estimated', async () => {
    const { status, stdout, stderr } = await estimate('--on', '2026-11-25');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const figures = /^Ida Quill +(squat|deadlift) +([\d.]+) +([\d.]+) +([\d.]+) +([\d.]+) +([\d.]+) +1 /;
    const found = stdout.split('\n').flatMap((line) => {
      const figuresOf = figures.exec(line);
      return figuresOf ? [figuresOf.slice(1)] : [];
    });
    expect(found.map(([lift]) => lift)).toEqual(['squat', 'deadlift']);
    for (const [, ...numbers] of found) {
      const [median, low80, high80, low95, high95] = numbers.map(Number);
      expect([low95, low80, median, high80, high95]).toEqual(numbers.map(Number).toSorted((a, b) => a - b));
    }
    expect(stdout).toContain('Not measured.');
    expect(stdout).toContain('Not a substitute for qualified coaching');
  });

  it('gives programs everything of one lifter, and an earlier day as it was known then', async () => {
    const { stdout } = await estimate('--lifter', 'ida quill', '--json', '--on', '2026-11-19');
    const known = strengthEstimate.array().parse(JSON.parse(stdout));
    expect(known.map(({ lift, on }) => ({ lift, on }))).toEqual([{ lift: 'squat', on: '2026-11-19' }]);
    const before = await estimate('--on', '1999-01-01');
    expect(before.stdout).toBe('Nothing was logged up to 1999-01-01 that says what anybody can do.\n');
  });

  it("takes the club's clock for today, wherever the computer stands", async () => {
    // Their clocks are 25 hours apart by the time zone database (+14 and -11), so that it is never the same day in both.
    for (const timeZone of ['Pacific/Kiritimati', 'Pacific/Pago_Pago']) {
      const file = join(folder, `${timeZone.slice(8)}.sqlite`);
      const store = await openOneClub(file, { name: 'a test' });
      const records = smallClub();
      const club = records.club.map((one) => ({ ...one, timeZone }));
      await store.importRecords({ ...records, club, best: [] });
      await store.close();
      const today = () => new Date().toLocaleDateString('sv-SE', { timeZone });
      const before = today();
      const { stdout } = await callCli(['estimate', '--club', file]);
      expect([before, today()]).toContain(/up to ([\d-]+) that/.exec(stdout)?.[1]);
    }
  });

  it('refuses a stranger and what is no date by name and value', async () => {
    const stranger = await estimate('--lifter', 'Nobody');
    expect(stranger).toMatchObject({ status: 2, stdout: '' });
    expect(stranger.stderr).toMatch(/^--lifter is "Nobody"; .*Ida Quill.*\.\n$/);
    const noDate = await estimate('--on', 'soon');
    expect(noDate).toMatchObject({ status: 2, stdout: '' });
    expect(noDate.stderr).toMatch(/^--on is "soon"; it must be a date such as [\d-]+\.\n$/);
    const tooFar = await estimate('--on', '2999-01-01');
    expect(tooFar).toMatchObject({ status: 2, stdout: '' });
    expect(tooFar.stderr).toMatch(/^--on is "2999-01-01"; it must be a day up to [\d-]+\.\n$/);
  });
});
