import { headersElsewhere } from './headersElsewhere.ts';
import { headerWords } from './headerWords.ts';
import { type LogColumn, logColumnNames, logColumns } from './logColumns.ts';

/** Which header of a file holds which column of the log. */
export type ColumnMap = Partial<Record<LogColumn, string>>;

/** The header that is most alike for each column, each header for one column at most. Nothing alike: no suggestion. */
export function suggestColumns(headers: readonly string[]): ColumnMap {
  const pairs = headers.flatMap((header) =>
    logColumnNames.map((column) => ({ header, column, likeness: likeness(header, column) })),
  );
  const taken = new Set<string>();
  const map: ColumnMap = {};
  // Sorting keeps the order of pairs that are equally alike: the leftmost header wins.
  for (const { header, column } of pairs.filter(alike).toSorted((a, b) => b.likeness - a.likeness)) {
    if (taken.has(header) || column in map) continue;
    taken.add(header);
    map[column] = header;
  }
  return map;
}

/** Below this share of common letter pairs two words are different ones: `weight` and `height` share 0.71. */
const alikeFrom = 0.75;

function alike({ likeness }: { likeness: number }): boolean {
  return likeness >= alikeFrom;
}

function likeness(header: string, column: LogColumn): number {
  const { words } = headerWords(header);
  const known = [...logColumns[column].words, ...(headersElsewhere[column] ?? [])];
  return Math.max(...known.map((word) => dice(words, word)));
}

/** Share of letter pairs that two texts have in common, 0 to 1 (Dice 1945). Spaces do not count. */
function dice(a: string, b: string): number {
  const [left, right] = [letterPairs(a), letterPairs(b)];
  if (left.join() === right.join()) return 1;
  const rest = [...right];
  const common = left.filter((pair) => {
    const at = rest.indexOf(pair);
    if (at >= 0) rest.splice(at, 1);
    return at >= 0;
  });
  return (2 * common.length) / (left.length + right.length);
}

/** The ends count as letters, so that words of one letter have pairs too. */
function letterPairs(text: string): string[] {
  const letters = ` ${text.replaceAll(' ', '')} `;
  return Array.from({ length: letters.length - 1 }, (_, i) => letters.slice(i, i + 2));
}
