import type { ClubStore } from '../ClubStore.ts';
import { openStore } from '../openStore.ts';

/** Who makes the changes of a test. */
export const tester = { name: 'a test' };

/** The one club of a file, as the server opens it, founded where there is none. */
export async function openClub(path: string): Promise<ClubStore & { close: () => Promise<void> }> {
  const house = await openStore(path);
  await house.found('club');
  return { ...(await house.forClub('club', tester)), close: house.close };
}
