import { boxHeights } from '#contract/day/boxHeights.ts';
import type { Box } from '#contract/records/gear.ts';
import type { Start } from '#contract/records/lift.ts';
import { oneDecimal } from '#contract/words/written.ts';
import type { SceneGrips } from '#web/charts/OnePicture.tsx';
import type { Units } from '#web/parts/ViewUnits.tsx';
import { barReach } from './barReach.ts';
import type { OnBar } from './solvedSetup.ts';

/** Without boxes of its own a club may turn to any height between these, so finely (m). */
const anyBox = { minM: 0.2, maxM: 0.6, stepM: 0.005 };

/** What one takes hold of in a lifter's picture on a day: the bar, and a box that stops at what the club can build. */
export function placeGrips(of: {
  name: string;
  start: Start;
  onBar: OnBar;
  keptKg: number;
  boxes: readonly Box[];
  gravityMps2: number;
  units: Pick<Units, 'mass' | 'length'>;
  onBarKg: (barKg: number) => void;
  onBoxM: (heightM: number) => void;
}): SceneGrips {
  const { name, start, onBar, units } = of;
  const { minKg, maxKg, stepKg } = barReach(of.keptKg);
  const built = boxHeights(of.boxes).map(({ heightM }) => heightM);
  return {
    gravityMps2: of.gravityMps2,
    bar: {
      label: `Bar of ${name}`,
      value: onBar.barKg,
      valueText: `${oneDecimal(onBar.barKg, units.mass)} ${units.mass}`,
      min: minKg,
      max: maxKg,
      stops: stepKg,
      onMove: of.onBarKg,
    },
    box:
      start.way === 'box' && start.heightM !== null
        ? {
            label: `Box of ${name}`,
            value: start.heightM,
            valueText: `${oneDecimal(start.heightM, units.length)} ${units.length}`,
            min: built[0] ?? anyBox.minM,
            max: built.at(-1) ?? anyBox.maxM,
            stops: built.length > 0 ? built : anyBox.stepM,
            onMove: of.onBoxM,
          }
        : null,
  };
}
