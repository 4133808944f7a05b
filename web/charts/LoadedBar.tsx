import { useId } from 'react';
import type { DiscsOnSide } from '#contract/paper/RackSheetModel.ts';
import { discShape } from './discShape.ts';
import { letters, paint, textWidthPx } from './paint.ts';

/** Tones of the rule book's three colours; a pattern of its own goes with each. */
const discTone = { red: '#b8433a', blue: '#3d6ea8', yellow: '#d9b13b' } as const;

/** What is drawn of a bar: a piece of shaft, the collar's inner face, the sleeve. Sleeve length by the weightlifting rule, 415 mm. */
const shaftM = 0.14;
const sleeveM = 0.415;

/**
 * One side of the loaded bar to scale, with the count and mass of its discs written above. Colours only where the rule book
 * sets them; stripes tell 25, 20 and 15 kg apart without colour.
 */
export function LoadedBar(props: {
  label: string;
  perSide: readonly DiscsOnSide[];
  widthPx: number;
  /** False: black and white, for the printer. */
  colour?: boolean;
  /** False: no figures above the discs, where they stand in words beside the drawing. */
  figures?: boolean;
}) {
  const id = useId();
  const { perSide, widthPx } = props;
  const placed = place(perSide);
  const lengthM = shaftM + Math.max(sleeveM, placed.endM + 0.04);
  const scale = Math.min(520, (widthPx - 2) / lengthM);
  const labels = props.figures === false ? [] : stagger(placed.groups, scale);
  const labelRoom = labels.length === 0 ? 2 : 8 + 15 * (1 + Math.max(...labels.map((l) => l.row)));
  const axisY = labelRoom + 0.225 * scale;
  const height = axisY + 0.225 * scale + 2;
  const x = (m: number) => 1 + (shaftM + m) * scale;
  const summary = perSide.length
    ? perSide.map((d) => `${d.count} of ${d.faceMassKg} kg`).join(', ')
    : 'no discs';
  return (
    <svg
      width={widthPx}
      height={height}
      viewBox={`0 0 ${widthPx} ${height}`}
      role="img"
      aria-label={`${props.label}: each side ${summary}, from the middle out.`}
      fontFamily={letters.family}
      fontSize={letters.small}
    >
      <Stripes id={id} />
      <rect
        x={x(-shaftM)}
        y={axisY - 0.0145 * scale}
        width={shaftM * scale}
        height={0.029 * scale}
        fill={paint.iron}
        stroke={paint.ironLine}
      />
      <rect
        x={x(0)}
        y={axisY - 0.025 * scale}
        width={Math.max(sleeveM, placed.endM + 0.04) * scale}
        height={0.05 * scale}
        fill={paint.iron}
        stroke={paint.ironLine}
      />
      <rect
        x={x(-0.03)}
        y={axisY - 0.037 * scale}
        width={0.03 * scale}
        height={0.074 * scale}
        fill={paint.iron}
        stroke={paint.ink}
      />
      {placed.discs.map(({ fromM, shape, massKg }, i) => {
        const box = {
          x: x(fromM),
          y: axisY - (shape.diameterM / 2) * scale,
          width: shape.thicknessM * scale,
          height: shape.diameterM * scale,
          rx: 2,
        };
        const tone = shape.colour && props.colour !== false ? discTone[shape.colour] : paint.paper;
        return (
          <g key={`${massKg} ${i}`}>
            <rect {...box} fill={tone} stroke={paint.ink} strokeWidth="1.5" />
            {shape.colour && <rect {...box} fill={`url(#${id}-${shape.colour})`} />}
          </g>
        );
      })}
      {labels.map(({ text, centreM, topM, row }) => {
        const y = labelRoom - 8 - row * 15;
        return (
          <g key={text}>
            <path d={`M${x(centreM)} ${y + 3}V${axisY - (topM / 2) * scale - 1}`} stroke={paint.ruleStrong} />
            <text x={x(centreM)} y={y} textAnchor="middle" fontWeight="640" fill={paint.ink}>
              {text}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

function Stripes({ id }: { id: string }) {
  return (
    <defs>
      <pattern id={`${id}-red`} width="6" height="6" patternUnits="userSpaceOnUse">
        <path d="M0 3h6" stroke={paint.ink} strokeWidth="1.6" strokeOpacity="0.75" />
      </pattern>
      <pattern id={`${id}-blue`} width="6" height="12" patternUnits="userSpaceOnUse">
        <path d="M0 6h6" stroke={paint.ink} strokeWidth="1.6" strokeOpacity="0.75" />
      </pattern>
      <pattern id={`${id}-yellow`} width="6" height="24" patternUnits="userSpaceOnUse">
        <path d="M0 12h6" stroke={paint.ink} strokeWidth="1.6" strokeOpacity="0.75" />
      </pattern>
    </defs>
  );
}

interface DiscGroup {
  text: string;
  centreM: number;
  topM: number;
}

/** Where each disc stands on the sleeve, from its inner face out. */
function place(perSide: readonly DiscsOnSide[]) {
  let endM = 0;
  const groups: DiscGroup[] = [];
  const discs = perSide.flatMap((kind) => {
    const shape = discShape(kind.faceMassKg, kind);
    const startM = endM;
    const placed = Array.from({ length: kind.count }, (_, i) => ({
      fromM: startM + i * (shape.thicknessM + gapM),
      shape,
      massKg: kind.faceMassKg,
    }));
    endM += kind.count * (shape.thicknessM + gapM);
    const text = kind.count === 1 ? `${kind.faceMassKg}` : `${kind.count} × ${kind.faceMassKg}`;
    groups.push({ text, centreM: (startM + endM - gapM) / 2, topM: shape.diameterM });
    return placed;
  });
  return { discs, groups, endM };
}

/** A hair between discs, so that each is seen. */
const gapM = 0.002;

/** Lifts a label to the next row where it would touch the one before it in its row. */
function stagger(groups: readonly DiscGroup[], scale: number): (DiscGroup & { row: number })[] {
  const rowEnds: number[] = [];
  return groups.map((group) => {
    const centre = group.centreM * scale;
    const half = textWidthPx(group.text, letters.small) / 2 + 4;
    let row = rowEnds.findIndex((end) => centre - half > end);
    if (row < 0) row = rowEnds.length;
    rowEnds[row] = centre + half;
    return { ...group, row };
  });
}
