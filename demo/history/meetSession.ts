import type { Athlete } from './Athlete.ts';
import { type Draft, draftSet } from './draftSet.ts';

const LIFTS = ['squat', 'bench', 'deadlift'] as const;
const STEP_KG = 2.5;

/** Openers and second attempts as shares of what was made in the end: common practice, no source. */
const OPENER: readonly [number, number] = [0.905, 0.935];
const SECOND: readonly [number, number] = [0.955, 0.975];

/** Three attempts in each lift at an invented meet; the best of those made are the listed results. */
export function meetSession(athlete: Athlete, day: number): Draft[] {
  return LIFTS.flatMap((lift) => {
    const best = athlete.bests.find((one) => one.platform && one.day === day && one.lift === lift);
    if (!best) return [];
    return attempts(athlete, best.setup.barKg).map(({ barKg, made }) =>
      draftSet({ athlete, day }, best, barKg, {
        reps: 1,
        made: made ? 1 : 0,
        platform: true,
        place: best.place,
      }),
    );
  });
}

interface Attempt {
  barKg: number;
  made: boolean;
}

function attempts({ chance }: Athlete, resultKg: number): Attempt[] {
  const below = ([low, high]: readonly [number, number], atMostKg: number) =>
    Math.min(atMostKg, Math.round((resultKg * chance.between(low, high)) / STEP_KG) * STEP_KG);
  const openerKg = below(OPENER, resultKg - 2 * STEP_KG);
  const secondKg = Math.max(openerKg + STEP_KG, below(SECOND, resultKg - STEP_KG));
  const more = STEP_KG * chance.pick(resultKg > 150 ? [1, 2, 2, 3] : [1, 1, 2]);
  const kind = chance.between(0, 1);
  // All three made; or the third one too heavy; or the result missed once and made the next time.
  if (kind < 0.42) return [made(openerKg), made(secondKg), made(resultKg)];
  if (kind < 0.85) return [made(openerKg), made(resultKg), missed(resultKg + more)];
  return [made(openerKg), missed(resultKg), made(resultKg)];
}

function made(barKg: number): Attempt {
  return { barKg, made: true };
}

function missed(barKg: number): Attempt {
  return { barKg, made: false };
}
