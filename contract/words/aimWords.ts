import type { Aim } from '#contract/records/day.ts';
import type { AimInTurn } from '#contract/records/method.ts';

/** What loads can aim at. */
export const aimWords = [
  { value: 'percent', word: 'percentages' },
  { value: 'capability', word: 'share of strength' },
  { value: 'speed', word: 'bar speed' },
] as const satisfies readonly { value: Aim['by']; word: string }[];

/** What loads of a method can aim at: the same, week by week, and bands of their own. */
export const aimInTurnWords = [
  { value: 'barAndBands', word: 'bar, and bands by wave' },
  ...aimWords,
] as const satisfies readonly { value: AimInTurn['by']; word: string }[];

/** Whose speed lies in the zone. */
export const ofWords = [
  { value: 'firstRep', word: 'first rep' },
  { value: 'set', word: 'whole set' },
] as const satisfies readonly { value: NonNullable<Extract<Aim, { by: 'speed' }>['of']>; word: string }[];
