import type { ClubRecords } from '#contract/records/allKinds.ts';

type Gear = Pick<ClubRecords, 'bar' | 'collarPair' | 'disc' | 'chainPair' | 'box'>;

/** Face mass, pairs, weighed mass, diameter (m), thickness (m), note. */
const DISCS = [
  [25, 10, 25.04, 0.45, 0.027, ''],
  [20, 5, 19.96, 0.45, 0.0225, ''],
  [15, 3, null, 0.4, 0.0225, ''],
  [10, 5, 10.01, 0.325, 0.021, ''],
  [5, 4, null, 0.228, 0.0215, ''],
  [2.5, 4, null, 0.19, 0.016, ''],
  [1.25, 4, 1.25, 0.16, 0.012, ''],
  [0.5, 2, null, 0.134, 0.008, 'For records.'],
] as const;

const CHAIN_NOTE =
  'Short links of 13 mm, weighed by the metre on the bathroom scale: as the DIN 766 table says.';

/** Bars, collars, discs, chains and boxes of the Millrace Barbell Club. The club and all its numbers are invented. */
export function millraceGear(): Gear {
  return {
    bar: [
      {
        id: 'bar-squat',
        label: 'Squat bar 25',
        massKg: 25.08,
        weighed: true,
        note: 'Thick, stiff; lives on the north rack.',
      },
      {
        id: 'bar-long-1',
        label: 'Bar 20, first',
        massKg: 20.05,
        weighed: true,
        note: 'Lives on the south rack.',
      },
      {
        id: 'bar-long-2',
        label: 'Bar 20, second',
        massKg: 20,
        weighed: false,
        note: 'Deadlifts, and the bench when both racks squat.',
      },
    ],
    collarPair: [
      { id: 'collars-screw', label: 'Screw collars', pairMassKg: 5, pairs: 2, note: '' },
      { id: 'collars-spring', label: 'Spring collars', pairMassKg: 0.42, pairs: 3, note: 'Light work only.' },
    ],
    disc: DISCS.map(([faceMassKg, pairs, weighedMassKg, diameterM, thicknessM, note]) => ({
      id: `disc-${faceMassKg}`,
      faceMassKg,
      pairs,
      weighedMassKg,
      diameterM,
      thicknessM,
      note,
    })),
    chainPair: [
      {
        id: 'chain-long',
        label: '13 mm',
        massPerMetreKg: 3.8,
        lengthM: 1.8,
        attachBelowBarM: 0.25,
        pairs: 1,
        note: CHAIN_NOTE,
      },
    ],
    box: [
      { id: 'box-30', label: 'Box 30', sort: 'box', heightM: 0.3, pieces: 2, note: '' },
      { id: 'box-33', label: 'Box 33', sort: 'box', heightM: 0.33, pieces: 2, note: '' },
      { id: 'box-36', label: 'Box 36', sort: 'box', heightM: 0.36, pieces: 2, note: '' },
      {
        id: 'box-41',
        label: 'Box 41',
        sort: 'box',
        heightM: 0.41,
        pieces: 1,
        note: 'Plywood; the corner is taped.',
      },
      { id: 'mat-15', label: 'Mat 1.5', sort: 'mat', heightM: 0.015, pieces: 6, note: '' },
      { id: 'mat-25', label: 'Mat 2.5', sort: 'mat', heightM: 0.025, pieces: 4, note: '' },
    ],
  };
}
