import { Command } from 'commander';
import type { CopyFile } from '#store/copies/keptCopies.ts';
import { CliError } from '../CliError.ts';
import { clubOption, openClub, terminal } from '../clubFile.ts';
import { snapshotsOption } from '../snapshotsOption.ts';
import { whyNotOpenClub } from '../whyNotOpenClub.ts';
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
  const { finishRestore, isWholeFile } = await import('#store/copies/restoreFile.ts');
  const kept = await inWords(club, async () => {
    await finishRestore(club);
    return isWholeFile(club) ? takeIn(copy, club) : takePlace(copy, club);
  });
  if (kept !== null) process.stdout.write(`${kept}\n`);
  process.stdout.write(`The club is now as it was at ${copy.takenAt.slice(0, 16).replace('T', ' ')} UTC.\n`);
}

/** Says what became of the club that was there. */
async function takeIn(copy: CopyFile, club: string): Promise<string> {
  const { restoreCopy } = await import('#server/copies/restoreCopy.ts');
  const store = await openClub(club);
  try {
    const { keptAs } = await restoreCopy(store, copy);
    return `What was there until now is kept in ${keptAs}.`;
  } finally {
    await store.close();
  }
}

async function takePlace(copy: CopyFile, club: string): Promise<string | null> {
  const { restoreOneClub } = await import('#server/oneClub.ts');
  const aside = await restoreOneClub(club, copy, terminal);
  return aside === null ? null : `The damaged file is now ${aside}.`;
}

async function inWords<T>(club: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw error instanceof CliError ? error : new CliError(whyNotOpenClub(club, error));
  }
}
