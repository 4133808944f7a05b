import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { createReadStream } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { nothingBeside } from '#contract/archive/archiveContent.ts';
import { archivePieces } from '#contract/archive/writeArchive.ts';
import { keptCopies, snapshotFolderOf } from '../copies/keptCopies.ts';
import { writeKept } from '../writeKept.ts';
import { newClubPath } from './newClubPath.ts';
import { openClub } from './openClub.ts';
import { smallClub } from './smallClub.ts';

const [planCount, planLetters, heapMb] = [40, 4_000_000, 96];

/** Plans of days that come to 160 MB, made one by one. */
function* plans() {
  for (let number = 1; number <= planCount; number += 1) {
    const document = { plan: String(number % 10).repeat(planLetters) };
    yield { id: `plan-${number}`, dayId: 'day-1', number, solvedAt: '2026-11-25T05:00:00.000Z', document };
  }
}

test('an archive larger than all the memory of the program takes the place of a club, and that club is kept and comes back', async () => {
  const path = newClubPath();
  const archive = `${path}.archive`;
  await writeKept(archive, archivePieces({ ...nothingBeside, records: smallClub(), prescriptions: plans() }));
  await (await openClub(path)).close();
  await replaceIn(path);
  // What is there now is as large, and is kept as an archive when the same comes once more.
  await replaceIn(path);
  const [kept] = await keptCopies(path, snapshotFolderOf(path));
  expect(kept!.kind).toBe('replaced');
  expect(await sumOf(kept!.path)).toBe(await sumOf(archive));
}, 120_000);

async function replaceIn(path: string): Promise<void> {
  const program = fileURLToPath(new URL('doOnce.mjs', import.meta.url));
  const heap = `--max-old-space-size=${heapMb}`;
  const child = spawn(process.execPath, [heap, '--import', 'tsx', program, 'replace', path], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  expect(await once(child, 'exit')).toEqual([0, null]);
}

async function sumOf(path: string): Promise<string> {
  const sum = createHash('sha256');
  for await (const piece of createReadStream(path)) sum.update(piece);
  return sum.digest('hex');
}
