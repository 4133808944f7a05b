import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** The sets with the heaviest bar of which a rep was made; where none was, those with the heaviest bar. */
export function topSets(sets: readonly LoggedSet[]): LoggedSet[] {
  const made = sets.filter((set) => set.made > 0);
  const among = made.length > 0 ? made : sets;
  const mostKg = Math.max(...among.map(({ setup }) => setup.barKg));
  return among.filter(({ setup }) => setup.barKg === mostKg);
}
