import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ClubStore } from '../ClubStore.ts';
import { openClubStore } from '../openClubStore.ts';

/** A real database that the contract suite runs on. */
export interface TestDatabase {
  name: string;
  /** An empty club of its own; `dispose` closes it and takes its file away. */
  open: () => Promise<{ store: ClubStore; dispose: () => Promise<void> }>;
}

/** Every database that the store supports. */
export const databases: TestDatabase[] = [
  {
    name: 'SQLite file',
    async open() {
      const folder = await mkdtemp(join(tmpdir(), 'club-'));
      const store = await openClubStore(join(folder, 'club.sqlite'));
      return {
        store,
        async dispose() {
          await store.close();
          await rm(folder, { recursive: true });
        },
      };
    },
  },
];
