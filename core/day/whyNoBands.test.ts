import { describe, expect, it } from 'vitest';
import { fitBand } from '#core/band/fitBand.ts';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import type { RackGear } from './Gear.ts';
import { hookupReach } from './hookupReach.ts';
import type { LifterTask } from './misfit.ts';
import { rankSetups } from './rankSetups.ts';
import { freeSearch, noBounds, type SearchRules } from './SearchRules.ts';
import { readPair } from './tests/manyPieces.ts';
import { whyNoBands } from './whyNoBands.ts';

/** A made-up lifter who holds 200 kg at every height and carries no body. */
const capability = evenCapability;
const travel = { bottomM: 0.5, lockoutM: 1, gravityMps2: 10, path: [] };
const gearOf = (pullsN: number[], ratedLoadN: number | null = null): RackGear => ({
  barKg: 20,
  collarsKg: 0,
  discs: [],
  chains: [],
  hookups: pullsN.map((forceN, i) => ({
    ...readPair(`p${i}`, { zM: 0.5, forceN: 0 }, { zM: 1, forceN }),
    ratedLoadN,
  })),
});
const percent: LifterTask['aim'] = {
  by: 'percent',
  targets: [
    { basis: 'bar', share: 0.5 },
    { basis: 'lockout', share: 0.65 },
  ],
};
const task = { capability, travel, referenceKg: 200, aim: percent };
const why = (task: LifterTask, gear: RackGear, rules: SearchRules, barKg: number) =>
  whyNoBands(task, gear, rules, barKg, rankSetups(task, gear, undefined, rules));

describe('why no bands serve', () => {
  it('says how much the lightest pair pulls and how much the aim leaves', () => {
    // 65 % of 200 kg less 100 kg of bar leave 30; the pairs pull 1600 and 1700 N, which is 160 and 170 kg.
    expect(why(task, gearOf([1700, 1600]), freeSearch, 100)).toEqual({
      reason: 'tooStrong',
      lightestKg: 160,
      roomKg: 30,
      pairId: 'p1',
    });
    // 80 % of 200 kg held is 160 kg at any height, less 130 kg of bar.
    const aim = { by: 'capability' as const, bottomShare: 0.8, lockoutShare: 0.8 };
    const found = why({ ...task, aim }, gearOf([1600]), freeSearch, 130);
    expect(found).toMatchObject({ reason: 'tooStrong', lightestKg: 160 });
    expect(found?.reason === 'tooStrong' && found.roomKg).toBeCloseTo(30, 9);
  });

  it('leaves room by the share that is asked where the way that matters ends', () => {
    // At 0.85 of the way a share that falls from 80 to 40 % is 46 %: 92 of 200 kg held, less 60 kg of bar.
    const aim = { by: 'capability' as const, bottomShare: 0.8, lockoutShare: 0.4 };
    const found = why({ ...task, aim }, gearOf([1600]), freeSearch, 60);
    expect(found?.reason === 'tooStrong' && found.roomKg).toBeCloseTo(32, 9);
  });

  it('says what keeps every pair off, and what is too weak for the least that hangs', () => {
    expect(why(task, gearOf([800, 0], 300), freeSearch, 100)).toEqual({
      reason: 'noneFits',
      slack: 1,
      stretched: 0,
      tooMuchForAnchor: 1,
    });
    const aim = { by: 'speed' as const, fromMps: 0.5, toMps: 0.6 };
    const bounds = { ...noBounds, leastBandShare: 0.25 };
    expect(why({ ...task, aim }, gearOf([100, 200]), { ...freeSearch, bounds }, 100)).toEqual({
      reason: 'tooWeak',
      strongestKg: 30,
      leastKg: 50,
    });
  });

  it('says that others need the bands where a pair would do for this lifter alone', () => {
    // 30 kg of room and a pair of 300 N, which is 30 kg.
    expect(why(task, gearOf([300]), freeSearch, 100)).toEqual({ reason: 'shared' });
  });

  it('says that there is no way to hang any where the aim asks for more at lockout than the bar', () => {
    expect(why(task, gearOf([]), freeSearch, 100)).toEqual({ reason: 'noWay' });
  });

  it('is silent where the bar alone is what the aim asks for', () => {
    // 65 % of 200 kg are 130 kg, all of it on the bar.
    for (const gear of [gearOf([]), gearOf([0]), gearOf([300])])
      expect(why(task, gear, freeSearch, 130)).toBeNull();
    // Nor does it miss what is less than a twentieth of the maximum, 10 kg.
    expect(why(task, gearOf([1600]), freeSearch, 121)).toBeNull();
    expect(why(task, gearOf([1600]), freeSearch, 119)).toMatchObject({ reason: 'tooStrong', roomKg: 11 });
    expect(why(task, gearOf([1600]), freeSearch, 120)).toMatchObject({ reason: 'tooStrong', roomKg: 10 });
    const onBar = { by: 'percent' as const, targets: [{ basis: 'bar' as const, share: 0.5 }] };
    expect(why({ ...task, aim: onBar }, gearOf([]), freeSearch, 100)).toBeNull();
    expect(why({ ...task, aim: onBar }, gearOf([300]), freeSearch, 100)).toBeNull();
  });

  it('tells a loop that is stretched too far from one that is slack', () => {
    // From a peg on the floor 0.4 m of loop are stretched to 1 m at lockout: two and a half times.
    const curves = fitBand({ restLengthM: 0.4, widthMm: 29, readings: [] });
    const peg = { xM: 0, yM: 0, zM: 0 };
    const gear = gearOf([0]);
    const rigged = [{ curves, hookup: { way: 'single' as const }, anchor: peg, count: 2 }];
    const hookups = [...gear.hookups, { ...gear.hookups[0]!, pairId: 'short', rigged, measured: null }];
    const found = { reason: 'noneFits', slack: 1, stretched: 1, tooMuchForAnchor: 0 };
    expect(why(task, { ...gear, hookups }, { ...freeSearch, safeStretch: 2.4 }, 100)).toEqual(found);
  });

  it('counts the ways that come in where a share of strength is not judged any more, and no pair that pulls before', () => {
    const aim = { by: 'capability' as const, bottomShare: 0.8, lockoutShare: 0.8 };
    const rules = { ...freeSearch, mostLateShare: 0.5 };
    // Loops of 0.5 m on a peg 0.35 m up are taut from 0.85 m on, 0.7 of the way.
    const curves = fitBand({ restLengthM: 0.5, widthMm: 45, readings: [] });
    const peg = { xM: 0, yM: 0, zM: 0.35 };
    const [slack, late] = gearOf([0, 0]).hookups;
    const rigged = [{ curves, hookup: { way: 'single' as const }, anchor: peg, count: 2 }];
    const hookups = [slack!, { ...late!, rigged, measured: null }];
    const gear = { ...gearOf([]), hookups };
    const found = { reason: 'noneFits', slack: 1, stretched: 0, tooMuchForAnchor: 0, late: 1 };
    expect(why({ ...task, aim }, gear, rules, 100)).toEqual(found);
    expect(why(task, gear, rules, 100)).toEqual({ reason: 'shared' });
    // Just stretched as far as is safe, on an anchor that just holds it, it still fits but for coming in late.
    const { stretch, anchorN } = hookupReach(hookups[1]!, travel);
    const just = { ...gear, hookups: [slack!, { ...hookups[1]!, ratedLoadN: anchorN }] };
    expect(why({ ...task, aim }, just, { ...rules, safeStretch: stretch }, 100)).toEqual(found);
    // Stretched no less, on an anchor that does not hold it, it is too much for the anchor and not slack.
    const weak = { ...just, hookups: [slack!, { ...hookups[1]!, ratedLoadN: anchorN - 1 }] };
    const overloads = { reason: 'noneFits', slack: 1, stretched: 0, tooMuchForAnchor: 1 };
    expect(why({ ...task, aim }, weak, { ...rules, safeStretch: stretch }, 100)).toEqual(overloads);
  });

  it('counts the body that rises with the bar as held already, and the most that the bounds let hang as room', () => {
    // 80 % of 200 kg held less 50 kg of body is 120 kg, less 100 kg of bar.
    const aim = { by: 'capability' as const, bottomShare: 0.8, lockoutShare: 0.8 };
    const heavier = { ...task, aim, capability: { ...capability, movedBodyKg: 50 } };
    const found = why(heavier, gearOf([300]), freeSearch, 100);
    expect(found?.reason === 'tooStrong' && found.roomKg).toBeCloseTo(20, 9);
    const speed = { by: 'speed' as const, fromMps: 0.5, toMps: 0.6 };
    const rules = { ...freeSearch, bounds: { ...noBounds, mostBandShare: 0.1 } };
    expect(why({ ...task, aim: speed }, gearOf([300]), rules, 100)).toMatchObject({ roomKg: 20 });
  });

  it('adds up the strongest pairs, no more of them than may hang at once', () => {
    const aim = { by: 'speed' as const, fromMps: 0.5, toMps: 0.6 };
    const rules = { ...freeSearch, bounds: { ...noBounds, leastBandShare: 0.25, mostPairs: 2 } };
    expect(why({ ...task, aim }, gearOf([200, 210, 220]), rules, 100)).toMatchObject({
      reason: 'tooWeak',
      strongestKg: 43,
    });
  });

  it('takes the least and the most that may hang as allowed, and names the first of pairs alike where all are too strong', () => {
    const speed: LifterTask['aim'] = { by: 'speed', fromMps: 0.5, toMps: 0.6 };
    const aimed = { ...task, aim: speed };
    // 20 and 30 kg are a quarter of 200; the pair of 30 kg hangs where just 30 may.
    expect(why(aimed, gearOf([200, 300]), within({ leastBandShare: 0.25 }), 100)).not.toMatchObject({
      reason: 'tooWeak',
    });
    expect(why(aimed, gearOf([300]), within({ mostBandShare: 0.15 }), 100)).not.toMatchObject({
      reason: 'tooStrong',
    });
    // Who wants no bands at all misses none; who leaves room for 0.8 kg hears of the weakest, of two alike the first.
    expect(why(aimed, gearOf([300]), within({ mostBandShare: 0 }), 100)).toBeNull();
    expect(why(aimed, gearOf([300, 300]), within({ mostBandShare: 0.004 }), 100)).toMatchObject({
      reason: 'tooStrong',
      pairId: 'p0',
    });
    // What a pair of 6 N pulls.
    expect(why(aimed, gearOf([6]), within({ leastBandShare: 0.25 }), 100)).toMatchObject({
      reason: 'tooWeak',
      strongestKg: 0.6,
    });
  });
});

function within(bounds: Partial<SearchRules['bounds']>): SearchRules {
  return { ...freeSearch, bounds: { ...noBounds, ...bounds } };
}
