import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { mondayOf } from '#contract/calendar/isoWeek.ts';
import { mostDaysAhead } from '#contract/projection/lastDayAhead.ts';
import type { Equipment } from '#contract/records/lift.ts';
import type { MaximumInWeek, StrengthAhead } from '#contract/season/strengthAhead.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { maximumAhead } from '#core/projection/maximumAhead.ts';
import { drawsIn } from '#reckon/strength/estimatedCapability.ts';

/** The bounds that a maximum lies between 80 times of 100. */
const LOW = 0.1;
const HIGH = 0.9;

/** Between what each lift's maximum lies week by week from an estimate's own day on, up to a day and no farther than anything can be said. */
export function maximaAhead(
  estimates: readonly Pick<StrengthEstimate, 'lift' | 'on' | 'bodyMassKg' | 'draws'>[],
  equipment: Equipment,
  until: string,
): StrengthAhead['lifts'] {
  return estimates.map(({ lift, on, bodyMassKg, draws }) => {
    const last = Math.min(dayNumber(until), dayNumber(on) + mostDaysAhead);
    const first = dayNumber(mondayOf(on));
    const weeks = Array.from({ length: Math.floor((last - first) / 7) + 1 }, (_, at): MaximumInWeek => {
      const barAt = maximumAhead(drawsIn({ draws }), {
        equipment,
        movedBodyKg: populationShape(lift).movedBodyShare * bodyMassKg,
        weeks: at,
      });
      return { monday: dateOfDay(first + 7 * at), lowKg: barAt(LOW), highKg: barAt(HIGH) };
    });
    return { lift, weeks };
  });
}
