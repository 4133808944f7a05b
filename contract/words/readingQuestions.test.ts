import { describe, expect, it } from 'vitest';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { readingQuestions } from './readingQuestions.ts';

const pair = { ...twoLifters().bandPair[0]!, restLengthAM: 1, restLengthBM: 1.2 };
const read = (
  takenOn: string,
  lengthM: number,
  forceN: number,
  direction: 'loading' | 'unloading' = 'loading',
) => ({ takenOn, lengthM, forceN, direction });
const march = [read('2026-03-01', 1.5, 200), read('2026-03-01', 2, 300)];
const ask = (had: typeof march, added: typeof march) => readingQuestions(pair, 'a', had, added);

describe('what is asked before new readings are kept', () => {
  it('is nothing of a band that pulls as it did', () => {
    expect(ask([], march)).toEqual([]);
    expect(ask(march, [read('2026-09-01', 2, 290)])).toEqual([]);
  });

  it('is a force that falls while the band gets longer: the longer reading first, then the shorter', () => {
    const fall = read('2026-03-01', 2.4, 240);
    const [question, ...others] = ask(march, [fall]);
    expect(others).toEqual([]);
    expect(question!.at.map(({ lengthM }) => lengthM)).toEqual([2.4, 2]);
    // 240 N are a fifth less than 300 N; the loop is 1 m long at rest.
    expect(question!.sentence).toMatch(
      /20 % less force at 2\.40 times .* than at 2\.00 times .*read both again/,
    );
    // What was odd before is not asked again.
    expect(ask([...march, fall], [read('2026-03-01', 1.2, 100)])).toEqual([]);
  });

  it('is a force far below that of another day, as the reader writes lengths and dates', () => {
    const slip = read('2026-09-01', 2, 300 * 0.4536);
    const [question] = ask(march, [slip]);
    expect(question!.at).toEqual([slip]);
    // 0.4536 kg in a pound (NIST SP 811): 55 % less.
    expect(question!.sentence).toMatch(
      /55 % less force at 2\.00 times .* than on 2026-03-01: .*unit and the label/,
    );
    const [written] = readingQuestions(pair, 'a', march, [slip], {
      lengthText: (lengthM) => `${100 * lengthM} cm`,
      dateText: (date) => `<${date}>`,
    });
    expect(written!.sentence).toContain('at 200 cm than on <2026-03-01>');
  });

  it('looks only at readings of a loop that is longer than at rest', () => {
    const slack = read('2026-03-01', 1, 400);
    expect(ask(march, [slack])).toEqual([]);
    // Loop b is longer at rest.
    const short = [read('2026-03-01', 1.1, 400), read('2026-03-01', 1.3, 100)];
    expect(readingQuestions(pair, 'b', [], short)).toEqual([]);
    expect(ask([], short)).toHaveLength(1);
  });
});
