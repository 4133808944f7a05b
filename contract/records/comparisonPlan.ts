import { z } from 'zod';
import { outcome } from './outcome.ts';

const n = z.number();
const count = z.int();
const date = z.iso.date();

/** Why somebody is not drawn. Nobody below `adultAge` ever is, nor anybody whose age is not known. */
const notDrawnReason = z.enum(['takenOut', 'ageNotKnown', 'minor', 'restricted']);
export type NotDrawnReason = z.infer<typeof notDrawnReason>;

/** What could be seen of a comparison, told before anybody starts. Percentages are of the load. */
const foretold = z.strictObject({
  /** A true difference up to the end that four of five such comparisons would show; null: none would. */
  detectable_percent: n.nullable(),
  /** What the simulation itself is off by, either way, with 95 %. */
  error_percent: n.nullable(),
  plays: count,
  leaving_percent: n,
  /** All that lifters usually gain in that time. */
  usualGain_percent: n,
  usualGainKnown: z.enum(['club', 'published']),
  /** How often a true difference of half of that would be seen, 0 to 1. */
  chanceToSeeHalf: n,
  outlook: z.enum(['canBeSeen', 'onlyGreat', 'cannotBeSeen']),
  /** About how many lifters would show a difference of half a usual gain. */
  liftersNeeded: count.nullable(),
});

/** A comparison of two ways as it is planned, drawn and foretold. */
export const comparisonPlan = z.strictObject({
  outcome,
  ways: z.array(z.string()).length(2),
  startsOn: date,
  endsOn: date,
  weeks: count,
  testOn: z.array(date),
  seed: count,
  /** Who gets which way; lifters of one pair have its number, from 1. */
  drawn: z.array(
    z.strictObject({ lifterId: z.string(), name: z.string(), way: z.string(), pair: count.nullable() }),
  ),
  notDrawn: z.array(z.strictObject({ lifterId: z.string(), name: z.string(), reason: notDrawnReason })),
  /** How the club's tests scatter: gains between lifters, and a single test. */
  scatter: z.strictObject({
    known: z.enum(['measured', 'assumed']),
    gainSd_percentAWeek: n,
    testSd_percent: n,
    lifters: count,
    tests: count,
  }),
  foretold,
});
export type ComparisonPlan = z.infer<typeof comparisonPlan>;
