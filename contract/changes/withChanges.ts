import type { ClubRecords, KindName } from '#contract/records/allKinds.ts';
import type { ClubChanges, ClubState } from './clubState.ts';

/** The club as it now is, from an earlier state of it and what was done since. Lists that nothing was done to stay the same objects. */
export function withChanges(earlier: ClubState, { put, removed, seq, madeAt }: ClubChanges): ClubState {
  const lists: Partial<Record<KindName, readonly { id: string }[]>> = {};
  for (const kind of Object.keys(earlier.records) as KindName[]) {
    const news = put[kind] ?? [];
    const gone = new Set([...(removed[kind] ?? []), ...news.map(({ id }) => id)]);
    if (gone.size === 0) continue;
    const kept = earlier.records[kind].filter(({ id }) => !gone.has(id));
    lists[kind] = [...kept, ...news].toSorted((a, b) => byCodePoint(a.id, b.id));
  }
  return { records: { ...earlier.records, ...(lists as Partial<ClubRecords>) }, seq, madeAt };
}

/** The order in which the store lists ids: that of their bytes in UTF-8, which is that of their code points. */
function byCodePoint(a: string, b: string): number {
  const [left, right] = [codePoints(a), codePoints(b)];
  const at = left.findIndex((point, i) => point !== right[i]);
  return at < 0 ? left.length - right.length : left[at]! - (right[at] ?? -1);
}

function codePoints(text: string): number[] {
  return Array.from(text, (sign) => sign.codePointAt(0)!);
}
