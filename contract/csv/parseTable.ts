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
  try {
    const header = text.split('\n', 1)[0] ?? '';
    const [delimiter = ','] = [',', ';', '\t'].toSorted((a, b) => count(header, b) - count(header, a));
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
      problem: { line, column: '', message: 'The quotes in this line do not close as CSV wants them.' },
    };
  }
}

function count(text: string, sign: string): number {
  return text.split(sign).length - 1;
}

interface ParsedRow {
  info: { lines: number };
  record: string[];
}
