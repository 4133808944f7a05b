import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import type { RackSheet } from '#contract/paper/RackSheetModel.ts';
import type { Day } from '#contract/records/day.ts';
import { paperOf } from '#reckon/day/paperOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

export type SheetsOf = (partsOf?: (key: string) => number) => RackSheet[];

/** The sheets of a prescription of the day, by the pages of each rack; null: there is none, undefined: being fetched. */
export function useSheetsOf(
  day: Day,
  prescription: SignedPrescription | null | undefined,
): SheetsOf | null | undefined {
  const records = useClub();
  const units = useUnits();
  const plan = prescription?.document ?? null;
  if (prescription === undefined) return undefined;
  if (prescription === null || plan === null) return null;
  const sheetsOf = paperOf({ prescription, plan, records, day }, units);
  return sheetsOf().length === 0 ? null : sheetsOf;
}
