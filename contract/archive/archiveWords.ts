import { allKinds, type KindName, kindNames } from '#contract/records/allKinds.ts';
import type { ArchiveLook } from './archiveLook.ts';

/** What an archive holds beside the club whose place it may take, in words; dates as `spell` writes them. */
export interface ArchiveWords {
  isOf: string;
  /** Null: it is not older than what is here. */
  older: string | null;
  /** A line for each kind of which either has any. */
  counts: { kind: string; inFile: number; here: number }[];
  replaced: string;
}

export function archiveWords(
  file: string,
  archive: ArchiveLook,
  here: ArchiveLook,
  spell: (date: string) => string,
): ArchiveWords {
  const newest = archive.newestOn === null ? '' : `; its newest entry is from ${spell(archive.newestOn)}`;
  return {
    isOf: `${file} is an archive of ${archive.name}${newest}. Nothing is wrong in it.`,
    older: isOlder(archive, here) ? 'It is older than what is here.' : null,
    counts: counted
      .map(({ kind, word }) => ({ kind: word, inFile: archive.counts[kind], here: here.counts[kind] }))
      .filter((line) => line.inFile + line.here > 0),
    replaced: `Everything that ${here.name} holds now would be replaced by what ${file} holds.`,
  };
}

function isOlder(archive: ArchiveLook, here: ArchiveLook): boolean {
  return archive.newestOn !== null && here.newestOn !== null && archive.newestOn < here.newestOn;
}

/** In the order in which a coach would miss them: people and their log, days, gear. */
const counted: readonly { kind: Exclude<keyof ArchiveLook['counts'], 'club'>; word: string }[] = [
  ...manyOf((kind) => kind === 'lifter'),
  { kind: 'sets', word: 'logged sets' },
  ...manyOf((kind) => 'lifterId' in allKinds[kind].facts.belongsTo),
  ...manyOf((kind) => kind === 'day'),
  { kind: 'prescriptions', word: 'days worked out' },
  { kind: 'takenPlans', word: 'plans of seasons taken' },
  ...manyOf((kind) => kind !== 'lifter' && kind !== 'day' && !('lifterId' in allKinds[kind].facts.belongsTo)),
];

function manyOf(isWanted: (kind: Counted) => boolean): { kind: Counted; word: string }[] {
  return kindNames
    .filter((kind) => kind !== 'club')
    .filter(isWanted)
    .map((kind) => ({ kind, word: allKinds[kind].facts.many }));
}

type Counted = Exclude<KindName, 'club'>;
