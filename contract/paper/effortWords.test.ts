import { expect, test } from 'vitest';
import type { PlanBlock } from '#contract/day/dayPlan.ts';
import { inventedPlan } from '#contract/tests/inventedPlan.ts';
import { chancesLine, effortKey, effortLine, effortWords } from './effortWords.ts';

const block = inventedPlan().groups[0]!.places[0]!.solved!.blocks[1]!;
const effort = block.effort!;
const words = (changed: Partial<NonNullable<PlanBlock['effort']>>, part: Partial<PlanBlock> = {}) =>
  effortWords({ ...block, ...part, effort: { ...effort, ...changed } });
const allReps = (chanceAllReps: number, goesBy: 'log' | 'best' | 'bodyMass' = 'log') =>
  effortWords({ ...block, expected: { ...block.expected!, chanceAllReps, goesBy } }).allReps;

test('a step runs from its first speed to its last, a single has one', () => {
  expect(words({}).speed).toBe('0.62 → 0.58 m/s');
  expect(words({}, { sets: 1, reps: 1 }).speed).toBe('0.58 m/s');
});

test('a rep that is not made is named with its set, and no shorter rest is proposed then', () => {
  const missed = words({ lastMps: null, missed: { set: 3, rep: 4, stoppedAtS: 0.4 } });
  expect(missed.speed).toBe('0.62 m/s at first, rep 4 of set 3 not made');
  expect(missed.shorterRest).toBe('');
});

test('a shorter rest with which a rep would be missed says so', () => {
  const expected = { ...block.expected!, chanceShorterRest: 0.38 };
  const shorterRest = { restS: 90, lastMps: null, marginLn: -0.01 };
  expect(words({ shorterRest }, { expected }).shorterRest).toBe(
    'resting 1:30, likely a rep missed, all reps 38 %',
  );
});

test('an older plan, which does not know the chance with a shorter rest, tells its last rep alone', () => {
  const expected = { ...block.expected!, chanceShorterRest: null };
  expect(words({}, { expected }).shorterRest).toBe('resting 0:45, last rep 0.55 m/s');
});

test("strength to spare is a share of the lifter's own: a margin of ln 1.25 is a fifth less, of ln 0.8 a quarter more", () => {
  expect(words({ marginLn: Math.log(1.25) }).spare).toBe('20 %');
  expect(words({ marginLn: Math.log(0.8) }).spare).toBe('lacks 25 %');
  expect(words({ marginLn: Math.log(2.2) }).spare).toBe('half or more');
  // Nothing to spare is nothing lacking, and just a half is still a share.
  expect(words({ marginLn: 0 }).spare).toBe('0 %');
  expect(words({ marginLn: Math.log(2) }).spare).toBe('50 %');
});

test('a chance is never said to be certain', () => {
  expect([0.001, 0.42, 0.9999].map((share) => allReps(share))).toEqual(['under 1 %', '42 %', 'over 99 %']);
  expect([0.01, 0.99].map((share) => allReps(share))).toEqual(['1 %', '99 %']);
});

test('a chance that no log tells says what it goes by', () => {
  expect([allReps(0.71, 'best'), allReps(0.71, 'bodyMass')]).toEqual([
    '71 % by the best alone',
    '71 %, strength assumed',
  ]);
});

test('a plan of before sets were worked out says what it knows: the first rep', () => {
  expect(effortWords({ ...block, effort: null })).toEqual({
    speed: '0.62 m/s, first rep only',
    inZone: '',
    strain: '',
    shorterRest: '',
    spare: '',
    allReps: '',
  });
});

test('a first rep that is not made is said before anything else, with what is lacking where that was worked out', () => {
  const firstRep = { ...block.explanation.firstRep, made: false };
  const explanation = { ...block.explanation, firstRep };
  const notMade = 'not made by this calculation';
  expect(words({ marginLn: Math.log(0.8) }, { explanation })).toEqual({
    speed: notMade,
    inZone: '',
    strain: '',
    shorterRest: '',
    spare: 'lacks 25 %',
    allReps: '',
  });
  expect(effortWords({ ...block, effort: null, explanation })).toMatchObject({ speed: notMade, spare: '' });
});

const inZone = (of: 'set' | 'firstRep') =>
  effortWords({
    ...block,
    expected: {
      ...block.expected!,
      zone: { of, fromMps: 0.75, toMps: 0.85, mps: 0.78, chance: 0.74 },
    },
  });

test('the chance of a zone that a whole set is held to stands with its speed, that of a first rep alone', () => {
  expect(inZone('set').inZone).toBe('whole set 0.78 m/s, in the zone 74 %');
  expect(inZone('firstRep').inZone).toBe('in the zone 74 %');
});

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('a line says its parts in the order in which the key explains them, and leaves out what was not worked out', () => {
  const asked = { ...words({}), inZone: 'in the zone 74 %' };
  expect(plain(effortLine(asked))).toBe(
    '0.62 → 0.58 m/s; 4 s a set; in the zone 74 %, all reps 96 %; resting 0:45, last rep 0.55 m/s, all reps 91 %',
  );
  expect(chancesLine({ ...asked, inZone: '', allReps: '' })).toBe('');
  expect(plain(effortLine({ ...asked, strain: '', inZone: '', allReps: '', shorterRest: '' }))).toBe(
    '0.62 → 0.58 m/s',
  );
  expect(effortKey).toMatch(/speed .* time .* chance of making all reps .* less rest/);
});
