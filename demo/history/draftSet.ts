import type { Lift } from '#contract/records/lift.ts';
import { type LoggedSet, nothingSeen } from '#contract/records/loggedSet.ts';
import type { Athlete } from './Athlete.ts';
import { askedKg, type TaskSetup, totalFor } from './trueTask.ts';

/** A set that was done, before it is numbered and dated. */
export type Draft = Omit<LoggedSet, 'id' | 'order' | 'loggedAt' | 'doneOn'> & { day: number };

/** What a lifter is up to today in one lift. */
export interface Today {
  athlete: Athlete;
  day: number;
  lift: Lift;
  /** Straight total mass, raw, that can just be lifted (kg). */
  straightKg: number;
  movedKg: number;
  /** By how much bars read too fast today (m/s). */
  speedOffset: number;
}

/** How a set went. */
export interface Outcome {
  made: number;
  /** Reps that were possible, in parts of one. */
  possible: number;
  /** The straight bar that is as hard, over today's straight maximum. */
  barShare: number;
}

const LEAST_SHARE = 0.3;
const MOST_POSSIBLE = 40;
/** Tablets came to the racks so many days ago; before that a book by the chalk took one line for alike sets. */
const TABLET_DAY = -230;
/** Speed devices were bought this many days ago. */
const DEVICE_DAY = -480;
const STEP_KG = 2.5;

export function hasTablet(day: number): boolean {
  return day >= TABLET_DAY;
}

export function hasDevice({ device }: Athlete, day: number): boolean {
  return device !== 'none' && day >= DEVICE_DAY;
}

/** Strength that day: the long course and the day's form (ln). */
export function todayIn(athlete: Athlete, day: number, lift: Lift, form: number): Today {
  return {
    athlete,
    day,
    lift,
    straightKg: Math.exp(athlete.courses[lift](day) + form),
    movedKg: athlete.lifts[lift].movedShare * athlete.bodyOn(day),
    speedOffset: 0.015 * athlete.chance.bell(),
  };
}

/** The loadable bar that asks for a share of a straight total mass. */
export function barFor({ athlete, movedKg }: Today, task: TaskSetup, straightKg: number): number {
  const barKg = totalFor(athlete.task(task), straightKg) - movedKg;
  return Math.max(20, Math.round(barKg / STEP_KG) * STEP_KG);
}

/**
 * Reps possible by a power law, as in Lombardi 1989: maximum = weight x reps^0.10, with an exponent of each lifter's own.
 * `fresh`: share of strength that is there.
 */
export function outcomeOf(now: Today, task: TaskSetup, barKg: number, reps: number, fresh: number): Outcome {
  const { athlete, lift, movedKg } = now;
  const asked = askedKg(athlete.task(task), barKg + movedKg);
  const barShare = (asked - movedKg) / (now.straightKg * fresh - movedKg);
  const { repExponent } = athlete.lifts[lift];
  const possible =
    barShare > 1 ? 0 : Math.min(MOST_POSSIBLE, Math.max(LEAST_SHARE, barShare) ** (-1 / repExponent));
  return { made: Math.min(reps, Math.floor(possible)), possible, barShare };
}

export function draftSet(
  { athlete, day }: Pick<Today, 'athlete' | 'day'>,
  { lift, equipment, setup }: TaskSetup,
  barKg: number,
  done: Pick<Draft, 'reps' | 'made'> & Partial<Draft>,
): Draft {
  return {
    lifterId: athlete.lifter.id,
    day,
    lift,
    equipment,
    setup: { ...setup, barKg },
    ...nothingSeen,
    platform: false,
    place: 'Millrace',
    dayId: null,
    planNumber: null,
    note: '',
    struckAt: null,
    ...done,
  };
}
