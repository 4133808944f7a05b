import { type ChartUnits, lengthText } from './ChartUnits.ts';
import type { HeightScale } from './heightScale.ts';
import { letters, paint, textWidthPx } from './paint.ts';

/** How near to a named height a plain figure may stand (px). */
const clearPx = 14;
/** From a figure to the staff's edge (px). */
const figureGapPx = 11;

/**
 * The measuring staff at the left: ticks each 10 cm (or 4 in), figures each 50 cm (or 20 in), and the two heights that
 * matter, bottom and lockout, as dotted levels across all panes.
 */
export function HeightAxis(props: {
  scale: HeightScale;
  units: ChartUnits;
  /** Right edge of the staff. */
  x: number;
  /** How far the dotted levels run. */
  toX: number;
  bottomM: number;
  lockoutM: number;
}) {
  const { scale, units, x, toX, bottomM, lockoutM } = props;
  const tick = units.lengthUnit === 'cm' ? 10 : 4;
  const stepM = tick * units.metrePerLength;
  const ticks = Array.from({ length: Math.floor(scale.topM / stepM + 1e-9) + 1 }, (_, i) => i);
  // Two named heights keep apart, however short the range.
  const apart = Math.max(0, letters.tag - (scale.y(bottomM) - scale.y(lockoutM))) / 2;
  const named = [
    { heightM: lockoutM, textY: scale.y(lockoutM) - apart },
    { heightM: bottomM, textY: scale.y(bottomM) + apart },
  ];
  return (
    <g fontFamily={letters.family} fontSize={letters.small}>
      <path d={`M${x} ${scale.y(scale.topM)}V${scale.floorY}`} stroke={paint.ruleStrong} />
      {ticks.map((i) => {
        const y = scale.y(i * stepM);
        const long = i % 5 === 0;
        const free = named.every((level) => Math.abs(level.textY - y) > clearPx);
        return (
          <g key={i}>
            <path d={`M${x} ${y}h${long ? -8 : -4}`} stroke={paint.ruleStrong} />
            {long && free && (
              <text x={x - figureGapPx} y={y + 4} textAnchor="end" fill={paint.quiet}>
                {i * tick}
              </text>
            )}
          </g>
        );
      })}
      {named.map(({ heightM, textY }) => (
        <g key={heightM}>
          <path
            d={`M${x - 8} ${scale.y(heightM)}H${toX}`}
            stroke={paint.ink}
            strokeDasharray="1 4"
            strokeLinecap="round"
          />
          <text
            x={x - figureGapPx}
            y={textY + 4}
            textAnchor="end"
            fontWeight="640"
            fill={paint.ink}
            fontSize={letters.tag}
          >
            {figure(units, heightM)}
          </text>
        </g>
      ))}
      <text x={x - figureGapPx} y={scale.y(scale.topM) - 8} textAnchor="end" fill={paint.quiet}>
        {units.lengthUnit}
      </text>
    </g>
  );
}

/** How much room the staff needs for the heights it names (px). */
export function staffWidthPx(units: ChartUnits, heightsM: readonly number[]): number {
  return figureGapPx + Math.max(22, ...heightsM.map((m) => textWidthPx(figure(units, m), letters.tag)));
}

function figure(units: ChartUnits, heightM: number): string {
  return lengthText(units, heightM).split(' ')[0] ?? '';
}
