import type { Method } from '#contract/records/method.ts';

/** What of a method must be in view for a field to be seen, by the field's path. */
export interface ShownBy {
  phaseId: string | null;
  /** The place of the day in its phase. */
  day: number | null;
  groupId: string | null;
}

/** The phase, day and group that a path leads through. */
export function shownBy({ phases }: Method, place: string): ShownBy {
  const [phase, day, group] = ['phases', 'days', 'groups'].map((list) => {
    const at = new RegExp(`${list}\\[(\\d+)\\]`).exec(place)?.[1];
    return at === undefined ? null : Number(at);
  });
  const inPhase = phase == null ? undefined : phases[phase];
  const inDay = day == null ? undefined : inPhase?.days[day];
  const inGroup = group == null ? undefined : inDay?.groups[group];
  return { phaseId: inPhase?.id ?? null, day: day ?? null, groupId: inGroup?.id ?? null };
}
