import { describe, expect, it } from 'vitest';
import { readMethod } from './readMethod.ts';
import { shippedMethods } from './shipped/shippedMethods.ts';

describe('a method from a file', () => {
  it.each(shippedMethods.map((method) => [method.title, method] as const))(
    '%s written and read again is the same',
    (_, method) => {
      expect(readMethod(JSON.stringify(method, null, 2))).toEqual({ method });
    },
  );

  it('is refused with every wrong place, its value and what is allowed', () => {
    const wrong = structuredClone(shippedMethods[0]!);
    const phase = wrong.phases[2]!;
    const day = phase.days.at(-1)!;
    day.weekday = 9;
    day.groups[0]!.blocks[0]![0]!.reps = 31;
    const at = `phases[2].days[${phase.days.length - 1}]`;
    const read = readMethod(JSON.stringify(wrong));
    expect('problems' in read && read.problems).toEqual([
      {
        place: `${at}.weekday`,
        message: `${phase.title}, ${day.title}, weekday is 9; it must be at most 7.`,
      },
      {
        place: `${at}.groups[0].blocks[0][0].reps`,
        message: `${phase.title}, ${day.title}, ${day.groups[0]!.title}, steps of week 1, step 1, reps is 31; it must be at most 30.`,
      },
    ]);
  });

  it('is refused in one sentence where it is no document at all', () => {
    for (const text of ['', '{"format"', '['.repeat(100)]) {
      const read = readMethod(text);
      expect('problems' in read && read.problems).toHaveLength(1);
    }
  });
});
