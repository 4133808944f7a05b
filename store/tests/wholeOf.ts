import type { ArchiveContent } from '#contract/archive/archiveContent.ts';
import type { Long } from '#contract/records/long.ts';
import type { ClubStore } from '../ClubStore.ts';

/** All that a club holds, its long lists too. */
export function wholeOf(store: ClubStore) {
  return store.snapshot(listsOf);
}

/** The same of an archive's content while it lasts. */
export async function listsOf({ prescriptions, takenPlans, sets, ...rest }: ArchiveContent) {
  return {
    ...rest,
    prescriptions: await listed(prescriptions),
    takenPlans: await listed(takenPlans),
    sets: await listed(sets),
  };
}

async function listed<Item>(long: Long<Item>): Promise<Item[]> {
  const items: Item[] = [];
  for await (const item of long) items.push(item);
  return items;
}
