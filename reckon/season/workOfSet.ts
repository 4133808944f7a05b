import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { SessionWork } from '#contract/season/sessionWork.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import { loadWorkNm } from '#core/load/loadWorkNm.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { assembleLoad, type LoadRecords } from '#reckon/lifter/assembleLoad.ts';

/** What the made reps of a logged set came to, by the bands as they were read by its day; null where gear or heights are no longer kept. A log has no times. */
export function workOfSet(
  records: LoadRecords,
  { lifterId, lift, setup, doneOn, made }: Pick<LoggedSet, 'lifterId' | 'lift' | 'setup' | 'doneOn' | 'made'>,
): SessionWork | null {
  return assembledOrNull(() => {
    const { load } = assembleLoad(records, { lifterId, lift, setup, on: doneOn });
    return {
      liftedKg: made * setup.barKg,
      workJ: made * loadWorkNm(compileLoad(load)),
      underBarS: null,
    };
  });
}
