import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { PlanWords } from '#contract/day/planWords.ts';
import type { LengthUnit, MassUnit } from '#contract/words/viewUnits.ts';
import type { LineWords } from './lifterLine.ts';
import { sayCaution } from './sayCaution.ts';

/** What the lines of a plan are written with, in the units of a view. */
export function lineWords(
  { gravityMps2 }: Pick<DayPlan, 'gravityMps2'>,
  { discs, wallStepKg, gear }: PlanWords,
  units: { mass: MassUnit; length: LengthUnit },
): LineWords {
  const view = { ...units, gravityMps2 };
  return { ...view, disc: discs, wallStepKg, say: (caution) => sayCaution(caution, gear, view) };
}
