import type { RecordOf } from '#contract/records/allKinds.ts';

/** Work that the Millrace Barbell Club keeps to begin groups with. Invented, like the club. */
export function millraceTemplates(): RecordOf<'workTemplate'>[] {
  return [
    {
      id: 'work-first-wave',
      label: 'Speed squat, first wave',
      work: 'speed',
      lift: 'squat',
      start: { way: 'box', heightM: 0.36 },
      aim: {
        by: 'percent',
        targets: [
          { basis: 'bar', share: 0.45 },
          { basis: 'lockout', share: 0.7 },
        ],
      },
      blocks: [
        { sets: 2, reps: 2, restSeconds: 90, shareOfAim: 0.7 },
        { sets: 10, reps: 2, restSeconds: 60, shareOfAim: 1 },
      ],
      leastChance: null,
      bounds: null,
      note: 'Ten short sets. Five points more in the second wave, five more in the third.',
    },
  ];
}
