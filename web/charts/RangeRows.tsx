import { scaleLinear } from 'd3-scale';
import { signedText } from '#contract/words/signedText.ts';
import { Plot } from './Plot.tsx';
import { firstThatFits, letters, paint, textWidthPx } from './paint.ts';

/** One effect with its two ranges, by name. */
export interface RangeRow {
  key: string;
  name: string;
  /** The club and its parts are drawn as squares, single lifters as circles. */
  isClub: boolean;
  value: number;
  low80: number;
  high80: number;
  low95: number;
  high95: number;
}

const room = { right: 16, top: 26, bottom: 40 };
const wide = { rowPx: 30, fromPx: 560 };
const narrowRowPx = 46;
/** Ranges beyond the middle half of all by so many of their widths are cut, with an arrow. */
const reach = 2.5;

/**
 * Effects one under the other on one axis: a mark, a thick line that holds the truth 80 times in 100 and a thin one that
 * does 95 times, cut with an arrow where it leaves the picture. `rule` is a second upright line with a meaning of its own.
 */
export function RangeRows(props: {
  label: string;
  rows: readonly RangeRow[];
  axis: string;
  rule?: { value: number; word: string } | undefined;
  widthPx: number;
}) {
  const { rows, axis, rule, widthPx } = props;
  const isWide = widthPx >= wide.fromPx;
  const nameWidth = Math.max(...rows.map(({ name }) => textWidthPx(name, letters.tag)));
  const left = isWide ? Math.min(nameWidth + 24, widthPx * 0.5) : 12;
  const rowPx = isWide ? wide.rowPx : narrowRowPx;
  const floorY = room.top + rows.length * rowPx;
  const x = scaleLinear(domainOf(rows, rule?.value), [left, widthPx - room.right]);
  const [from, to] = [left, widthPx - room.right];
  return (
    <Plot
      label={`${props.label}. ${rows.map(spoken).join(' ')}`}
      widthPx={widthPx}
      heightPx={floorY + room.bottom}
    >
      {x.ticks(Math.max(3, Math.floor((to - from) / 80))).map((tick) => (
        <g key={tick}>
          <path d={`M${x(tick)} ${floorY}v5`} stroke={paint.ruleStrong} />
          <text x={x(tick)} y={floorY + 18} textAnchor="middle" fill={paint.quiet}>
            {signedText(tick)}
          </text>
        </g>
      ))}
      <path d={`M${from} ${floorY}H${to}`} stroke={paint.ink} />
      <path d={`M${x(0)} ${room.top}V${floorY}`} stroke={paint.ruleStrong} />
      {rule && (
        <>
          <path d={`M${x(rule.value)} ${room.top}V${floorY}`} stroke={paint.ink} strokeDasharray="2 4" />
          <text
            x={ruleWordX(x(rule.value), rule.word, from, to)}
            y={16}
            fill={paint.quiet}
            textAnchor="middle"
          >
            {rule.word}
          </text>
        </>
      )}
      <text x={to} y={floorY + 34} textAnchor="end" fill={paint.quiet}>
        {firstThatFits([axis, axis.split(',')[0] ?? ''], letters.small, to - from)}
      </text>
      {rows.map((row, i) => (
        <Row key={row.key} row={row} x={x} topY={room.top + i * rowPx} left={left} isWide={isWide} to={to} />
      ))}
    </Plot>
  );
}

function Row(props: {
  row: RangeRow;
  x: (value: number) => number;
  topY: number;
  left: number;
  to: number;
  isWide: boolean;
}) {
  const { row, x, topY, left, to, isWide } = props;
  const y = topY + (isWide ? wide.rowPx / 2 : 32);
  const inside = (value: number) => Math.min(to, Math.max(left, x(value)));
  const mark = inside(row.value);
  return (
    <g>
      <text
        x={isWide ? left - 16 : left}
        y={isWide ? y + 4 : topY + 18}
        textAnchor={isWide ? 'end' : 'start'}
        fontSize={letters.tag}
        fontWeight={row.isClub ? 640 : 420}
        fill={paint.ink}
        stroke={paint.paper}
        strokeWidth="4"
        paintOrder="stroke"
      >
        {firstThatFits([row.name, row.name.split(' ')[0] ?? ''], letters.tag, isWide ? left - 16 : to - left)}
      </text>
      <path d={`M${inside(row.low95)} ${y}H${inside(row.high95)}`} stroke={paint.ink} strokeWidth="1.25" />
      <path d={`M${inside(row.low80)} ${y}H${inside(row.high80)}`} stroke={paint.ink} strokeWidth="5" />
      {x(row.low95) < left && <Arrow at={left} y={y} toward={-1} />}
      {x(row.high95) > to && <Arrow at={to} y={y} toward={1} />}
      {row.isClub ? (
        <rect
          x={mark - 6}
          y={y - 6}
          width="12"
          height="12"
          fill={paint.ink}
          stroke={paint.paper}
          strokeWidth="2"
        />
      ) : (
        <circle cx={mark} cy={y} r="5.5" fill={paint.paper} stroke={paint.ink} strokeWidth="2" />
      )}
    </g>
  );
}

function Arrow({ at, y, toward }: { at: number; y: number; toward: 1 | -1 }) {
  return (
    <path
      d={`M${at - toward * 7} ${y - 4}L${at} ${y}L${at - toward * 7} ${y + 4}`}
      fill="none"
      stroke={paint.ink}
    />
  );
}

/** Nought, the rule, all middles and most of the ranges. */
function domainOf(rows: readonly RangeRow[], rule: number | undefined): [number, number] {
  const widths = rows.map(({ low80, high80 }) => high80 - low80).sort((a, b) => a - b);
  const usual = widths[Math.floor(widths.length / 2)] ?? 1;
  const fixed = [0, ...(rule === undefined ? [] : [rule]), ...rows.map(({ value }) => value)];
  const low = Math.min(...fixed, ...rows.map((row) => Math.max(row.low95, row.value - reach * usual)));
  const high = Math.max(...fixed, ...rows.map((row) => Math.min(row.high95, row.value + reach * usual)));
  const margin = 0.04 * (high - low || 1);
  return [low - margin, high + margin];
}

function ruleWordX(at: number, word: string, from: number, to: number): number {
  const half = textWidthPx(word, letters.small) / 2;
  return Math.min(to - half, Math.max(from + half, at));
}

function spoken({ name, value, low80, high80 }: RangeRow): string {
  return `${name}: ${one(value)}, most likely ${one(low80)} to ${one(high80)}.`;
}

function one(figure: number): string {
  return signedText(figure, { decimals: 1 });
}
