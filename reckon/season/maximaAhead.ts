import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { mondayOf } from '#contract/calendar/isoWeek.ts';
import { mostDaysAhead } from '#contract/projection/lastDayAhead.ts';
import type { Equipment } from '#contract/records/lift.ts';
import type { KgRange, MaximumInWeek, StrengthAhead } from '#contract/season/strengthAhead.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { maximumAhead } from '#core/projection/maximumAhead.ts';
import type { Draw } from '#core/strength/Draw.ts';
import { heldLn } from '#core/strength/heldLn.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import type { LoadRecords } from '#reckon/lifter/assembleLoad.ts';
import { drawsIn } from '#reckon/strength/estimatedCapability.ts';
import { competitionSetup, riggingOf } from '#reckon/strength/riggingOf.ts';

/** The bounds that a maximum lies between 80 times of 100. */
const LOW = 0.1;
const HIGH = 0.9;

/**
 * Between what each lift's maximum, and what can be held at both ends of the full range, lie week by week from an estimate's own day on, up to a day and no farther than
 * anything can be said.
 */
export function maximaAhead(
  records: LoadRecords,
  estimates: readonly Pick<StrengthEstimate, 'lifterId' | 'lift' | 'on' | 'bodyMassKg' | 'draws'>[],
  equipment: Equipment,
  until: string,
): StrengthAhead['lifts'] {
  return estimates.map((estimate) => {
    const { lift, on, bodyMassKg } = estimate;
    const draws = drawsIn(estimate);
    const last = Math.min(dayNumber(until), dayNumber(on) + mostDaysAhead);
    const first = dayNumber(mondayOf(on));
    const movedBodyKg = populationShape(lift).movedBodyShare * bodyMassKg;
    const rangeIn = (weeks: number, ratiosLn?: readonly number[]): KgRange => {
      const barAt = maximumAhead(draws, { equipment, movedBodyKg, weeks }, ratiosLn);
      return { lowKg: barAt(LOW), highKg: barAt(HIGH) };
    };
    const held = heldRatios(records, estimate, draws);
    const weeks = Array.from(
      { length: Math.floor((last - first) / 7) + 1 },
      (_, at): MaximumInWeek => ({
        monday: dateOfDay(first + 7 * at),
        ...rangeIn(at),
        held: held && { bottom: rangeIn(at, held.bottom), lockout: rangeIn(at, held.lockout) },
      }),
    );
    return { lift, weeks };
  });
}

/** By draw, ln of what can be held at each end of the full range over the straight maximum; null where the lifter's heights are not known. */
function heldRatios(
  records: LoadRecords,
  { lifterId, lift, on }: Pick<StrengthEstimate, 'lifterId' | 'lift' | 'on'>,
  draws: readonly Draw[],
) {
  const reference = assembledOrNull(() => riggingOf(records, lifterId, lift, competitionSetup(lift), on));
  if (reference === null) return null;
  const each = draws.map((draw) => heldLn(draw, lift, reference));
  return { bottom: each.map((lnAt) => lnAt(0)), lockout: each.map((lnAt) => lnAt(1)) };
}
