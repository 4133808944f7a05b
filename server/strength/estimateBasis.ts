import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type Lift, lift as liftShape } from '#contract/records/lift.ts';
import { clubBasis, lifterBasis } from '#reckon/basis/basisRecords.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { emptyLog } from '#store/logMarks.ts';

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

/** Gives the club as it stands now, read again only after a change. */
export function newestBasis(store: ClubStore): () => Promise<EstimateBasis> {
  let newest: { seq: number; basis: Promise<EstimateBasis> } | undefined;
  return async () => {
    const seq = await store.latestSeq();
    if (newest?.seq === seq) return newest.basis;
    const basis = readBasis(store);
    newest = { seq, basis };
    basis.catch(() => {
      newest = undefined;
    });
    return basis;
  };
}

async function readBasis(store: ClubStore): Promise<EstimateBasis> {
  const [{ records }, club] = await Promise.all([store.records(), store.lastReplaced()]);
  const gear = `${club} ${fingerprint(clubBasis(records, 'estimate'))}`;
  const known = new Map<string, Promise<Map<Lift, BasisMark>>>();
  return {
    records,
    club,
    marksOf(lifterId) {
      const marks = known.get(lifterId) ?? readMarks(store, records, gear, lifterId);
      known.set(lifterId, marks);
      return marks;
    },
  };
}

async function readMarks(
  store: ClubStore,
  records: ClubRecords,
  gear: string,
  lifterId: string,
): Promise<Map<Lift, BasisMark>> {
  const log = await store.logMarks(lifterId);
  const lifter = fingerprint(lifterBasis(records, 'estimate', new Set([lifterId])));
  const hasBest = (lift: Lift) =>
    records.best.some((best) => best.lifterId === lifterId && best.lift === lift);
  return new Map(
    liftShape.options
      .filter((lift) => log.has(lift) || hasBest(lift))
      .map((lift) => {
        const { mark, strikes, sets } = log.get(lift) ?? emptyLog;
        const rest = `${gear} ${lifter}`;
        return [
          lift,
          { mark: `${rest} ${mark}`, butForNewSets: `${rest} ${strikes}`, setsInLog: sets },
        ] as const;
      }),
  );
}
