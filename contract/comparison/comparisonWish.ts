import { z } from 'zod';
import { comparison } from '#contract/records/comparison.ts';
import { localDate, recordId } from '#contract/records/kind.ts';
import { lift, setupFamily } from '#contract/records/lift.ts';
import { outcome } from '#contract/records/outcome.ts';
import { LEAST_WEEKS, MOST_WEEKS, startProblem } from '#contract/records/planProblem.ts';

const wayName = z.string().trim().min(1).max(80);

const wish = z.strictObject({
  outcome,
  lift,
  /** Start and what hangs on the bar; null where no setup is looked at. */
  family: setupFamily.nullable().default(null),
  ways: z.array(wayName).length(2),
  startsOn: localDate,
  weeks: z.int().min(LEAST_WEEKS).max(MOST_WEEKS),
  /** Who was asked and is willing. */
  lifterIds: z.array(recordId).max(200),
});

/** A comparison of two ways as the coach wishes for it, before anything is drawn. */
export const comparisonWish = wish.check(refuseTogether);
export type ComparisonWish = z.output<typeof comparisonWish>;

const kept = comparison.shape.shape;

/** The same with all that the record holds beside the draw. */
export const newComparison = wish
  .extend({
    title: kept.title,
    firstMethodId: kept.firstMethodId,
    secondMethodId: kept.secondMethodId,
    note: kept.note,
    /** What the draw goes by, where the coach has thrown it before witnesses; null: chance. */
    seed: z.int().min(0).max(2_147_483_647).nullable().default(null),
  })
  .check(refuseTogether);
export type NewComparison = z.output<typeof newComparison>;

function refuseTogether({ value, issues }: z.core.ParsePayload<z.output<typeof wish>>): void {
  const { outcome: of, family, ways, startsOn, weeks } = value;
  const late = startProblem(startsOn, weeks);
  if (late !== null) issues.push({ code: 'custom', path: ['startsOn'], input: startsOn, message: late });
  if ((family === null) === (of === 'setup'))
    issues.push({
      code: 'custom',
      path: ['family'],
      input: family,
      message:
        of === 'setup'
          ? 'it must say the start and what hangs on the bar'
          : 'it must be empty where no setup is looked at',
    });
  const [first, second] = ways.map((name) => name.toLowerCase());
  if (first === second)
    issues.push({
      code: 'custom',
      path: ['ways'],
      input: ways,
      message: 'it must be two ways with different names',
    });
}
