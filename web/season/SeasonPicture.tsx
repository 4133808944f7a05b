import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { SeasonHead } from '#web/charts/SeasonHead.tsx';
import { SeasonPatterns } from '#web/charts/SeasonPatterns.tsx';
import { insidePicture, rulePx, type SeasonCell, SeasonRows } from '#web/charts/SeasonRows.tsx';
import { type SeasonFrame, screenRowPx } from '#web/charts/SeasonScene.ts';
import { SeasonStrength, SeasonStrengthAxis } from '#web/charts/SeasonStrength.tsx';
import { type SeasonStrengthScene, strengthSpan } from '#web/charts/SeasonStrengthScene.ts';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import type { SeasonScene } from './seasonRows.ts';

/** Narrower than this a week cannot be hit; the picture then goes on beyond the edge (px). */
const LEAST_WEEK_PX = 15;
const rowPx = screenRowPx + rulePx;
/** Strength under the weeks of one lifter. */
const strengthPx = 3 * screenRowPx;

/** The whole season: time across, lifters down, their names at the left, the months above. */
export function SeasonPicture(props: {
  scene: SeasonScene;
  /** Of one lifter, in one lift: strength under the weeks. */
  strength?: SeasonStrengthScene;
  open: SeasonCell | null;
  wordsOf: (cell: SeasonCell) => string;
  /** Where a lifter's name leads. */
  hrefOf: (key: string) => string;
  onOpen: (cell: SeasonCell) => void;
  onLeave: () => void;
}) {
  return (
    <>
      <SeasonPatterns />
      <MeasuredWidth>{(widthPx) => <Drawn {...props} widthPx={widthPx} />}</MeasuredWidth>
    </>
  );
}

function Drawn(props: Parameters<typeof SeasonPicture>[0] & { widthPx: number }) {
  const { scene, strength, open, widthPx, onOpen } = props;
  const { rows, mondays, todayAt } = scene;
  const namesPx = widthPx < 640 ? 92 : 168;
  const weekPx = Math.max(LEAST_WEEK_PX, Math.floor((widthPx - namesPx - 1) / Math.max(1, mondays.length)));
  const frame = useSame<SeasonFrame>({ weekPx, rowPx: screenRowPx, weeks: mondays.length, todayAt });
  const [cursor, setCursor] = useState<SeasonCell | null>(null);
  const box = useRef<HTMLDivElement>(null);
  // A picture that is wider than its screen opens at today, with a little of what was.
  useEffect(() => {
    if (box.current && todayAt !== null) box.current.scrollLeft = Math.max(0, (todayAt - 2) * weekPx);
  }, [todayAt, weekPx]);
  const start = { row: 0, week: Math.floor(todayAt ?? 0) };
  const at = insidePicture(cursor ?? open ?? start, rows.length, mondays.length);
  const words = props.wordsOf(at);
  return (
    <>
      <div
        ref={box}
        className="season-picture"
        style={{ gridTemplateColumns: `${namesPx}px ${weekPx * mondays.length}px` }}
      >
        <div className="season-corner" />
        <div className="season-head">
          <SeasonHead firstMonday={mondays[0]!} meets={scene.meets} frame={frame} />
        </div>
        <ul className="season-names" aria-label="Lifters of this season">
          {rows.map(({ key, name }, row) => (
            <li key={key} className={cursor?.row === row ? 'season-here' : undefined}>
              <Link href={props.hrefOf(key)}>{name}</Link>
            </li>
          ))}
        </ul>
        <SeasonRows
          {...{ rows, frame, at, cursor, open, words, onOpen }}
          onPoint={(cell) => setCursor((now) => (now && isSame(now, cell) ? now : cell))}
          onMove={(cell) => {
            setCursor(cell);
            bringIntoSight(box.current, cell, { weekPx, namesPx });
          }}
          onLeave={() => {
            setCursor(null);
            props.onLeave();
          }}
        />
        {strength && strengthSpan(strength) !== null && (
          <>
            <div className="season-axis">
              <SeasonStrengthAxis scene={strength} widthPx={namesPx - 1} heightPx={strengthPx} />
            </div>
            <SeasonStrength scene={strength} frame={{ ...frame, rowPx: strengthPx }} />
          </>
        )}
      </div>
      <p className="season-reading screen-only" aria-hidden="true">
        {words}
      </p>
    </>
  );
}

function isSame(a: SeasonCell, b: SeasonCell): boolean {
  return a.row === b.row && a.week === b.week;
}

/** Names stand over the left edge and the head over the top: what lies under them is not in sight. */
function bringIntoSight(
  box: HTMLElement | null,
  { row, week }: SeasonCell,
  { weekPx, namesPx }: { weekPx: number; namesPx: number },
): void {
  if (box === null) return;
  const left = week * weekPx;
  const top = row * rowPx;
  const wide = box.clientWidth - namesPx;
  const high = box.clientHeight - headPx;
  box.scrollLeft = Math.min(left, Math.max(box.scrollLeft, left + weekPx - wide));
  box.scrollTop = Math.min(top, Math.max(box.scrollTop, top + rowPx - high));
}

/** As high as `SeasonHead` draws (px). */
const headPx = 44;

/** The same object as long as it says the same, so that rows are not drawn again. */
function useSame<T extends object>(value: T): T {
  const [kept, setKept] = useState(value);
  const same = Object.entries(value).every(([name, one]) => Reflect.get(kept, name) === one);
  if (!same) setKept(value);
  return same ? kept : value;
}
