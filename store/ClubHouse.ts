import type { Who } from '#contract/changes/who.ts';
import type { ClubStore } from './ClubStore.ts';

/** An open database and the clubs that it holds. */
export interface ClubHouse {
  /** Founds a club without a name of its own yet; one that is there stays as it is. */
  found(clubId: string): Promise<void>;
  /** One club as one person keeps it: what they write bears their name, and they read what they may. Refused where it is not there. */
  forClub(clubId: string, who: Who): Promise<ClubStore>;
  close(): Promise<void>;
}
