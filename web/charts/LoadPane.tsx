import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { type ChartUnits, massText } from './ChartUnits.ts';
import type { LoadScene } from './HeightScene.ts';
import type { HeightScale } from './heightScale.ts';
import { patternFill } from './Patterns.tsx';
import { letters, paint, textWidthPx } from './paint.ts';
import { StrengthLine } from './StrengthLine.tsx';

type LoadPoint = LoadScene['points'][number];

/**
 * The load at the bar against height: straight weight solid, chain dotted, band hatched, side by side; over it the heavy
 * line of what the lifter can hold. A band that lifts is hatched the other way, inside the straight weight.
 */
export function LoadPane(props: {
  scale: HeightScale;
  units: ChartUnits;
  scene: LoadScene;
  x: number;
  width: number;
  loadToN: number;
  patterns: string;
  /** Row on which the figures of the axis stand. */
  axisY: number;
}) {
  const { scale, units, scene, x, width } = props;
  const px = scaleLinear([0, props.loadToN / units.newtonPerMass], [x, x + width]);
  const at = (forceN: number) => px(forceN / units.newtonPerMass);
  const ticks = px.ticks(Math.max(2, Math.floor(width / 70)));
  const strip = (from: (p: LoadPoint) => number, to: (p: LoadPoint) => number) =>
    area<LoadPoint>()
      .y((p) => scale.y(p.zM))
      .x0((p) => at(from(p)))
      .x1((p) => at(to(p)))(scene.points) ?? '';
  const straight = (p: LoadPoint) => p.barN + p.chainN;
  const lifts = scene.points.some((p) => p.bandN < 0);
  const first = scene.points[0];
  const last = scene.points[scene.points.length - 1];
  if (first === undefined || last === undefined) return null;
  return (
    <g fontFamily={letters.family} fontSize={letters.small}>
      {ticks.map((tick) => (
        <g key={tick}>
          <path d={`M${px(tick)} ${scale.y(scale.topM)}V${props.axisY - 14}`} stroke={paint.rule} />
          <text x={px(tick)} y={props.axisY} textAnchor="middle" fill={paint.quiet}>
            {tick}
          </text>
        </g>
      ))}
      <text x={x} y={props.axisY + 18} fill={paint.quiet}>
        {units.massUnit} at the bar
      </text>
      <path
        d={strip(
          () => 0,
          (p) => p.barN,
        )}
        fill={paint.iron}
      />
      <path
        d={strip((p) => p.barN, straight)}
        fill={patternFill(props.patterns, 'chain')}
        stroke={paint.ironLine}
        strokeWidth="0.75"
      />
      <path
        d={strip(straight, (p) => p.totalN)}
        fill={patternFill(props.patterns, lifts ? 'bandUp' : 'band')}
        stroke={paint.rubber}
        strokeWidth="0.75"
      />
      <path
        d={strip(
          (p) => p.totalN - 2 * p.sdN,
          (p) => p.totalN + 2 * p.sdN,
        )}
        fill={paint.rubber}
        fillOpacity="0.28"
      />
      <path
        d={
          line<LoadPoint>(
            (p) => at(p.totalN),
            (p) => scale.y(p.zM),
          )(scene.points) ?? ''
        }
        fill="none"
        stroke={paint.ink}
        strokeWidth="1.5"
      />
      <StrengthLine scale={scale} units={units} held={scene.held} at={at} toX={x + width} />
      <EndLabel
        units={units}
        scene={scene}
        point={last}
        x={x}
        width={width}
        y={scale.y(last.zM)}
        where="lockout"
      />
      <EndLabel
        units={units}
        scene={scene}
        point={first}
        x={x}
        width={width}
        y={scale.y(first.zM)}
        where="bottom"
      />
    </g>
  );
}

/** The number that matters at one end, with what share of strength it asks for; in two lines where it is narrow. */
function EndLabel(props: {
  units: ChartUnits;
  scene: LoadScene;
  point: LoadPoint;
  x: number;
  width: number;
  y: number;
  where: 'bottom' | 'lockout';
}) {
  const { units, point, x, where } = props;
  const number = massText(units, point.totalN);
  const held = props.scene.held.find((p) => Math.abs(p.zM - point.zM) < 1e-6)?.heldN;
  const share = held !== undefined && held > 0 ? `${Math.round((100 * point.totalN) / held)} %` : '';
  const besideX = x + textWidthPx(number, letters.number) + 6;
  const fits = (text: string, fromX: number) =>
    fromX + textWidthPx(text, letters.small) < x + props.width + 8;
  const words = [`${units.massUnit} at ${where}`, units.massUnit];
  const whole = `${words[0]}, ${share} of strength`;
  const oneLine = share === '' || fits(whole, besideX);
  const first =
    share !== '' && oneLine ? whole : (words.find((text) => fits(text, besideX)) ?? units.massUnit);
  const second = [`${share} of strength`, share].find((text) => fits(text, x)) ?? share;
  const down = where === 'bottom';
  const numberY = down ? props.y + 22 : props.y - (oneLine ? 8 : 22);
  return (
    <g>
      <text x={x} y={numberY} fontSize={letters.number} fontWeight="700" fill={paint.ink}>
        {number}
      </text>
      <text x={besideX} y={numberY} fill={paint.quiet}>
        {first}
      </text>
      {!oneLine && (
        <text x={x} y={numberY + 15} fill={paint.quiet}>
          {second}
        </text>
      )}
    </g>
  );
}
