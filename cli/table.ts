import Table from 'cli-table3';

/** Columns aligned by plain characters, no colour: numbers to the right, words to the left. */
export function table(head: string[], rows: (string | number)[][]): string {
  const numeric = head.map((_, column) =>
    rows.every((row) => /^[-+]?[\d.]*$/.test(String(row[column] ?? ''))),
  );
  const grid = new Table({
    head,
    colAligns: numeric.map((right) => (right ? 'right' : 'left')),
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 2 },
    chars: noLines,
  });
  grid.push(...rows);
  return grid
    .toString()
    .split('\n')
    .map((line) => line.trimEnd())
    .join('\n');
}

const noLines = {
  top: '',
  'top-mid': '',
  'top-left': '',
  'top-right': '',
  bottom: '',
  'bottom-mid': '',
  'bottom-left': '',
  'bottom-right': '',
  left: '',
  'left-mid': '',
  mid: '',
  'mid-mid': '',
  right: '',
  'right-mid': '',
  middle: '',
};
