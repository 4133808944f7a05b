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
        message: `${phase.title}, ${day.title}, day of the week is 9; it must be at most 7.`,
        said: 'is 9; it must be at most 7.',
      },
      {
        place: `${at}.groups[0].blocks[0][0].reps`,
        message: `${phase.title}, ${day.title}, ${day.groups[0]!.title}, steps of week 1, step 1, reps is 31; it must be at most 30.`,
        said: 'is 31; it must be at most 30.',
      },
    ]);
  });

  it('tells a phase that is always as long once where its weeks are no whole waves', () => {
    const odd = structuredClone(shippedMethods[0]!);
    Object.assign(odd.phases[1]!, { leastWeeks: 4, mostWeeks: 4 });
    const read = readMethod(JSON.stringify(odd));
    expect('problems' in read && read.problems.map(({ place }) => place)).toEqual(['phases[1].leastWeeks']);
    Object.assign(odd.phases[1]!, { mostWeeks: 5 });
    const stretched = readMethod(JSON.stringify(odd));
    expect('problems' in stretched && stretched.problems.map(({ place }) => place)).toEqual([
      'phases[1].leastWeeks',
      'phases[1].mostWeeks',
    ]);
  });

  it('seats each lifter of a squat at a depth within reach, and nobody on the bench', () => {
    const own = structuredClone(shippedMethods[0]!);
    const [monday, tuesday] = own.phases.find(({ id }) => id === 'speed-waves')!.days;
    const [squat, bench] = [monday!.groups[0]!, tuesday!.groups[0]!];
    squat.variants[0]!.start = { way: 'ownBox', aboveParallelM: 0.4 };
    bench.variants[0]!.start = { way: 'ownBox', aboveParallelM: 0 };
    const saidOf = () => {
      const read = readMethod(JSON.stringify(own));
      return 'problems' in read ? read.problems.map(({ said }) => said) : read.method;
    };
    expect(saidOf()).toEqual([
      'is 0.4; it must be at most 0.3.',
      'is "ownBox"; it must be a start of that lift: each on their own box is for the squat alone.',
    ]);
    squat.variants[0]!.start = { way: 'ownBox', aboveParallelM: -0.02 };
    bench.variants[0]!.start = { way: 'box', heightM: 0.36 };
    expect(saidOf()).toEqual(own);
    Object.assign(bench.variants[0]!.start, { way: 'sofa' });
    expect(saidOf()).toEqual([
      expect.stringMatching(/^is "sofa"; it must be free, paused, box, .* or ownBox\.$/),
    ]);
  });

  it('names what has no title by its number', () => {
    const bare = structuredClone(shippedMethods[0]!);
    bare.phases[1]!.title = '';
    const read = readMethod(JSON.stringify(bare));
    expect('problems' in read && read.problems.map(({ message }) => message)).toEqual([
      'Phase 2, title is needed.',
    ]);
  });

  it('is refused in one sentence where it is no document at all', () => {
    for (const text of ['', '{"format"', '['.repeat(100)]) {
      const read = readMethod(text);
      expect('problems' in read && read.problems).toHaveLength(1);
    }
  });
});
