import { describe, expect, it } from 'vitest';
import { carryOver } from './carryOver.ts';
import { type Parameters, populationPrior } from './parameters.ts';
import { readerOf } from './readGroup.ts';
import type { EffortGroup } from './sessions.ts';
import type { SetModel } from './setModel.ts';
import { alikeModel, lift } from './tests/alikeShapes.ts';

const none: Parameters = { ...populationPrior('squat').mean, speedSlope: 0 };
const read = (changed: Partial<Parameters>, model: SetModel) =>
  readerOf({ ...none, ...changed }, lift)(model);

describe('the straight mass that a set stands for', () => {
  it('is its own and what its limit asks beyond the straight lift’s, with what bands and another start ask of this lifter', () => {
    // ln T = ln M + ln limit of the set - ln limit of the reference + bandError x band share + startError (docs/model.md).
    const box = alikeModel('box', Math.log(150), 0.25, 0.4);
    const straightLn = Math.log(150) + 0.25 - 0.05;
    expect(read({}, box).straightLn).toBeCloseTo(straightLn, 9);
    expect(read({ bandError: 0.1, startError: 0.03 }, box).straightLn).toBeCloseTo(
      straightLn + 0.04 + 0.03,
      9,
    );
    const free = alikeModel('free', Math.log(150), 0.25, 0.4);
    expect(read({ startError: 0.03 }, free).straightLn).toBeCloseTo(straightLn, 9);
  });
});

describe('the speed and cost of a rep', () => {
  const { speedMps, lossLn } = read(
    { speedOffset: 0.04, speedSlope: 0.2, lnTiring: Math.LN2 },
    lift.reference,
  ).table;

  it('is the model’s and the lifter’s own offset, and its slope for each unit that is spare', () => {
    // At 0.25 to spare: 0.3 + 0.5 + 0.04 + 0.2 x 0.25; at the limit 0.3 + 0.04.
    expect(speedMps[5]).toBeCloseTo(0.89, 9);
    expect(speedMps[0]).toBeCloseTo(0.34, 9);
  });

  it('is twice the population’s 1.28 % a second for a lifter who tires twice as soon', () => {
    // 0.0128 a second (docs/model.md, "effort"), 2.5 s of effort at 0.25 to spare.
    expect(lossLn[5]).toBeCloseTo(2 * 0.0128 * 2.5, 9);
  });

  it('costs the part of strength that is left for the bar', () => {
    // With e^0.25 times the strength that the load asks, half of it body, the body takes 0.5 e^-0.25 of that strength.
    const half = alikeModel('free', Math.log(100), 0.05, 0, 0.5);
    const { table } = read({}, half);
    expect(table.lossLn[5]).toBeCloseTo(0.0128 * 2.5 * (1 - 0.5 * Math.exp(-0.25)), 9);
  });
});

describe('tiredness from set to set', () => {
  it('is what the reps have cost, 0.85 of it halved in 22 s and the rest in 170, at what each set had to spare', () => {
    const reading = read({}, lift.reference);
    const group = { made: 1, missed: false, restS: [0, 22, 22] } as unknown as EffortGroup;
    const carried = carryOver(group, reading, lift, 0.36, { fast: 0, slow: 0 });
    const left = [0, 0, 0];
    const before = [0.0128 * (2 + Math.sqrt(0.36)), 0, 0];
    for (let set = 1; set < 3; set++) {
      left[set] = before
        .slice(0, set)
        .reduce(
          (sum, lost, i) => sum + lost * (0.85 / 2 ** (set - i) + 0.15 * 0.5 ** ((22 * (set - i)) / 170)),
          0,
        );
      before[set] = 0.0128 * (2 + Math.sqrt(0.36 - left[set]!));
    }
    expect(carried.carriedLn).toBeCloseTo((left[0]! + left[1]! + left[2]!) / 3, 5);
  });

  const reading = read({}, lift.reference);
  const carriedBy = (made: number, missed: boolean, surplus: number) => {
    const group = { made, missed, restS: [0, 22] } as unknown as EffortGroup;
    return carryOver(group, reading, lift, surplus, { fast: 0, slow: 0 }).carriedLn;
  };

  it('costs as much as reps made need where somebody is believed too weak for them, and a missed one too', () => {
    const second = rootBefore(0);
    const first = rootBefore(second ** 2);
    expect(carriedBy(3, false, -0.3)).toBeCloseTo(half(first ** 2 + 0.0256), 9);
    expect(carriedBy(2, true, -0.3)).toBeCloseTo(half(second ** 2 + 2 * 0.0256), 9);
    expect(carriedBy(0, true, -0.3)).toBeCloseTo(half(0.0256), 9);
  });

  it('is no more than half of strength, however many the reps', () => {
    expect(carriedBy(40, false, 1)).toBeCloseTo(half(0.5), 9);
  });
});

/** What a second set finds of what the first cost, 22 s later, on the mean of the two. */
const half = (lost: number) => (lost * (0.85 / 2 + 0.15 * 0.5 ** (22 / 170))) / 2;

/** A rep costs 0.0128 (2 + r) with r squared to spare: before one that leaves u the root is 0.0064 + sqrt(0.0064^2 + 0.0256 + u). */
const rootBefore = (left: number) => 0.0064 + Math.sqrt(0.0064 ** 2 + 0.0256 + left);
