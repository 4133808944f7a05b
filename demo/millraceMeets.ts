import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { dayFrom } from './dayFrom.ts';

/** Invented meets at invented places, in days before today. */
const MEETS = {
  tollbridgeLastYear: { place: 'Tollbridge Open', daysAgo: 668 },
  lowerWeirLastYear: { place: 'Lower Weir Cup', daysAgo: 486 },
  tollbridge: { place: 'Tollbridge Open', daysAgo: 304 },
  harrowmere: { place: 'Harrowmere Invitational', daysAgo: 213 },
  lowerWeir: { place: 'Lower Weir Cup', daysAgo: 122 },
} as const;

type Meet = keyof typeof MEETS;
type Gear = RecordOf<'best'>['equipment'];

/** Lifter, meet, equipment, best squat, bench press and deadlift (kg). */
const RESULTS: readonly (readonly [string, Meet, Gear, number, number, number])[] = [
  ['ilse', 'tollbridgeLastYear', 'raw', 127.5, 70, 142.5],
  ['ilse', 'lowerWeirLastYear', 'raw', 132.5, 72.5, 147.5],
  ['ilse', 'tollbridge', 'raw', 135, 75, 152.5],
  ['ilse', 'lowerWeir', 'raw', 140, 77.5, 155],
  ['hana', 'tollbridge', 'raw', 57.5, 35, 77.5],
  ['hana', 'lowerWeir', 'raw', 70, 40, 90],
  ['tereza', 'tollbridgeLastYear', 'raw', 100, 57.5, 120],
  ['tereza', 'tollbridge', 'raw', 115, 65, 135],
  ['tereza', 'lowerWeir', 'raw', 120, 67.5, 140],
  ['nomvula', 'harrowmere', 'raw', 92.5, 50, 112.5],
  ['nomvula', 'lowerWeir', 'raw', 102.5, 55, 122.5],
  ['saoirse', 'tollbridgeLastYear', 'raw', 117.5, 77.5, 140],
  ['saoirse', 'lowerWeirLastYear', 'single-ply', 142.5, 92.5, 155],
  ['saoirse', 'lowerWeir', 'single-ply', 165, 105, 170],
  ['maribel', 'tollbridgeLastYear', 'raw', 130, 75, 150],
  ['maribel', 'lowerWeirLastYear', 'raw', 137.5, 77.5, 157.5],
  ['maribel', 'lowerWeir', 'raw', 147.5, 85, 162.5],
  ['odhran', 'lowerWeirLastYear', 'raw', 135, 85, 170],
  ['odhran', 'tollbridge', 'raw', 152.5, 97.5, 185],
  ['odhran', 'lowerWeir', 'raw', 170, 105, 197.5],
  ['emre', 'tollbridgeLastYear', 'wraps', 195, 127.5, 222.5],
  ['emre', 'lowerWeirLastYear', 'wraps', 205, 132.5, 230],
  ['emre', 'harrowmere', 'wraps', 212.5, 135, 237.5],
  ['emre', 'lowerWeir', 'wraps', 220, 140, 242.5],
  ['kwabena', 'tollbridgeLastYear', 'raw', 212.5, 147.5, 267.5],
  ['kwabena', 'tollbridge', 'raw', 225, 155, 282.5],
  ['kwabena', 'harrowmere', 'raw', 232.5, 157.5, 290],
  ['lars', 'tollbridgeLastYear', 'raw', 235, 157.5, 267.5],
  ['lars', 'lowerWeirLastYear', 'raw', 240, 160, 272.5],
  ['lars', 'lowerWeir', 'raw', 250, 162.5, 280],
  ['dragan', 'tollbridgeLastYear', 'single-ply', 245, 167.5, 240],
  ['dragan', 'tollbridge', 'single-ply', 247.5, 170, 240],
  ['dragan', 'harrowmere', 'single-ply', 250, 172.5, 242.5],
  ['bastien', 'lowerWeirLastYear', 'raw', 240, 145, 260],
  ['bastien', 'tollbridge', 'raw', 257.5, 155, 275],
  ['bastien', 'lowerWeir', 'raw', 272.5, 165, 287.5],
  ['tevita', 'tollbridgeLastYear', 'multi-ply', 365, 252.5, 315],
  ['tevita', 'lowerWeirLastYear', 'multi-ply', 380, 262.5, 322.5],
  ['tevita', 'harrowmere', 'multi-ply', 390, 270, 330],
  ['tevita', 'lowerWeir', 'multi-ply', 402.5, 275, 332.5],
];

/** What the invented lifters made on invented platforms: straight weight, bench presses paused. */
export function millraceMeets(today: string): ClubRecords['best'] {
  return RESULTS.flatMap(([lifter, meet, equipment, squat, bench, deadlift]) =>
    Object.entries({ squat, bench, deadlift }).map(([lift, barKg]) => ({
      id: `best-${lifter}-${meet}-${lift}`,
      lifterId: `lifter-${lifter}`,
      lift: lift as RecordOf<'best'>['lift'],
      doneOn: dayFrom(today, -MEETS[meet].daysAgo),
      place: MEETS[meet].place,
      platform: true,
      equipment,
      setup: {
        rackId: null,
        start: { way: lift === 'bench' ? ('paused' as const) : ('free' as const), heightM: null },
        barKg,
        bands: [],
        chains: [],
      },
      note: '',
    })),
  );
}
