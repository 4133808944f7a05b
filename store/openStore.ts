import type { ClubHouse } from './ClubHouse.ts';
import { houseIn } from './houseIn.ts';
import { type HowOpened, openSqlite } from './open/sqlite.ts';

/** Opens a file of clubs, or makes a new one without any, and brings its tables up to date. With a `mark` it must be that very file. */
export async function openStore(file: string, how: HowOpened = {}): Promise<ClubHouse> {
  return houseIn(await openSqlite(file, how));
}
