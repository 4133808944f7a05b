import { type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import { type Lift, lift as liftShape } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { clubBasis, isOfLifter, lifterBasis, lifterOf } from '#reckon/basis/basisRecords.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { emptyLog, type LogMark, marksWith } from '#store/logMarks.ts';

/** The club as it stood at one change. */
export interface EstimateBasis {
  records: ClubRecords;
  /** The same as long as no other club was put in the place of all. */
  club: string;
  /** For each lift that something is known of: what tells one state of all that its estimate rests on from another. */
  marksOf(lifterId: string): Promise<Map<Lift, BasisMark>>;
}

export interface BasisMark {
  /** The same as long as everything is. */
  mark: string;
  /** The same as long as nothing happened but that sets were added to the log. */
  butForNewSets: string;
  /** How many sets of the lift the log has, struck ones too. */
  setsInLog: number;
}

/**
 * Gives the club as it stands now. After a change only that is read again which it may have touched: of a set that was logged, the log
 * of its lifter.
 */
export function newestBasis(store: ClubStore): () => Promise<EstimateBasis> {
  let newest: { seq: number; basis: Promise<EstimateBasis> } | undefined;
  let marks: Marks | undefined;
  let logs = new Map<string, Promise<Map<Lift, LogMark>>>();

  function takeIn(touched: readonly LoggedSet[]): void {
    for (const lifterId of new Set(touched.map((set) => set.lifterId))) {
      const own = touched.filter((set) => set.lifterId === lifterId);
      const log = logs.get(lifterId)?.then((before) => marksWith(before, own) ?? store.logMarks(lifterId));
      if (log !== undefined) void keep(logs, lifterId, log);
    }
  }

  async function read(before: number | undefined): Promise<EstimateBasis> {
    const [{ records }, club, changed] = await Promise.all([
      store.records(),
      store.lastReplaced(),
      before === undefined ? null : store.touchedSets(before),
    ]);
    if (changed === null) logs = new Map();
    else takeIn(changed.sets.map(({ set }) => set));
    if (marks?.records !== records || marks.club !== club) marks = marksOf(records, club);
    const { lifterMark, hasBest } = marks;
    const now = logs;
    const known = new Map<string, Promise<Map<Lift, BasisMark>>>();
    const logOf = (lifterId: string) => {
      return now.get(lifterId) ?? keep(now, lifterId, store.logMarks(lifterId));
    };
    async function markAnew(lifterId: string): Promise<Map<Lift, BasisMark>> {
      const log = await logOf(lifterId);
      return markLifts(lifterMark(lifterId), (lift) => hasBest(lifterId, lift), log);
    }
    return {
      records,
      club,
      marksOf(lifterId) {
        const found = known.get(lifterId) ?? markAnew(lifterId);
        known.set(lifterId, found);
        return found;
      },
    };
  }

  return async () => {
    const seq = await store.latestSeq();
    if (newest?.seq === seq) return newest.basis;
    const basis = read(newest?.seq);
    newest = { seq, basis };
    basis.catch(() => {
      newest = undefined;
    });
    return basis;
  };
}

/** Keeps what is being read of a lifter's log, unless it fails. */
function keep<Log>(logs: Map<string, Promise<Log>>, lifterId: string, log: Promise<Log>): Promise<Log> {
  logs.set(lifterId, log);
  log.catch(() => {
    if (logs.get(lifterId) === log) logs.delete(lifterId);
  });
  return log;
}

/** Marks of all records that estimates rest on, as long as these are the same. */
interface Marks {
  records: ClubRecords;
  club: string;
  lifterMark(lifterId: string): string;
  hasBest(lifterId: string, lift: Lift): boolean;
}

function marksOf(records: ClubRecords, club: string): Marks {
  const gear = `${club} ${fingerprint(clubBasis(records, 'estimate'))}`;
  const known = new Map<string, string>();
  const own = recordsByLifter(records);
  const of = (lifterId: string) => own.get(lifterId) ?? noRecords();
  return {
    records,
    club,
    hasBest: (lifterId, lift) => of(lifterId).best.some((best) => best.lift === lift),
    lifterMark(lifterId) {
      const mark =
        known.get(lifterId) ??
        `${gear} ${fingerprint(lifterBasis(of(lifterId), 'estimate', new Set([lifterId])))}`;
      known.set(lifterId, mark);
      return mark;
    },
  };
}

/** What belongs to each lifter, looked for once for all of them. */
function recordsByLifter(records: ClubRecords): Map<string, ClubRecords> {
  const found = new Map<string, ClubRecords>();
  for (const kind of kindNames.filter(isOfLifter)) {
    for (const record of records[kind]) {
      const lifterId = lifterOf(record);
      const own = found.get(lifterId) ?? noRecords();
      found.set(lifterId, own);
      (own[kind] as object[]).push(record);
    }
  }
  return found;
}

function noRecords(): ClubRecords {
  return Object.fromEntries(kindNames.map((kind) => [kind, []])) as unknown as ClubRecords;
}

function markLifts(
  rest: string,
  hasBest: (lift: Lift) => boolean,
  log: ReadonlyMap<Lift, LogMark>,
): Map<Lift, BasisMark> {
  return new Map(
    liftShape.options
      .filter((lift) => log.has(lift) || hasBest(lift))
      .map((lift) => {
        const { mark, strikes, sets } = log.get(lift) ?? emptyLog;
        return [
          lift,
          { mark: `${rest} ${mark}`, butForNewSets: `${rest} ${strikes}`, setsInLog: sets },
        ] as const;
      }),
  );
}
