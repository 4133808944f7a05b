import { useId } from 'react';

/** Where bars stop, as shares of the way from bottom to lockout. Common practice, no source. */
const places = [
  { s: 0.05, word: 'at the bottom' },
  { s: 0.4, word: 'half way' },
  { s: 0.85, word: 'near lockout' },
] as const;

const drawing = { width: 72, height: 96, foot: 10 } as const;

/** Where a miss stopped: three words for a tap, a slider for those who saw it closely, and a drawing that follows. */
export function StoppedAt({ s, onChange }: { s: number | null; onChange: (s: number | null) => void }) {
  const id = useId();
  return (
    <fieldset className="stopped-at whole-line">
      <legend className="field-label">Where the miss stopped</legend>
      <StoppedDrawing s={s} />
      <div className="stack tight">
        <div className="row">
          {places.map((place) => (
            <button
              key={place.word}
              type="button"
              aria-pressed={s !== null && nearest(s) === place.word}
              onClick={() => onChange(place.s)}
            >
              {place.word}
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
          min={0}
          max={1}
          step={0.05}
          value={s ?? 0.4}
          aria-valuetext={s === null ? 'not said' : `${Math.round(100 * s)} % of the way up`}
          onChange={(event) => onChange(Number(event.target.value))}
        />
        <p className="small quiet">
          {s === null ? 'Not said.' : `${Math.round(100 * s)} % of the way from the bottom to lockout.`}
        </p>
      </div>
    </fieldset>
  );
}

function StoppedDrawing({ s }: { s: number | null }) {
  const { width, height, foot } = drawing;
  const y = (share: number) => height - foot - share * (height - 2 * foot);
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <g stroke="var(--rule-strong)" strokeWidth={1}>
        <path d={`M8 ${y(0)}H64 M8 ${y(1)}H64`} strokeDasharray="3 3" />
        <path d={`M36 ${y(0)}V${y(1)}`} />
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

function nearest(s: number): string {
  const [first, ...others] = places;
  return others.reduce(
    (near, place) => (Math.abs(place.s - s) < Math.abs(near.s - s) ? place : near),
    first as (typeof places)[number],
  ).word;
}
