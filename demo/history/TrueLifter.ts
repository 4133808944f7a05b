import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import { type Chance, chanceOf } from './Chance.ts';
import type { HeightStrength } from './heightStrength.ts';

/** What an invented lifter is in one lift, apart from how strong: none of it is known to the program. */
export interface TrueLift {
  byHeight: HeightStrength;
  /** Share of body mass that rises with the bar. */
  movedShare: number;
  /** Mean bar speed at the maximum (m/s), and how much faster lighter bars go than the published line: 1 is equal. */
  speedAtMaximum: number;
  quickness: number;
  /** Exponent of reps to failure: maximum = weight x reps^exponent. */
  repExponent: number;
  /** How far the lifter is along the gain that runs with ln time when the log begins (days). */
  trainedDays: number;
}

export interface TrueLifter {
  lifter: RecordOf<'lifter'>;
  /** First part of the ids: `ilse` of `lifter-ilse`. */
  key: string;
  seed: number;
  lifts: Record<Lift, TrueLift>;
  /** What the lifter's speed device writes down: every rep, the fastest one, or there is none. */
  device: 'each' | 'fastest' | 'none';
  /** Says after hard sets how many reps were left. */
  rates: boolean;
  /** Below eighteen: no single above what three reps allow but on the platform. */
  minor: boolean;
}

/** Share of total mass that equipment adds where it helps most, by lift: invented, to fit the invented bests. */
const GEAR: Record<string, Record<Lift, number>> = {
  'lifter-saoirse': { squat: 0.14, bench: 0.2, deadlift: 0.04 },
  'lifter-emre': { squat: 0.06, bench: 0.01, deadlift: 0 },
  'lifter-dragan': { squat: 0.19, bench: 0.25, deadlift: 0.03 },
  'lifter-tevita': { squat: 0.27, bench: 0.35, deadlift: 0.05 },
};

/**
 * Moved body. Squat: de Leva 1996 (J Biomech 29:1223) with half of the thighs, 0.744 men, 0.730 women. Bench: forearms,
 * hands and half the upper arms of the same table, 0.072. Deadlift: invented.
 */
const MOVED: Record<Lift, number> = { squat: 0.74, bench: 0.072, deadlift: 0.3 };
/** Mean speed at the maximum and its spread between powerlifters (m/s): Helms et al. 2017, J Strength Cond Res 31:292. */
const SPEED_AT_MAXIMUM: Record<Lift, readonly [number, number]> = {
  squat: [0.23, 0.05],
  bench: [0.1, 0.04],
  deadlift: [0.14, 0.05],
};
const LIFTS = ['squat', 'bench', 'deadlift'] as const;
const SEED = 7000;

export function trueLifters({ lifter, bodyMass }: ClubRecords, today: string): TrueLifter[] {
  return lifter.map((record, index) => {
    const seed = SEED + 100 * index;
    const chance = chanceOf(seed);
    const since = bodyMass.find(({ lifterId }) => lifterId === record.id)!.takenOn;
    const isNew = Date.parse(today) - Date.parse(since) < 450 * 86_400_000;
    const lifts = Object.fromEntries(
      LIFTS.map((lift) => [lift, trueLift(record.id, lift, isNew, chance)]),
    ) as Record<Lift, TrueLift>;
    return {
      lifter: record,
      key: record.id.replace('lifter-', ''),
      seed,
      lifts,
      device: (['each', 'none', 'fastest'] as const)[index % 3]!,
      rates: index % 5 < 3,
      minor: yearsBetween(record.bornOn!, today) < 18,
    };
  });
}

function trueLift(lifterId: string, lift: Lift, isNew: boolean, chance: Chance): TrueLift {
  const [speed, speedSd] = SPEED_AT_MAXIMUM[lift];
  return {
    byHeight: {
      lift,
      stretch: 1 + 0.04 * chance.bell(),
      middle: 0.03 * chance.bell(),
      rebound: lift === 'squat' ? 0.395 + 0.04 * chance.bell() : 0.1 + 0.02 * chance.bell(),
      held: lift === 'squat' ? 0.09 : 0.5,
      gear: GEAR[lifterId]?.[lift] ?? 0,
    },
    movedShare: MOVED[lift],
    speedAtMaximum: Math.max(0.05, speed + 0.8 * speedSd * chance.bell()),
    quickness: Math.exp(0.08 * chance.bell()),
    repExponent: Math.min(0.15, Math.max(0.06, 0.1 + 0.02 * chance.bell())),
    trainedDays: isNew ? chance.between(90, 200) : chance.between(500, 1500),
  };
}

function yearsBetween(earlier: string, later: string): number {
  return (Date.parse(later) - Date.parse(earlier)) / (365.25 * 86_400_000);
}
