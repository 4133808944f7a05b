import { Command } from 'commander';
import type { CopyFile } from '#store/copies/keptCopies.ts';
import { clubOption, withClub } from '../clubFile.ts';
import { snapshotsOption } from '../snapshotsOption.ts';
import { table } from '../table.ts';

interface SnapshotOptions {
  club: string;
  snapshots?: string;
  list?: true;
}

/** `snapshot`: a copy of the club as it is now, or a list of all there are. */
export function snapshotCommand(): Command {
  return new Command('snapshot')
    .summary('copy the club as it is now, or list the copies')
    .description(
      'Takes a checked copy of the club as it stands, even while somebody uses it. While the program runs it takes one itself in each hour in which something was changed; the last of each of 24 hours and 14 days stay.',
    )
    .option('--list', 'only list the copies, with those of clubs that were replaced')
    .addOption(snapshotsOption())
    .addOption(clubOption())
    .addHelpText('after', '\n"rackwright restore <copy>" puts one of them in the place of the club.')
    .action(takeOrList);
}

async function takeOrList({ club, snapshots, list }: SnapshotOptions): Promise<void> {
  const { keptCopies, snapshotFolderOf } = await import('#store/copies/keptCopies.ts');
  const folder = snapshots ?? snapshotFolderOf(club);
  if (list) {
    process.stdout.write(copiesInWords(await keptCopies(club, folder)));
    return;
  }
  await withClub(club, async ({ path }) => {
    const { takeSnapshot } = await import('#store/copies/takeSnapshot.ts');
    const { CliError } = await import('../CliError.ts');
    const { Refusal } = await import('#store/Refusal.ts');
    try {
      const { name } = await takeSnapshot(path, folder);
      process.stdout.write(`Taken and checked: ${name} in ${folder}.\n`);
    } catch (error) {
      throw error instanceof Refusal ? new CliError(error.message) : error;
    }
  });
}

/** Newest first, one a line. */
export function copiesInWords(copies: readonly CopyFile[]): string {
  if (copies.length === 0) return 'No copy of this club is kept yet.\n';
  const rows = copies.map(({ name, kind, takenAt, bytes }) => [
    `${takenAt.slice(0, 16).replace('T', ' ')} UTC`,
    kind === 'snapshot' ? 'snapshot' : 'until it was replaced',
    `${(bytes / 1e6).toFixed(1)} MB`,
    name,
  ]);
  return `${table(['', '', '', 'copy'], rows)}\n`;
}
