import type { CsvCounts } from '#web/api/clubFiles.ts';

/** "2 new, 1 changed, 12 as they were". */
export function csvCounts({ added, changed, unchanged }: CsvCounts): string {
  const parts = [
    ...(added > 0 ? [`${added} new`] : []),
    ...(changed > 0 ? [`${changed} changed`] : []),
    ...(unchanged > 0 ? [`${unchanged} as ${unchanged === 1 ? 'it was' : 'they were'}`] : []),
  ];
  return parts.length === 0 ? 'no line but the header' : parts.join(', ');
}
