import { percent } from '#contract/words/percent.ts';
import { type ChartUnits, lengthText, massText } from './ChartUnits.ts';
import type { HeightScene } from './HeightScene.ts';

/** The picture in words, for those who do not see it. */
export function sceneSummary(scene: HeightScene, units: ChartUnits): string {
  const first = scene.load.points[0];
  const last = scene.load.points[scene.load.points.length - 1];
  const heldAt = (zM: number) => scene.load.held.find((p) => Math.abs(p.zM - zM) < 1e-6)?.heldN;
  const end = (point: typeof first, where: string) => {
    if (point === undefined) return '';
    const held = heldAt(point.zM);
    const share = held ? `, ${percent(point.totalN / held)} of what can be held there` : '';
    return `${massText(units, point.totalN)} ${units.massUnit} at ${where}, ${lengthText(units, point.zM)} above the floor (${massText(units, point.barN)} straight, ${massText(units, point.bandN)} band, ${massText(units, point.chainN)} chain)${share}.`;
  };
  const { speed } = scene;
  const rep =
    speed === null
      ? ''
      : speed.made
        ? `Slowest ${speed.slowest.speedMps.toFixed(2)} m/s at ${lengthText(units, speed.slowest.zM)}; ${speed.durationS.toFixed(1)} s up.`
        : `The bar stops at ${lengthText(units, speed.slowest.zM)}.`;
  return [`${scene.title}.`, end(first, 'the bottom'), end(last, 'lockout'), rep].filter(Boolean).join(' ');
}
