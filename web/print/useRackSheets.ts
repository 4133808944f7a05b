import type { Day } from '#contract/records/day.ts';
import type { RackSheet } from './RackSheetModel.ts';
export function useRackSheets(_day: Day): RackSheet[] | null {
  return null;
}
