import type { ArchiveContent } from '#contract/archive/archiveContent.ts';
import type { ArchiveLook } from '#contract/archive/archiveLook.ts';
import type { FormerRecord } from '#contract/archive/formerRecord.ts';
import type { ClubChanges, ClubState, Standing } from '#contract/changes/clubState.ts';
import type { DoneChanges } from '#contract/changes/doneChange.ts';
import type { Who } from '#contract/changes/who.ts';
import type { BandReps } from '#contract/log/BandReps.ts';
import type { LogDays } from '#contract/log/logDay.ts';
import type { ClubRecords, KindName, RecordOf } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { GivenSet, LoggedSet } from '#contract/records/loggedSet.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import type { TakenPlan } from '#contract/records/takenPlan.ts';
import type { OfKind } from '#contract/season/newSeason.ts';
import type { TakenHead } from '#contract/season/seasonOffer.ts';
import type { Change } from './changeLog.ts';
import type { LogMark } from './logMarks.ts';
import type { PageEnd, SetsPage } from './logPages.ts';
import type { SetFilter } from './logQuery.ts';
import type { TouchedSet } from './touchedSets.ts';

/** The fields of a record that a caller gives; what has a default may be left out. The store makes the id. */
export type Given = Record<string, unknown>;

/** A set of a file, whose place in the lifter's day is known. */
export type FileSet = Omit<GivenSet, 'id'> & { order: number };

/** Fields of a record as somebody found them, and the same ones as they want them. */
export interface FoundAndWanted {
  found: Given;
  wanted: Given;
}

/** A record as it now stands, and the number of the change that made it so. */
export interface Kept<K extends KindName> {
  record: RecordOf<K>;
  seq: number;
}

/** A mistaken set, and what takes its place; null: nothing, it is struck alone. */
export interface Correction {
  id: string;
  set: Given | null;
}

/**
 * All that one club keeps, opened for one person. Every write is on the disk when its promise resolves, and bears their name; a
 * refused one throws `Refusal`.
 */
export interface ClubStore {
  /** The file that is open, or beside which files about it are kept. */
  readonly path: string;
  /** What tells that file from another at the same path; null where there is none. */
  readonly mark: string | null;
  readonly clubId: string;
  readonly who: Who;

  list<K extends KindName>(kind: K): Promise<RecordOf<K>[]>;
  get<K extends KindName>(kind: K, id: string): Promise<RecordOf<K> | null>;
  create<K extends KindName>(kind: K, fields: Given): Promise<Kept<K>>;
  /** Replaces all fields of a record but its id. */
  update<K extends KindName>(kind: K, id: string, fields: Given): Promise<Kept<K>>;
  /** Changes the fields that are named; what others changed since they were found stays, and refuses where that is the same field. */
  change<K extends KindName>(kind: K, id: string, how: FoundAndWanted): Promise<Kept<K>>;
  /** Removes a record and what belongs to it, as one change. */
  remove(kind: KindName, id: string): Promise<{ seq: number }>;
  /** Puts many records of one kind in, new or known, as one change. */
  putAll<K extends KindName>(kind: K, records: RecordOf<K>[]): Promise<{ seq: number }>;
  /** The same of several kinds at once. */
  putTogether(records: readonly OfKind[]): Promise<{ seq: number }>;

  /** Today's date by the club's clock. */
  today(): Promise<string>;
  /** The whole club in memory, and the last change in it. */
  records(): Promise<ClubState>;
  /** What was done after a change that the reader stands at; the whole club where that does not tell. */
  since(known: Standing): Promise<ClubChanges | ClubState>;
  /** Replaces everything by these records; all of them or nothing. The log of changes goes on. */
  importRecords(
    records: ClubRecords,
    rest?: Partial<Omit<ArchiveContent, 'records'>>,
  ): Promise<{ seq: number }>;
  /** The same, once `keep` has put away all that was there, which lasts as long as it does: nobody writes between the two. Where it fails, nothing is replaced. */
  replaceAll(
    content: ArchiveContent,
    keep: (before: ArchiveContent) => Promise<void>,
  ): Promise<{ seq: number }>;
  /**
   * The same by what stands in another file (`beside`) as a club of the same id, in a small part of the time that others wait for. All that was there
   * is first kept as a club's file at `keptAs`. Null where the club is kept in no file.
   */
  swapAll: ((files: { beside: string; keptAs: string }) => Promise<{ seq: number }>) | null;

  /** Adds sets at the end of the log, all of them as one change or none. */
  logSets(given: readonly Given[]): Promise<{ sets: LoggedSet[]; seq: number }>;
  /** The same of many new sets, for which nobody who writes waits long. */
  takeSetsIn(given: readonly FileSet[]): Promise<{ seq: number }>;
  /** Marks a set as a mistake; it stays readable and no longer counts. */
  strikeSet(id: string): Promise<{ seq: number }>;
  restoreSet(id: string): Promise<{ seq: number }>;
  /** Strikes mistaken sets and puts corrected ones in their place, all as one change or none. */
  correctSets(corrections: readonly Correction[]): Promise<{ sets: LoggedSet[]; seq: number }>;
  /** The log of the lifters that the club has, struck sets included, by day and order. */
  loggedSets(filter?: SetFilter & { newest?: number }): Promise<LoggedSet[]>;
  /** A page of it: the newest day first, in it lifter by lifter. */
  setsPage(filter: SetFilter, page: { after: PageEnd | null; most: number }): Promise<SetsPage>;
  /** Its days before a date, the newest first, each summed up. */
  logDays(filter: SetFilter, page: { before: string | null; most: number }): Promise<LogDays>;
  /** What tells one state of a lifter's log from another, for each lift that it knows. */
  logMarks(lifterId: string): Promise<Map<Lift, LogMark>>;
  /** The sets touched after a change, of lifters who are gone too, and up to which change; null: any may have been. */
  touchedSets(seq: number): Promise<{ seq: number; sets: TouchedSet[] } | null>;
  /** Whether any set of a training day counts. */
  hasSets(dayId: string): Promise<boolean>;
  /** How often each band pair was stretched on each day, by the whole log up to a change. */
  bandReps(): Promise<{ seq: number; bandReps: BandReps[] }>;
  /** Gear that these sets name and the club has removed. */
  formerGear(sets: readonly LoggedSet[]): Promise<FormerRecord[]>;

  /** Takes a change back, as a new change; refused when something it touched was changed since. */
  undo(seq: number): Promise<Change>;
  /** So many changes before a number, newest first, and which of all is undone and done again next. */
  whatWasDone(asked: { before: number | null; most: number }): Promise<DoneChanges>;
  latestSeq(): Promise<number>;
  /** The last change: its number and when it was made. */
  standing(): Promise<Standing>;
  /** The last change that is such a one; before the first where there is none. */
  lastChange(isSuch: (change: Change) => boolean): Promise<Standing>;
  /** What tells one club put in the place of all that was there from another; the same as long as none is. */
  lastReplaced(): Promise<string>;
  changesAfter(seq: number): Promise<Change[]>;
  /** At most so many of them, oldest first, that touched records of these kinds or put another club in the place of this. */
  changesTouching(kinds: readonly KindName[], after: number, most: number): Promise<Change[]>;
  /** Those made after an instant, by the clock of then. */
  changesMadeAfter(instant: string): Promise<Change[]>;
  /** Why nothing can be saved now, as one sentence; null: all is well. Writes are refused with it; everything can still be read. */
  trouble(): string | null;
  /** From now on nothing is saved any more, for the reason that is given. */
  stopWriting(why: string): void;
  /** Does what holds the club's file for long through another door, behind every write that was asked for before: who writes meanwhile waits for its end, however long. */
  behindWrites<T>(work: () => Promise<T>): Promise<T>;
  /** Tells who listens of a change that was made through another door to the same club. */
  tellOf(seq: number): void;
  /** Calls back after each change with its number, until the returned function is called. */
  onChange(listener: (seq: number) => void): () => void;

  addPrescription(dayId: string, solvedAt: string, document: unknown): Promise<Prescription>;
  latestPrescription(dayId: string): Promise<Prescription | null>;
  /** An earlier one by its number in the day. */
  prescription(dayId: string, number: number): Promise<Prescription | null>;
  /** Keeps a plan of a season under the next number, by the name of who is at work. */
  addTakenPlan(seasonId: string, takenAt: string, document: unknown): Promise<TakenPlan>;
  /** The plans of a season that were taken, oldest first, without what they say. */
  takenPlans(seasonId: string): Promise<TakenHead[]>;
  takenPlan(seasonId: string, number: number): Promise<TakenPlan | null>;
  /** Everything that an archive holds, of the log what is asked for, as it stood at one moment. Its long lists last as long as `use`. */
  snapshot<Result>(use: (content: ArchiveContent) => Promise<Result>, filter?: SetFilter): Promise<Result>;
  /** What the club holds, counted and not read. */
  look(): Promise<ArchiveLook>;
}
