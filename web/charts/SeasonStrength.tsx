import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { Plot } from './Plot.tsx';
import { letters, paint } from './paint.ts';
import type { SeasonFrame } from './SeasonScene.ts';
import { type SeasonStrengthScene, strengthSpan } from './SeasonStrengthScene.ts';

const edgePx = 8;
const betweenFiguresPx = 34;

function heightOf(scene: SeasonStrengthScene, heightPx: number): ScaleLinear<number, number> | null {
  const span = strengthSpan(scene);
  return span && scaleLinear(span, [heightPx - edgePx, edgePx]);
}

function figuresOf(y: ScaleLinear<number, number>, heightPx: number): number[] {
  return y.ticks(Math.max(2, Math.floor(heightPx / betweenFiguresPx)));
}

/**
 * Under the weeks of a season: what the maximum was with its range, from today on the range alone, meets as posts, bests where they were done. What it
 * shows stands as a table beside it, so that a screen reader hears the title alone.
 */
export function SeasonStrength({ scene, frame }: { scene: SeasonStrengthScene; frame: SeasonFrame }) {
  const { weekPx, weeks, todayAt, rowPx: heightPx } = frame;
  const widthPx = weekPx * weeks;
  const y = heightOf(scene, heightPx);
  if (y === null) return null;
  const x = ({ at }: { at: number }) => at * weekPx;
  const strip = area<{ at: number; low: number; high: number }>()
    .x(x)
    .y0(({ low }) => y(low))
    .y1(({ high }) => y(high));
  const edge = (of: 'low' | 'high') =>
    line<SeasonStrengthScene['ahead'][number]>(x, (one) => y(one[of]))(scene.ahead) ?? '';
  return (
    <Plot label={`${scene.title}: figures week by week in the table.`} {...{ widthPx, heightPx }}>
      {figuresOf(y, heightPx).map((tick) => (
        <path key={tick} d={`M0 ${y(tick)}H${widthPx}`} stroke={paint.rule} />
      ))}
      <path d={strip([...scene.past]) ?? ''} fill={paint.ink} fillOpacity="0.2" />
      <path d={strip([...scene.ahead]) ?? ''} fill={paint.ink} fillOpacity="0.1" />
      <path d={edge('low') + edge('high')} fill="none" stroke={paint.ink} strokeDasharray="2 3" />
      <path d={scene.meetsAt.map((at) => `M${x({ at })} 0V${heightPx}`).join('')} {...post} />
      {todayAt !== null && (
        <path
          d={`M${x({ at: todayAt })} 0V${heightPx}`}
          stroke={paint.go}
          strokeWidth="2"
          strokeDasharray="4 3"
        />
      )}
      <path
        d={line<SeasonStrengthScene['past'][number]>(x, ({ middle }) => y(middle))(scene.past) ?? ''}
        fill="none"
        stroke={paint.ink}
        strokeWidth="2.5"
      />
      {scene.bests.map((best) => (
        <BestMark key={`${best.at} ${best.load}`} x={x(best)} y={y(best.load)} atMeet={best.atMeet} />
      ))}
    </Plot>
  );
}

const post = { stroke: paint.ink, strokeWidth: 3 } as const;

/** The figures of the heights, at the left of the picture. */
export function SeasonStrengthAxis(props: { scene: SeasonStrengthScene; widthPx: number; heightPx: number }) {
  const { scene, widthPx, heightPx } = props;
  const y = heightOf(scene, heightPx);
  if (y === null) return null;
  return (
    <svg width={widthPx} height={heightPx} aria-hidden="true">
      <g fontFamily={letters.family} fontSize={letters.small} fill={paint.quiet} textAnchor="end">
        {figuresOf(y, heightPx).map((tick, at, all) => (
          <text key={tick} x={widthPx - 6} y={y(tick) + 4}>
            {at === all.length - 1 ? `${tick} ${scene.unit}` : tick}
          </text>
        ))}
      </g>
    </svg>
  );
}

/** Open in the gym, filled at a meet. */
function BestMark({ x, y, atMeet }: { x: number; y: number; atMeet: boolean }) {
  return (
    <path
      d={`M${x - 5} ${y + 4}L${x} ${y - 5.5}L${x + 5} ${y + 4}Z`}
      fill={atMeet ? paint.ink : paint.paper}
      stroke={atMeet ? paint.paper : paint.ink}
      strokeWidth="1.5"
    />
  );
}

/** What is drawn under the weeks. */
export function SeasonStrengthLegend() {
  return (
    <div className="chart-legend small">
      <span>
        <svg width="28" height="18" aria-hidden="true">
          <path d="M0 2H28V16H0Z" fill={paint.ink} fillOpacity="0.2" />
          <path d="M0 9H28" stroke={paint.ink} strokeWidth="2.5" />
        </svg>
        estimated maximum, with the range it lies in 80 times in 100
      </span>
      <span>
        <svg width="28" height="18" aria-hidden="true">
          <path d="M0 2H28V16H0Z" fill={paint.ink} fillOpacity="0.1" />
          <path d="M0 2H28M0 16H28" stroke={paint.ink} strokeDasharray="2 3" />
        </svg>
        the range ahead, 80 times in 100
      </span>
      {[false, true].map((atMeet) => (
        <span key={String(atMeet)}>
          <svg width="16" height="18" aria-hidden="true">
            <BestMark x={8} y={10} atMeet={atMeet} />
          </svg>
          {atMeet ? 'best at a meet' : 'best in the gym, straight'}
        </span>
      ))}
    </div>
  );
}
