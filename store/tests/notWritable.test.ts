import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { newClubPath } from './newClubPath.ts';
import { openClub } from './openClub.ts';

const script = fileURLToPath(new URL('./openAndWrite.ts', import.meta.url));
// The superuser may write everywhere: there another user opens the file.
const isRoot = process.getuid?.() === 0;
const nobody = 65_534;

/** What comes of opening a club whose file and folder have these permissions. */
async function opened(fileMode: number, folderMode: number) {
  const path = newClubPath();
  await (await openClub(path)).close();
  const before = readFileSync(path);
  const folder = dirname(path);
  if (isRoot) for (const place of [path, folder]) chownSync(place, nobody, nobody);
  chmodSync(path, fileMode);
  chmodSync(folder, folderMode);
  onTestFinished(() => chmodSync(folder, 0o700));
  const { stdout } = spawnSync(process.execPath, ['--import', 'tsx', script, path], {
    encoding: 'utf8',
    ...(isRoot && { uid: nobody, gid: nobody }),
  });
  expect(readFileSync(path).equals(before)).toBe(true);
  return JSON.parse(stdout) as { read?: number; trouble?: string; written?: string; refused?: string };
}

test.skipIf(process.platform === 'win32')(
  'a file that may not be written is read, and says why nothing is saved',
  async () => {
    const { read, trouble, written } = await opened(0o400, 0o700);
    expect(read).toBe(1);
    expect(trouble).toMatch(
      /^The club's file .* this user may not write to it or to its folder, so nothing is saved\. .*\.$/,
    );
    expect(written).toBe(`Refusal: ${trouble}`);
  },
);

test.skipIf(process.platform === 'win32')(
  'a file in a folder that may not be written, or that may not be read, is refused with one sentence',
  async () => {
    const inFolder = await opened(0o600, 0o500);
    expect(inFolder.refused ?? inFolder.written).toMatch(/^Refusal: The club's file .* its folder.*\.$/);
    const unreadable = await opened(0o000, 0o700);
    expect(unreadable.refused).toMatch(/^Refusal: The club's file .* this user may not .*\.$/);
  },
);
