import type { ClubStore } from '#store/ClubStore.ts';

/** What it takes to open a club once more for the same person, in a thread, where a store itself cannot travel to. */
export type ClubDoor = Pick<ClubStore, 'path' | 'mark' | 'clubId' | 'who'>;

export function doorOf({ path, mark, clubId, who }: ClubStore): ClubDoor {
  return { path, mark, clubId, who };
}

/** Opens the club for as long as `work` takes. */
export async function throughDoor<Result>(
  { path, mark, clubId, who }: ClubDoor,
  work: (store: ClubStore) => Promise<Result>,
): Promise<Result> {
  const { openStore } = await import('#store/openStore.ts');
  const house = await openStore(path, mark);
  try {
    return await work(await house.forClub(clubId, who));
  } finally {
    await house.close();
  }
}
