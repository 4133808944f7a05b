import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { shapeProblem, valueAt } from './shapeProblem.ts';

const shape = z.strictObject({
  massKg: z.number().positive().max(1000),
  share: z.number().lt(1).default(0),
  pairs: z.number().int().min(1).default(1),
  reserve: z.number().multipleOf(0.5).default(0),
  way: z.enum(['single', 'doubled', 'choked']).default('single'),
  takenOn: z.iso.date().default('2026-11-25'),
  at: z.iso.time({ precision: -1 }).default('18:30'),
  lifts: z
    .array(z.strictObject({ label: z.string().min(1).max(3) }))
    .min(1)
    .default([{ label: 'a' }]),
  aim: z
    .discriminatedUnion('by', [
      z.strictObject({ by: z.literal('speed'), fromMps: z.number() }),
      z.strictObject({ by: z.literal('percent'), share: z.number() }),
    ])
    .default({ by: 'percent', share: 0.6 }),
});

function problemOf(document: unknown) {
  const read = shape.safeParse(document);
  if (read.success) throw new Error('The shape let it through.');
  return shapeProblem(read.error, document);
}

describe('the sentence about a refused document', () => {
  test.each([
    [{ massKg: -3 }, 'massKg', ['massKg', '-3', 'more than 0']],
    [{ massKg: 2000 }, 'massKg', ['2000', 'at most 1000']],
    [{ massKg: 20, share: 1 }, 'share', ['share is 1; it must be less than 1']],
    [{ massKg: '20' }, 'massKg', ['"20"', 'a number']],
    [{ massKg: null }, 'massKg', ['null', 'a number']],
    [{}, 'massKg', ['massKg', 'missing']],
    [{ massKg: 20, pairs: 1.5 }, 'pairs', ['1.5', 'a whole number']],
    [{ massKg: 20, reserve: 1.3 }, 'reserve', ['1.3', 'it must be a multiple of 0.5']],
    [{ massKg: 20, way: 'knotted' }, 'way', ['"knotted"', 'single, doubled or choked']],
    [{ massKg: 20, takenOn: '2026-02-30' }, 'takenOn', ['"2026-02-30"', 'calendar date']],
    [{ massKg: 20, at: '25:00' }, 'at', ['"25:00"', 'a time of the day such as 18:30']],
    [{ massKg: 20, lifts: [] }, 'lifts', ['at least 1']],
    [
      { massKg: 20, lifts: [{ label: 'a' }, { label: 'four' }] },
      'lifts[1].label',
      ['"four"', 'at most 3 characters long'],
    ],
    [{ massKg: 20, aim: { by: 'luck' } }, 'aim.by', ['"luck"', 'speed', 'percent']],
    [{ massKg: 20, aim: { by: 'speed' } }, 'aim.fromMps', ['missing', 'a number']],
    [{ massKg: 20, colour: 'red' }, 'colour', ['colour', 'not a field']],
    [{ massKg: 20, lifts: [{ label: 'a', size: 1 }] }, 'lifts[0].size', ['lifts[0].size']],
    [[], '', ['The document is ', 'an object']],
    [undefined, '', ['The document is missing; ']],
  ])('%j names the field, the value and what is allowed', (document, field, words) => {
    const problem = problemOf(document);
    expect(problem.field).toBe(field);
    for (const word of words) expect(problem.message).toContain(word);
    expect(problem.message).toMatch(/^[^\n]+[^.]\.$/);
  });

  test('finds no value beyond where a path ends', () => {
    expect(valueAt({ a: [{ b: 5 }] }, ['a', 0, 'b'])).toBe(5);
    for (const a of [5, null, undefined]) expect(valueAt({ a }, ['a', 'b'])).toBeUndefined();
  });

  test('does not repeat a long value in full', () => {
    expect(problemOf({ massKg: 'x'.repeat(5000) }).message.length).toBeLessThan(150);
  });
});
