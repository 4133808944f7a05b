import type { KeyboardEvent, MouseEvent } from 'react';
import { SeasonRow } from './SeasonRow.tsx';
import type { SeasonFrame, SeasonRowScene } from './SeasonScene.ts';

/** A week of one lifter, each by its place. */
export interface SeasonCell {
  row: number;
  week: number;
}

const weeksAPage = 4;

/**
 * The rows of all lifters, in which one walks: arrows move, letters find a lifter, Enter opens a week and Esc leaves it; a pointer or a thumb opens
 * what it taps. `at` is where one stands, shown while `cursor` is not null.
 */
export function SeasonRows(props: {
  rows: readonly SeasonRowScene[];
  frame: SeasonFrame;
  at: SeasonCell;
  cursor: SeasonCell | null;
  open: SeasonCell | null;
  /** Where one stands, in words. */
  words: string;
  onMove: (cell: SeasonCell) => void;
  onPoint: (cell: SeasonCell) => void;
  onOpen: (cell: SeasonCell) => void;
  onLeave: () => void;
}) {
  const { rows, frame, at, cursor, open, onMove, onPoint, onOpen } = props;
  const outerPx = frame.rowPx + rulePx;
  const place = ({ row, week }: SeasonCell) => ({
    transform: `translate(${week * frame.weekPx}px, ${row * outerPx}px)`,
    width: frame.weekPx,
    height: frame.rowPx,
  });
  const cellUnder = (event: MouseEvent<HTMLElement>): SeasonCell => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const under = {
      row: Math.floor((event.clientY - top) / outerPx),
      week: Math.floor((event.clientX - left) / frame.weekPx),
    };
    return insidePicture(under, rows.length, frame.weeks);
  };
  const press = (event: KeyboardEvent<HTMLElement>) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const next = cellAfter(event.key, at, rows);
    if (next) onMove(insidePicture(next, rows.length, frame.weeks));
    else if (event.key === 'Enter' || event.key === ' ') onOpen(at);
    else if (event.key === 'Escape') props.onLeave();
    else return;
    event.preventDefault();
  };
  return (
    <div
      className="season-rows"
      role="slider"
      tabIndex={0}
      aria-label="Weeks of the season, lifter by lifter"
      aria-valuemin={1}
      aria-valuemax={Math.max(1, frame.weeks)}
      aria-valuenow={at.week + 1}
      aria-valuetext={props.words}
      onKeyDown={press}
      onFocus={() => cursor ?? onPoint(at)}
      onPointerMove={(event) => {
        if (event.pointerType === 'mouse') onPoint(cellUnder(event));
      }}
      onClick={(event) => {
        const under = cellUnder(event);
        onPoint(under);
        onOpen(under);
      }}
    >
      {rows.map((row) => (
        <div key={row.key} className="season-row">
          <SeasonRow row={row} frame={frame} />
        </div>
      ))}
      {open && <span className="season-open" style={place(open)} />}
      {cursor && <span className="season-cursor" style={place(at)} />}
    </div>
  );
}

/** The rule under each row. */
export const rulePx = 1;

/** The nearest cell that there is. */
export function insidePicture({ row, week }: SeasonCell, rows: number, weeks: number): SeasonCell {
  return { row: inside(row, rows), week: inside(week, weeks) };
}

function inside(value: number, count: number): number {
  return Math.max(0, Math.min(count - 1, value));
}

function cellAfter(
  key: string,
  { row, week }: SeasonCell,
  rows: readonly SeasonRowScene[],
): SeasonCell | null {
  switch (key) {
    case 'ArrowLeft':
      return { row, week: week - 1 };
    case 'ArrowRight':
      return { row, week: week + 1 };
    case 'ArrowUp':
      return { row: row - 1, week };
    case 'ArrowDown':
      return { row: row + 1, week };
    case 'PageUp':
      return { row, week: week - weeksAPage };
    case 'PageDown':
      return { row, week: week + weeksAPage };
    case 'Home':
      return { row, week: 0 };
    case 'End':
      return { row, week: Number.MAX_SAFE_INTEGER };
    default: {
      if (key.length !== 1 || key === ' ') return null;
      const letter = key.toLocaleLowerCase();
      const found = rows.findIndex(({ name }) => name.toLocaleLowerCase().startsWith(letter));
      return found < 0 ? null : { row: found, week };
    }
  }
}
