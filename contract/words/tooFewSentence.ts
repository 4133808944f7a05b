import type { PlanCaution } from '#contract/day/explainedBar.ts';

type TooFew = Extract<PlanCaution, { code: 'tooFew' }>;

/** That racks which are used at once are to hold more of one thing than the club has. */
export function tooFewSentence(
  { sort, gearId, rackIds, has }: TooFew,
  names: Record<TooFew['sort'] | 'rack', (id: string) => string>,
): string {
  const racks = rackIds.map(names.rack);
  const at = racks.length === 1 ? racks[0] : `${racks.slice(0, -1).join(', ')} and ${racks.at(-1)} at once`;
  const pairs = sort === 'collarPair' ? (has === 1 ? ' pair' : ' pairs') : '';
  const said = has === 0 ? 'none' : `only ${has === 1 ? 'one' : has}${pairs}`;
  return `${names[sort](gearId)}: planned at ${at}, but the club has ${said}.`;
}
