import { scaleLinear } from 'd3-scale';
import type { ForetoldLift } from '#contract/projection/backtestReport.ts';
import { counted } from '#contract/words/counted.ts';
import { dateText } from '#contract/words/dateText.ts';
import { signedText } from '#contract/words/signedText.ts';
import { fromSi } from '#core/units/units.ts';
import { Plot } from '#web/charts/Plot.tsx';
import { firstThatFits, letters, paint } from '#web/charts/paint.ts';

const room = { right: 16, top: 28, bottom: 40 };
const wide = { rowPx: 24, fromPx: 640, namePx: 250, sidePx: 110 };
const narrowRowPx = 42;
/** Percent of what was foretold that the picture reaches at most. */
const MOST_PERCENT = 30;

/**
 * A row for each lift at each meet, on a scale of percent of what was foretold: thick and thin lines hold the result 80
 * and 95 times in 100, the circle is the best made, the cross the lightest missed above it.
 */
export function ForetoldRows(props: {
  lifts: readonly ForetoldLift[];
  nameOf: (lifterId: string) => string;
  unit: 'kg' | 'lb';
  widthPx: number;
}) {
  const { lifts, nameOf, unit, widthPx } = props;
  const isWide = widthPx >= wide.fromPx;
  const rowPx = isWide ? wide.rowPx : narrowRowPx;
  const [from, to] = isWide ? [wide.namePx, widthPx - wide.sidePx] : [12, widthPx - room.right];
  const floor = room.top + lifts.length * rowPx;
  const reach = reachOf(lifts);
  const x = scaleLinear([-reach, reach], [from, to]).clamp(true);
  return (
    <Plot
      label={`What was forecast and what was lifted, ${counted(lifts.length, 'lift')}. The table under it shows the same.`}
      widthPx={widthPx}
      heightPx={floor + room.bottom}
      fill={paint.quiet}
    >
      <path d={`M${x(0)} ${room.top}V${floor}`} stroke={paint.ruleStrong} />
      <text x={x(0)} y={16} textAnchor="middle">
        forecast
      </text>
      {x.ticks(isWide ? 8 : 4).map((tick) => (
        <g key={tick}>
          <path d={`M${x(tick)} ${floor}v5`} stroke={paint.ruleStrong} />
          <text x={x(tick)} y={floor + 18} textAnchor="middle">
            {signedText(tick, { plus: true })}
          </text>
        </g>
      ))}
      <path d={`M${from} ${floor}H${to}`} stroke={paint.ink} />
      <text x={to} y={floor + 34} textAnchor="end">
        % of the forecast
      </text>
      {lifts.map((one, i) => (
        <Row
          key={`${one.lifterId} ${one.on}`}
          one={one}
          name={nameOf(one.lifterId)}
          topY={room.top + i * rowPx}
          {...{ x, unit, widthPx, isWide }}
        />
      ))}
    </Plot>
  );
}

function Row(props: {
  one: ForetoldLift;
  name: string;
  unit: 'kg' | 'lb';
  x: (percent: number) => number;
  topY: number;
  widthPx: number;
  isWide: boolean;
}) {
  const { one, name, unit, x, topY, widthPx, isWide } = props;
  const { maxKg, madeKg, missedKg, on } = one;
  const y = isWide ? topY + wide.rowPx / 2 : topY + 30;
  const at = (kg: number) => x(percentOf(kg, one));
  const mass = (kg: number) => `${Number(fromSi(kg, unit).toFixed(1))}`;
  const result = `${mass(maxKg.median)} → ${madeKg === null ? 'none' : mass(madeKg)}`;
  const nameRoom = isWide ? wide.namePx - 16 : widthPx - 150;
  return (
    <g>
      <text
        x={isWide ? wide.namePx - 16 : 12}
        y={isWide ? y + 4 : topY + 16}
        textAnchor={isWide ? 'end' : 'start'}
      >
        {firstThatFits([`${name}, ${dateText(on)}`, name, dateText(on)], letters.small, nameRoom)}
      </text>
      <text x={widthPx - room.right} y={isWide ? y + 4 : topY + 16} textAnchor="end" fill={paint.ink}>
        {result}
      </text>
      <path d={`M${at(maxKg.low95)} ${y}H${at(maxKg.high95)}`} stroke={paint.ironLine} strokeWidth="1.25" />
      <path d={`M${at(maxKg.low80)} ${y}H${at(maxKg.high80)}`} stroke={paint.iron} strokeWidth="9" />
      {missedKg !== null && (
        <path
          d={`M${at(missedKg) - 4} ${y - 4}l8 8m0-8l-8 8`}
          stroke={paint.stop}
          strokeWidth="2"
          fill="none"
        />
      )}
      {madeKg !== null && (
        <circle cx={at(madeKg)} cy={y} r="4.5" fill={paint.ink} stroke={paint.paper} strokeWidth="1.5" />
      )}
    </g>
  );
}

function percentOf(kg: number, { maxKg }: ForetoldLift): number {
  return 100 * (kg / maxKg.median - 1);
}

/** As far as nine ranges of ten and every result go, within reason. */
function reachOf(lifts: readonly ForetoldLift[]): number {
  const far = lifts.map((one) =>
    Math.max(...[one.maxKg.low95, one.maxKg.high95].map((kg) => Math.abs(percentOf(kg, one)))),
  );
  const usual = far.sort((a, b) => a - b)[Math.floor(0.9 * (far.length - 1))] ?? 10;
  const results = lifts.flatMap((one) =>
    [one.madeKg, one.missedKg].flatMap((kg) => (kg === null ? [] : [Math.abs(percentOf(kg, one))])),
  );
  return Math.min(MOST_PERCENT, Math.max(usual, ...results) * 1.05);
}
