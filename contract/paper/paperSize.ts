/** The two papers of the world's printers. */
export type Paper = 'a4' | 'letter';

export const paperWords = [
  { value: 'a4', word: 'A4' },
  { value: 'letter', word: 'Letter' },
] as const satisfies readonly { value: Paper; word: string }[];

/** CSS pixels of a millimetre: by definition 96 to the inch of 25.4 mm. */
export const pxPerMm = 96 / 25.4;
