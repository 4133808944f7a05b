import type { ChartUnits } from '#web/charts/ChartUnits.ts';
import { HeightAxis } from '#web/charts/HeightAxis.tsx';
import { heightScale } from '#web/charts/heightScale.ts';
import { letters, paint } from '#web/charts/paint.ts';
import { RackPane } from '#web/charts/RackPane.tsx';
import { rackScale } from '#web/charts/rackScale.ts';

/** An example, nobody's measure: where bottom and lockout are read off. */
const example = { bottomM: 0.9, lockoutM: 1.48 };

/** Where to hold the tape: floor to the centre of the bar, once at the bottom and once at lockout. */
export function HeightsDrawing({ units }: { units: ChartUnits }) {
  const scale = heightScale(1.6, 28, 292);
  const scene = { anchors: [], bands: [], path: [], boxHeightM: null, benchHeightM: null };
  const across = rackScale(scene, { x: 56, width: 150 }, scale.pxPerM);
  const words = [
    { text: 'lockout', heightM: example.lockoutM },
    { text: 'bottom', heightM: example.bottomM },
  ];
  return (
    <svg width="300" height="304" fontFamily={letters.family} fontSize={letters.tag}>
      <HeightAxis scale={scale} units={units} x={40} toX={290} {...example} />
      <RackPane {...{ scale, units, scene, across }} patterns="" {...example} />
      {words.map(({ text, heightM }) => (
        <text key={text} x={226} y={scale.y(heightM) - 8} fontWeight="640" fill={paint.ink}>
          {text}
        </text>
      ))}
    </svg>
  );
}
