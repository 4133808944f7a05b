import type { ClubRecords } from '#contract/records/allKinds.ts';

/**
 * Of a kept method beside which the club keeps another one of the same name and version, as two tablets could make them before: which seasons follow
 * this one. Null: it is the only one. A season names the record that it follows, so that both can be used.
 */
export function twinSentence(
  { method, season }: Pick<ClubRecords, 'method' | 'season'>,
  keptId: string | null,
): string | null {
  const own = method.find(({ id }) => id === keptId)?.methodDocument;
  const twins = method.filter(({ methodDocument: one }) => one.id === own?.id && one.version === own.version);
  if (own === undefined || twins.length < 2) return null;
  const titles = season.filter(({ methodId }) => methodId === keptId).map(({ title }) => title);
  const follow =
    titles.length === 0 ? 'no season follows this one' : `this one is followed by ${titles.join(', ')}`;
  return `The club keeps ${twins.length} methods called version ${own.version} of "${own.title}", made on two devices at once: ${follow}.`;
}
