import type { RecordOf } from '#contract/records/allKinds.ts';

/** How somebody is called on the day's screen; a lifter who was removed meanwhile keeps the place for a moment. */
export function lifterName(lifters: readonly RecordOf<'lifter'>[], id: string): string {
  return lifters.find((lifter) => lifter.id === id)?.name ?? 'Somebody';
}
