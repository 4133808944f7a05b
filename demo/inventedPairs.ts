/** One look at a pair: both loops pulled to each length. `soft` is what age left of the first stiffness. */
interface Measuring {
  daysAgo: number;
  lengthsM: readonly number[];
  soft?: number;
  direction?: 'unloading';
}

export interface InventedPair {
  label: string;
  widthMm: number;
  /** Rest lengths and levels of loops a and b. */
  restM: readonly [number, number];
  level: readonly [number, number];
  nominalKg: number | null;
  installedDaysAgo: number;
  cycles: number;
  measured: readonly Measuring[];
  note: string;
}

const LONG = [1.12, 1.25, 1.45, 1.7, 2, 2.3, 2.6, 2.8];
const USUAL = [1.15, 1.35, 1.6, 1.9, 2.25, 2.6, 2.75];
const SHORT = [1.2, 1.45, 1.75, 2.1, 2.5];
/** Shorter of return: the scale is read while the loop is let back. */
const BACK = [2.3, 1.9, 1.55, 1.25];
/**
 * The band pairs of the Millrace Barbell Club, all invented: widths from 13 to 102 mm, among them one old and
 * drifted pair (29-A), one that does not match (45-A) and one that nobody has measured yet (13-B).
 */
export const inventedPairs: readonly InventedPair[] = [
  {
    label: '13-A',
    widthMm: 13,
    restM: [1.04, 1.04],
    level: [0.94, 0.955],
    nominalKg: 25,
    installedDaysAgo: 640,
    cycles: 2210,
    measured: [{ daysAgo: 96, lengthsM: USUAL }],
    note: '',
  },
  {
    label: '13-B',
    widthMm: 13,
    restM: [1.04, 1.04],
    level: [1, 1],
    nominalKg: 25,
    installedDaysAgo: 12,
    cycles: 0,
    measured: [],
    note: 'New this month. Not on the scale yet.',
  },
  {
    label: '22-A',
    widthMm: 22,
    restM: [1.042, 1.04],
    level: [1.06, 1.045],
    nominalKg: 45,
    installedDaysAgo: 610,
    cycles: 3370,
    measured: [
      { daysAgo: 96, lengthsM: LONG },
      { daysAgo: 96, lengthsM: BACK, direction: 'unloading' },
    ],
    note: '',
  },
  {
    label: '22-B',
    widthMm: 22,
    restM: [1.038, 1.041],
    level: [0.93, 0.945],
    nominalKg: 45,
    installedDaysAgo: 388,
    cycles: 1480,
    measured: [{ daysAgo: 61, lengthsM: USUAL }],
    note: '',
  },
  {
    label: '29-A',
    widthMm: 29,
    restM: [1.045, 1.046],
    level: [1.05, 1.035],
    nominalKg: 60,
    installedDaysAgo: 722,
    cycles: 7140,
    measured: [
      { daysAgo: 700, lengthsM: USUAL },
      { daysAgo: 214, lengthsM: USUAL, soft: 0.88 },
    ],
    note: 'The oldest pair in use. Fine cracks near the fold of b; look before every session.',
  },
  {
    label: '29-B',
    widthMm: 29,
    restM: [1.04, 1.041],
    level: [0.985, 0.97],
    nominalKg: 60,
    installedDaysAgo: 430,
    cycles: 2930,
    measured: [{ daysAgo: 61, lengthsM: LONG }],
    note: '',
  },
  {
    label: '45-A',
    widthMm: 45,
    restM: [1.04, 1.04],
    level: [1.07, 0.98],
    nominalKg: 95,
    installedDaysAgo: 430,
    cycles: 1890,
    measured: [{ daysAgo: 61, lengthsM: USUAL }],
    note: 'Two singles bought apart and made a pair. a pulls harder: do not use for heavy work.',
  },
  {
    label: '64-A',
    widthMm: 64,
    restM: [1.041, 1.042],
    level: [0.955, 0.97],
    nominalKg: 135,
    installedDaysAgo: 610,
    cycles: 1310,
    measured: [
      { daysAgo: 96, lengthsM: USUAL },
      { daysAgo: 96, lengthsM: BACK, direction: 'unloading' },
    ],
    note: '',
  },
  {
    label: '83-A',
    widthMm: 83,
    restM: [1.04, 1.042],
    level: [1.03, 1.015],
    nominalKg: null,
    installedDaysAgo: 355,
    cycles: 720,
    measured: [{ daysAgo: 120, lengthsM: SHORT }],
    note: 'From above, mostly.',
  },
  {
    label: '102-A',
    widthMm: 102,
    restM: [1.043, 1.041],
    level: [0.925, 0.94],
    nominalKg: null,
    installedDaysAgo: 355,
    cycles: 260,
    measured: [{ daysAgo: 120, lengthsM: SHORT }],
    note: 'Two people to hang it.',
  },
];
