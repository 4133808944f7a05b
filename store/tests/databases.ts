import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ClubStore } from '../ClubStore.ts';
import { houseIn } from '../houseIn.ts';
import type { Database } from '../open/Database.ts';
import { openSqlite } from '../open/sqlite.ts';
import { tester } from './openClub.ts';

/** A club of a test and the database that it is in. */
export interface TestClub {
  store: ClubStore;
  database: Database;
  dispose: () => Promise<void>;
}

/** A real database that the contract suite runs on. */
export interface TestDatabase {
  name: string;
  /** An empty club of its own; `dispose` takes it away. */
  open: () => Promise<TestClub>;
}

/** Every database that the store supports. */
export const databases: TestDatabase[] = [
  {
    name: 'SQLite file',
    async open() {
      const folder = await mkdtemp(join(tmpdir(), 'club-'));
      const database = openSqlite(join(folder, 'club.sqlite'));
      const house = await houseIn(database);
      await house.found('club');
      return {
        store: await house.forClub('club', tester),
        database,
        async dispose() {
          await house.close();
          await rm(folder, { recursive: true });
        },
      };
    },
  },
];
