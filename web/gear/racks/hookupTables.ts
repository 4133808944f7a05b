import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { KindTable } from '#web/gear/tables/RecordTable.tsx';

/** Ways of hanging bands on a rack's points. */
export function hookupTable(rackId: string, { anchor, hookup }: ClubRecords): KindTable<'hookup'> {
  const own = anchor.filter((each) => each.rackId === rackId);
  return {
    kind: 'hookup',
    title: 'Hookups in use',
    many: 'hookups',
    one: 'hookup',
    teaches:
      own.length === 0
        ? 'First add an anchor point: a hookup is a way to hang bands on one.'
        : 'No hookups yet. A hookup is a way your gym hangs bands on a point of this rack.',
    nameOf: ({ label }) => label,
    suggestedLabel: ({ anchorId, way }) => {
      const point = own.find(({ id }) => id === anchorId);
      const label = `${point?.label ?? ''}, ${way}`;
      const isTaken = hookup.some((each) => each.rackId === rackId && each.label === label);
      return point === undefined || isTaken ? '' : label;
    },
    blank: {
      rackId,
      anchorId: own[0]?.id ?? '',
      label: '',
      way: 'doubled',
      spentM: null,
      lifts: ['squat', 'bench'],
    },
    fields: [
      { as: 'text', name: 'label', label: 'Label' },
      {
        as: 'choice',
        name: 'anchorId',
        label: 'Anchor point',
        options: own.map(({ id, label }) => ({ value: id, word: label })),
        ...(own.length === 0 ? { hint: 'First add one to this rack.' } : {}),
      },
      {
        as: 'choice',
        name: 'way',
        label: 'How the loop runs',
        hint: 'Single: over point and sleeve. Doubled: under the point, both ends on the sleeve. Choked: pulled through itself at the point.',
        options: [
          { value: 'single', word: 'single' },
          { value: 'doubled', word: 'doubled' },
          { value: 'choked', word: 'choked' },
        ],
      },
      {
        as: 'quantity',
        name: 'spentM',
        label: 'Loop used up by the choke',
        of: 'length',
        hint: 'The relaxed length that goes round the point and through itself.',
        when: ({ way }) => way === 'choked',
      },
      { as: 'lifts', name: 'lifts', label: 'Used for' },
    ],
  };
}

/** What a scale under the bar said of a pair in a hookup. */
export function scaleTable(
  { bandPair }: ClubRecords,
  hookups: readonly { id: string; label: string }[],
  today: string,
): KindTable<'scaleReading'> {
  return {
    kind: 'scaleReading',
    title: 'Read on a scale in the rack',
    many: 'scale readings',
    one: 'scale reading',
    teaches:
      'No scale readings yet. A scale under the bar has the last word: from two bar heights on, what it shows replaces what geometry predicts.',
    nameOf: ({ bandPairId }) => `of ${bandPair.find(({ id }) => id === bandPairId)?.label ?? 'a pair'}`,
    blank: {
      hookupId: hookups[0]?.id ?? '',
      bandPairId: bandPair[0]?.id ?? '',
      takenOn: today,
      barHeightM: null,
      pairForceN: null,
    },
    fields: [
      {
        as: 'choice',
        name: 'hookupId',
        label: 'Hookup',
        options: hookups.map(({ id, label }) => ({ value: id, word: label })),
        ...(hookups.length === 0 ? { hint: 'First add a hookup.' } : {}),
      },
      {
        as: 'choice',
        name: 'bandPairId',
        label: 'Pair',
        options: bandPair.map(({ id, label }) => ({ value: id, word: label })),
        ...(bandPair.length === 0 ? { hint: 'First add a pair of bands.' } : {}),
      },
      {
        as: 'quantity',
        name: 'barHeightM',
        label: 'Bar height',
        of: 'length',
        usual: [0.15, 2.6],
        hint: 'Floor to the middle of the bar.',
      },
      {
        as: 'quantity',
        name: 'pairForceN',
        label: 'Both bands pull down',
        of: 'scale',
        hint: 'What the scale shows minus the empty bar; negative where they lift.',
      },
      { as: 'date', name: 'takenOn', label: 'Read on' },
    ],
  };
}
