import type { AnchorRecord, Rack } from '#contract/records/gear.ts';
import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { fromSi, toSi } from '#core/units/units.ts';
import { heightScale } from '#web/charts/heightScale.ts';
import { letters, paint } from '#web/charts/paint.ts';

/** An anchor point as drawn; one being typed may still lack a number. */
export interface DrawnAnchor extends Pick<AnchorRecord, 'label' | 'xM'> {
  id: string;
  zM: number | null;
}

const widthPx = 420;
const heightPx = 460;
/** How far the drawing reaches behind and in front of the bar (m). */
const halfM = 0.85;
/** Room of a label and of a line of letters, as drawn (m). */
const labelM = 0.5;
const lineM = 0.08;

/** A rack from the side, to scale, the lifter facing right: floor, upright, bench, bar line and every anchor point. */
export function RackDrawing(props: {
  rack: Pick<Rack, 'label' | 'benchHeightM'>;
  anchors: readonly DrawnAnchor[];
  /** Points that a hookup hangs bands on: a band is drawn from each to the bar. */
  usedIds: ReadonlySet<string>;
  /** The point in the form, drawn full. */
  openId: string | null;
  barHeightM: number;
  lengthUnit: LengthUnit;
}) {
  const { rack, anchors, usedIds, openId, barHeightM, lengthUnit } = props;
  const topM = Math.max(2.3, ...anchors.map(({ zM }) => (zM ?? 0) + 0.15));
  const scale = heightScale(topM, 20, heightPx - 34);
  const zeroX = 60 + halfM * scale.pxPerM;
  const px = (xM: number) => zeroX + xM * scale.pxPerM;
  const drawn = anchors.filter((anchor) => anchor.zM !== null);
  const stepM = lengthUnit === 'cm' ? 0.5 : toSi(20, 'in');
  const levels = Array.from({ length: Math.floor(topM / stepM) + 1 }, (_, i) => i * stepM);
  return (
    <svg
      className="rack-drawing"
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label={`${rack.label} from the side: ${drawn.map(({ label, xM, zM }) => `${label} ${text(zM ?? 0, lengthUnit)} up, ${text(xM, lengthUnit)} to the front`).join('; ')}`}
      fontFamily={letters.family}
      fontSize={letters.small}
    >
      {levels.map((m) => (
        <g key={m}>
          <path d={`M52 ${scale.y(m)}H${widthPx}`} stroke={paint.rule} />
          <text x={46} y={scale.y(m) + 4} textAnchor="end" fill={paint.quiet}>
            {Math.round(fromSi(m, lengthUnit))}
          </text>
        </g>
      ))}
      <rect
        x={px(0.28)}
        y={scale.y(topM)}
        width={0.06 * scale.pxPerM}
        height={scale.floorY - scale.y(topM)}
        fill={paint.paper}
        stroke={paint.ironLine}
      />
      <rect
        x={px(-0.6)}
        y={scale.y(topM)}
        width={0.06 * scale.pxPerM}
        height={scale.floorY - scale.y(topM)}
        fill={paint.paper}
        stroke={paint.ironLine}
      />
      {rack.benchHeightM !== null && (
        <rect
          x={px(-0.5)}
          y={scale.y(rack.benchHeightM)}
          width={0.62 * scale.pxPerM}
          height={rack.benchHeightM * scale.pxPerM}
          fill={paint.paper}
          stroke={paint.ironLine}
          strokeDasharray="4 3"
        />
      )}
      <path d={`M${px(0)} ${scale.y(topM)}V${scale.floorY}`} stroke={paint.ink} strokeDasharray="3 4" />
      <circle
        cx={px(0)}
        cy={scale.y(barHeightM)}
        r="9"
        fill={paint.paper}
        stroke={paint.ink}
        strokeWidth="2"
      />
      <circle cx={px(0)} cy={scale.y(barHeightM)} r="1.6" fill={paint.ink} />
      {drawn.map((anchor) => {
        const open = anchor.id === openId;
        const y = scale.y(anchor.zM ?? 0);
        const x = px(anchor.xM);
        const left = anchor.xM < -0.1 || drawn.some((other) => standsInTheWay(other, anchor));
        return (
          <g key={anchor.id}>
            {(open || usedIds.has(anchor.id)) && (
              <path
                d={`M${x} ${y}L${px(0)} ${scale.y(barHeightM)}`}
                stroke={paint.rubber}
                strokeWidth={open ? 4 : 1.5}
              />
            )}
            <rect
              x={x - 5}
              y={y - 5}
              width="10"
              height="10"
              fill={open ? paint.ink : paint.paper}
              stroke={paint.ink}
              strokeWidth="2"
            />
            <text
              x={left ? x - 10 : x + 12}
              y={(anchor.zM ?? 0) < 0.06 ? y - 3 : y + 4}
              textAnchor={left ? 'end' : 'start'}
              fill={paint.ink}
              fontWeight={open ? '680' : '480'}
              stroke={paint.paper}
              // Wide enough that a post behind the words does not show between them.
              strokeWidth="8"
              strokeLinejoin="round"
              paintOrder="stroke"
            >
              {anchor.label || 'the new point'}
            </text>
          </g>
        );
      })}
      <path d={`M52 ${scale.floorY}H${widthPx}`} stroke={paint.ink} strokeWidth="3" />
      <text x={widthPx - 4} y={heightPx - 10} textAnchor="end" fill={paint.quiet}>
        the lifter faces this way →
      </text>
      <text x={6} y={heightPx - 10} fill={paint.quiet}>
        {lengthUnit} above the floor
      </text>
    </svg>
  );
}

/** Whether another point lies where a label to the right of this one would stand. */
function standsInTheWay(other: DrawnAnchor, anchor: DrawnAnchor): boolean {
  const right = other.xM - anchor.xM;
  return right > 0 && right < labelM && Math.abs((other.zM ?? 0) - (anchor.zM ?? 0)) < lineM;
}

function text(m: number, unit: LengthUnit): string {
  return `${fromSi(m, unit).toFixed(0)} ${unit}`;
}
