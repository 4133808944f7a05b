import { scaleLinear } from 'd3-scale';
import type { TrackReading, TrackRep } from '#core/track/Track.ts';
import { type ChartUnits, lengthText } from './ChartUnits.ts';
import { Plot } from './Plot.tsx';
import { PlotFrame } from './PlotFrame.tsx';
import { letters, paint, textWidthPx } from './paint.ts';

const heightPx = 220;
const topPx = 26;
const floorPx = heightPx - 44;
const leftPx = 64;
const rightPx = 8;
/** More points than this on a pixel are not seen. */
const pointsPerPx = 2;

/** Bar height over time with every way up in colour and its mean speed above it; a miss ends in a red cross. */
export function TrackDrawing({
  reading,
  units,
  widthPx,
}: {
  reading: TrackReading;
  units: ChartUnits;
  widthPx: number;
}) {
  const { zM, rateHz, startS, range, reps } = reading;
  const lastsS = (zM.length - 1) / rateHz;
  const x = scaleLinear([0, lastsS], [leftPx, widthPx - rightPx]);
  const lowM = zM.reduce((a, b) => Math.min(a, b));
  const highM = zM.reduce((a, b) => Math.max(a, b));
  const y = scaleLinear([lowM, Math.max(highM, lowM + 0.05)], [floorPx, topPx]);
  const step = Math.max(1, Math.floor(zM.length / (pointsPerPx * widthPx)));
  const way = (from: number, to: number) => {
    const places: number[] = [];
    for (let i = from; i < to; i += step) places.push(i);
    places.push(to);
    return places
      .map((i, k) => `${k === 0 ? 'M' : 'L'}${x(i / rateHz).toFixed(1)} ${y(zM[i]!).toFixed(1)}`)
      .join('');
  };
  const place = (tS: number) => Math.min(zM.length - 1, Math.round((tS - startS) * rateHz));
  return (
    <Plot label={summary(reading)} widthPx={widthPx} heightPx={heightPx}>
      <PlotFrame
        x={x}
        y={y}
        along={x.ticks(Math.max(2, Math.floor(widthPx / 60)))}
        up={(range ? [range.lockoutM, range.bottomM] : []).map((zM) => ({
          value: zM,
          word: lengthText(units, zM),
        }))}
        leftPx={leftPx}
        rightPx={widthPx - rightPx}
        floorPx={floorPx}
      />
      <text x={widthPx - rightPx} y={floorPx + 36} textAnchor="end" fill={paint.quiet}>
        {range ? `s; range ${lengthText(units, range.lockoutM - range.bottomM)}` : 's'}
      </text>
      <path d={way(0, zM.length - 1)} fill="none" stroke={paint.ironLine} strokeWidth="1.5" />
      {reps.map((rep) => (
        <path
          key={rep.startS}
          d={way(place(rep.startS), place(rep.endS))}
          fill="none"
          stroke={rep.made ? paint.go : paint.stop}
          strokeWidth="3"
        />
      ))}
      <Labels
        labels={reps.map((rep) => ({ rep, x: x(rep.endS - startS), y: y(rep.topM) }))}
        widthPx={widthPx}
      />
    </Plot>
  );
}

/** Speeds above their reps, as many as stand clear of each other; every miss has its cross. */
function Labels({
  labels,
  widthPx,
}: {
  labels: readonly { rep: TrackRep; x: number; y: number }[];
  widthPx: number;
}) {
  let takenPx = 0;
  return labels.map(({ rep, x, y }) => {
    const text = rep.made ? rep.meanSpeedMps.toFixed(2) : 'missed';
    const wide = textWidthPx(text, letters.tag);
    const from = Math.min(Math.max(leftPx, x - wide / 2), widthPx - rightPx - wide);
    const fits = from >= takenPx;
    if (fits) takenPx = from + wide + 4;
    return (
      <g key={rep.startS} fill={rep.made ? paint.go : paint.stop}>
        {!rep.made && (
          <path d={`M${x - 6} ${y - 6}l12 12m0 -12l-12 12`} stroke={paint.stop} strokeWidth="3" />
        )}
        {fits && (
          <text x={from} y={y - 12} fontSize={letters.tag} fontWeight="560">
            {text}
          </text>
        )}
      </g>
    );
  });
}

function summary({ reps }: TrackReading): string {
  const each = reps.map((rep, i) =>
    rep.made ? `rep ${i + 1} ${rep.meanSpeedMps.toFixed(2)} m/s` : `rep ${i + 1} missed`,
  );
  return `Bar height over time. ${each.length === 0 ? 'No rep found' : each.join(', ')}.`;
}
