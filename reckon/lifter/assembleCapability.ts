import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { KnownHow } from '#contract/records/knownHow.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { type LifterCapability, lifterCapability } from '#core/lifter/lifterCapability.ts';
import type { Capability } from '#core/rep/Capability.ts';
import type { SpeedCorrection } from '#core/rep/expectedSpeed.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { speedCorrectionOf } from '#core/strength/speedCorrectionOf.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { assembleHeights } from './assembleHeights.ts';
import { assembleLoad, type LoadRecords } from './assembleLoad.ts';

export type CapabilityRecords = LoadRecords & Pick<ClubRecords, 'best' | 'bodyMass'>;

/** A lifter's capability with where it comes from. */
export interface AssembledCapability {
  capability: Capability;
  /** What measured speeds are beyond the model's: by the log, without one as they are for most lifters. */
  speedCorrection: SpeedCorrection;
  strengthSdLn: number;
  /** `estimated` through a best; `assumed` where the lifter has none. */
  known: KnownHow;
  /** The best that it rests on. */
  best: RecordOf<'best'> | null;
  bodyMassKg: number;
  bodyMassKnown: KnownHow;
  /** The estimate from the whole log that it rests on instead of one best; null where there is none. */
  estimate: StrengthEstimate | null;
}

const ASSUMED_BODY_MASS_KG = 75;
/** Without any best: a careful beginner's maximum as a share of body mass (assumption), and its wide spread. */
const ASSUMED_MAX_SHARE: Record<Lift, number> = { squat: 0.8, bench: 0.5, deadlift: 1 };
const ASSUMED_SD_LN = 0.35;
const MS_A_YEAR = 365.25 * 86_400_000;

/** The force that a lifter can push with at each height of a lift, from one start, on one day. */
export function assembleCapability(
  records: CapabilityRecords,
  lifterId: string,
  lift: Lift,
  start: Start,
  on: string,
  benchPadM: number | null = null,
): AssembledCapability {
  const { massKg: bodyMassKg, known: bodyMassKnown } = bodyMassOf(records, lifterId, on);
  const { range } = assembleHeights(records, lifterId, lift, start, on, benchPadM);
  const today = { start: start.way, range, bodyMassKg };
  const best = bestToGoBy(records, lifterId, lift, on);
  const result = through(records, lifterId, lift, today, best, on);
  return {
    capability: result.capability,
    speedCorrection: speedCorrectionOf(populationPrior(lift).mean),
    strengthSdLn: best ? result.strengthSdLn : ASSUMED_SD_LN,
    known: best ? 'estimated' : 'assumed',
    best,
    bodyMassKg,
    bodyMassKnown,
    estimate: null,
  };
}

/** The best of the last year with straight weight from a free start if there is one, else any; the lifter's own equipment first. */
export function bestToGoBy(
  records: Pick<ClubRecords, 'best' | 'lifter'>,
  lifterId: string,
  lift: Lift,
  on: string,
): RecordOf<'best'> | null {
  const { equipment } = recordById(records, 'lifter', lifterId);
  const done = records.best.filter(
    (best) => best.lifterId === lifterId && best.lift === lift && best.doneOn <= on,
  );
  const rank = (best: RecordOf<'best'>) => [
    best.equipment === equipment ? 1 : 0,
    yearsBetween(best.doneOn, on) <= 1 ? 1 : 0,
    isStraight(best) ? 1 : 0,
    isStraight(best) ? best.setup.barKg : Date.parse(best.doneOn),
  ];
  return done.reduce<RecordOf<'best'> | null>(
    (leader, best) => (leader === null || outranks(rank(best), rank(leader)) ? best : leader),
    null,
  );
}

/** Straight weight from a free start. */
export function isStraight({ setup }: Pick<RecordOf<'best'>, 'setup'>): boolean {
  const { start, bands, chains } = setup;
  return (start.way === 'free' || start.way === 'paused') && bands.length === 0 && chains.length === 0;
}

function through(
  records: CapabilityRecords,
  lifterId: string,
  lift: Lift,
  today: Parameters<typeof lifterCapability>[1],
  best: RecordOf<'best'> | null,
  on: string,
): LifterCapability {
  const doneOn = best?.doneOn ?? on;
  const setup = best?.setup ?? {
    rackId: null,
    start: { way: 'free' as const, heightM: null },
    barKg: ASSUMED_MAX_SHARE[lift] * today.bodyMassKg,
    bands: [],
    chains: [],
  };
  const { load, heights } = assembleLoad(records, { lifterId, lift, setup, on: doneOn });
  return lifterCapability(lift, today, {
    load,
    start: setup.start.way,
    range: heights.range,
    bodyMassKg: bodyMassOf(records, lifterId, doneOn).massKg,
    yearsAgo: yearsBetween(doneOn, on),
  });
}

/** The newest weighing up to a day, else the first one; assumed where there is none. */
export function bodyMassOf(
  records: Pick<ClubRecords, 'bodyMass'>,
  lifterId: string,
  on: string,
): { massKg: number; known: KnownHow } {
  const byDate = records.bodyMass
    .filter((mass) => mass.lifterId === lifterId)
    .sort((a, b) => a.takenOn.localeCompare(b.takenOn));
  const then = byDate.filter(({ takenOn }) => takenOn <= on).at(-1) ?? byDate[0];
  return then
    ? { massKg: then.massKg, known: 'measured' }
    : { massKg: ASSUMED_BODY_MASS_KG, known: 'assumed' };
}

function yearsBetween(earlier: string, later: string): number {
  return (Date.parse(later) - Date.parse(earlier)) / MS_A_YEAR;
}

function outranks(a: readonly number[], b: readonly number[]): boolean {
  const differs = a.findIndex((value, i) => value !== b[i]);
  return differs >= 0 && a[differs]! > b[differs]!;
}
