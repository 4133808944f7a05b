import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Pool } from 'pg';
import { afterAll } from 'vitest';
import type { ClubStore } from '../ClubStore.ts';
import { houseIn } from '../houseIn.ts';
import type { Database } from '../open/Database.ts';
import { openPostgres } from '../open/postgres.ts';
import { openSqlite } from '../open/sqlite.ts';
import { tester } from './openClub.ts';
import { type ThrowAwayPostgres, throwAwayPostgres } from './throwAwayPostgres.ts';

/** A club of a test and the database that it is in. */
export interface TestClub {
  store: ClubStore;
  database: Database;
  dispose: () => Promise<void>;
}

/** A real database that the contract suite runs on. */
export interface TestDatabase {
  name: string;
  /** Whether text may hold the character NUL. */
  takesNul: boolean;
  /** An empty club of its own; `dispose` takes it away. */
  open: () => Promise<TestClub>;
}

const server = await throwAwayPostgres();

/** Every database that the store can stand on and this machine has; where one is missing, the other's name says so. */
export const databases: TestDatabase[] = [
  {
    name: server ? 'SQLite' : 'SQLite alone, no PostgreSQL here',
    takesNul: true,
    async open() {
      const folder = await mkdtemp(join(tmpdir(), 'club-'));
      const database = await openSqlite(join(folder, 'club.sqlite'));
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
  ...(server ? [await postgres(server)] : []),
];

/** One database for all tests of a file, as of a server with many clubs: each test has a club of its own in it. */
async function postgres({ folder, user, stop }: ThrowAwayPostgres): Promise<TestDatabase> {
  const files = await mkdtemp(join(tmpdir(), 'club-'));
  const pool = new Pool({ host: folder, user, database: 'postgres' });
  const database = await openPostgres(pool, join(files, 'postgres'));
  const house = await houseIn(database);
  afterAll(async () => {
    await house.close();
    await stop();
    await rm(files, { recursive: true });
  });
  let clubs = 0;
  return {
    name: 'PostgreSQL',
    takesNul: false,
    async open() {
      clubs += 1;
      const clubId = `club ${clubs}`;
      await house.found(clubId);
      return { store: await house.forClub(clubId, tester), database, dispose: async () => {} };
    },
  };
}
