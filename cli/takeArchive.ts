import type { ArchiveLook } from '#contract/archive/archiveLook.ts';
import { archiveWords } from '#contract/archive/archiveWords.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { askApp } from './askApp.ts';
import { table } from './table.ts';

/** Puts an archive in the place of the whole club, or says what it holds beside what is here. */
export async function takeArchive(
  store: ClubStore,
  body: string,
  { file, dryRun }: { file: string; dryRun: boolean },
): Promise<void> {
  const answer = await askApp(store, `/archive?${dryRun ? 'dryRun' : 'replace'}=1`, {
    method: 'POST',
    body,
    headers: { 'content-type': 'application/json' },
  });
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
