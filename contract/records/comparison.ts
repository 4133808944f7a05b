import { z } from 'zod';
import { comparisonPlan } from './comparisonPlan.ts';
import { kind, localDate, note, recordId } from './kind.ts';
import { lift, setupFamily } from './lift.ts';
import { planProblem } from './planProblem.ts';

/** It feeds no day and no estimate: who trains by which way is the coach's to carry out. */
const ofComparison = {
  feeds: {},
  sinceArchive: 7,
  filesAt: 'club',
} as const;

/** Two ways of training compared by lot, as it was drawn before anybody started: nothing of it changes afterwards but the note. */
export const comparison = kind(
  'comparison',
  'comparison',
  {
    title: z.string().trim().min(1).max(80),
    lift,
    /** Start and what hangs on the bar, where a gym setup is looked at; else null. */
    family: setupFamily.nullable().default(null),
    /** The method of the club that the first way goes by; null: the way's name says all. */
    firstMethodId: recordId.nullable().default(null),
    secondMethodId: recordId.nullable().default(null),
    drawnOn: localDate,
    /** What `plan-comparison` answered: who was offered, pairs, seed, who got which, what could be seen. */
    planDocument: comparisonPlan,
    note,
  },
  {
    ...ofComparison,
    many: 'comparisons',
    belongsTo: {},
    uses: {
      firstMethodId: 'method',
      secondMethodId: 'method',
      'planDocument.drawn[].lifterId': 'lifter',
    },
    date: { field: 'drawnOn', isPast: true, knownFrom: true },
    isFixed: true,
    mayChange: ['note'],
  },
  ({ family, drawnOn, planDocument: plan }) => {
    const problem = planProblem(plan);
    if (problem !== null) return { field: 'planDocument', allowed: problem };
    if ((family === null) === (plan.outcome === 'setup'))
      return {
        field: 'family',
        allowed:
          family === null
            ? 'it must say the start and what hangs on the bar where a setup is looked at'
            : 'it must be empty where no setup is looked at',
      };
    return drawnOn > plan.startsOn
      ? { field: 'drawnOn', allowed: `it must be no later than the first day, ${plan.startsOn}` }
      : null;
  },
);
export type Comparison = z.infer<typeof comparison.shape>;

/** A lifter who takes part no longer, or said no after the draw: from that day on nothing counts. A reason need not be given. */
export const takenOut = kind(
  'takenOut',
  'lifter taken out of a comparison',
  {
    comparisonId: recordId,
    lifterId: recordId,
    fromOn: localDate,
    why: z.string().trim().max(200).default(''),
  },
  {
    ...ofComparison,
    many: 'lifters taken out of comparisons',
    belongsTo: { comparisonId: 'comparison', lifterId: 'lifter' },
    uses: {},
    date: { field: 'fromOn', isPast: false, knownFrom: false },
    isFixed: false,
    onlyOneOf: ['comparisonId', 'lifterId'],
  },
);
export type TakenOut = z.infer<typeof takenOut.shape>;
