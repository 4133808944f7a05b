import type { z } from 'zod';
import { club } from './club.ts';
import { comparison, takenOut } from './comparison.ts';
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
import { best, bodyMass, lifter, liftHeights, restriction } from './lifters.ts';
import { absence, keptMethod, meet, plannedByHand, season, seasonEntry } from './season.ts';
import { workTemplate } from './workTemplate.ts';

/** Every kind, owners before what belongs to them: the order of import, export and archive. */
const listed = {
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
  workTemplate,
  method: keptMethod,
  meet,
  season,
  seasonEntry,
  absence,
  plannedByHand,
  comparison,
  takenOut,
} as const;

export type KindName = keyof typeof listed;
type ByField = Readonly<Record<string, KindName>>;

/** Every kind of record with its shape and all that is known of it; one that names a kind which is not there does not compile. */
export const allKinds = listed satisfies { [K in KindName]: RecordKind<K, z.ZodRawShape, ByField, ByField> };
export const kindNames = Object.keys(allKinds) as readonly KindName[];

export type RecordOf<K extends KindName> = z.infer<(typeof allKinds)[K]['shape']>;
/** The whole club in memory: every kind with its records, as the archive and the screens hold it. */
export type ClubRecords = { [K in KindName]: RecordOf<K>[] };

/** The kinds that belong to one of that kind, by any field. */
export type KindOwnedBy<Owner extends KindName> = {
  [K in KindName]: Owner extends ValueOf<(typeof allKinds)[K]['facts']['belongsTo']> ? K : never;
}[KindName];
type ValueOf<Map> = Map[keyof Map];
