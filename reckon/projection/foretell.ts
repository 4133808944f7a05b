import { dayNumber } from '#contract/calendar/dayNumber.ts';
import type { LiftProjection } from '#contract/projection/liftProjection.ts';
import type { Equipment } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { type MeetDay, meetDay } from '#core/projection/meetDay.ts';
import type { Draw } from '#core/strength/Draw.ts';

/** How the meet is to be met. */
export interface MeetPlan {
  /** Day of the meet. */
  on: string;
  equipment: Equipment;
  taperShare: number;
}

type Known = Pick<StrengthEstimate, 'lift' | 'on' | 'bodyMassKg' | 'draws'>;

/** The meet day of one lift, from an estimate of a day before it. */
export function foretell({ lift, on: from, bodyMassKg, draws }: Known, plan: MeetPlan): MeetDay {
  return meetDay(
    draws.map((draw) => draw as unknown as Draw),
    {
      equipment: plan.equipment,
      movedBodyKg: populationShape(lift).movedBodyShare * bodyMassKg,
      weeks: (dayNumber(plan.on) - dayNumber(from)) / 7,
      taperLn: Math.log1p(plan.taperShare),
    },
  );
}

export function meetDayBelief({ barAt }: MeetDay): LiftProjection['maxKg'] {
  return {
    median: barAt(0.5),
    low50: barAt(0.25),
    high50: barAt(0.75),
    low80: barAt(0.1),
    high80: barAt(0.9),
    low95: barAt(0.025),
    high95: barAt(0.975),
  };
}
