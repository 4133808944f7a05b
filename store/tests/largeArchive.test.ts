import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { createReadStream } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { nothingBeside } from '#contract/archive/archiveContent.ts';
import { archivePieces } from '#contract/archive/writeArchive.ts';
import { writeKept } from '../writeKept.ts';
import { newClubPath } from './newClubPath.ts';
import { openClub } from './openClub.ts';
import { smallClub } from './smallClub.ts';

const [planCount, planLetters, heapMb] = [24, 4_000_000, 64];

/** Plans of days that come to 96 MB, made one by one. */
function* plans() {
  for (let number = 1; number <= planCount; number += 1) {
    const document = { plan: String(number % 10).repeat(planLetters) };
    yield { id: `plan-${number}`, dayId: 'day-1', number, solvedAt: '2026-11-25T05:00:00.000Z', document };
  }
}

test('an archive larger than all the memory of the program takes the place of a club whole', async () => {
  const path = newClubPath();
  const pieces = archivePieces({ ...nothingBeside, records: smallClub(), prescriptions: plans() });
  await writeKept(`${path}.archive`, pieces);
  await (await openClub(path)).close();
  await replaceIn(path);
  const store = await openClub(path);
  const sum = await store.snapshot((content) => sumOf(archivePieces(content)));
  await store.close();
  expect(sum).toBe(await sumOf(createReadStream(`${path}.archive`)));
}, 300_000);

async function replaceIn(path: string): Promise<void> {
  const program = fileURLToPath(new URL('doOnce.mjs', import.meta.url));
  const heap = `--max-old-space-size=${heapMb}`;
  const child = spawn(process.execPath, [heap, '--import', 'tsx', program, 'replace', path], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  expect(await once(child, 'exit')).toEqual([0, null]);
}

async function sumOf(pieces: AsyncIterable<string | Buffer>): Promise<string> {
  const sum = createHash('sha256');
  for await (const piece of pieces) sum.update(piece);
  return sum.digest('hex');
}
