import { type DayPlan, dayPlan } from '#contract/day/dayPlan.ts';
import type { Prescription } from '#contract/records/prescription.ts';

/** The plan inside a prescription; null where an older program wrote one that cannot be read here. */
export function planOf(prescription: Prescription): DayPlan | null {
  const known = plans.get(prescription);
  if (known !== undefined) return known;
  const read = dayPlan.safeParse(prescription.document);
  const plan = read.success ? read.data : null;
  plans.set(prescription, plan);
  return plan;
}

/** A prescription never changes: each is read once. */
const plans = new WeakMap<Prescription, DayPlan | null>();
