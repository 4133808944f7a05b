import { z } from 'zod';
import { dayNumber } from '#contract/calendar/dayNumber.ts';
import { unitSlipSentence } from '#contract/words/unitSlipSentence.ts';
import type { UnitSlip } from '#core/strength/unitSlips.ts';

interface DatedSet {
  date: string;
  reps: number;
  made: number;
  load: { bar_kg: number; bottom_m: number; lockout_m: number };
}
interface Document {
  on: string;
  range: { from_m: number; to_m: number };
  sets: readonly DatedSet[];
}

export const findingShape = z.object({
  set: z.number().describe('Index in sets'),
  code: z.enum(['afterOn', 'notExplained', 'otherUnit', 'hardlyBelieved']),
  message: z.string(),
});
type Finding = z.input<typeof findingShape>;

/** Strength drifts and gains by the week; nobody knows what is left of it after so long without a set (assumption). */
const LONGEST_AHEAD_YEARS = 10;
const DAYS_A_YEAR = 365.25;

/** The day asked for must follow on some set, and not by decades. */
export function refuseOtherDays({ on, sets }: Document, context: z.core.$RefinementCtx): void {
  if (sets.length === 0) return;
  const newest = sets.reduce((latest, { date }) => (date <= on && date > latest ? date : latest), '');
  const refuse = (message: string) => context.addIssue({ code: 'custom', path: ['on'], message });
  if (newest === '') refuse('it must be no earlier than the first set');
  else if (dayNumber(on) - dayNumber(newest) > LONGEST_AHEAD_YEARS * DAYS_A_YEAR)
    refuse(`it must be at most ${LONGEST_AHEAD_YEARS} years after the newest set before it, of ${newest}`);
}

/** A bar that begins above the lifter's lockout, or ends below their bottom, is no part of the lift. */
export function refuseOtherHeights({ range, sets }: Document, context: z.core.$RefinementCtx): void {
  sets.forEach(({ load }, index) => {
    const refuse = (field: string, message: string) =>
      context.addIssue({ code: 'custom', path: ['sets', index, 'load', field], message });
    if (load.bottom_m >= range.to_m) refuse('bottom_m', `it must be below range.to_m (${range.to_m})`);
    if (load.lockout_m <= range.from_m)
      refuse('lockout_m', `it must be above range.from_m (${range.from_m})`);
  });
}

/** Beyond so many standard deviations a set is hardly believed (docs/model.md, "strength"). */
const HARDLY_BELIEVED = 3;

/** Every set that says nothing to the answer, or hardly anything, and why. */
export function estimateFindings(
  sets: readonly DatedSet[],
  answer: {
    on: string;
    surprises: ReadonlyMap<number, number>;
    unexplained: readonly number[];
    slips: readonly UnitSlip[];
  },
): Finding[] {
  return sets.flatMap((set, index): Finding[] => {
    const surprise = answer.surprises.get(index) ?? 0;
    const field = `sets[${index}]`;
    const what = `${set.load.bar_kg} kg, ${set.made} of ${set.reps} made`;
    if (set.date > answer.on) {
      const message = `${field} of ${set.date} is later than on (${answer.on}) and says nothing here.`;
      return [{ set: index, code: 'afterOn', message }];
    }
    if (answer.unexplained.includes(index)) {
      const message = `${field} (${what}) is explained by no strength and says nothing here.`;
      return [{ set: index, code: 'notExplained', message }];
    }
    const slip = answer.slips.find((one) => one.sets.includes(index));
    if (slip !== undefined) {
      const message = `${field} (${what}): ${unitSlipSentence(slip.looksLike, slip.sets.length)}`;
      return [{ set: index, code: 'otherUnit', message }];
    }
    if (Math.abs(surprise) <= HARDLY_BELIEVED) return [];
    const side = surprise > 0 ? 'more' : 'less';
    const message = `${field} (${what}) is far ${side} than the body mass and the other sets suggest; it counts for little.`;
    return [{ set: index, code: 'hardlyBelieved', message }];
  });
}
