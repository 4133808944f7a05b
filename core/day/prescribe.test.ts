import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import { enumerateSetups } from './enumerateSetups.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import { prescribe } from './prescribe.ts';
import { rankSetups } from './rankSetups.ts';
import { setChanges } from './setChanges.ts';
import { readPair } from './tests/manyPieces.ts';

/** A lifter whose strength rises in a straight line of ln g, for closed forms: no dip, no moved body. */
const capability = { ...evenCapability, slope: 0.6 };
const travel = { bottomM: 0.5, lockoutM: 1, gravityMps2: 9.80665, path: [] };

function gearOf(pullsN: readonly number[]): RackGear {
  return {
    barKg: 20,
    collarsKg: 0,
    discs: [25, 10, 5, 2.5, 1.25].map((massKg) => ({ massKg, pairs: 3 })),
    chains: [],
    hookups: pullsN.map((forceN, i) => readPair(`p${i}`, { zM: 0.5, forceN: 0 }, { zM: 1, forceN })),
  };
}

describe('prescribe', () => {
  it('meets a bar and a lockout percentage exactly where one pair does it', () => {
    // 100 kg of 200 on the bar, and 50 kg of band at lockout: 50 % and 75 %.
    const aim: LifterTask['aim'] = {
      by: 'percent',
      targets: [
        { basis: 'bar', share: 0.5 },
        { basis: 'lockout', share: 0.75 },
      ],
    };
    const gear = gearOf([300, 50 * 9.80665, 900]);
    const { best } = prescribe({ capability, travel, aim, referenceKg: 200 }, gear);
    expect(best.set.hookups).toEqual([1]);
    expect(best.barKg).toBe(100);
    // What is left: a pull read to 1.5 % and 2 N at one of two targets, and what a pair must be worth to be felt (model, "day").
    const readSd = Math.hypot(0.015 * 50 * 9.80665, 2) / 9.80665 / 200;
    const feltSquare = 0.018 ** 2 * ((0.5 ** 2 + 0.75 ** 2) / 2) + (1.25 / 200) ** 2;
    expect(best.misfit).toBeCloseTo(Math.sqrt(readSd ** 2 / 2 + feltSquare), 9);
  });

  it('takes fewer bands of two that tie, and of those the one that changes less', () => {
    const aim: LifterTask['aim'] = { by: 'percent', targets: [{ basis: 'lockout', share: 0.6 }] };
    const gear = gearOf([250, 250 + 0.2, 500]);
    const task = { capability, travel, aim, referenceKg: 200 };
    // Every set can meet one percentage by its bar to half a small disc: the bare bar ties and wins.
    expect(prescribe(task, gear).best.set.hookups).toEqual([]);
    const two: LifterTask = {
      ...task,
      aim: {
        by: 'percent',
        targets: [
          { basis: 'bar', share: 0.5 },
          { basis: 'lockout', share: 0.5 + 250.1 / 9.80665 / 200 },
        ],
      },
    };
    const before = { hookups: [1], chainPairs: [] };
    expect(prescribe(two, gear, { before }).best.set).toEqual(before);
    expect(prescribe(two, gear, { before: { hookups: [0], chainPairs: [] } }).best.set.hookups).toEqual([0]);
  });

  it('is never worse than any set by more than a tie, and lists the next best without repeating one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 50, max: 1500, noNaN: true }), { maxLength: 4 }),
        fc.double({ min: 0.4, max: 0.9, noNaN: true }),
        (pulls, share) => {
          const gear = gearOf(pulls);
          const task: LifterTask = {
            capability,
            travel,
            aim: { by: 'capability', bottomShare: share, lockoutShare: share },
            referenceKg: 200,
          };
          const { best, runnersUp, setsCompared } = prescribe(task, gear);
          const ranking = rankSetups(task, gear);
          const misfits = enumerateSetups(gear).map((_, index) => ranking.scoreOf(index).misfit);
          expect(best.misfit).toBeLessThanOrEqual(Math.min(...misfits) + 0.0005);
          expect(runnersUp.length).toBeLessThanOrEqual(Math.min(5, setsCompared - 1));
          const listed = [best, ...runnersUp].map(({ set }) => set.hookups);
          // No proposal is another with something added, but for the bare bar; and each has something to say for itself.
          for (const a of listed)
            for (const b of listed)
              if (a !== b && b.length > 0) expect(b.every((index) => a.includes(index))).toBe(false);
          for (const { speaksFor } of runnersUp) expect(speaksFor.length).toBeGreaterThan(0);
          const keys = [best, ...runnersUp].map(({ set }) => set.hookups.join());
          expect(new Set(keys).size).toBe(keys.length);
        },
      ),
    );
  });

  it('takes the lighter of two bars that are equally near', () => {
    // Halves of a kilogram and a maximum of 128 kg, which a computer holds exactly: 101.25 kg lie between 100 and 102.5.
    const task: LifterTask = {
      capability,
      travel,
      aim: { by: 'percent', targets: [{ basis: 'bar', share: 101.25 / 128 }] },
      referenceKg: 128,
    };
    expect(prescribe(task, gearOf([])).best.barKg).toBe(100);
  });

  it('says that every set was compared where all were, and how many were not', () => {
    const task: LifterTask = {
      capability,
      travel,
      aim: { by: 'capability', bottomShare: 0.6, lockoutShare: 0.6 },
      referenceKg: 200,
    };
    const { best, setsCompared, repsSimulated, proof } = prescribe(task, gearOf([300, 600]));
    expect([setsCompared, repsSimulated, proof.setsLeftOut]).toEqual([4, 0, 0]);
    expect(proof.bound + proof.gap).toBeCloseTo(best.misfit, 12);
  });

  it('keeps what the coach fixed', () => {
    const gear = gearOf([300, 600]);
    const task: LifterTask = {
      capability,
      travel,
      aim: { by: 'speed', fromMps: 0.5, toMps: 0.6 },
      referenceKg: 200,
    };
    const set = { hookups: [1], chainPairs: [] };
    expect(prescribe(task, gear, { fixed: { barKg: 77, set: null } }).best.barKg).toBe(77);
    expect(prescribe(task, gear, { fixed: { barKg: null, set } }).best.set).toBe(set);
  });
});

describe('runners-up', () => {
  it('say what speaks for them against the best', () => {
    // 100 of 200 kg on the bar and 50 kg at lockout: one pair does it, two others pull 63 kg together.
    const aim: LifterTask['aim'] = {
      by: 'percent',
      targets: [
        { basis: 'bar', share: 0.5 },
        { basis: 'lockout', share: 0.75 },
      ],
    };
    const gear = gearOf([340, 280, 490]);
    const { best, runnersUp } = prescribe({ capability, travel, aim, referenceKg: 200 }, gear);
    expect(best.set.hookups).toEqual([2]);
    expect(runnersUp.map(({ set }) => set.hookups)).toContainEqual([0, 1]);
    // Neither the best with the weak pair added nor the strong one beside it is another proposal.
    expect(runnersUp.map(({ set }) => set.hookups)).not.toContainEqual([1, 2]);
    const bare = runnersUp.find(({ set }) => set.hookups.length === 0)!;
    expect(bare.speaksFor).toContainEqual({ code: 'fewerPieces', pieces: 1 });
    expect(bare.speaksFor).toContainEqual({ code: 'heavierBar', kg: bare.barKg - best.barKg });
    // 50 kg from two pairs are more to hang for what the one pair does.
    const twins = prescribe({ capability, travel, aim, referenceKg: 200 }, gearOf([340, 150, 490]));
    expect(twins.runnersUp.map(({ set }) => set.hookups)).not.toContainEqual([0, 1]);
  });
});

describe('how many runners-up', () => {
  it('are five, of however many pairs that would do as well', () => {
    const aim: LifterTask['aim'] = {
      by: 'percent',
      targets: [
        { basis: 'bar', share: 0.5 },
        { basis: 'lockout', share: 0.75 },
      ],
    };
    // Pairs of 24 to 99 kg in steps of 12.5 kg, which can be felt beside the bar that each goes with; 49 kg serves.
    const pullsN = [240, 365, 490, 615, 740, 865, 990];
    const { best, runnersUp } = prescribe({ capability, travel, aim, referenceKg: 200 }, gearOf(pullsN));
    const pullOf = ({ set }: { set: GearSet }) => set.hookups.reduce((sum, index) => sum + pullsN[index]!, 0);
    expect(pullOf(best)).toBe(490);
    expect(runnersUp).toHaveLength(5);
    expect(new Set(runnersUp.slice(0, 2).map(pullOf))).toEqual(new Set([365, 615]));
    const misfits = [best, ...runnersUp].map(({ misfit }) => misfit);
    expect(misfits).toEqual(misfits.toSorted((a, b) => a - b));
  });
});

describe('setChanges', () => {
  it('is a distance: none to itself, the same both ways, never longer than a detour', () => {
    const sets = enumerateSetups({ ...gearOf([1, 2, 3]), chains: [] });
    fc.assert(
      fc.property(fc.constantFrom(...sets), fc.constantFrom(...sets), fc.constantFrom(...sets), (a, b, c) => {
        expect(setChanges(a, a)).toBe(0);
        expect(setChanges(a, b)).toBe(setChanges(b, a));
        expect(setChanges(a, c)).toBeLessThanOrEqual(setChanges(a, b) + setChanges(b, c));
      }),
    );
  });
});
