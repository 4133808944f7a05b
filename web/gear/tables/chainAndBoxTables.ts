import type { KindTable } from './RecordTable.tsx';

export const chainTable: KindTable<'chainPair'> = {
  kind: 'chainPair',
  title: 'Chains',
  many: 'chains',
  one: 'pair of chains',
  teaches: 'No chains yet. Weigh one chain and divide by its length: that is its mass per metre.',
  nameOf: ({ label }) => label,
  blank: { label: '', massPerMetreKg: null, lengthM: null, attachBelowBarM: 0, pairs: 1, note: '' },
  fields: [
    { as: 'text', name: 'label', label: 'Label' },
    {
      as: 'quantity',
      name: 'massPerMetreKg',
      label: 'Mass of one metre',
      of: 'mass',
      usual: [0.3, 25],
      hint: 'Of one chain as it hangs.',
    },
    {
      as: 'quantity',
      name: 'lengthM',
      label: 'Length of one chain',
      of: 'length',
      usual: [0.3, 4],
      hint: 'Any unit: 1.8 m.',
    },
    {
      as: 'quantity',
      name: 'attachBelowBarM',
      label: 'First link below the bar',
      of: 'length',
      hint: '0 where it hangs on the sleeve itself.',
    },
    { as: 'figure', name: 'pairs', label: 'Pairs' },
    { as: 'text', name: 'note', label: 'Note' },
  ],
};

export const boxTable: KindTable<'box'> = {
  kind: 'box',
  title: 'Boxes and mats',
  many: 'boxes and mats',
  one: 'box or mat',
  teaches: 'No boxes yet. Measure from the floor to where one sits; mats raise a box a little.',
  nameOf: ({ label }) => label,
  blank: { label: '', sort: 'box', heightM: null, pieces: 1, note: '' },
  fields: [
    { as: 'text', name: 'label', label: 'Label' },
    {
      as: 'choice',
      name: 'sort',
      label: 'What it is',
      options: [
        { value: 'box', word: 'box to sit on' },
        { value: 'mat', word: 'mat under a box' },
      ],
    },
    {
      as: 'quantity',
      name: 'heightM',
      label: 'Height',
      of: 'length',
      usual: [0.005, 0.8],
      hint: 'Of a mat: its thickness.',
    },
    { as: 'figure', name: 'pieces', label: 'Pieces' },
    { as: 'text', name: 'note', label: 'Note' },
  ],
};
