import type { TableLine } from '#contract/csv/parseTable.ts';

/**
 * The headers of a file that stand for no column of the log: what is under them is left behind. A column without a header
 * counts where anything stands in it.
 */
export function columnsNotTaken(
  headers: readonly string[],
  given: Record<string, unknown>,
  lines: readonly TableLine[],
): string[] {
  const taken = new Set(Object.values(given));
  return headers.flatMap((header, at) => {
    if (header !== '') return taken.has(header) ? [] : [header];
    return lines.some(({ cells }) => cells[at]?.trim()) ? [`column ${at + 1}, which has no header`] : [];
  });
}

/** The same for a coach; null where all is taken. */
export function notTakenSentence(notTaken: readonly string[]): string | null {
  if (notTaken.length === 0) return null;
  const columns =
    notTaken.length === 1 ? 'One column of the file is' : `${notTaken.length} columns of the file are`;
  return `${columns} not taken: ${notTaken.join(', ')}.`;
}
