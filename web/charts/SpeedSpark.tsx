import { paint } from './paint.ts';

/** Speeds of sets that follow each other, a dot a rep, the reps of a set joined: small enough for a line of text. */
export function SpeedSpark(props: {
  /** Mean speeds (m/s) a set; a set without any leaves its place empty. */
  sets: readonly (readonly number[])[];
  /** What to expect (m/s), as a line across; null: nobody can tell. */
  expectedMps: number | null;
}) {
  const { sets, expectedMps } = props;
  const speeds = [...sets.flat(), ...(expectedMps === null ? [] : [expectedMps])];
  if (speeds.length === 0) return null;
  const low = Math.min(...speeds);
  const spanMps = Math.max(Math.max(...speeds) - low, leastSpanMps);
  const y = (mps: number) => heightPx - edgePx - ((heightPx - 2 * edgePx) * (mps - low)) / spanMps;
  const widths = sets.map((own) => Math.max(1, own.length) * repPx);
  const starts = widths.map(
    (_, i) => edgePx + widths.slice(0, i).reduce((sum, px) => sum + px + betweenPx, 0),
  );
  const widthPx = (starts.at(-1) ?? 0) + (widths.at(-1) ?? 0) + edgePx;
  const x = (set: number, rep: number) => starts[set]! + (rep + 0.5) * repPx;
  return (
    <svg className="speed-spark" width={widthPx} height={heightPx} aria-hidden="true">
      {expectedMps !== null && (
        <path
          d={`M0 ${y(expectedMps)}H${widthPx}`}
          stroke={paint.ruleStrong}
          strokeDasharray="3 2"
          fill="none"
        />
      )}
      {sets.map((own, set) => (
        <g key={starts[set]}>
          {own.length > 1 && (
            <path
              d={`M${own.map((mps, rep) => `${x(set, rep)} ${y(mps)}`).join('L')}`}
              stroke={paint.ink}
              fill="none"
            />
          )}
          {own.map((mps, rep) => (
            <circle key={x(set, rep)} cx={x(set, rep)} cy={y(mps)} r="1.8" fill={paint.ink} />
          ))}
        </g>
      ))}
    </svg>
  );
}

const heightPx = 22;
const edgePx = 3;
const repPx = 5;
const betweenPx = 4;
/** Less of a difference than this fills no more of the height than it is worth. */
const leastSpanMps = 0.2;
