import { CsvError, parse } from 'csv-parse/sync';
import type { CsvProblem } from './CsvProblem.ts';

/** One line of a table: where it begins in the file, and its cells. */
export interface TableLine {
  line: number;
  cells: string[];
}

/**
 * Splits CSV text into cells. Lines without any content are passed over. What the header holds most of stands between the
 * cells: comma, or semicolon or tab as some spreadsheets write it.
 */
export function parseTable(text: string): { lines: TableLine[] } | { problem: CsvProblem } {
  const problem = noTable(text);
  if (problem) return { problem };
  try {
    const header = text.split('\n', 1)[0] ?? '';
    const [delimiter = ','] = [',', ';', '\t'].toSorted((a, b) => count(header, b) - count(header, a));
    if (count(text, '\n') > mostLines || count(text, delimiter) > mostCells)
      return {
        problem: wrongAt(1, `The file has more than ${mostLines} lines or ${mostCells} cells; split it.`),
      };
    const options = { bom: true, info: true, relax_column_count: true, delimiter } as const;
    const rows = parse(text, options) as unknown as ParsedRow[];
    let last = 0;
    const lines = rows.map(({ info, record }) => {
      const line = last + 1;
      last = info.lines;
      return { line, cells: record };
    });
    return { lines: lines.filter(({ cells }) => cells.some((cell) => cell.trim() !== '')) };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = 'lines' in error && typeof error.lines === 'number' ? error.lines : 1;
    return {
      problem: { line, column: '', message: 'The quotes in this line are not closed.' },
    };
  }
}

/** What a coach may well choose in place of a CSV file, and then could not tell from what the cells seem to hold. */
function noTable(text: string): CsvProblem | null {
  if (workbookStarts.some((start) => text.startsWith(start)))
    return wrongAt(
      1,
      "This is a spreadsheet program's own kind of file; save it there as CSV and read that.",
    );
  if (text.trimStart().startsWith('{'))
    return wrongAt(1, 'This is JSON, such as an archive, not a table; a CSV file is needed.');
  const at = text.indexOf(unreadable);
  if (at < 0) return null;
  const line = text.slice(0, at).split('\n').length;
  return wrongAt(line, 'Letters in this line cannot be read; save the file as CSV in UTF-8 and read that.');
}

/** What stands for bytes that are no text in UTF-8. */
const unreadable = '\ufffd';
/** A zipped workbook; an older one, or text in UTF-16. */
const workbookStarts = ['PK\u0003\u0004', unreadable + unreadable];

function wrongAt(line: number, message: string): CsvProblem {
  return { line, column: '', message };
}

/** The log of the largest club fits; a file that would fill the memory does not. */
const [mostLines, mostCells] = [1_000_000, 25_000_000];

function count(text: string, sign: string): number {
  let times = 0;
  for (let at = text.indexOf(sign); at >= 0; at = text.indexOf(sign, at + 1)) times += 1;
  return times;
}

interface ParsedRow {
  info: { lines: number };
  record: string[];
}
