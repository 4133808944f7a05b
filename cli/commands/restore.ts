import { Command } from 'commander';
import type { CopyFile } from '#store/copies/keptCopies.ts';
import { CliError } from '../CliError.ts';
import { clubOption, openClub } from '../clubFile.ts';
import { snapshotsOption } from '../snapshotsOption.ts';
import { copiesInWords } from './snapshot.ts';

interface RestoreOptions {
  club: string;
  snapshots?: string;
}

/** `restore`: a copy of the club in the place of the club. */
export function restoreCommand(): Command {
  return new Command('restore')
    .summary('put a copy of the club in the place of the club')
    .description(
      "Puts a snapshot, or what was there before another club took its place, in the place of the club. What is there now is kept as another copy; where the club's file is damaged or gone, it is moved aside and the copy takes its place whole.",
    )
    .argument(
      '<copy>',
      'its name, as "rackwright snapshot --list" shows it, or "newest" for the newest snapshot',
    )
    .addOption(snapshotsOption())
    .addOption(clubOption())
    .action(restore);
}

async function restore(which: string, { club, snapshots }: RestoreOptions): Promise<void> {
  const { keptCopies, snapshotFolderOf } = await import('#store/copies/keptCopies.ts');
  const copies = await keptCopies(club, snapshots ?? snapshotFolderOf(club));
  const copy = copies.find(({ name, kind }) => (which === 'newest' ? kind === 'snapshot' : name === which));
  if (!copy) {
    process.stderr.write(copiesInWords(copies));
    throw new CliError(`There is no copy "${which}" of ${club}.`, 2);
  }
  const { isWholeFile, moveAside, putSnapshot } = await import('#store/copies/restoreFile.ts');
  const isWhole = isWholeFile(club);
  const aside = isWhole ? null : moveAside(club);
  if (aside !== null) process.stdout.write(`The damaged file is now ${aside}.\n`);
  if (!isWhole && copy.kind === 'snapshot') putSnapshot(copy.path, club);
  else await takeIn(copy, club, isWhole);
  process.stdout.write(`The club is now as it was at ${copy.takenAt.slice(0, 16).replace('T', ' ')} UTC.\n`);
}

async function takeIn(copy: CopyFile, club: string, isWhole: boolean): Promise<void> {
  const { restoreCopy } = await import('#server/copies/restoreCopy.ts');
  const store = await openClub(club);
  try {
    const { keptAs } = await restoreCopy(store, copy);
    if (isWhole) process.stdout.write(`What was there until now is kept in ${keptAs}.\n`);
  } finally {
    await store.close();
  }
}
