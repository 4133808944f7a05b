import { area, line } from 'd3-shape';
import { type ChartUnits, massText } from './ChartUnits.ts';
import type { LoadScene } from './HeightScene.ts';
import type { HeightScale } from './heightScale.ts';
import { letters, paint, textWidthPx } from './paint.ts';

type HeldPoint = LoadScene['held'][number];

/**
 * What this lifter can hold still at each height: a heavy line with its 95 % interval. It never leaves the pane: where
 * it would, it ends in an arrow and the number it runs on to.
 */
export function StrengthLine(props: {
  scale: HeightScale;
  units: ChartUnits;
  held: readonly HeldPoint[];
  at: (forceN: number) => number;
  toX: number;
  /** Rows where other letters stand already. */
  taken: readonly { topY: number; toY: number }[];
}) {
  const { scale, units, held, at, toX, taken } = props;
  const last = held[held.length - 1];
  if (last === undefined) return null;
  const cut = (forceN: number) => Math.min(at(Math.max(0, forceN)), toX);
  const { inside, leaves } = clipped(held, at, toX);
  const strip =
    area<HeldPoint>()
      .y((p) => scale.y(p.zM))
      .x0((p) => cut(p.lowN))
      .x1((p) => cut(p.highN))(held) ?? '';
  // Weaker than nothing at the bar is drawn as nothing.
  const edge = (of: (p: HeldPoint) => number) =>
    line<HeldPoint>(
      (p) => cut(of(p)),
      (p) => scale.y(p.zM),
    )(held.filter((p) => at(of(p)) <= toX)) ?? '';
  // Above the arrow or below it, clear of the dotted lines at both ends; where neither place is free, the arrow says enough.
  const arrowY = leaves ? scale.y(leaves.zM) : 0;
  const levels = [held[0] ?? last, last].map(({ zM }) => ({ topY: scale.y(zM) - 4, toY: scale.y(zM) + 2 }));
  const onToY = [arrowY - 9, arrowY + 18].find(
    (y) =>
      y - 12 > scale.y(scale.topM) - 12 &&
      [...taken, ...levels].every(({ topY, toY }) => y + 4 <= topY || y - 11 >= toY),
  );
  const onTo = `${massText(units, last.heldN)} ${units.massUnit}`;
  return (
    <g>
      <path d={strip} fill={paint.ink} fillOpacity="0.14" />
      <path d={edge((p) => p.lowN)} fill="none" stroke={paint.ink} strokeWidth="0.75" strokeDasharray="2 2" />
      <path
        d={edge((p) => p.highN)}
        fill="none"
        stroke={paint.ink}
        strokeWidth="0.75"
        strokeDasharray="2 2"
      />
      <path
        d={
          line<HeldPoint>(
            (p) => at(p.heldN),
            (p) => scale.y(p.zM),
          )(inside) ?? ''
        }
        fill="none"
        stroke={paint.ink}
        strokeWidth="3.5"
        strokeLinejoin="round"
      />
      {leaves && (
        <g>
          <path
            d={`M${toX - 1} ${scale.y(leaves.zM)}l-9 -5.5v11z`}
            fill={paint.ink}
            stroke={paint.paper}
            strokeWidth="1"
          />
          {onToY !== undefined && (
            <text
              x={toX - textWidthPx(onTo, letters.small)}
              y={onToY}
              fontSize={letters.small}
              fontWeight="560"
              fill={paint.ink}
              stroke={paint.paper}
              strokeWidth="3"
              paintOrder="stroke"
            >
              {onTo}
            </text>
          )}
        </g>
      )}
    </g>
  );
}

/** The part of the line from the bottom up to where it first leaves the pane, and that place. */
export function clipped(
  held: readonly HeldPoint[],
  at: (forceN: number) => number,
  toX: number,
): { inside: HeldPoint[]; leaves: HeldPoint | null } {
  const out = held.findIndex((p) => at(p.heldN) > toX);
  if (out < 0) return { inside: [...held], leaves: null };
  const beyond = held[out]!;
  const before = held[out - 1];
  if (before === undefined) return { inside: [], leaves: beyond };
  const share = (toX - at(before.heldN)) / (at(beyond.heldN) - at(before.heldN));
  const leaves = {
    ...beyond,
    zM: before.zM + share * (beyond.zM - before.zM),
    heldN: before.heldN + share * (beyond.heldN - before.heldN),
  };
  return { inside: [...held.slice(0, out), leaves], leaves };
}
