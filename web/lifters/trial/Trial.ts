import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Setup, Start } from '#contract/records/lift.ts';
import { type LifterRecords, straightBest } from '../lifterRecords.ts';

/** A setup tried on a lifter, nowhere kept. */
export interface Trial extends Setup {
  lifterId: string;
  lift: Lift;
}

/** Share of the best that a first trial puts on the bar: light enough for bands on top (assumption). */
const firstShare = 0.55;

/** Of a lifter nobody knows anything of: a usual bar and nothing on it (kg). */
const emptyBarKg = 20;

/** Steps in which bar and start are dragged. */
export const barStepKg = 0.5;
export const startStepM = 0.005;

/** Lowest and highest start that dragging reaches (m). */
export function startReachM({ way }: Start): [number, number] {
  if (way === 'box') return [0.2, 0.6];
  if (way === 'pins') return [0.2, 1.9];
  return [0, 0.4];
}

/** Something to begin turning from: the squat on the first rack with a hookup, with one light pair of bands. */
export function firstTrial(own: LifterRecords, club: ClubRecords): Trial {
  const lift: Lift = 'squat';
  const hookup =
    club.hookup.find((candidate) => candidate.lifts.includes(lift) && candidate.way === 'doubled') ??
    club.hookup[0];
  const pairs = club.bandPair.filter((pair) => pair.retiredOn === null).sort((a, b) => a.widthMm - b.widthMm);
  const middle = pairs[Math.floor((pairs.length - 1) / 3)];
  const best = straightBest(own.best, lift);
  return {
    lifterId: own.lifter.id,
    lift,
    rackId: hookup?.rackId ?? club.rack[0]?.id ?? null,
    start: { way: 'free', heightM: null },
    barKg: best ? Math.round((best.setup.barKg * firstShare) / 2.5) * 2.5 : emptyBarKg,
    bands: best && hookup && middle ? [{ bandPairId: middle.id, hookupId: hookup.id }] : [],
    chains: [],
  };
}
