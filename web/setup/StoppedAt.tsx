import { useId } from 'react';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { lowestStop, missStops, stopStep, stopWords } from './missStops.ts';
import type { StartOnRange } from './startOnRange.ts';

const drawing = { width: 72, height: 96, foot: 10 } as const;

/**
 * Where a miss stopped: three words for a tap, a slider for those who saw it closely, and a drawing that follows. The
 * slider begins where the lift does, below the competition range too.
 */
export function StoppedAt(props: {
  s: number | null;
  /** Null: not known; the lift is taken to begin at the bottom of the competition range. */
  start: StartOnRange | null;
  onChange: (s: number | null) => void;
}) {
  const { s, start, onChange } = props;
  const id = useId();
  const { length } = useUnits();
  const stops = missStops(start);
  const lowest = Math.min(lowestStop(start), s ?? 1);
  const words = s === null ? 'Not said.' : stopWords(s, start, length);
  return (
    <fieldset className="stopped-at whole-line">
      <legend className="field-label">Where the miss stopped</legend>
      <StoppedDrawing s={s} lowest={Math.min(0, lowest)} />
      <div className="stack tight">
        <div className="row">
          {stops.map(({ s: at, word }) => (
            <button
              key={word}
              type="button"
              aria-pressed={s !== null && stops.every((other) => Math.abs(at - s) <= Math.abs(other.s - s))}
              onClick={() => onChange(at)}
            >
              {word}
            </button>
          ))}
          <button type="button" className="plain" disabled={s === null} onClick={() => onChange(null)}>
            nobody saw
          </button>
        </div>
        <label className="only-read" htmlFor={id}>
          Share of the way up
        </label>
        <input
          id={id}
          className="range"
          type="range"
          min={lowest}
          max={1}
          step={stopStep}
          value={s ?? stops[1]?.s}
          aria-valuetext={words}
          onChange={(event) => onChange(Number(event.target.value))}
        />
        <p className="small quiet">{words}</p>
      </div>
    </fieldset>
  );
}

/** The competition range between dotted lines, and what lies below it where the lift begins there. */
function StoppedDrawing({ s, lowest }: { s: number | null; lowest: number }) {
  const { width, height, foot } = drawing;
  const y = (share: number) => height - foot - ((share - lowest) / (1 - lowest)) * (height - 2 * foot);
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <g stroke="var(--rule-strong)" strokeWidth={1}>
        <path d={`M8 ${y(0)}H64 M8 ${y(1)}H64`} strokeDasharray="3 3" />
        <path d={`M36 ${y(lowest)}V${y(1)}`} />
      </g>
      {s !== null && (
        <path
          d={`M12 ${y(s)}H60 M18 ${y(s) - 9}V${y(s) + 9} M54 ${y(s) - 9}V${y(s) + 9}`}
          stroke="var(--ink)"
          strokeWidth={4}
        />
      )}
    </svg>
  );
}
