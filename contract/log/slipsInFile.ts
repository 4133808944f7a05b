import type { CapabilityRecords } from '#contract/assemble/assembleCapability.ts';
import { slipsInLift } from '#contract/estimate/slipsInLift.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { grouped } from '#core/evidence/grouped.ts';
import type { NewSet } from './againstLog.ts';
import type { LooksLike, MeantBar } from './meantBar.ts';

/**
 * What the coach can do with sets of a file that look slipped: as written, to be looked at later, where nothing is said; `checked`: as
 * written, since they are right.
 */
export const slipTakings = ['asWritten', 'asMeant', 'leftOut', 'checked'] as const;
export type SlipTaking = (typeof slipTakings)[number];

/** Sets of a file of one lifter and lift that slipped alike, as the coach is asked about them. */
export interface SlipAsked {
  /** Names the slip where the answer says what to do with it. */
  key: string;
  /** A name. */
  lifter: string;
  lift: Lift;
  looksLike: LooksLike;
  setCount: number;
  firstOn: string;
  lastOn: string;
  bars: MeantBar[];
}

/** The same by the places of its sets in the file. */
export interface SlipInFile {
  lifterId: string;
  lift: Lift;
  looksLike: LooksLike;
  at: number[];
}

/**
 * Slips among sets that a file brings new, judged together with all that the lifters' log has: what is usual for a lifter may
 * stand there alone.
 */
export function slipsInFile(
  fresh: readonly NewSet[],
  log: readonly LoggedSet[],
  records: CapabilityRecords,
  today: string,
): SlipInFile[] {
  const placeOf = new Map(fresh.map(({ at }) => [`${IN_FILE}${at}`, at]));
  const logged = fresh.map(
    ({ set, at }): LoggedSet => ({ ...set, id: `${IN_FILE}${at}`, loggedAt: '', struckAt: null }),
  );
  const all = grouped([...log, ...logged], liftKey);
  return [...grouped(logged, liftKey)].flatMap(([key, [first]]) => {
    const of = { lifterId: first!.lifterId, lift: first!.lift };
    return slipsInLift(records, all.get(key)!, { ...of, on: today }).flatMap(({ looksLike, ids }) => {
      const at = ids.flatMap((id) => placeOf.get(id) ?? []);
      return at.length === 0 ? [] : [{ ...of, looksLike, at }];
    });
  });
}

function liftKey({ lifterId, lift }: LoggedSet): string {
  return `${lifterId} ${lift}`;
}

/** No id of the log begins so. */
const IN_FILE = 'file ';
