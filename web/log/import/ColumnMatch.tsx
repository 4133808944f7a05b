import { useState } from 'react';
import { parseTable } from '#contract/csv/parseTable.ts';
import { type LogColumn, logColumnNames, neededColumns } from '#contract/log/logColumns.ts';
import type { LogFileAnswer } from '#contract/log/logFileAnswer.ts';
import type { ColumnMap } from '#contract/log/suggestColumns.ts';
import { columnWords } from './columnWords.ts';

/** As many lines are shown as tell dates from names. */
const shownLines = 3;

/** Enough of a file for its first lines. */
const firstLetters = 20_000;

/** Which column of the file holds what, with the first lines beside it. */
export function ColumnMatch(props: {
  text: string;
  columns: ColumnMap;
  answer: LogFileAnswer;
  busy: boolean;
  onMatch: (columns: ColumnMap) => void;
}) {
  const { text, columns, answer, onMatch } = props;
  const [lines] = useState(() => firstLines(text));
  // As they were suggested: a row that is matched by hand stays where it is.
  const [first] = useState(() =>
    logColumnNames.filter((name) => neededColumns.includes(name) || columns[name] !== undefined),
  );
  const pick = (column: LogColumn, header: string) => {
    const { [column]: _, ...others } = columns;
    onMatch(header === '' ? others : { ...others, [column]: header });
  };
  const tableOf = (names: readonly LogColumn[], label: string) => (
    <div className="table-scroll">
      <table className="table column-map" aria-label={label}>
        <thead>
          <tr>
            <th scope="col">in the log</th>
            <th scope="col">in your file</th>
            <th scope="col">first lines</th>
          </tr>
        </thead>
        <tbody>
          {names.map((column) => {
            const header = columns[column];
            const at = header === undefined ? -1 : answer.headers.indexOf(header);
            const unit = answer.units[column];
            return (
              <tr key={column}>
                <th scope="row">
                  {columnWords[column]}
                  {neededColumns.includes(column) && <span className="small quiet"> needed</span>}
                </th>
                <td>
                  <select
                    className="input"
                    aria-label={columnWords[column]}
                    value={header ?? ''}
                    disabled={props.busy}
                    onChange={(event) => pick(column, event.target.value)}
                  >
                    <option value="">not in the file</option>
                    {answer.headers.map((name, i) => (
                      <option key={name} value={name}>
                        {withExample(name, lines[0]?.[i])}
                      </option>
                    ))}
                  </select>
                </td>
                <td className="quiet">
                  {at >= 0 && lines.map((cells) => cells[at] || 'empty').join(' · ')}
                  {unit && ` (read in ${unit})`}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
  const others = logColumnNames.filter((name) => !first.includes(name));
  return (
    <section className="stack" aria-label="Columns of the file">
      <h2>Which column is what</h2>
      {tableOf(first, 'Columns matched')}
      {others.length > 0 && (
        <details className="csv-door">
          <summary>{others.length} more that a file may have: bands, reps made, speeds ...</summary>
          {tableOf(others, 'Other columns that a file may have')}
        </details>
      )}
    </section>
  );
}

/** Odd headers are told apart by what stands under them. */
function withExample(header: string, example: string | undefined): string {
  return example ? `${header} (${example.slice(0, longestExample)})` : header;
}

const longestExample = 24;

function firstLines(text: string): string[][] {
  const cut = text.slice(0, firstLetters);
  // The last line may have been cut within a quoted cell.
  const table = parseTable(text.length > firstLetters ? cut.slice(0, cut.lastIndexOf('\n')) : cut);
  return 'lines' in table ? table.lines.slice(1, 1 + shownLines).map(({ cells }) => cells) : [];
}
