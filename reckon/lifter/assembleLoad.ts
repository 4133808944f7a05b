import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { KnownHow } from '#contract/records/knownHow.ts';
import type { Lift, Setup } from '#contract/records/lift.ts';
import { pairOnBar } from '#core/day/gearPull.ts';
import type { Load } from '#core/load/Load.ts';
import { assembleHookup, type HookupRecords, isUsedUp } from '#reckon/gear/assembleHookup.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { assembleHeights, type HeightRecords, type LifterHeights } from './assembleHeights.ts';

export type LoadRecords = HookupRecords & HeightRecords & Pick<ClubRecords, 'club' | 'chainPair' | 'rack'>;

/** A load with what is known of it and how. */
export interface AssembledLoad {
  load: Load;
  heights: LifterHeights;
  /** How each pair's pull is known, in the order of the setup. */
  bands: { bandPairId: string; known: KnownHow; onScale: boolean }[];
}

/** What one lifter moves with a given setup, from the club's records. */
export function assembleLoad(
  records: LoadRecords,
  { lifterId, lift, setup, on }: { lifterId: string; lift: Lift; setup: Setup; on: string },
): AssembledLoad {
  const rack = setup.rackId === null ? null : recordById(records, 'rack', setup.rackId);
  const heights = assembleHeights(records, lifterId, lift, setup.start, on, rack?.benchHeightM ?? null);
  const { bottomM, lockoutM } = heights;
  const { name } = recordById(records, 'lifter', lifterId);
  if (bottomM >= lockoutM) {
    throw new CannotAssemble(
      `${name} would start at lockout or above: the start is too high for this lifter.`,
    );
  }
  if (bottomM < 0) {
    throw new CannotAssemble(
      `${name} would start with the bar below the floor: the start is too low for this lifter.`,
    );
  }
  const pairs = setup.bands.map(({ bandPairId, hookupId }) =>
    assembleHookup(records, bandPairId, hookupId, on),
  );
  const usedUp = pairs.findIndex(isUsedUp);
  if (usedUp >= 0) {
    const { bandPairId, hookupId } = setup.bands[usedUp]!;
    const { label } = recordById(records, 'bandPair', bandPairId);
    const hookup = recordById(records, 'hookup', hookupId);
    throw new CannotAssemble(
      `Hookup "${hookup.label}" chokes ${hookup.spentM} m of the loop, all that pair ${label} has: choose another.`,
    );
  }
  return {
    load: {
      barKg: setup.barKg,
      bands: pairs.flatMap((pair) => pairOnBar(pair).bands),
      hungBands: pairs.flatMap((pair) => pairOnBar(pair).hungBands),
      chains: setup.chains.map(({ chainPairId, pairs }) => {
        const { massPerMetreKg, lengthM, attachBelowBarM } = recordById(records, 'chainPair', chainPairId);
        return { massPerMetreKg, lengthM, attachBelowBarM, count: 2 * pairs };
      }),
      bottomM,
      lockoutM,
      gravityMps2: gravityOf(records),
      path: pathOf(heights),
    },
    heights,
    bands: pairs.map(({ pairId, rigged, measured }) => ({
      bandPairId: pairId,
      known:
        measured === null && rigged.some(({ curves }) => curves.loading.known === 'notMeasured')
          ? 'notMeasured'
          : 'measured',
      onScale: measured !== null,
    })),
  };
}

/** Straight from where the bar is at the bottom to its place at lockout; empty where nobody measured it: straight up. */
function pathOf({ bottomM, lockoutM, bottomForwardM }: LifterHeights): Load['path'] {
  if (bottomForwardM === null) return [];
  return [
    { zM: bottomM, xM: bottomForwardM },
    { zM: lockoutM, xM: 0 },
  ];
}
