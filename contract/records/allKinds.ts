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
import type { RecordKind } from './kind.ts';
import type { KindName } from './kindNames.ts';
import { best, bodyMass, lifter, liftHeights, restriction } from './lifters.ts';

export { type KindName, kindNames } from './kindNames.ts';

/** Every kind of record with its shape and all that is known of it; a name without a kind does not compile. */
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
  restriction,
  day,
} as const satisfies { [K in KindName]: RecordKind<K> };

export type RecordOf<K extends KindName> = z.infer<(typeof allKinds)[K]['shape']>;
/** The whole club in memory: every kind with its records, as the archive and the screens hold it. */
export type ClubRecords = { [K in KindName]: RecordOf<K>[] };
