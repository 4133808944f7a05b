import { describe, expect, it } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { chanceToSpare, type SetExpected, setExpected } from './askDraws.ts';
import { chanceOfWork } from './chanceOfWork.ts';
import type { Draw } from './Draw.ts';
import { drawCapability } from './drawCapability.ts';
import { liftModelOf } from './estimateStrength.ts';
import { populationPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';

const range = { fromM: 0.9, toM: 1.46 };
const reference: Rigging = { load: bareLoad(range.fromM, range.toM), start: 'free', range };
const draw: Draw = { ...populationPrior('squat').mean, lnTotal: Math.log(260) };
const off = (start: Rigging['start'], changed: Partial<Draw>) =>
  drawCapability({ ...draw, ...changed }, 'squat', reference, {
    start,
    range,
    movedBodyKg: 80,
    equipment: 'raw',
  });

describe('what a lifter can push from another start than the straight lift’s', () => {
  it('is less by what their own sets from other starts have fallen short', () => {
    const short = { startError: 0.05 };
    expect(off('box', short).strengthN / off('box', {}).strengthN).toBeCloseTo(Math.exp(-0.05), 5);
    expect(off('free', short).strengthN / off('free', {}).strengthN).toBeCloseTo(1, 9);
  });

  it('keeps as much of the rebound as the logit of the population’s share and the lifter’s own say together', () => {
    // A tenth is left from a box (docs/model.md, "lifter"): odds of 1 to 9, nine times better they are even.
    const free = off('free', {}).rebound;
    expect(off('box', {}).rebound / free).toBeCloseTo(0.1, 9);
    expect(off('box', { heldRebound: Math.log(9) }).rebound / free).toBeCloseTo(0.5, 9);
    expect(off('box', { lnRebound: Math.LN2 }).rebound / free).toBeCloseTo(0.2, 9);
    expect(off('pins', { heldRebound: 3 }).rebound).toBe(0);
  });
});

describe('the chance of all reps of a block', () => {
  it('takes off what the middle lifter loses to the hardest rep, twice that from one who tires twice as soon', () => {
    const lift = liftModelOf('squat', reference);
    const asked = { rigging: reference, movedBodyKg: 80, equipment: 'raw' as const, platform: false };
    const middle = { ...draw, lnTiring: 0.3 };
    const sooner = { ...draw, lnTiring: 0.3 + Math.LN2 };
    const [{ spareLn, lostLn }, own] = setExpected(lift, asked, { barKg: 165, reps: 3 }, [
      middle,
      sooner,
    ]) as [SetExpected, SetExpected];
    expect(spareLn).toBeCloseTo(Math.log(260 / 245), 6);
    expect(lostLn).toBeGreaterThan(0.01);
    const work = { barKg: 165, reps: 3, marginsLn: [spareLn - lostLn - 0.02] };
    const { chancesAllReps } = chanceOfWork(lift, asked, work, middle, [middle, sooner]);
    const chances = [
      chanceToSpare(spareLn - lostLn - 0.02, middle),
      chanceToSpare(spareLn - own.lostLn - 0.04, sooner),
    ];
    expect(chancesAllReps[0]).toBeCloseTo((chances[0]! + chances[1]!) / 2, 9);
  });
});
