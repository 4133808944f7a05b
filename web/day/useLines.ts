import type { Prescription } from '#contract/records/prescription.ts';
import type { LifterLine } from '#web/print/RackSheetModel.ts';
export function useLines(_p: Prescription | null, _g: string) {
  return { of: (_id: string): LifterLine | null => null, rackSays: (_id: string) => '' };
}
export function solvedSentence(_p: Prescription): string {
  return '';
}
