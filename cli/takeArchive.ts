import { Readable } from 'node:stream';
import type { ArchiveLook } from '#contract/archive/archiveLook.ts';
import { archiveWords } from '#contract/archive/archiveWords.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { askApp } from './askApp.ts';
import { table } from './table.ts';

/** Puts an archive in the place of the whole club, or says what it holds beside what is here. */
export async function takeArchive(
  store: ClubStore,
  given: Readable,
  { file, dryRun }: { file: string; dryRun: boolean },
): Promise<void> {
  // A stream is sent before anything is answered (Fetch Standard, "half").
  const request: RequestInit & { duplex: 'half' } = {
    method: 'POST',
    body: Readable.toWeb(given) as ReadableStream,
    duplex: 'half',
    headers: { 'content-type': 'application/json' },
  };
  const answer = await askApp(store, `/archive?${dryRun ? 'dryRun' : 'replace'}=1`, request);
  if (dryRun) {
    const { archive, here } = (await answer.json()) as { archive: ArchiveLook; here: ArchiveLook };
    process.stdout.write(`${looked(file, archive, here)}\n`);
    return;
  }
  const { keptAs } = (await answer.json()) as { keptAs: string };
  process.stdout.write(`The club is now that of the archive. What it was before is kept in ${keptAs}.\n`);
}

function looked(file: string, archive: ArchiveLook, here: ArchiveLook): string {
  const { isOf, older, counts, replaced } = archiveWords(file, archive, here, (date) => date);
  return [
    older === null ? isOf : `${isOf} ${older}`,
    '',
    table(
      ['', 'in the file', 'here now'],
      counts.map((line) => [line.kind, line.inFile, line.here]),
    ),
    '',
    replaced,
  ].join('\n');
}
