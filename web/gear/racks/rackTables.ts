import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { KindTable } from '#web/gear/tables/RecordTable.tsx';

/** Racks: which bar lives on each, and what may be done there. */
export function rackTable({ bar, collarPair }: ClubRecords): KindTable<'rack'> {
  return {
    kind: 'rack',
    title: 'Racks',
    many: 'racks',
    one: 'rack',
    teaches: 'No racks yet. Add the place where a bar is lifted; then the points on it that bands hang on.',
    nameOf: ({ label }) => label,
    blank: {
      label: '',
      lifts: ['squat', 'bench', 'deadlift'],
      barId: bar[0]?.id ?? null,
      collarPairId: collarPair[0]?.id ?? null,
      takesChains: false,
      benchHeightM: null,
      note: '',
    },
    fields: [
      { as: 'text', name: 'label', label: 'Label' },
      {
        as: 'choice',
        name: 'barId',
        label: 'Bar',
        none: 'none yet',
        addAt: { href: '/iron', word: 'Add a bar' },
        options: bar.map(({ id, label }) => ({ value: id, word: label })),
      },
      {
        as: 'choice',
        name: 'collarPairId',
        label: 'Collars',
        none: 'none',
        addAt: { href: '/iron', word: 'Add collars' },
        options: collarPair.map(({ id, label }) => ({ value: id, word: label })),
      },
      { as: 'lifts', name: 'lifts', label: 'Lifts done here' },
      {
        as: 'quantity',
        name: 'benchHeightM',
        label: 'Bench pad above the floor',
        of: 'length',
        usual: [0.3, 0.6],
        hint: 'Empty where there is no bench.',
        when: ({ lifts }) => lifts.includes('bench'),
      },
      { as: 'check', name: 'takesChains', label: 'Chains may be hung here' },
      { as: 'text', name: 'note', label: 'Note' },
    ],
  };
}

/** The points of one rack that bands hang on. */
export function anchorTable(rackId: string): KindTable<'anchor'> {
  return {
    kind: 'anchor',
    title: 'Anchor points',
    many: 'anchor points',
    one: 'point',
    teaches:
      'No anchor points yet. Measure each from the floor straight below the bar: how high, how far to the front, how far outside the place on the sleeve where the band lies.',
    nameOf: ({ label }) => label,
    blank: { rackId, label: '', xM: 0, yM: 0, zM: null, ratedLoadN: null },
    fields: [
      { as: 'text', name: 'label', label: 'Label', hint: 'One name for both sides.' },
      {
        as: 'quantity',
        name: 'zM',
        label: 'Height above the floor',
        of: 'length',
      },
      {
        as: 'quantity',
        name: 'xM',
        label: "To the lifter's front",
        of: 'length',
        hint: 'From straight below the bar; behind is minus.',
      },
      {
        as: 'quantity',
        name: 'yM',
        label: 'Sideways',
        of: 'length',
        hint: "From below the band's place on the sleeve.",
      },
      {
        as: 'quantity',
        name: 'ratedLoadN',
        label: 'May carry, one side',
        of: 'scale',
        hint: "The maker's figure. Empty: unknown, and every day that uses it says so.",
      },
    ],
  };
}
