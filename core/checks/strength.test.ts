import { describe, expect, it } from 'vitest';
import type { Basis } from '../day/Aim.ts';
import { explain } from '../day/explain.ts';
import { estimateHeights } from '../lifter/estimateHeights.ts';
import { lifterCapability } from '../lifter/lifterCapability.ts';
import { type Lift, populationShape } from '../lifter/populationShape.ts';
import type { Start } from '../lifter/startHeights.ts';
import { bareLoad } from '../load/bareLoad.ts';
import type { Load } from '../load/Load.ts';
import { STANDARD_GRAVITY_MPS2 } from '../load/localGravity.ts';
import type { Capability } from '../rep/Capability.ts';
import { maxBar } from '../rep/maxBar.ts';
import { simulateRep } from '../rep/simulateRep.ts';
import { heldForceN } from '../rep/strengthCurve.ts';
import data from './strength.json' with { type: 'json' };

/** Exact: NIST SP 811 (2008), appendix B. */
const KG_PER_LB = 0.45359237;
const MAX_KG = { squat: 300, bench: 150, deadlift: 250 };

/** A lifter of 1.75 m and 100 kg with a straight maximum of `MAX_KG` from `best`, now starting from `start`. */
function lifter(lift: Lift, best: Start['way'], start: Start['way']): { load: Load; capability: Capability } {
  const { bottomM, lockoutM } = estimateHeights(lift, 1.75);
  const range = { fromM: bottomM, toM: lockoutM };
  const load: Load = {
    barKg: MAX_KG[lift],
    ...bareLoad(bottomM, lockoutM),
  };
  const today = { start, range, bodyMassKg: 100 };
  return { load, ...lifterCapability(lift, today, { ...today, load, start: best, yearsAgo: 0 }) };
}

type Lifter = ReturnType<typeof lifter>;

function repAt({ load, capability }: Lifter, share: number) {
  return simulateRep({ ...load, barKg: share * load.barKg }, capability, { samples: 401 });
}

function speedAt(one: Lifter, share: number): number {
  return repAt(one, share).meanSpeedMps;
}

/** Mean speed until the bar is slowed by more than gravity: the propulsive part, as the papers count it. */
function propulsiveAt(one: Lifter, share: number): number {
  const { samples } = repAt(one, share);
  const braking = samples.findIndex(({ lifterN }) => lifterN < 0);
  const last = braking < 0 ? samples.at(-1)! : samples[braking]!;
  return (last.zM - samples[0]!.zM) / last.tS;
}

describe('default speeds against published ones', () => {
  // A tested maximum is the last of steps of about 2.5 %: on average it lies about half a step below the limit.
  it.each(['squat', 'bench', 'deadlift'] as const)(
    '%s: at a tested maximum within 2 SD of powerlifters',
    (lift) => {
      const start = lift === 'bench' ? 'paused' : 'free';
      const [mean, sd] = data.helms2017.values[lift] as [number, number];
      expect(Math.abs(speedAt(lifter(lift, start, start), 0.9875) - mean)).toBeLessThan(2 * sd);
    },
  );

  it('bench: paused, from 40 to 100 % the propulsive speed within 0.1 m/s of the published table', () => {
    const bench = lifter('bench', 'paused', 'paused');
    for (const [percent, speed] of data.gonzalezBadillo2010.values as [number, number][]) {
      expect(Math.abs(propulsiveAt(bench, percent / 100) - speed)).toBeLessThan(
        data.gonzalezBadillo2010.tolerance,
      );
    }
  });

  it('squat: from 60 to 100 % the propulsive speed within 0.12 m/s of the published line of a guided full squat', () => {
    const [a, b, c] = data.sanchezMedina2017.values as [number, number, number];
    const squat = lifter('squat', 'free', 'free');
    for (const percent of [60, 70, 80, 90, 98.75]) {
      const published = (-b - Math.sqrt(b * b - 4 * a * (c - percent))) / (2 * a);
      expect(Math.abs(propulsiveAt(squat, percent / 100) - published)).toBeLessThan(
        data.sanchezMedina2017.tolerance,
      );
    }
  });

  it('squat: the peak speed of a tested maximum within 1 SD of the published one', () => {
    const [mean, sd] = data.conceicao2016.values as [number, number];
    const { load, capability } = lifter('squat', 'free', 'free');
    const { peakSpeedMps } = simulateRep({ ...load, barKg: 0.9875 * load.barKg }, capability);
    expect(Math.abs(peakSpeedMps - mean)).toBeLessThan(sd);
  });
});

describe('how a bar is braked and what bands and chains do to it, against published experiments', () => {
  it('a paused bench press is slowed by more than gravity up to 76 % of a tested maximum, and no more beyond', () => {
    const [mean, sd] = data.sanchezMedina2010.values as [number, number];
    const bench = lifter('bench', 'paused', 'paused');
    const isBraked = (percent: number) =>
      repAt(bench, percent / 98.75).samples.some(({ lifterN }) => lifterN < 0);
    expect(isBraked(mean - sd)).toBe(true);
    expect(isBraked(mean + sd)).toBe(false);
  });

  it('a light bar comes to lockout near rest, and bands let the lifter push longer', () => {
    const squat = lifter('squat', 'free', 'free');
    const straight = simulateRep({ ...squat.load, barKg: 165 }, squat.capability, { samples: 201 });
    expect(straight.samples.at(-1)!.speedMps).toBeLessThan(0.25 * straight.peakSpeedMps);
    const lockoutN = 0.25 * 300 * STANDARD_GRAVITY_MPS2;
    const { bottomM, lockoutM } = squat.load;
    const verticalAt = [
      { zM: bottomM, forceN: 0.3 * lockoutN },
      { zM: lockoutM, forceN: lockoutN },
    ];
    // The mean load is the same: 165 kg against 116.25 kg and bands of 22.5 to 75 kg.
    const banded = simulateRep(
      { ...squat.load, barKg: 116.25, hungBands: [{ verticalAt, count: 1 }] },
      squat.capability,
      { samples: 201 },
    );
    const pushedAtTop = ({ samples }: typeof straight) =>
      samples.filter(({ s }) => s > 0.8).reduce((least, { lifterN }) => Math.min(least, lifterN), 1e9);
    expect(pushedAtTop(banded)).toBeGreaterThan(pushedAtTop(straight) + 0.1 * lockoutN);
  });

  it('a bench press of 60 % with chains up to 75 % is about a tenth faster than 75 %, in mean and in peak', () => {
    const [least, most] = data.bakerNewton2009.values as [number, number];
    const { load, capability } = lifter('bench', 'free', 'free');
    const tested = 0.9875 * load.barKg;
    const travelM = load.lockoutM - load.bottomM;
    // The last link leaves the floor at lockout; at the chest a part of the chains hangs.
    const lengthM = 1.5 * travelM;
    const chain = {
      massPerMetreKg: (0.15 * tested) / 2 / lengthM,
      lengthM,
      attachBelowBarM: load.lockoutM - lengthM,
      count: 2,
    };
    const chained = simulateRep({ ...load, barKg: 0.6 * tested, chains: [chain] }, capability);
    const straight = simulateRep({ ...load, barKg: 0.75 * tested }, capability);
    for (const pick of ['meanSpeedMps', 'peakSpeedMps'] as const) {
      const gain = 100 * (chained[pick] / straight[pick] - 1);
      expect(gain).toBeGreaterThan(least);
      expect(gain).toBeLessThan(most);
    }
  });

  it('bands added to a squat of 55 % take mean and peak speed', () => {
    const { barPercent, bandShare } = data.stevenson2010.values;
    const { load, capability } = lifter('squat', 'free', 'free');
    const barKg = (barPercent / 100) * load.barKg;
    const lockoutN = bandShare * barKg * STANDARD_GRAVITY_MPS2;
    const verticalAt = [
      { zM: load.bottomM, forceN: 0.45 * lockoutN },
      { zM: load.lockoutM, forceN: lockoutN },
    ];
    const banded = simulateRep({ ...load, barKg, hungBands: [{ verticalAt, count: 1 }] }, capability);
    const straight = simulateRep({ ...load, barKg }, capability);
    expect(banded.meanSpeedMps).toBeLessThan(straight.meanSpeedMps);
    expect(banded.peakSpeedMps).toBeLessThan(straight.peakSpeedMps);
  });
});

describe('default shapes against published facts', () => {
  it('a paused bench keeps what is left of a stretch after one second', () => {
    const free = lifter('bench', 'free', 'free').capability.rebound;
    const paused = lifter('bench', 'free', 'paused').capability.rebound;
    expect(Math.abs(paused / free - 0.5 ** (1 / data.wilson1991.values))).toBeLessThan(
      data.wilson1991.tolerance,
    );
  });

  it('a deadlifter can hold more the higher the bar (order of Beckham et al. 2012, J Trainology 1:32-35)', () => {
    const { load, capability } = lifter('deadlift', 'free', 'free');
    const held = [0, 0.25, 0.5, 0.75, 1].map((s) =>
      heldForceN(capability, load.bottomM + s * (load.lockoutM - load.bottomM)),
    );
    expect(held).toEqual([...held].sort((x, y) => x - y));
  });

  it('the body that rises in a squat is the body less shanks and feet, to one point', () => {
    const { shank, foot } = data.deLeva1996.values;
    for (const i of [0, 1]) {
      const moved = 100 - 2 * (shank[i]! + foot[i]!);
      expect(Math.abs(100 * populationShape('squat').movedBodyShare - moved)).toBeLessThan(
        data.deLeva1996.tolerance,
      );
    }
  });
});

describe('heights from stature against published body sizes', () => {
  it('bench: bar travel within one SD of raw maxima', () => {
    const [mean, sd] = data.silver2009.values as [number, number];
    for (const statureM of [1.65, 1.75, 1.85]) {
      const { bottomM, lockoutM } = estimateHeights('bench', statureM);
      expect(Math.abs(lockoutM - bottomM - mean)).toBeLessThan(sd);
    }
  });

  it('squat: the bar ends just below the shoulder; deadlift: between wrist and fingertip', () => {
    const { shoulder, wrist, fingertip, thigh } = data.drillis1966.values;
    const squat = estimateHeights('squat', 1.75);
    expect(squat.lockoutM).toBeLessThan(shoulder * 1.75);
    expect(squat.lockoutM).toBeGreaterThan((shoulder - 0.05) * 1.75);
    // The hips drop by a thigh's length at the most, the bar by the lean of the trunk more.
    expect(squat.lockoutM - squat.bottomM).toBeGreaterThan(thigh * 1.75);
    const { lockoutM } = estimateHeights('deadlift', 1.75);
    expect(lockoutM).toBeLessThan(wrist * 1.75);
    expect(lockoutM).toBeGreaterThan(fingertip * 1.75);
  });
});

// Common practice, no source.
describe("the trade's own figures", () => {
  const { practice } = data;
  const onBox = lifter('squat', 'free', 'box');
  const boxMaxKg = (aboveM: number) =>
    maxBar({ ...onBox.load, bottomM: onBox.load.bottomM + aboveM }, onBox.capability)!.barKg;
  const boxBarShare = (bandShare: number) => {
    const lockoutN = bandShare * MAX_KG.squat * STANDARD_GRAVITY_MPS2;
    // Of the tension at lockout about 45 % is left at the bottom.
    const verticalAt = [
      { zM: onBox.load.bottomM, forceN: 0.45 * lockoutN },
      { zM: onBox.load.lockoutM, forceN: lockoutN },
    ];
    return (
      maxBar({ ...onBox.load, hungBands: [{ verticalAt, count: 1 }] }, onBox.capability)!.barKg / MAX_KG.squat
    );
  };

  it('600 lb of bar and 375 lb of band at lockout is about what a 1000 lb squatter moves on a box', () => {
    const { boxBarLb, boxBandLb, squatLb } = practice.values;
    const barShare = boxBarShare(boxBandLb / squatLb);
    expect(Math.abs(barShare - boxBarLb / squatLb)).toBeLessThan(0.07);
  });

  it('bands of 250 to 440 lb at lockout are 25 to 44 % of a 1000 lb squat, by the share at lockout over that of the bar', () => {
    const { bandLb, bandPercent, squatLb, boxBarLb } = practice.values;
    const { load, capability } = onBox;
    const { bottomM, lockoutM, gravityMps2, path } = load;
    const task = {
      capability,
      travel: { bottomM, lockoutM, gravityMps2, path },
      referenceKg: squatLb * KG_PER_LB,
    };
    const percents = bandLb.map((lb) => {
      const lockoutN = lb * KG_PER_LB * STANDARD_GRAVITY_MPS2;
      const measured = { verticalAt: [bottomM, lockoutM].map((zM) => ({ zM, forceN: lockoutN })), count: 1 };
      const pair = { pairId: 'p', hookupId: 'h', anchorId: 'a', ratedLoadN: null, rigged: [], measured };
      const gear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: [pair] };
      const limits = { safeStretch: 2.5, mismatchShare: 0.05 };
      const { percentages } = explain(
        task,
        gear,
        { hookups: [0], chainPairs: [] },
        boxBarLb * KG_PER_LB,
        limits,
      );
      const shareOf = (wanted: Basis) => percentages.find(({ basis }) => basis === wanted)!.share;
      return 100 * (shareOf('lockout') - shareOf('bar'));
    });
    percents.forEach((percent, i) => expect(percent).toBeCloseTo(bandPercent[i]!, 9));
    expect(percents).toHaveLength(bandPercent.length);
  });

  it('one inch less of box is worth 4 to 8 % near parallel', () => {
    const [least, most] = practice.values.percentPerInch as [number, number];
    for (const aboveM of [-0.0254, 0, 0.0254]) {
      const percent = 100 * (boxMaxKg(aboveM + 0.0254) / boxMaxKg(aboveM) - 1);
      expect(percent).toBeGreaterThan(least);
      expect(percent).toBeLessThan(most);
    }
  });

  it('the muscles give about 15 % more against an immovable pin than against a heavy bar that moves', () => {
    const squat = lifter('squat', 'free', 'free');
    const moving = 1 - speedAt(squat, 0.9875) / squat.capability.maxSpeedMps;
    expect(Math.abs(1 / moving - practice.values.pinOverMoving)).toBeLessThan(0.04);
  });
});
