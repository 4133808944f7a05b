import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { AxisFigures } from './AxisFigures.tsx';
import type { ChartUnits } from './ChartUnits.ts';
import type { LoadScene } from './HeightScene.ts';
import type { HeightScale } from './heightScale.ts';
import { endWords, LoadEnd } from './LoadEnd.tsx';
import { patternFill } from './Patterns.tsx';
import { letters, paint } from './paint.ts';
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
  const lockout = endWords(scene, units, 'lockout', { x, width, levelY: scale.y(last.zM) });
  const bottom = endWords(scene, units, 'bottom', { x, width, levelY: scale.y(first.zM) });
  return (
    <g fontFamily={letters.family} fontSize={letters.small}>
      <AxisFigures
        at={px}
        values={px.ticks(Math.max(2, Math.floor(width / 70)))}
        names={[`${units.massUnit} at the bar`, units.massUnit]}
        y={props.axisY}
        ruleTopY={scale.y(scale.topM)}
        {...{ x, width }}
      />
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
      <StrengthLine
        scale={scale}
        units={units}
        held={scene.held}
        at={at}
        toX={x + width}
        taken={[lockout, bottom].filter((words) => words !== null)}
      />
      <LoadEnd words={lockout} />
      <LoadEnd words={bottom} />
    </g>
  );
}
