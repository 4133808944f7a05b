import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react';

/** One column: how a row shows in it, and what typing finds. */
export interface Column<Row> {
  key: string;
  head: ReactNode;
  cell: (row: Row) => ReactNode;
  /** Numbers stand right-aligned, so that decimals of one precision fall under each other. */
  numeric?: boolean;
  /** Left out on narrow screens. */
  wideOnly?: boolean;
}

/** How long a typed word stays open for the next letter. */
const typedPauseMs = 900;

/**
 * A list one can walk: arrows move, letters find the row that begins so, Enter opens, Esc leaves.
 * `nameOf` is what typing finds and what is read aloud.
 */
export function DataTable<Row>(props: {
  label: string;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  keyOf: (row: Row) => string;
  nameOf: (row: Row) => string;
  onOpen?: (row: Row) => void;
  onLeave?: () => void;
  selectedKey?: string | null | undefined;
}) {
  const { rows, keyOf, nameOf, onOpen, onLeave } = props;
  const [active, setActive] = useState(0);
  const body = useRef<HTMLTableSectionElement>(null);
  const typed = useRef({ text: '', atMs: 0 });
  const current = Math.min(active, Math.max(0, rows.length - 1));

  const go = (index: number) => {
    const next = Math.max(0, Math.min(rows.length - 1, index));
    setActive(next);
    body.current?.querySelectorAll('tr')[next]?.focus();
  };
  const find = (letter: string, nowMs: number) => {
    const kept = nowMs - typed.current.atMs < typedPauseMs ? typed.current.text : '';
    const text = (kept + letter).toLocaleLowerCase();
    typed.current = { text, atMs: nowMs };
    const found = rows.findIndex((row) => nameOf(row).toLocaleLowerCase().startsWith(text));
    if (found >= 0) go(found);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLTableRowElement>) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.target !== event.currentTarget) return;
    const row = rows[current];
    if (event.key === 'ArrowDown') go(current + 1);
    else if (event.key === 'ArrowUp') go(current - 1);
    else if (event.key === 'Home') go(0);
    else if (event.key === 'End') go(rows.length - 1);
    else if (event.key === 'Enter' && row !== undefined && onOpen) onOpen(row);
    else if (event.key === 'Escape' && onLeave) onLeave();
    else if (event.key.length === 1) find(event.key, event.timeStamp);
    else return;
    event.preventDefault();
  };

  return (
    <div className="table-scroll">
      <table className="table" aria-label={props.label}>
        <thead>
          <tr>
            {props.columns.map((column) => (
              <th key={column.key} scope="col" className={classOf(column)}>
                {column.head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody ref={body}>
          {rows.map((row, index) => (
            <tr
              key={keyOf(row)}
              tabIndex={index === current ? 0 : -1}
              className={onOpen ? 'opens' : ''}
              aria-current={keyOf(row) === props.selectedKey ? 'true' : undefined}
              onFocus={() => setActive(index)}
              onClick={(event) => {
                // A control inside a cell has its own meaning.
                if (!(event.target instanceof Element && event.target.closest('button, a, input, select')))
                  onOpen?.(row);
              }}
              onKeyDown={onKeyDown}
            >
              {props.columns.map((column) => (
                <td key={column.key} className={classOf(column)}>
                  {column.cell(row)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function classOf<Row>(column: Column<Row>): string {
  return [column.numeric ? 'number' : '', column.wideOnly ? 'wide-only' : ''].join(' ').trim();
}
