import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Start } from '#contract/records/lift.ts';
import { dayFrom } from './dayFrom.ts';

/** Bar heights in m, bottom then lockout; box rows give box height, bottom on it and, where it was looked at, how far behind. */
interface InventedHeights {
  id: string;
  squat: readonly [number, number];
  boxes: readonly (readonly [heightM: number, bottomM: number, forwardM?: number])[];
  bench: readonly [number, number];
  deadlift: readonly [number, number];
  daysAgo: number;
}

/** Full-size discs are 45 cm across, so every pull from the floor starts with the bar at 22.5 cm. */
const FLOOR_BAR_M = 0.225;

/** Twelve of the fourteen were measured; Nomvula and Ruben were not, so their heights are estimated. */
const MEASURED: readonly InventedHeights[] = [
  {
    id: 'ilse',
    squat: [0.775, 1.225],
    boxes: [
      [0.33, 0.765, -0.03],
      [0.36, 0.8, -0.025],
    ],
    bench: [0.68, 0.955],
    deadlift: [FLOOR_BAR_M, 0.665],
    daysAgo: 202,
  },
  {
    id: 'hana',
    squat: [0.79, 1.285],
    boxes: [
      [0.345, 0.78],
      [0.375, 0.81],
    ],
    bench: [0.655, 0.975],
    deadlift: [FLOOR_BAR_M, 0.69],
    daysAgo: 74,
  },
  {
    id: 'tereza',
    squat: [0.835, 1.345],
    boxes: [
      [0.33, 0.79],
      [0.36, 0.82],
      [0.385, 0.85],
    ],
    bench: [0.665, 0.995],
    deadlift: [FLOOR_BAR_M, 0.73],
    daysAgo: 202,
  },
  {
    id: 'saoirse',
    squat: [0.885, 1.415],
    boxes: [
      [0.36, 0.855],
      [0.4, 0.895],
    ],
    bench: [0.67, 1.03],
    deadlift: [FLOOR_BAR_M, 0.765],
    daysAgo: 202,
  },
  {
    id: 'maribel',
    squat: [0.84, 1.32],
    boxes: [
      [0.36, 0.835],
      [0.385, 0.86],
    ],
    bench: [0.725, 1.03],
    deadlift: [FLOOR_BAR_M, 0.715],
    daysAgo: 202,
  },
  {
    id: 'odhran',
    squat: [0.825, 1.335],
    boxes: [
      [0.33, 0.785, -0.04],
      [0.36, 0.815, -0.035],
      [0.385, 0.84, -0.03],
    ],
    bench: [0.67, 1.02],
    deadlift: [FLOOR_BAR_M, 0.72],
    daysAgo: 195,
  },
  {
    id: 'emre',
    squat: [0.88, 1.405],
    boxes: [
      [0.36, 0.845],
      [0.4, 0.89],
    ],
    bench: [0.695, 1.065],
    deadlift: [FLOOR_BAR_M, 0.765],
    daysAgo: 195,
  },
  {
    id: 'kwabena',
    squat: [0.9, 1.44],
    boxes: [
      [0.36, 0.86],
      [0.4, 0.905],
    ],
    bench: [0.705, 1.09],
    deadlift: [FLOOR_BAR_M, 0.79],
    daysAgo: 195,
  },
  {
    id: 'lars',
    squat: [0.955, 1.525],
    boxes: [
      [0.36, 0.885, -0.05],
      [0.385, 0.915, -0.045],
      [0.425, 0.955, -0.04],
    ],
    bench: [0.71, 1.13],
    deadlift: [FLOOR_BAR_M, 0.83],
    daysAgo: 195,
  },
  {
    id: 'dragan',
    squat: [0.915, 1.43],
    boxes: [
      [0.385, 0.895],
      [0.41, 0.92],
    ],
    bench: [0.755, 1.12],
    deadlift: [FLOOR_BAR_M, 0.795],
    daysAgo: 188,
  },
  {
    id: 'bastien',
    squat: [0.995, 1.6],
    boxes: [
      [0.41, 0.96, -0.06],
      [0.435, 0.985, -0.055],
    ],
    bench: [0.715, 1.185],
    deadlift: [FLOOR_BAR_M, 0.87],
    daysAgo: 188,
  },
  {
    id: 'tevita',
    squat: [0.985, 1.51],
    boxes: [
      [0.36, 0.925],
      [0.385, 0.95],
      [0.41, 0.975],
    ],
    bench: [0.805, 1.14],
    deadlift: [FLOOR_BAR_M, 0.815],
    daysAgo: 188,
  },
];

const FREE: Start = { way: 'free', heightM: null };

/** Measured bar heights of the invented lifters. */
export function millraceHeights(today: string): ClubRecords['liftHeights'] {
  return MEASURED.flatMap((person) => {
    const lockoutM = person.squat[1];
    const rows = [
      { key: 'squat', lift: 'squat', start: FREE, heights: person.squat, forwardM: null },
      ...person.boxes.map(([heightM, bottomM, forwardM]) => ({
        key: `box-${Math.round(heightM * 1000)}`,
        lift: 'squat' as const,
        start: { way: 'box' as const, heightM },
        heights: [bottomM, lockoutM] as const,
        forwardM: forwardM ?? null,
      })),
      { key: 'bench', lift: 'bench', start: FREE, heights: person.bench, forwardM: null },
      { key: 'deadlift', lift: 'deadlift', start: FREE, heights: person.deadlift, forwardM: null },
    ] as const;
    return rows.map(({ key, lift, start, heights, forwardM }) => ({
      id: `heights-${person.id}-${key}`,
      lifterId: `lifter-${person.id}`,
      lift,
      start,
      bottomM: heights[0],
      lockoutM: heights[1],
      bottomForwardM: forwardM,
      measuredOn: dayFrom(today, -person.daysAgo),
    }));
  });
}
