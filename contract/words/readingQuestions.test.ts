import { describe, expect, it } from 'vitest';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { forceMeant, readingQuestions } from './readingQuestions.ts';

const pair = { ...twoLifters().bandPair[0]!, widthMm: 57, restLengthAM: 1, restLengthBM: 1.2 };
const read = (
  takenOn: string,
  lengthM: number,
  forceN: number,
  direction: 'loading' | 'unloading' = 'loading',
) => ({ takenOn, lengthM, forceN, direction });
const march = [read('2026-03-01', 1.5, 200), read('2026-03-01', 2, 300)];
const ask = (had: typeof march, added: typeof march) => readingQuestions(pair, 'a', { a: had, b: [] }, added);

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
    const [written] = readingQuestions(pair, 'a', { a: march, b: [] }, [slip], {
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
    expect(readingQuestions(pair, 'b', { a: [], b: [] }, short)).toEqual([]);
    expect(ask([], short)).toHaveLength(1);
  });
});

/** Uniaxial tension of rubber, Mooney 1940 (J Appl Phys 11:582-592), of the size of a band of 57 mm. */
const rubberN = (stretch: number) => 2 * (stretch - stretch ** -2) * (60 + 45 / stretch);

describe('a reading far from what a band of this width pulls', () => {
  const march = [1.3, 1.6, 2, 2.4].map((lengthM) => read('2026-03-01', lengthM, rubberN(lengthM)));

  it('is asked of no loop that is rubber, and of every one of them in pounds or with both bands in the scale', () => {
    for (const reading of march) {
      expect(ask([], [reading])).toEqual([]);
      for (const times of [2, 1 / 0.45359237]) {
        const [question] = ask([], [{ ...reading, forceN: times * reading.forceN }]);
        expect(question!.sentence).toContain('a band of this width');
        const offers = forceMeant(question!.farOff!, 'kgf').map(({ valueSi }) => valueSi);
        expect(Math.min(...offers.map((n) => Math.abs(n / reading.forceN - 1)))).toBeLessThan(1e-9);
      }
    }
  });

  it('names the farthest of several, and holds loop b against loop a at the same stretch', () => {
    const slips = march.map((reading, i) => ({ ...reading, forceN: (2 + i) * reading.forceN }));
    const [question, ...others] = ask([], slips);
    expect(others).toEqual([]);
    expect(question!.at[0].lengthM).toBe(2.4);
    const ofB = read('2026-03-01', 1.2 * 1.6, 1.8 * rubberN(1.6));
    const [beside] = readingQuestions(pair, 'b', { a: march, b: [] }, [ofB]);
    expect(beside!.sentence).toMatch(/1\.8 times what the other band of the pair pulls/);
  });
});
