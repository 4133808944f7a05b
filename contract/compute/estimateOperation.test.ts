import { describe, expect, test } from 'vitest';
import { estimateOperation } from './estimateOperation.ts';
import { InputError } from './InputError.ts';
import { runOperation } from './runOperation.ts';

interface Answer {
  max_kg: { median: number; low80: number; high80: number; low95: number; high95: number };
  parameters: Record<string, { median: number; low80: number; high80: number }>;
  sets: { surprise: number }[];
  findings: { set: number; code: string; message: string }[];
}

const asked = { lift: 'squat', bodyMass_kg: 90, range: { from_m: 0.9, to_m: 1.5 }, on: '2026-06-01' };
const single = (date: string, bar_kg: number, made: 0 | 1, more: object = {}) => ({
  date,
  load: { bar_kg, bottom_m: 0.9, lockout_m: 1.5 },
  start: 'free',
  reps: 1,
  made,
  ...more,
});
const estimate = (sets: object[], more: object = {}) =>
  runOperation(estimateOperation, { ...asked, sets, ...more }) as Promise<Answer>;

const tried = (dates: string[]) => dates.flatMap((date) => [single(date, 200, 1), single(date, 206, 0)]);
const width = ({ max_kg }: Answer) => max_kg.high80 - max_kg.low80;

describe('estimate', () => {
  test('without sets is an error that names them', async () => {
    await expect(estimate([])).rejects.toThrow(InputError);
    await expect(estimate([])).rejects.toThrow('at least one logged set');
  });

  test('answers one made single with a wide interval that begins near it', async () => {
    const { max_kg } = await estimate([single('2026-05-28', 180, 1)]);
    expect(max_kg.high80 / max_kg.low80).toBeGreaterThan(1.2);
    expect(max_kg.median).toBeGreaterThan(180);
  });

  test('lies between what was made and what was missed, the narrower the more often', async () => {
    const days = ['2026-05-04', '2026-05-11', '2026-05-18', '2026-05-25'];
    const once = await estimate(tried(days.slice(3)));
    const often = await estimate(tried(days));
    for (const { max_kg } of [once, often]) {
      expect(max_kg.median).toBeGreaterThan(196);
      expect(max_kg.median).toBeLessThan(210);
    }
    expect(width(often)).toBeLessThan(width(once));
  });

  test('is surprised upwards by too much and downwards by too little, and names what it learned', async () => {
    const days = ['2026-05-04', '2026-05-11', '2026-05-18'];
    const usual = days.flatMap((date) => [
      single(date, 190, 1, { meanSpeed_mps: [0.33] }),
      single(date, 205, 0),
    ]);
    const { sets, parameters } = await estimate([
      ...usual,
      single('2026-05-25', 250, 1),
      single('2026-05-26', 140, 0),
    ]);
    expect(sets).toHaveLength(8);
    expect(sets.at(-2)!.surprise).toBeGreaterThan(2);
    expect(sets.at(-1)!.surprise).toBeLessThan(-2);
    expect(Object.keys(parameters)).toContain('lnMaxSpeed');
  });

  test('refuses more reps made than asked, naming the field', async () => {
    await expect(estimate([{ ...single('2026-05-04', 100, 1), made: 2 }])).rejects.toThrow(/sets\[0\]\.made/);
  });

  test('names a tonne among ordinary sets, and a set after the day asked for, wherever they stand', async () => {
    const { sets, findings } = await estimate([
      single('2026-06-20', 300, 1),
      single('2026-05-04', 190, 1),
      single('2026-05-11', 1000, 1),
      single('2026-05-18', 190, 1),
    ]);
    expect(findings.map(({ set, code }) => [set, code])).toEqual([
      [0, 'afterOn'],
      [2, 'hardlyBelieved'],
    ]);
    expect(findings[1]!.message).toContain('1000 kg');
    // The tonne is the surprise, not its neighbour.
    expect(Math.max(...sets.map(({ surprise }) => surprise))).toBe(sets[2]!.surprise);
  });

  test('names a set that no strength explains', async () => {
    // Over 89 m the bar is under way for longer than anybody can strain.
    const endless = {
      date: '2026-05-04',
      load: { bar_kg: 100, bottom_m: 0.9, lockout_m: 90 },
      reps: 1,
      made: 1,
    };
    const { findings } = await estimate([endless, single('2026-05-11', 190, 1)]);
    expect(findings.map(({ set, code }) => [set, code])).toEqual([[0, 'notExplained']]);
  });

  test.each([
    ['sets[0].date', [single('0001-01-01', 100, 1)], {}],
    ['sets[0].date', [single('9999-01-01', 100, 1)], {}],
    ['on', [single('2026-05-04', 100, 1)], { on: '9999-01-01' }],
    ['on', [single('2026-05-04', 100, 1)], { on: '2036-06-01' }],
    ['on', [single('2026-05-04', 100, 1)], { on: '2026-05-03' }],
    ['bodyMass_kg', [single('2026-05-04', 100, 1)], { bodyMass_kg: 1e300 }],
    ['sets[0].load.bottom_m', [single('2026-05-04', 100, 1)], { range: { from_m: 0.3, to_m: 0.8 } }],
    ['sets[0].load.lockout_m', [single('2026-05-04', 100, 1)], { range: { from_m: 1.6, to_m: 1.9 } }],
  ])('refuses what cannot be: %s', async (field, sets, more) => {
    const refused = await estimate(sets, more).catch((error) => error);
    expect(refused).toBeInstanceOf(InputError);
    expect(refused.field).toBe(field);
    expect(refused.message).toMatch(/; it must be .*\.$/);
  });
});
