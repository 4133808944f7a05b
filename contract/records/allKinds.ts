import type { z } from 'zod';
import { club } from './club.ts';
import { day } from './day.ts';
import {
  anchor,
  bandPair,
  bandReading,
  bar,
  box,
  chainPair,
  collarPair,
  disc,
  hookup,
  rack,
  scaleReading,
} from './gear.ts';
import { best, bodyMass, lifter, liftHeights } from './lifters.ts';

/** Every kind of record, owners before what belongs to them: the order of import, export and archive. */
export const allKinds = {
  club,
  bar,
  collarPair,
  disc,
  bandPair,
  bandReading,
  chainPair,
  box,
  rack,
  anchor,
  hookup,
  scaleReading,
  lifter,
  bodyMass,
  liftHeights,
  best,
  day,
} as const;

export type KindName = keyof typeof allKinds;
export type RecordOf<K extends KindName> = z.infer<(typeof allKinds)[K]['shape']>;
/** The whole club in memory: every kind with its records, as the archive and the screens hold it. */
export type ClubRecords = { [K in KindName]: RecordOf<K>[] };
export const kindNames = Object.keys(allKinds) as KindName[];
