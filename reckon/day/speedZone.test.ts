import { describe, expect, it } from 'vitest';
import type { PlanPlace } from '#contract/day/dayPlan.ts';
import type { Aim, Place } from '#contract/records/day.ts';
import { longLog } from '#contract/tests/longLog.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { millraceLog } from '#demo/history/millraceLog.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { estimateLift } from '#reckon/strength/estimateLift.ts';
import { solveDay } from './solveDay.ts';

type SpeedAim = Extract<Aim, { by: 'speed' }>;

const zone: SpeedAim = { by: 'speed', fromMps: 0.75, toMps: 0.85 };
const records = twoLifters();

/** Logs that show bars faster than the model's, the lighter the more. */
function estimatesOf(speedSlope: number) {
  return [110, 200].map((maxKg, i) => longLog(records, records.lifter[i]!.id, maxKg, { speedSlope }));
}

function solvedBy(aim: SpeedAim, speedSlope: number | null, byCoach: Place['byCoach'] = null) {
  const day = structuredClone(records.day[0]!);
  day.groups[0]!.aim = aim;
  for (const place of day.groups[0]!.places) place.byCoach = byCoach;
  const plan = solveDay(records, day, speedSlope === null ? [] : estimatesOf(speedSlope));
  return plan.groups[0]!.places.map(({ solved }) => solved!);
}

const zoneOf = ({ blocks }: NonNullable<PlanPlace['solved']>) => blocks.at(-1)!.expected!.zone!;
const why = ({ cautions }: NonNullable<PlanPlace['solved']>) =>
  cautions.flatMap((one) => (one.code === 'outsideZone' ? [one.why] : []));

/** Why the tall lifter with such a maximum is faster than a slow zone. */
function whyFast(maxKg: number, leastChance: number | null) {
  const day = structuredClone(records.day[0]!);
  const [group] = day.groups;
  const places = group!.places.filter(({ lifterId }) => lifterId === 'tall');
  Object.assign(group!, { aim: { ...zone, fromMps: 0.1, toMps: 0.2 }, leastChance, places });
  return why(solveDay(records, day, [longLog(records, 'tall', maxKg)]).groups[0]!.places[0]!.solved!);
}

describe('a speed zone', () => {
  it("is met by the lifter's own speed, whether the log shows fast bars or slow ones, and a faster lifter gets more to lift", () => {
    const [slow, fast] = [0.1, 0.7].map((speedSlope) => solvedBy(zone, speedSlope)) as [
      ReturnType<typeof solvedBy>,
      ReturnType<typeof solvedBy>,
    ];
    for (const solved of [...slow, ...fast]) {
      expect(zoneOf(solved).mps).toBeGreaterThanOrEqual(0.745);
      expect(zoneOf(solved).mps).toBeLessThanOrEqual(0.855);
      expect(zoneOf(solved).mps).toBe(solved.blocks.at(-1)!.effort!.firstMps);
      expect(why(solved)).toEqual([]);
    }
    fast.forEach(({ barKg }, i) => {
      expect(barKg).toBeGreaterThan(slow[i]!.barKg);
    });
  });

  it('of a whole set is met by the mean of its reps, which is slower than its first', () => {
    for (const solved of solvedBy({ ...zone, of: 'set' }, 0.5)) {
      const { effort, expected } = solved.blocks.at(-1)!;
      expect(expected!.zone).toMatchObject({ of: 'set', mps: effort!.setMps });
      expect(effort!.setMps).toBeGreaterThanOrEqual(0.745);
      expect(effort!.setMps).toBeLessThan(effort!.firstMps);
    }
  });

  it('is met with a chance that is told without a log too, and is then the smaller', () => {
    const [known, guessed] = [0.3, null].map((speedSlope) => solvedBy(zone, speedSlope).map(zoneOf));
    known!.forEach(({ chance }, i) => {
      expect(guessed![i]!.chance).toBeGreaterThan(0.02);
      expect(guessed![i]!.chance).toBeLessThan(chance);
    });
  });

  it('is told of steps at the aim only', () => {
    for (const { blocks } of solvedBy(zone, 0.3)) expect(blocks[0]!.expected!.zone).toBeNull();
  });

  it('that cannot be met says why', () => {
    const tooFast = { ...zone, fromMps: 1.8, toMps: 1.9 };
    for (const solved of solvedBy(tooFast, 0.3)) expect(why(solved)).toEqual(['lightestBar']);
    const heavy = { barKg: 90, bands: null, chains: null };
    for (const solved of solvedBy({ ...zone, fromMps: 1.2, toMps: 1.3 }, 0.3, heavy))
      expect(why(solved)).toEqual(['byHand']);
    // All the discs of the rack are too light a bar for a maximum of 600 kg; a light bar is never the reason for a slow one.
    expect(whyFast(600, null)).toEqual(['heaviestBar']);
    // A bar slower than 0.2 m/s is near a miss, and one that is nearly sure is faster.
    expect(whyFast(200, 0.95)).toEqual(['madeLighter']);
  });

  it('holds the speeds at its very ends, by the digits shown', () => {
    const byHand = { barKg: 90, bands: null, chains: null };
    const shown = Math.round(100 * zoneOf(solvedBy(zone, 0.3, byHand)[1]!).mps) / 100;
    const whys = (fromMps: number, toMps: number) =>
      why(solvedBy({ ...zone, fromMps, toMps }, 0.3, byHand)[1]!);
    expect([...whys(shown, 2), ...whys(0.1, shown)]).toEqual([]);
    expect([whys(shown + 0.01, 2), whys(0.1, shown - 0.01)]).toEqual([['byHand'], ['byHand']]);
  });

  it("that the rack's bands keep a lifter from is told so where bands of their own would be in it", () => {
    const club = millraceClub('2026-11-29');
    const day = structuredClone(club.day.find(({ id }) => id === 'day-speed-squat')!);
    day.oneSetPull = 0.9;
    const [group] = day.groups;
    group!.aim = zone;
    // One who moves fast and gets little stronger towards the top beside one who moves slowly.
    const estimates = [
      longLog(club, 'lifter-lars', 250, { slope: -0.35, speedSlope: 0.5 }),
      longLog(club, 'lifter-bastien', 273, { slope: -0.1, speedOffset: -0.05 }),
    ];
    const solve = (lifterIds: string[]) => {
      const places = group!.places.filter(({ lifterId }) => lifterIds.includes(lifterId));
      const { groups } = solveDay(club, { ...day, groups: [{ ...group!, places }] }, estimates);
      return groups[0]!.places.map(({ solved }) => solved!);
    };
    const [fast, slow] = solve(['lifter-lars', 'lifter-bastien']);
    expect(why(fast!)).toEqual([]);
    expect(why(slow!)).toEqual(['sharedBands']);
    expect(slow!.others.some(({ aimedMps }) => aimedMps! >= zone.fromMps && aimedMps! <= zone.toMps)).toBe(
      true,
    );
    const [alone] = solve(['lifter-bastien']);
    expect(why(alone!)).toEqual([]);
  });
});

it('is not evened out by a wide pair that comes in late: nobody knows to the centimetre where it begins to pull', () => {
  const today = '2026-11-29';
  const club = millraceClub(today);
  const lifterId = 'lifter-tereza';
  const estimate = estimateLift(
    club,
    millraceLog(club, today),
    { lifterId, lift: 'squat', on: today },
    populationPrior('squat'),
  );
  const day = structuredClone(club.day.find(({ id }) => id === 'day-speed-squat')!);
  day.groups[0]!.aim = zone;
  day.groups[0]!.places = day.groups[0]!.places.filter((place) => place.lifterId === lifterId);
  const { set, blocks, reference } = solveDay(club, day, [estimate!]).groups[0]!.places[0]!.solved!;
  // Choked and slack at the bottom, a pair of 83 or 102 mm would pull 40 and 45 % of the maximum at lockout; 25 % is common practice.
  const { lockout } = blocks.at(-1)!.explanation;
  expect((lockout.totalN - lockout.barN) / (9.81 * reference.kg)).toBeLessThan(0.3);
  for (const { bandPairId } of set.bands)
    expect(club.bandPair.find(({ id }) => id === bandPairId)!.widthMm).toBeLessThan(83);
});
