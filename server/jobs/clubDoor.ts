import type { ClubStore } from '#store/ClubStore.ts';

/** What it takes to open a club once more for the same person, in a thread, where a store itself cannot travel to. */
export interface ClubDoor extends Pick<ClubStore, 'path' | 'mark' | 'clubId' | 'who'> {
  /** Why nothing could be saved when the door was made: then it opens to be read alone. */
  trouble: string | null;
}

export function doorOf({ path, mark, clubId, who, trouble }: ClubStore): ClubDoor {
  return { path, mark, clubId, who, trouble: trouble() };
}

/** A door to read alone: who goes through it takes no turn at the file from who writes. */
export function readingDoorOf(store: ClubStore): ClubDoor {
  return { ...doorOf(store), trouble: store.trouble() ?? 'The club was opened to be read alone.' };
}

/** Opens the club for as long as `work` takes. */
export async function throughDoor<Result>(
  { path, mark, clubId, who, trouble }: ClubDoor,
  work: (store: ClubStore) => Promise<Result>,
): Promise<Result> {
  const { openStore } = await import('#store/openStore.ts');
  const house = await openStore(path, { mark, trouble });
  try {
    return await work(await house.forClub(clubId, who));
  } finally {
    await house.close();
  }
}
