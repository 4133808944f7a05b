import { planOf } from '#contract/day/planOf.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { numberLine } from '#contract/paper/numberLine.ts';
import { placeNotes } from '#contract/paper/placeNotes.ts';
import type { RackSheet } from '#contract/paper/RackSheetModel.ts';
import { rackSheets } from '#contract/paper/rackSheets.ts';
import type { Day } from '#contract/records/day.ts';
import { longDate } from '#contract/words/dayWords.ts';
import { planBasis } from '#reckon/day/planBasis.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { usePrescription } from '#web/api/usePrescription.ts';
import { useLineWords } from './useLineWords.ts';

export type SheetsOf = (partsOf?: (key: string) => number) => RackSheet[];

/** The sheets of what was worked out last for a day, by the pages of each rack; null: nothing yet, undefined: being fetched. */
export function useRackSheets(day: Day): SheetsOf | null | undefined {
  const { data: prescription } = usePrescription(day.id);
  return useSheetsOf(day, prescription);
}

/** The same of any prescription of the day. */
export function useSheetsOf(
  day: Day,
  prescription: SignedPrescription | null | undefined,
): SheetsOf | null | undefined {
  const club = useClubSettings();
  const records = useClub();
  const plan = prescription ? planOf(prescription) : null;
  const words = useLineWords(plan);
  if (prescription === undefined) return undefined;
  if (prescription === null || plan === null) return null;
  const about = {
    club: club.name,
    invented: club.invented,
    date: longDate(plan.date),
    title: day.title,
    note: day.note,
    notes: placeNotes(day),
    changedSince: plan.basis !== planBasis(records, day),
    madeBy: `${numberLine(prescription, club.timeZone)}.`,
    rackIds: records.rack.map((rack) => rack.id),
  };
  const sheetsOf: SheetsOf = (partsOf) => rackSheets(plan, about, words, partsOf);
  return sheetsOf().length === 0 ? null : sheetsOf;
}
