import { spawnSync } from 'node:child_process';
import { statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { newClubPath } from './newClubPath.ts';
import { openClub } from './openClub.ts';

const script = fileURLToPath(new URL('./writeWhileFull.ts', import.meta.url));

// A limit on the size of files is to a process what a full disk is: a write is refused halfway (POSIX, "ulimit", "write": EFBIG).
test.skipIf(process.platform === 'win32')(
  'where the disk takes no more, each write says so, what was acknowledged is there, and all is read',
  async () => {
    const path = newClubPath();
    await (await openClub(path)).close();
    const kilobytes = Math.ceil(statSync(path).size / 1024) + 300;
    const command = `ulimit -f ${kilobytes}; exec "$0" --import tsx "$1" "$2"`;
    const { stdout, stderr } = spawnSync('bash', ['-c', command, process.execPath, script, path], {
      encoding: 'utf8',
    });
    expect(stderr).toBe('');
    const { ids, said, read } = JSON.parse(stdout) as { ids: string[]; said: string[]; read: string[] };
    expect(ids.length).toBeGreaterThan(10);
    expect(ids.length).toBeLessThan(400);
    expect(said).toEqual([
      expect.stringMatching(/^Refusal: The club's file .* the disk is full or takes no more\. .*\.$/),
    ]);
    expect(read.toSorted()).toEqual(ids.toSorted());
    // With room again, all of it is there and more can be written.
    const store = await openClub(path);
    expect(store.trouble()).toBeNull();
    expect((await store.list('bar')).map(({ id }) => id).toSorted()).toEqual(ids.toSorted());
    await store.create('bar', { label: 'Bar with room', massKg: 20 });
    await store.close();
    const file = new Database(path, { readonly: true });
    expect(file.pragma('integrity_check', { simple: true })).toBe('ok');
    file.close();
  },
);
