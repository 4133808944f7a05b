import { describe, expect, it } from 'vitest';
import type { EvidenceLine, Trap } from '#contract/evidence/evidenceReport.ts';
import { evidenceSentence, spokenEffect, verdictOf } from './evidenceSentence.ts';
import { trapSentence } from './trapSentence.ts';

const voice = { massUnit: 'kg', lengthUnit: 'cm', speaksOf: null } as const;

function line(low95: number, low80: number, value: number, high80: number, high95: number): EvidenceLine {
  const effect = { low95, low80, value, high80, high95 };
  const nobody = { lifterId: null, lift: null, variant: null, equipped: null, naive: null };
  return { ...nobody, lifters: 9, observations: 40, effect };
}

const clear = line(0.4, 0.5, 0.7, 0.9, 1);
const leaning = line(-0.1, 0.2, 0.7, 1.2, 1.5);
const open = line(-1, -0.5, 0.3, 1.1, 1.6);

describe('what an effect lets one say', () => {
  it('depends on which of its ranges leave nought out', () => {
    expect([clear, leaning, open, { ...open, effect: null }].map(verdictOf)).toEqual([
      'says',
      'leans',
      'cannotTell',
      'tooLittle',
    ]);
  });

  it('is a plain statement, a probable one, or that the data cannot tell', () => {
    expect(evidenceSentence('carryOver', clear, voice)).toMatch(
      /^10 kg gained .* about 7\.0 kg .*5\.0 to 9\.0 kg\)\.$/,
    );
    expect(evidenceSentence('carryOver', leaning, voice)).toMatch(/probably .* not ruled out\.$/);
    for (const question of ['carryOver', 'variants', 'boxHeight', 'bandShare', 'equipped'] as const) {
      expect(evidenceSentence(question, open, voice)).toMatch(/^The data cannot tell/);
      expect(evidenceSentence(question, open, voice)).not.toContain(' 3.0');
    }
  });

  it('of raw and equipped, which way the difference may go', () => {
    expect(evidenceSentence('equipped', open, voice)).toContain('from 5.0 kg less to 11 kg more');
  });

  it('of heights and bands, which way and how much, in the unit that boxes are counted in', () => {
    const fewer = line(-3, -2.5, -2, -1.5, -1);
    expect(evidenceSentence('boxHeight', fewer, voice)).toMatch(
      /^A box a centimetre higher allowed 2\.0 % less .*−2\.5 to −1\.5 %\); an inch comes to 5\.0 %\.$/,
    );
    // 1.02^2.54 = 1.0516 an inch, which is 2.0 % a centimetre.
    expect(evidenceSentence('boxHeight', line(1, 1.5, 2, 2.5, 3), { ...voice, lengthUnit: 'in' })).toMatch(
      /^A box an inch higher allowed 5\.2 % more .*; a centimetre comes to 2\.0 %\.$/,
    );
    expect(evidenceSentence('bandShare', leaning, voice)).toMatch(
      /^Training blocks with 10 points more .* probably came with gains that were larger by 0\.7 % of the lift/,
    );
    expect(evidenceSentence('bandShare', fewer, voice)).toMatch(
      /bands came with gains that were smaller by 2\.0 %/,
    );
  });

  it('of gains by those who lift raw and those who lift equipped, whose they are, and how they differ', () => {
    expect(evidenceSentence('equipped', { ...clear, equipped: true }, voice)).toMatch(
      /^10 kg gained in the gym by those who lift equipped went with about 7\.0 kg/,
    );
    expect(evidenceSentence('equipped', { ...clear, equipped: false }, voice)).toMatch(
      /by those who lift raw/,
    );
    expect(evidenceSentence('equipped', clear, voice)).toMatch(/^Of 10 kg .*, 7\.0 kg more reached/);
    expect(evidenceSentence('equipped', line(-1, -0.9, -0.7, -0.5, -0.4), voice)).toMatch(
      /, 7\.0 kg less reached/,
    );
    expect(evidenceSentence('variants', clear, { ...voice, variantName: 'box squat' })).toMatch(
      /^10 kg gained in the box squat went/,
    );
  });

  it('is how little there is, where it is too little', () => {
    const little = { ...open, effect: null };
    const said = (question: Parameters<typeof evidenceSentence>[0], one: typeof little) =>
      evidenceSentence(question, one, voice);
    expect(said('carryOver', little)).toMatch(/takes 8 gains .* there are 40 gains by 9 lifters\.$/);
    expect(said('variants', { ...little, lifters: 1, observations: 1 })).toMatch(
      /there is 1 gain by 1 lifter\.$/,
    );
    expect(said('boxHeight', little)).toMatch(/takes 3 lifters .* 40 hard lifts off a box by 9 lifters\.$/);
    expect(said('bandShare', little)).toMatch(/takes 8 training blocks .* 40 blocks by 9 lifters\.$/);
    expect(said('equipped', little)).toMatch(
      /by 3 lifters raw and as many equipped; .* 40 gains by 9 lifters in all\.$/,
    );
  });

  it('names the lifter first', () => {
    expect(evidenceSentence('carryOver', clear, { ...voice, speaksOf: 'Ilse' })).toMatch(/^Ilse: 10 kg/);
  });

  it('an inch of box is worth 2.54 centimetres of it, compounded', () => {
    // 1.02^2.54 = exp(2.54 ln 1.02) = 1.0516
    const two = line(1, 1.5, 2, 2.5, 3).effect!;
    expect(spokenEffect('boxHeight', two, { ...voice, lengthUnit: 'in' }).value).toBeCloseTo(5.16, 2);
    expect(evidenceSentence('boxHeight', line(1, 1.5, 2, 2.5, 3), voice)).toMatch(
      /2\.0 % more .* an inch comes to 5\.2 %\.$/,
    );
  });
});

it.each<[Trap, RegExp]>([
  [{ code: 'survivorsOnly', leftOut: 0, ofThemLeft: 0 }, /^Everybody .*stall tend to stop/],
  [
    { code: 'survivorsOnly', leftOut: 1, ofThemLeft: 0 },
    /^1 lifter trained .* and is not counted here\. Those who stay/,
  ],
  [
    { code: 'survivorsOnly', leftOut: 3, ofThemLeft: 2 },
    /^3 lifters .* are not counted here; 2 of them left/,
  ],
  [{ code: 'tooFewMeets', gains: 10, lifters: 4 }, /^10 gains .* by 4 lifters, 2\.5 each\./],
  [{ code: 'tooFewMeets', gains: 0, lifters: 0 }, /by 0 lifters\. A lifter's/],
  [{ code: 'changedEquipment', dropped: 0 }, /^Nobody changed/],
  [{ code: 'changedEquipment', dropped: 1 }, /^1 gain .* was left out/],
  [{ code: 'changedEquipment', dropped: 2 }, /^2 gains .* were left out/],
  [{ code: 'gearRemeasured', touched: 0, of: 7 }, /^No band .*looks like a gain/],
  [{ code: 'gearRemeasured', touched: 2, of: 7 }, /^In 2 of 7 gains/],
  [{ code: 'manyVariants', looked: 12 }, /^12 variants .*one in twenty/],
  [{ code: 'notByLot' }, /^Nobody drew lots/],
  [{ code: 'techniqueOfHeight' }, /^A box changes the stance/],
])('a trap is told with what it rests on: %j', (trap, words) => {
  const { name, text } = trapSentence(trap);
  expect(name).toMatch(/^[A-Z].* /);
  expect(text).toMatch(words);
});

it('noise that is the greater part is said to be left in', () => {
  const trap = {
    code: 'regressionToTheMean',
    noiseShare: 0.02,
    noiseKnown: 'assumed',
    noisePairs: 3,
  } as const;
  expect(trapSentence({ ...trap, reliability: 0.3 }).text).toContain('shown uncorrected');
  expect(trapSentence({ ...trap, reliability: 0.5 }).text).toMatch(/2\.0 % .*\(assumed.*50 % .*corrected/);
  expect(trapSentence({ ...trap, reliability: null }).text).toContain(
    'good day is followed by an ordinary one',
  );
  const measured = { ...trap, noiseKnown: 'measured', reliability: 0.8 } as const;
  expect(trapSentence(measured).text).toMatch(/from 3 lifts repeated/);
});
