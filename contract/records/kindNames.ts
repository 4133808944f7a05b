/** Every kind of record, owners before what belongs to them: the order of import, export and archive. */
export const kindNames = [
  'club',
  'bar',
  'collarPair',
  'disc',
  'bandPair',
  'bandReading',
  'chainPair',
  'box',
  'rack',
  'anchor',
  'hookup',
  'scaleReading',
  'lifter',
  'bodyMass',
  'liftHeights',
  'best',
  'restriction',
  'day',
] as const;

export type KindName = (typeof kindNames)[number];
