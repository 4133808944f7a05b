import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { AxisFigures } from './AxisFigures.tsx';
import type { SpeedScene } from './HeightScene.ts';
import type { HeightScale } from './heightScale.ts';
import { letters, paint, textWidthPx } from './paint.ts';

/** Speed of the bar over height: green where it goes up, its slowest point marked; a miss ends in a red cross. */
export function SpeedPane(props: {
  scale: HeightScale;
  scene: SpeedScene;
  x: number;
  width: number;
  speedToMps: number;
  axisY: number;
}) {
  const { scale, scene, x, width, axisY } = props;
  const px = scaleLinear([0, props.speedToMps], [x, x + width]);
  const colour = scene.made ? paint.go : paint.stop;
  const mark = { x: px(scene.slowest.speedMps), y: scale.y(scene.slowest.zM) };
  const text = scene.made ? `${scene.slowest.speedMps.toFixed(2)} m/s` : 'stops here';
  // Without a sticking region there is no slowest point to mark, only the speed at lockout.
  const rises = scene.made && scene.slowest.zM === scene.samples[scene.samples.length - 1]?.zM;
  // Right of its mark, else left of it, else where no curve can be: under the bottom, or over lockout where it rises to there.
  const wide = textWidthPx(text, letters.small);
  const right = mark.x + 10 + wide <= x + width + 8;
  const left = !right && mark.x - 10 - wide >= x + 2;
  // Under the bottom, a ring like that on the curve says of which speed the figure is.
  const ringed = scene.made && !rises && !left && !right;
  const textX = right ? mark.x + 10 : left ? mark.x - 10 - wide : x + (ringed ? 14 : 2);
  const besideY = mark.y + (rises ? 18 : 4);
  const apartY = rises ? mark.y - 8 : scale.y(scene.samples[0]?.zM ?? 0) + 18;
  const textY = scene.made ? (left || right ? besideY : apartY) : mark.y - 10;
  return (
    <g fontFamily={letters.family} fontSize={letters.small}>
      <path d={`M${x} ${scale.y(scale.topM)}V${axisY - 14}`} stroke={paint.ruleStrong} />
      <AxisFigures
        at={px}
        values={px.ticks(Math.max(2, Math.floor(width / 56)))}
        names={scene.made ? [`m/s, ${scene.durationS.toFixed(1)} s up`, 'm/s'] : ['m/s']}
        y={axisY}
        x={x}
        width={width + 4}
      />
      <path
        d={
          line<SpeedScene['samples'][number]>(
            (p) => px(p.speedMps),
            (p) => scale.y(p.zM),
          )(scene.samples) ?? ''
        }
        fill="none"
        stroke={colour}
        strokeWidth="2.5"
        strokeLinejoin="round"
      />
      {rises ? null : scene.made ? (
        <circle cx={mark.x} cy={mark.y} r="5" fill={paint.paper} stroke={colour} strokeWidth="2.5" />
      ) : (
        <path d={`M${mark.x - 6} ${mark.y - 6}l12 12m0 -12l-12 12`} stroke={colour} strokeWidth="3" />
      )}
      {ringed && (
        <circle cx={x + 7} cy={textY - 4} r="4" fill={paint.paper} stroke={colour} strokeWidth="2" />
      )}
      <text
        x={textX}
        y={textY}
        fontWeight="560"
        fill={colour}
        stroke={paint.paper}
        strokeWidth="3"
        paintOrder="stroke"
      >
        {text}
      </text>
    </g>
  );
}
