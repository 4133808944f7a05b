import { useId } from 'react';
import type { SmallLoadPoint } from '#contract/paper/RackSheetModel.ts';
import { Patterns, patternFill } from '#web/charts/Patterns.tsx';
import { paint } from '#web/charts/paint.ts';

/** Load against height in the smallest room: straight weight solid, chain dotted, band hatched; up is up. */
export function SmallLoad(props: {
  label: string;
  points: readonly SmallLoadPoint[];
  /** The heaviest load of the page, so that lifters compare. */
  toN: number;
  widthPx: number;
  heightPx: number;
}) {
  const { points, toN, widthPx, heightPx } = props;
  const id = useId();
  const first = points[0];
  const last = points[points.length - 1];
  if (first === undefined || last === undefined) return null;
  const x = (forceN: number) => 1 + (Math.max(0, forceN) / toN) * (widthPx - 2);
  const y = (zM: number) => heightPx - 1 - ((zM - first.zM) / (last.zM - first.zM)) * (heightPx - 2);
  const strip = (from: (p: SmallLoadPoint) => number, to: (p: SmallLoadPoint) => number) =>
    `M${[
      ...points.map((p) => `${x(from(p)).toFixed(1)} ${y(p.zM).toFixed(1)}`),
      ...points.toReversed().map((p) => `${x(to(p)).toFixed(1)} ${y(p.zM).toFixed(1)}`),
    ].join('L')}Z`;
  const lifts = points.some((p) => p.bandN < 0);
  return (
    <svg
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label={props.label}
    >
      <Patterns id={id} />
      <path
        d={strip(
          () => 0,
          (p) => p.barN,
        )}
        fill={paint.iron}
      />
      <path
        d={strip((p) => p.barN, straight)}
        fill={patternFill(id, 'chain')}
        stroke={paint.ironLine}
        strokeWidth="0.75"
      />
      <path
        d={strip(straight, (p) => p.totalN)}
        fill={patternFill(id, lifts ? 'bandUp' : 'band')}
        stroke={paint.rubber}
        strokeWidth="0.75"
      />
      <path d={`M1 1V${heightPx - 1}H${widthPx}`} fill="none" stroke={paint.ink} strokeWidth="1" />
    </svg>
  );
}

function straight(p: SmallLoadPoint): number {
  return p.barN + p.chainN;
}
