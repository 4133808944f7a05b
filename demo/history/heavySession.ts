import type { Lift } from '#contract/records/lift.ts';
import type { Athlete } from './Athlete.ts';
import { barFor, type Draft, outcomeOf, type Today, todayIn } from './draftSet.ts';
import { daysToMeet, weekOfBlock } from './lifeCourse.ts';
import type { TaskSetup } from './trueTask.ts';
import { platformTask, variants } from './variants.ts';
import { writtenDown } from './writtenDown.ts';

/**
 * The maximal days of an invented club: work-up sets to a heavy single, double or triple in a setup that changes from
 * week to week; straight weight in the last weeks before a meet. Bars are chosen by what the coach believes, not by what
 * is true.
 */

/** Standard deviation of what the coach believes of ln strength. */
const BELIEF_SD = 0.014;
/** Steps that are written down, as shares of the believed maximum for the reps of the day. */
const STEPS = [0.86, 0.91, 0.95] as const;
const LIGHT_STEPS = [0.78, 0.84] as const;
/** Straight weight from so many days before a meet, no heavy work from so many (Travis et al. 2021: 7 to 10). */
const STRAIGHT_DAYS = 31;
const LAST_HEAVY_DAYS = 8;
/** In the weeks before that, two setups of each lifter's own come back again and again, to see what they have gained. */
const TESTED_DAYS = 73;
/** Those who compete in equipment wear it from so many days before the meet. */
const IN_GEAR_DAYS = 20;
/** Strength lost to a hard set (ln), the share of it that is still gone at the next. */
const TIRED_BY = 0.012;
const STILL_TIRED = 0.55;
const SET_SD = 0.006;
/** How well a lifter feels what more there is (ln), and how much of it is dared. */
const FEELING_SD = 0.01;
const BOLDNESS = 0.995;
const MOST_MORE = 2;
const HEAVY_REST_S = [180, 210, 240, 300] as const;
const LIGHT_WEEK = 4;
/** Squat and deadlift share the maximal day: squat in two weeks of three. */
const LOWER_WEEKS = ['squat', 'deadlift', 'squat'] as const;
const TURNS_A_WEEK: Record<Lift, number> = { squat: 2 / 3, bench: 1, deadlift: 1 / 3 };

export function heavySession(athlete: Athlete, day: number, sort: 'lower' | 'bench', form: number): Draft[] {
  const { chance, life } = athlete;
  const toMeet = daysToMeet(life, day);
  if (toMeet <= LAST_HEAVY_DAYS) return [];
  const week = Math.floor((day - life.firstDay) / 7);
  const lift: Lift = sort === 'bench' ? 'bench' : LOWER_WEEKS[week % LOWER_WEEKS.length]!;
  const isStraight = toMeet <= STRAIGHT_DAYS;
  const all = variants(athlete, day)[lift];
  const rotation = toMeet <= TESTED_DAYS ? testsAmong(all, lift, athlete) : all;
  const turn = Math.floor(week * TURNS_A_WEEK[lift]);
  const task = isStraight
    ? platformTask(athlete, lift, toMeet > IN_GEAR_DAYS)
    : rotation[turn % rotation.length]!;
  const now = todayIn(athlete, day, lift, form);
  const isLight = weekOfBlock(life, day) === LIGHT_WEEK && toMeet > STRAIGHT_DAYS;
  const reps = athlete.minor ? 3 : chance.pick([1, 1, 1, 1, 1, 1, 2, 3, 3]);
  return workUp(now, task, reps, isLight ? LIGHT_STEPS : STEPS, !isLight && !athlete.minor);
}

function testsAmong(all: readonly TaskSetup[], lift: Lift, { seed }: Athlete): TaskSetup[] {
  const [first, second] = all;
  if (lift === 'deadlift') return [first!];
  return [first!, (seed / 100) % 2 === 0 ? second! : all.at(-1)!];
}

/** Nobody makes a best out of nothing: two steps before it, and the best itself as it is listed. */
export function bestSession(athlete: Athlete, best: Athlete['bests'][number]): Draft[] {
  const { lift, equipment, setup, day } = best;
  const task: TaskSetup = { lift, equipment, setup };
  const now = dayOfBest(athlete, best, athlete.chance.between(0.002, 0.02));
  const steps = [0.85, 0.93].map((share) =>
    oneSet(now, task, barFor(now, task, share * now.straightKg), 1, 0),
  );
  const outcome = { ...outcomeOf(now, task, setup.barKg, 1, 1), made: 1 };
  const asked = { barKg: setup.barKg, reps: 1, restS: 300, isHard: true };
  return [...steps.map(({ draft }) => draft), { ...writtenDown(now, task, asked, outcome), day }];
}

/** The day on which a best was made: it lay `below` what was there. */
function dayOfBest(
  athlete: Athlete,
  { lift, equipment, setup, day }: Athlete['bests'][number],
  below: number,
): Today {
  const now = todayIn(athlete, day, lift, 0);
  const { barShare } = outcomeOf(now, { lift, equipment, setup }, setup.barKg, 1, 1);
  const asked = now.movedKg + barShare * (now.straightKg - now.movedKg);
  return { ...now, straightKg: asked * Math.exp(below) };
}

/** Steps up; then, where the last one went easily, a little more. */
function workUp(
  now: Today,
  task: TaskSetup,
  reps: number,
  steps: readonly number[],
  goesOn: boolean,
): Draft[] {
  const { athlete, day, lift } = now;
  const { chance } = athlete;
  const own = athlete.lifts[lift];
  const believed = Math.exp(athlete.courses[lift](day) + BELIEF_SD * chance.bell());
  const drafts: Draft[] = [];
  let tired = 0;
  let last = { barKg: 0, spare: 0, missed: false };
  const lift1 = (barKg: number) => {
    const { draft, possible } = oneSet(now, task, barKg, reps, tired);
    drafts.push(draft);
    tired = tired * STILL_TIRED + TIRED_BY * Math.min(1, reps / Math.max(1, possible)) ** 2;
    last = { barKg, spare: possible / reps, missed: draft.made < reps };
  };
  for (const share of chance.happens(0.6) ? steps : steps.slice(1)) {
    if (last.missed) break;
    const barKg = barFor(now, task, believed * share * reps ** -own.repExponent);
    if (barKg > last.barKg) lift1(barKg);
  }
  const stepKg = now.straightKg > 150 ? 5 : 2.5;
  const more = goesOn ? MOST_MORE : 0;
  for (let i = 0; i < more && !last.missed; i += 1) {
    const feltKg = last.barKg * last.spare ** own.repExponent * Math.exp(FEELING_SD * chance.bell());
    if (last.barKg + stepKg > BOLDNESS * feltKg || chance.happens(0.2)) break;
    lift1(last.barKg + (last.barKg + 2 * stepKg < 0.97 * feltKg ? 2 : 1) * stepKg);
  }
  if (last.missed && chance.happens(0.2)) lift1(last.barKg);
  return drafts;
}

function oneSet(now: Today, task: TaskSetup, barKg: number, reps: number, tired: number) {
  const { chance } = now.athlete;
  const outcome = outcomeOf(now, task, barKg, reps, Math.exp(SET_SD * chance.bell() - tired));
  const isHard = outcome.possible < 3.5 * reps;
  const asked = { barKg, reps, restS: chance.pick(HEAVY_REST_S), isHard };
  return { draft: writtenDown(now, task, asked, outcome), possible: outcome.possible };
}
