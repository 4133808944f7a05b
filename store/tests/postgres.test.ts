import type { PostgresPool } from 'kysely';
import { expect, test } from 'vitest';
import { openPostgres } from '../open/postgres.ts';

test('a PostgreSQL database that orders text by the words of a language is refused and left', async () => {
  let ended = false;
  const answer = { command: 'SELECT', rowCount: 1, rows: [{ order: 'en_GB.UTF-8' }] };
  const pool = {
    connect: async () => ({ query: async () => answer, release() {} }),
    end: async () => {
      ended = true;
    },
  } as unknown as PostgresPool;
  await expect(openPostgres(pool, '')).rejects.toThrow(
    '"en_GB.UTF-8"; it must be made with the collation "C"',
  );
  expect(ended).toBe(true);
});
