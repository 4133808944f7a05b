import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { dayFrom } from '../dayFrom.ts';
import { type Athlete, athletes } from './Athlete.ts';
import { chanceOf } from './Chance.ts';
import type { Draft } from './draftSet.ts';
import { bestSession, heavySession } from './heavySession.ts';
import { isAway } from './lifeCourse.ts';
import { meetSession } from './meetSession.ts';
import { benchSession, speedLowerSession } from './repeatedSession.ts';
import { withSlips } from './slips.ts';

/** How strong an invented lifter truly was: what no program is told. */
export interface TrueStrength {
  lifterId: string;
  lift: Lift;
  /** Day of the first value; one follows for each day up to yesterday. */
  firstOn: string;
  /** The straight raw competition lift that could just be made on an ordinary day, bar in kg. */
  maxKg: number[];
}

export interface MillraceHistory {
  sets: LoggedSet[];
  truth: TrueStrength[];
  /** Ids of the sets that were written down wrongly. */
  spoiltIds: string[];
}

const LIFTS = ['squat', 'bench', 'deadlift'] as const;
const SEED = 6999;
/** Day to day (ln): a maximum repeats to 2 to 4 % (Grgic et al. 2020, Sports Med Open 6:31). */
const FORM_SD = 0.016;
const BAD_DAY_SHARE = 0.04;
const BAD_DAY = 0.035;
/** Weekdays of the four sessions, counted from today. */
const SPEED_LOWER = 1;
const HEAVY_BENCH = 2;
const HEAVY_LOWER = 4;
const OTHER_BENCH = 6;
const DAYS_OFF_AFTER_MEET = 6;
/** A best in a lift takes the place of maximal work in that lift this near. */
const BEST_CLEARS_DAYS = 2;

/**
 * Two years of the Millrace Barbell Club: every set, and the strength behind them. Everything is invented, people, places
 * and numbers. It is made by another model than the one that estimates (see strengthCourse.ts, trueTask.ts,
 * writtenDown.ts), with missed days, breaks, an injury here and there and wrong entries: an estimate or a backtest on it
 * is put to an honest test.
 */
export function millraceHistory(records: ClubRecords, today: string): MillraceHistory {
  const people = athletes(records, today);
  const drafts = people.flatMap(draftsOf).sort((a, b) => a.day - b.day);
  const listed = new Set(
    people.flatMap(({ bests }) => bests.map(({ day, ...best }) => listedKey({ ...best, day }))),
  );
  const entries = withSlips(drafts, (draft) => listed.has(listedKey(draft)), chanceOf(SEED));
  const numbers = new Map<string, number>();
  const next = (key: string) => {
    const number = (numbers.get(key) ?? 0) + 1;
    numbers.set(key, number);
    return number;
  };
  const spoiltIds: string[] = [];
  const sets = entries.map(({ draft: { day, ...set }, isSpoilt }): LoggedSet => {
    const doneOn = dayFrom(today, day);
    const id = `set-${set.lifterId.replace('lifter-', '')}-${next(set.lifterId)}`;
    if (isSpoilt) spoiltIds.push(id);
    const order = next(`${set.lifterId} ${doneOn}`);
    return { id, ...set, doneOn, order, loggedAt: loggedAt(doneOn, order) };
  });
  return { sets, truth: people.flatMap((athlete) => truthOf(athlete, today)), spoiltIds };
}

function draftsOf(athlete: Athlete): Draft[] {
  const drafts: Draft[] = [];
  for (let day = athlete.life.firstDay; day < 0; day += 1)
    drafts.push(...withBodyMass(athlete, sessionOn(athlete, day)));
  return drafts;
}

function sessionOn(athlete: Athlete, day: number): Draft[] {
  const { chance, life, bests } = athlete;
  if (life.meetDays.includes(day)) return meetSession(athlete, day);
  const own = bests.filter((best) => !best.platform && best.day === day);
  if (own.length > 0) return own.flatMap((best) => bestSession(athlete, best));
  if (isAway(life, day) || life.meetDays.some((meet) => day > meet && day <= meet + DAYS_OFF_AFTER_MEET))
    return [];
  const weekday = ((day % 7) + 7) % 7;
  if (![SPEED_LOWER, HEAVY_BENCH, HEAVY_LOWER, OTHER_BENCH].includes(weekday)) return [];
  if (!chance.happens(life.attendance)) return [];
  const form = FORM_SD * chance.fatBell() - (chance.happens(BAD_DAY_SHARE) ? BAD_DAY : 0);
  if (weekday === SPEED_LOWER) return speedLowerSession(athlete, day, form);
  if (weekday === OTHER_BENCH) return benchSession(athlete, day, form);
  const drafts = heavySession(athlete, day, weekday === HEAVY_BENCH ? 'bench' : 'lower', form);
  const isNearBest = bests.some(
    (best) => Math.abs(best.day - day) <= BEST_CLEARS_DAYS && best.lift === drafts[0]?.lift,
  );
  return isNearBest ? [] : drafts;
}

/** People step on the scale about once a week, before their first set. */
function withBodyMass({ chance, bodyOn }: Athlete, drafts: Draft[]): Draft[] {
  const [first, ...rest] = drafts;
  if (!first || !(first.platform || chance.happens(0.32))) return drafts;
  const massKg = bodyOn(first.day) * (1 + 0.004 * chance.bell());
  return [{ ...first, bodyMassKg: Math.round(10 * massKg) / 10 }, ...rest];
}

function truthOf({ lifter, lifts, life, courses, bodyOn }: Athlete, today: string): TrueStrength[] {
  const days = Array.from({ length: -life.firstDay }, (_, i) => life.firstDay + i);
  return LIFTS.map((lift) => ({
    lifterId: lifter.id,
    lift,
    firstOn: dayFrom(today, life.firstDay),
    maxKg: days.map((day) => Math.exp(courses[lift](day)) - lifts[lift].movedShare * bodyOn(day)),
  }));
}

function listedKey({
  lifterId,
  day,
  lift,
  setup,
}: Pick<Draft, 'lifterId' | 'day' | 'lift' | 'setup'>): string {
  return `${lifterId} ${day} ${lift} ${setup.barKg}`;
}

/** Five minutes a set from six in the evening. */
function loggedAt(doneOn: string, order: number): string {
  const minutes = Math.min(359, 5 * order);
  const clock = [18 + Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, '0'));
  return `${doneOn}T${clock.join(':')}:00Z`;
}
