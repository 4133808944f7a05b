import type { Caution } from './Caution.ts';

/**
 * Repetitions by zone of the maximum that trained weightlifters did in one session per lift.
 *
 * Source: A. S. Prilepin's logs of the 1970s, as printed after Laputin & Oleshko 1982, "Managing the Training of
 * Weightlifters". Zones are printed with gaps (55-65, 70-75, 80-85, 90 up) and differ between printings; here each zone
 * runs on to the next. The counts are those of the classic lifts: in powerlifting a warning, not a rule.
 */
export const prilepinTable: readonly VolumeZone[] = [
  { from: 0.55, to: 0.7, repsASet: [3, 6], bestReps: 24, reps: [18, 30] },
  { from: 0.7, to: 0.8, repsASet: [3, 6], bestReps: 18, reps: [12, 24] },
  { from: 0.8, to: 0.9, repsASet: [2, 4], bestReps: 15, reps: [10, 20] },
  { from: 0.9, to: null, repsASet: [1, 2], bestReps: 7, reps: [4, 10] },
];

export interface VolumeZone {
  /** Shares of the maximum; `to` null: no end. */
  from: number;
  to: number | null;
  repsASet: readonly [least: number, most: number];
  bestReps: number;
  reps: readonly [least: number, most: number];
}

/** Work done at one share of the reference maximum (bar, bands and chains on average over the range). */
export interface WorkAtShare {
  share: number;
  sets: number;
  reps: number;
}

/** Warns where more is planned than the table's upper ends; too little is never warned of. */
export function volumeCautions(work: readonly WorkAtShare[]): Caution[] {
  return prilepinTable.flatMap(({ from, to, repsASet, reps }): Caution[] => {
    const inZone = work.filter(({ share }) => share >= from && (to === null || share < to));
    const zone = { zoneFrom: from, zoneTo: to };
    const total = inZone.reduce((sum, block) => sum + block.sets * block.reps, 0);
    const longest = Math.max(0, ...inZone.map((block) => block.reps));
    return [
      ...(total > reps[1] ? [{ code: 'volume', reps: total, mostReps: reps[1], ...zone } as const] : []),
      ...(longest > repsASet[1]
        ? [{ code: 'repsInSet', reps: longest, mostReps: repsASet[1], ...zone } as const]
        : []),
    ];
  });
}
