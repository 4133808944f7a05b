import { firstThatFits, letters, paint, textWidthPx } from './paint.ts';

/** Clear paper between two figures (px). */
const betweenPx = 8;

/** Figures under a pane, as many as stand clear of each other and within it, and below them the axis' name. */
export function AxisFigures(props: {
  at: (value: number) => number;
  values: readonly number[];
  /** Ways to name the axis, the fullest first. */
  names: readonly string[];
  x: number;
  width: number;
  y: number;
  /** Where each figure has a rule upwards: how far. */
  ruleTopY?: number;
}) {
  const { at, values, x, width, y, ruleTopY } = props;
  const step = at(values[1] ?? 0) - at(values[0] ?? 0) || 1;
  const every = Math.max(1, Math.ceil((Math.max(...values.map(wide)) + betweenPx) / step));
  return (
    <g>
      {values
        .filter((_, i) => i % every === 0)
        .map((value) => {
          const half = wide(value) / 2;
          const middle = Math.max(
            x + (value === 0 ? half - 2 : 0),
            Math.min(at(value), x + width + 4 - half),
          );
          return (
            <g key={value}>
              {ruleTopY !== undefined && (
                <path d={`M${at(value)} ${ruleTopY}V${y - 14}`} stroke={paint.rule} />
              )}
              <text x={middle} y={y} textAnchor="middle" fill={paint.quiet}>
                {value}
              </text>
            </g>
          );
        })}
      <text x={x} y={y + 18} fill={paint.quiet}>
        {firstThatFits(props.names, letters.small, width + 4)}
      </text>
    </g>
  );
}

function wide(value: number): number {
  return textWidthPx(String(value), letters.small);
}
