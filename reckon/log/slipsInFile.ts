import type { NewSet } from '#contract/log/againstLog.ts';
import type { LooksLike } from '#contract/log/meantBar.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { grouped } from '#core/numeric/grouped.ts';
import type { CapabilityRecords } from '#reckon/lifter/assembleCapability.ts';
import { slipsInLift } from '#reckon/strength/slipsInLift.ts';

/** Sets of a file of one lifter and lift that slipped alike, by their places in the file. */
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
