import type { KnownHow } from '#contract/records/knownHow.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import type { Kg } from '#core/numeric/quantity.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { assembleLoad, type LoadRecords } from '#reckon/lifter/assembleLoad.ts';
import { knownOfEnds } from '#reckon/lifter/knownOfEnds.ts';

/** What lay on a lifter at both ends of the way, as a mass that is as heavy there. */
export interface LoadEnds {
  bottomKg: Kg;
  lockoutKg: Kg;
  known: KnownHow;
}

/** The true load of something lifted by the bands as they were read by its day; null where its gear or heights are no longer kept. */
export function endsOfSet(
  records: LoadRecords,
  { lifterId, lift, setup, doneOn }: Pick<LoggedSet, 'lifterId' | 'lift' | 'setup' | 'doneOn'>,
): LoadEnds | null {
  return assembledOrNull(() => {
    const { load, heights, bands } = assembleLoad(records, { lifterId, lift, setup, on: doneOn });
    const { totalN } = compileLoad(load);
    return {
      bottomKg: totalN(load.bottomM) / load.gravityMps2,
      lockoutKg: totalN(load.lockoutM) / load.gravityMps2,
      known: knownOfEnds(
        load,
        heights,
        bands.every(({ known }) => known === 'measured'),
      ),
    };
  });
}
