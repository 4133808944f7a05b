import type { ClubStore } from '#store/ClubStore.ts';

/** What it takes to open a club once more, in a thread, where a store itself cannot travel to. */
export type ClubDoor = Pick<ClubStore, 'path'>;

export function doorOf({ path }: ClubStore): ClubDoor {
  return { path };
}

/** Opens the club for as long as `work` takes. */
export async function throughDoor<Result>(
  { path }: ClubDoor,
  work: (store: ClubStore) => Promise<Result>,
): Promise<Result> {
  const { openClubStore } = await import('#store/openClubStore.ts');
  const store = await openClubStore(path);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}
