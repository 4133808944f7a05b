import type { RackScene } from './HeightScene.ts';

/** Fore-aft places of a rack in pixels. */
export interface RackScale {
  px: (xM: number) => number;
  fromM: number;
  toM: number;
}

/** How far behind the bar a box reaches from and to (m). */
export const boxSpanM = { from: -0.5, to: -0.1 } as const;

/** To the scale of the heights, as long as the pane is wide enough for all that is hung. */
export function rackScale(scene: RackScene, pane: { x: number; width: number }, pxPerM: number): RackScale {
  const { fromM, toM } = reach(scene);
  const acrossPxPerM = Math.min(pxPerM, pane.width / (toM - fromM));
  return { px: (xM) => pane.x + (xM - fromM) * acrossPxPerM, fromM, toM };
}

/** Fore-aft reach of the drawing (m): all that hangs, the way of the bar, the box behind the lifter, the upright in front. */
function reach(scene: RackScene): { fromM: number; toM: number } {
  const used = [...scene.bands, ...scene.path].map(({ xM }) => xM);
  return {
    fromM:
      Math.min(
        -0.2,
        scene.boxHeightM === null ? 0 : boxSpanM.from - 0.02,
        scene.benchHeightM === null ? 0 : -0.32,
        ...used,
      ) - 0.06,
    toM: Math.max(0.3, ...used) + 0.06,
  };
}
