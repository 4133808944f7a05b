import { line } from 'd3-shape';
import { type ChartUnits, lengthText } from './ChartUnits.ts';
import type { RackScene } from './HeightScene.ts';
import type { HeightScale } from './heightScale.ts';
import { patternFill } from './Patterns.tsx';
import { letters, paint, textWidthPx } from './paint.ts';
import { boxSpanM, type RackScale } from './rackScale.ts';

type RackBand = RackScene['bands'][number];

/** Half of a full-size disc's width is no use here: the bar is drawn as a circle one can see (px). */
const barRadiusPx = 9;
/** The narrowest band that is still drawn as an area (px). */
const thinnestBandPx = 4;

/**
 * The rack from the side, to scale: upright, anchors, box or bench, the bar as a circle at bottom (ink) and lockout
 * (grey), its path dashed, each band full at the bottom and hollow at lockout.
 */
export function RackPane(props: {
  scale: HeightScale;
  units: ChartUnits;
  scene: RackScene;
  bottomM: number;
  lockoutM: number;
  /** Fore-aft, beside the shared height axis. */
  across: RackScale;
  patterns: string;
}) {
  const { scale, units, scene, bottomM, lockoutM } = props;
  const { px, fromM, toM } = props.across;
  const barX = (zM: number) => px(pathX(scene.path, zM));
  const uprightX = px(toM) - 9;
  const heights = Array.from({ length: 21 }, (_, i) => bottomM + ((lockoutM - bottomM) * i) / 20);
  const bandWidthPx = (band: RackBand) => Math.max(thinnestBandPx, (band.widthMm / 1000) * scale.pxPerM);
  // Bands on one anchor lie side by side, so that each is seen.
  const shiftPx = (band: RackBand, i: number) => (i - (scene.bands.length - 1) / 2) * (bandWidthPx(band) + 2);
  // Words stand left of bar and bands, which are drawn over them.
  const clearToX = Math.min(
    barX(bottomM) - barRadiusPx,
    ...scene.bands.map(
      (band, i) => Math.min(px(band.xM), barX(bottomM)) + shiftPx(band, i) - bandWidthPx(band) / 2,
    ),
  );
  const path = line<number>(barX, scale.y)(heights) ?? '';
  return (
    <g fontFamily={letters.family} fontSize={letters.small}>
      <rect
        x={uprightX}
        y={scale.y(scale.topM)}
        width={7}
        height={scale.floorY - scale.y(scale.topM)}
        fill={paint.paper}
        stroke={paint.ironLine}
      />
      {scene.anchors
        .filter((anchor) => anchor.zM <= scale.topM && anchor.xM >= fromM)
        .map((anchor) => (
          <AnchorPoint
            key={`${anchor.xM} ${anchor.zM}`}
            x={px(anchor.xM)}
            y={scale.y(anchor.zM)}
            stroke={paint.ironLine}
          />
        ))}
      {scene.boxHeightM !== null && (
        <Support
          heightM={scene.boxHeightM}
          word="box"
          x={px(boxSpanM.from)}
          toX={px(boxSpanM.to)}
          clearToX={clearToX}
          {...{ scale, units }}
        />
      )}
      {scene.benchHeightM !== null && (
        <Support
          heightM={scene.benchHeightM}
          word="bench"
          x={px(-0.3)}
          toX={px(0.3)}
          clearToX={clearToX}
          {...{ scale, units }}
        />
      )}
      {scene.bands.map((band, i) => {
        const widthPx = bandWidthPx(band);
        const shift = shiftPx(band, i);
        const anchor = { x: px(band.xM) + shift, y: scale.y(band.zM) };
        const strip = (zM: number) => bandStrip(anchor, { x: barX(zM) + shift, y: scale.y(zM) }, widthPx);
        return (
          <g key={`${band.label} ${i}`}>
            <path d={strip(lockoutM)} fill="none" stroke={paint.rubber} strokeOpacity="0.8" />
            <path
              d={strip(bottomM)}
              fill={patternFill(props.patterns, 'band')}
              stroke={paint.rubber}
              strokeWidth="1.5"
            />
            {band.way === 'doubled' && (
              <path
                d={`M${anchor.x} ${anchor.y}L${barX(lockoutM) + shift} ${scale.y(lockoutM)}`}
                stroke={paint.rubber}
              />
            )}
          </g>
        );
      })}
      {scene.bands.map((band, i) => (
        <AnchorPoint key={`${band.label} ${i}`} x={px(band.xM)} y={scale.y(band.zM)} stroke={paint.ink} />
      ))}
      <path d={path} fill="none" stroke={paint.ink} strokeDasharray="3 3" />
      <Bar x={barX(lockoutM)} y={scale.y(lockoutM)} stroke={paint.quiet} />
      <Bar x={barX(bottomM)} y={scale.y(bottomM)} stroke={paint.ink} />
      <path d={`M${px(fromM)} ${scale.floorY}H${px(toM)}`} stroke={paint.ink} strokeWidth="3" />
    </g>
  );
}

function AnchorPoint({ x, y, stroke }: { x: number; y: number; stroke: string }) {
  return (
    <rect x={x - 4} y={y - 4} width={8} height={8} fill={paint.paper} stroke={stroke} strokeWidth="1.5" />
  );
}

function Bar({ x, y, stroke }: { x: number; y: number; stroke: string }) {
  return (
    <g>
      <circle cx={x} cy={y} r={barRadiusPx} fill={paint.paper} stroke={stroke} strokeWidth="2" />
      <circle cx={x} cy={y} r="1.6" fill={stroke} />
    </g>
  );
}

/** A box or bench with its height written inside where it fits, its name left out before the height. */
function Support(props: {
  heightM: number;
  word: string;
  x: number;
  toX: number;
  /** Where what is drawn over it begins. */
  clearToX: number;
  scale: HeightScale;
  units: ChartUnits;
}) {
  const { scale, units, heightM, x, toX } = props;
  const room = Math.min(toX, props.clearToX) - x - 6;
  const tall = heightM * scale.pxPerM;
  const inside = [props.word, lengthText(units, heightM)].filter(
    (text) => textWidthPx(text, letters.small) <= room,
  );
  const lines = tall > 44 ? inside : tall > 30 ? inside.slice(-1) : [];
  const middle = scale.y(heightM / 2) + 5 - 7 * (lines.length - 1);
  return (
    <g>
      <rect
        x={x}
        y={scale.y(heightM)}
        width={toX - x}
        height={heightM * scale.pxPerM}
        fill={paint.paper}
        stroke={paint.ink}
      />
      {lines.map((text, i) => (
        <text key={text} x={x + 4} y={middle + i * 14} fill={paint.quiet}>
          {text}
        </text>
      ))}
    </g>
  );
}

/** Outline of a band between two points. */
function bandStrip(a: { x: number; y: number }, b: { x: number; y: number }, widthPx: number): string {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const nx = ((b.y - a.y) / length) * (widthPx / 2);
  const ny = (-(b.x - a.x) / length) * (widthPx / 2);
  return `M${a.x + nx} ${a.y + ny}L${b.x + nx} ${b.y + ny}L${b.x - nx} ${b.y - ny}L${a.x - nx} ${a.y - ny}Z`;
}

function pathX(path: RackScene['path'], zM: number): number {
  const first = path[0];
  const last = path[path.length - 1];
  if (first === undefined || last === undefined) return 0;
  if (zM <= first.zM) return first.xM;
  const next = path.findIndex((point) => point.zM >= zM);
  const high = path[next];
  const low = path[next - 1];
  if (high === undefined || low === undefined) return last.xM;
  return low.xM + ((high.xM - low.xM) * (zM - low.zM)) / (high.zM - low.zM);
}
