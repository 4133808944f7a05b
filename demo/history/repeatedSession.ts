import type { Athlete } from './Athlete.ts';
import { barFor, type Draft, hasDevice, hasTablet, outcomeOf, type Today, todayIn } from './draftSet.ts';
import { daysToMeet } from './lifeCourse.ts';
import type { TaskSetup } from './trueTask.ts';
import { platformTask, variants } from './variants.ts';
import { writtenDown } from './writtenDown.ts';

/**
 * The other two days of the week: speed squats and deadlifts in waves of three weeks, and the bench press for speed or
 * for many reps in turn. A tablet keeps every set; the book before it kept one line for sets that were alike. Invented.
 */
const WAVE = [0.54, 0.58, 0.62] as const;
const DEADLIFT_WAVE = [0.66, 0.7, 0.74] as const;
const BENCH_SPEED = 0.55;
/** Sets of eight with a bar that would let a fresh lifter do so many. */
const REPEATED_OF = 14;
const LAST_DAYS = 5;
/** A set takes this much for the next (ln), more where it is near failure. */
const TIRED_BY_SET = 0.003;
const TIRED_BY_FAILURE = 0.035;

interface Plan {
  task: TaskSetup;
  share: number;
  sets: number;
  reps: number;
  restS: number;
}

export function speedLowerSession(athlete: Athlete, day: number, form: number): Draft[] {
  if (daysToMeet(athlete.life, day) <= LAST_DAYS) return [];
  const wave = Math.floor((day - athlete.life.firstDay) / 7) % WAVE.length;
  const [box, banded] = variants(athlete, day).squat;
  const hung = banded && banded.setup.bands.length > 0 ? banded : box!;
  const squat = { task: hung, share: WAVE[wave]!, sets: 8, reps: 2, restS: 60 };
  const pull = {
    task: platformTask(athlete, 'deadlift', true),
    share: DEADLIFT_WAVE[wave]!,
    sets: 1,
    reps: 1,
    restS: 60,
  };
  return [
    ...setsOf(todayIn(athlete, day, 'squat', form), squat),
    ...(athlete.chance.happens(0.5) ? setsOf(todayIn(athlete, day, 'deadlift', form), pull) : []),
  ];
}

export function benchSession(athlete: Athlete, day: number, form: number): Draft[] {
  if (daysToMeet(athlete.life, day) <= LAST_DAYS) return [];
  const week = Math.floor((day - athlete.life.firstDay) / 7);
  const [straight, banded] = variants(athlete, day).bench;
  const touch = {
    ...straight!,
    setup: { ...straight!.setup, start: { way: 'free' as const, heightM: null } },
  };
  const plan =
    week % 2 === 0
      ? { task: touch, share: REPEATED_OF ** -athlete.lifts.bench.repExponent, sets: 4, reps: 8, restS: 150 }
      : {
          task: banded?.setup.bands.length ? banded : straight!,
          share: BENCH_SPEED,
          sets: 8,
          reps: 3,
          restS: 45,
        };
  return setsOf(todayIn(athlete, day, 'bench', form), plan);
}

/** `share` is of what the coach believes to be the straight maximum, as a bar. */
function setsOf(now: Today, { task, share, sets, reps, restS }: Plan): Draft[] {
  const { athlete, day, lift, movedKg } = now;
  const { chance } = athlete;
  const believedKg = Math.exp(athlete.courses[lift](day) + 0.015 * chance.bell()) - movedKg;
  const barKg = barFor(now, task, movedKg + share * believedKg);
  let tired = 0;
  const all = Array.from({ length: sets }, () => {
    const outcome = outcomeOf(now, task, barKg, reps, Math.exp(0.006 * chance.bell() - tired));
    const nearness = Math.min(1, reps / Math.max(1, outcome.possible));
    tired += TIRED_BY_SET + TIRED_BY_FAILURE * nearness ** 4;
    const asked = { barKg, reps, restS, isHard: outcome.possible < reps + 5 };
    return writtenDown(now, task, asked, outcome);
  });
  if (hasTablet(day) && hasDevice(athlete, day)) return all;
  return all.slice(0, 1);
}
