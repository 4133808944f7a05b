import type { KindTable } from './RecordTable.tsx';

export const barTable: KindTable<'bar'> = {
  kind: 'bar',
  title: 'Bars',
  many: 'bars',
  one: 'bar',
  teaches: 'No bars yet. Add each bar with what it truly weighs: a "20 kg" bar is often off by a kilogram.',
  nameOf: ({ label }) => label,
  blank: { label: '', massKg: null, weighed: false, note: '' },
  fields: [
    { as: 'text', name: 'label', label: 'Label' },
    {
      as: 'quantity',
      name: 'massKg',
      label: 'Mass',
      of: 'mass',
      usual: [5, 35],
      hint: 'Without collars.',
    },
    { as: 'check', name: 'weighed', label: "Weighed on a scale, not the maker's figure" },
    { as: 'text', name: 'note', label: 'Note' },
  ],
};

export const collarTable: KindTable<'collarPair'> = {
  kind: 'collarPair',
  title: 'Collars',
  many: 'collars',
  one: 'pair of collars',
  teaches: 'No collars yet. Light springs weigh little, screw collars up to 5 kg a pair: they count.',
  nameOf: ({ label }) => label,
  blank: { label: '', pairMassKg: null, pairs: 1, note: '' },
  fields: [
    { as: 'text', name: 'label', label: 'Label' },
    {
      as: 'quantity',
      name: 'pairMassKg',
      label: 'Mass of both together',
      of: 'mass',
      usual: [0.1, 6],
    },
    { as: 'figure', name: 'pairs', label: 'Pairs' },
    { as: 'text', name: 'note', label: 'Note' },
  ],
};

export const discTable: KindTable<'disc'> = {
  kind: 'disc',
  title: 'Discs',
  many: 'discs',
  one: 'disc',
  teaches:
    'No discs yet. Add every size with the number of pairs: bar weights are rounded to what can be loaded.',
  nameOf: ({ faceMassKg }) => (faceMassKg === null ? 'without a mass' : `of ${faceMassKg} kg`),
  blank: { faceMassKg: null, pairs: 1, weighedMassKg: null, diameterM: null, thicknessM: null, note: '' },
  fields: [
    {
      as: 'quantity',
      name: 'faceMassKg',
      label: 'Mass on its face',
      of: 'mass',
      usual: [0.1, 25],
      hint: 'A disc marked in pounds: type "45 lb".',
    },
    { as: 'figure', name: 'pairs', label: 'Pairs' },
    {
      as: 'quantity',
      name: 'weighedMassKg',
      label: 'What one truly weighs',
      of: 'mass',
      usual: [0.1, 25],
      hint: 'Leave empty until it was on a scale.',
    },
    { as: 'quantity', name: 'diameterM', label: 'Across', of: 'length', usual: [0.1, 0.5] },
    { as: 'quantity', name: 'thicknessM', label: 'Thickness', of: 'length', usual: [0.005, 0.12] },
    { as: 'text', name: 'note', label: 'Note' },
  ],
};
