import { expect, test } from 'vitest';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { maxBar } from '#core/rep/maxBar.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import type { Trial } from './Trial.ts';
import { type TrialResult, trialResult } from './trialResult.ts';

const today = '2026-11-25';
const club = millraceClub(today);
const byStature = [...club.lifter].sort((a, b) => (a.statureM ?? 0) - (b.statureM ?? 0));
const shortest = byStature[0]!;
const tallest = byStature.at(-1)!;
const hookup = club.hookup.find(({ way, lifts }) => way === 'doubled' && lifts.includes('squat'))!;
const pair = club.bandPair.find(({ widthMm, retiredOn }) => widthMm > 20 && retiredOn === null)!;

const banded: Trial = {
  lifterId: shortest.id,
  lift: 'squat',
  rackId: hookup.rackId,
  start: { way: 'free', heightM: null },
  barKg: 60,
  bands: [{ bandPairId: pair.id, hookupId: hookup.id }],
  chains: [],
};

function workedOut(trial: Trial): TrialResult {
  const result = trialResult(club, trial, 'trial', today);
  if (typeof result === 'string') throw new Error(result);
  return result;
}

test('the same bands pull more on the taller lifter, at the bottom and at lockout', () => {
  const short = workedOut(banded).explanation;
  const tall = workedOut({ ...banded, lifterId: tallest.id }).explanation;
  expect(tallest.statureM! - shortest.statureM!).toBeGreaterThan(0.3);
  expect(tall.bottom.bandN).toBeGreaterThan(short.bottom.bandN);
  expect(tall.lockout.bandN).toBeGreaterThan(short.lockout.bandN + 20);
});

test('dragging the bar moves the straight weight alone, by its own weight', () => {
  const light = workedOut(banded);
  const heavy = workedOut({ ...banded, barKg: 80 });
  expect(heavy.explanation.lockout.bandN).toBe(light.explanation.lockout.bandN);
  // Weight = mass times the club's gravity.
  expect(heavy.explanation.bottom.totalN - light.explanation.bottom.totalN).toBeCloseTo(
    20 * light.load.gravityMps2,
    9,
  );
});

test('the picture shows the numbers that stand beside it', () => {
  const { scene, explanation } = workedOut(banded);
  expect(scene.load.points[0]!.totalN).toBeCloseTo(explanation.bottom.totalN, 9);
  expect(scene.load.points.at(-1)!.totalN).toBeCloseTo(explanation.lockout.totalN, 9);
  expect(scene.speed!.durationS).toBeCloseTo(explanation.firstRep.durationS, 9);
});

test('a higher box raises the bar by as much', () => {
  // Heights that nobody has measured, so that geometry and not a tape answers.
  expect(bottomOnBox(0.472) - bottomOnBox(0.462)).toBeCloseTo(0.01, 9);
});

test('a start above lockout is answered with one sentence', () => {
  const result = trialResult(club, { ...banded, start: { way: 'pins', heightM: 1.9 } }, 'trial', today);
  expect(result).toMatch(/too high/);
});

function bottomOnBox(heightM: number): number {
  return workedOut({ ...banded, start: { way: 'box', heightM } }).heights.bottomM;
}

test('where the log has an estimate, the heaviest bar of the straight lift is its maximum, whatever the bests say', () => {
  const straight = { ...banded, bands: [] };
  const movedKg = 0.88 * 52;
  const middle = { median: 100, low80: 98, high80: 102, low95: 97, high95: 103 };
  const estimate: StrengthEstimate = {
    lifterId: shortest.id,
    lift: 'squat',
    on: today,
    setCount: 40,
    takenIn: 0,
    lastSetOn: today,
    bodyMassKg: 52,
    bodyMassKnown: 'measured',
    maxKg: middle,
    inEquipment: [],
    parameters: [],
    history: [{ on: today, ...middle }],
    rise: [],
    observations: [],
    slips: [],
    leftOut: [],
    draws: [{ ...populationPrior('squat').mean, lnTotal: Math.log(100 + movedKg) }],
  };
  const result = trialResult(club, straight, 'trial', today, [estimate]);
  if (typeof result === 'string') throw new Error(result);
  expect(maxBar(result.load, result.capability)?.barKg).toBeCloseTo(100, 0);
});
