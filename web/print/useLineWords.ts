import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { LineWords } from '#contract/paper/lifterLine.ts';
import { sayCaution } from '#contract/paper/sayCaution.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** The words of this view for a plan. */
export function useLineWords(plan: DayPlan | null): LineWords {
  const records = useClub();
  const { wallStepKg } = useClubSettings();
  const { mass, length } = useUnits();
  const gravityMps2 = plan?.gravityMps2 ?? STANDARD_GRAVITY_MPS2;
  return {
    disc: records.disc,
    mass,
    length,
    gravityMps2,
    wallStepKg,
    say: (caution) => sayCaution(caution, records, { mass, length, gravityMps2 }),
  };
}
