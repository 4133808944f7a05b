import type { ArchiveLook } from '#contract/archive/archiveLook.ts';

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
  const newest = archive.newestOn === null ? '' : `; the newest in it is of ${spell(archive.newestOn)}`;
  return {
    isOf: `${file} is an archive of ${archive.name}${newest}. Nothing is wrong in it.`,
    older: isOlder(archive, here) ? 'It is older than what is here.' : null,
    counts: kinds
      .map((kind) => ({ kind: words[kind], inFile: archive.counts[kind], here: here.counts[kind] }))
      .filter((line) => line.inFile + line.here > 0),
    replaced: `Everything that ${here.name} holds now would be replaced by what ${file} holds.`,
  };
}

function isOlder(archive: ArchiveLook, here: ArchiveLook): boolean {
  return archive.newestOn !== null && here.newestOn !== null && archive.newestOn < here.newestOn;
}

/** In the order in which a coach would miss them. */
const words = {
  lifter: 'lifters',
  sets: 'logged sets',
  best: 'bests',
  liftHeights: 'measured heights',
  bodyMass: 'body masses',
  day: 'training days',
  prescriptions: 'days worked out',
  bandPair: 'band pairs',
  bandReading: 'band readings',
  chainPair: 'kinds of chain',
  rack: 'racks',
  anchor: 'anchor points',
  hookup: 'hookups',
  scaleReading: 'readings under the bar',
  bar: 'bars',
  collarPair: 'collar pairs',
  disc: 'kinds of disc',
  box: 'boxes and mats',
} satisfies Record<Exclude<keyof ArchiveLook['counts'], 'club'>, string>;
const kinds = Object.keys(words) as (keyof typeof words)[];
