import { EventEmitter } from 'node:events';
import type { ClubHouse } from './ClubHouse.ts';
import { checkShape } from './checks.ts';
import { kindTable } from './kindTable.ts';
import { type MayRead, mayRead } from './mayRead.ts';
import { migrate } from './migrate.ts';
import { newId } from './newId.ts';
import type { Database } from './open/Database.ts';
import { Refusal } from './Refusal.ts';
import { type ChangeNews, storeOfClub } from './storeOfClub.ts';

/** The clubs of a database, its tables brought up to date first. `rule` says what somebody may read. */
export async function houseIn(database: Database, rule: MayRead = mayRead): Promise<ClubHouse> {
  const { db } = database;
  try {
    // What is damaged is read as it stands.
    if (database.trouble() === null) await database.patiently(() => migrate(db));
  } catch (error) {
    await db.destroy();
    throw error;
  }
  const news: ChangeNews = new EventEmitter<{ change: [clubId: string, seq: number] }>().setMaxListeners(0);
  const clubs = (clubId: string) => kindTable(db, clubId, 'club');
  return {
    found: (clubId) =>
      database.write(clubId, async (trx) => {
        const club = kindTable(trx, clubId, 'club');
        if ((await club.live()).length > 0) return;
        await club.put(checkShape('club', { id: newId(), name: 'Our club' }));
      }),
    async forClub(clubId, who) {
      if ((await clubs(clubId).live()).length > 0) return storeOfClub(database, { clubId, who }, news, rule);
      throw new Refusal('missing', 'clubId', `There is no club "${clubId}" here.`);
    },
    close: () => db.destroy(),
  };
}
