import type { Who } from '#contract/changes/who.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { openStore } from '#store/openStore.ts';

/** A club and, with it, the file that it has to itself. */
export interface OneClub extends ClubStore {
  close(): Promise<void>;
}

/** Opens the one club of a file for somebody; in a new file it founds one. */
export async function openOneClub(file: string, who: Who): Promise<OneClub> {
  const house = await openStore(file);
  try {
    await house.found(clubId);
    return { ...(await house.forClub(clubId, who)), close: house.close };
  } catch (error) {
    await house.close();
    throw error;
  }
}

/** The id of a club in a file of its own; where several share a database each has another. */
const clubId = 'club';
