import { describe, expect, it } from 'vitest';
import type { RecordOf } from '#contract/records/allKinds.ts';
import { maxBar } from '#core/rep/maxBar.ts';
import { assembleCapability, isStraight } from '#reckon/lifter/assembleCapability.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';
import { millraceClub } from './millraceClub.ts';

const TODAY = '2026-11-25';
const club = millraceClub(TODAY);
const variants = club.best.filter(({ setup }) => setup.start.way === 'box' || setup.bands.length > 0);

/** The heaviest bar in the setup of a best, by the lifter's straight bests in the same equipment alone. */
function foretoldKg({ lifterId, lift, equipment, setup }: RecordOf<'best'>): number | undefined {
  const straight = club.best.filter((best) => isStraight(best) && best.equipment === equipment);
  const records = { ...club, best: straight };
  const { capability } = assembleCapability(records, lifterId, lift, setup.start, TODAY);
  const { load } = assembleLoad(records, { lifterId, lift, setup, on: TODAY });
  return maxBar(load, capability)?.barKg;
}

describe('bests off a box or with bands', () => {
  it('are made by most of the club, with bands by half of it', () => {
    const lifters = (bests: typeof variants) => new Set(bests.map(({ lifterId }) => lifterId)).size;
    expect(lifters(variants)).toBeGreaterThan(club.lifter.length / 2);
    expect(lifters(variants.filter(({ setup }) => setup.bands.length > 0))).toBeGreaterThanOrEqual(7);
  });

  /** A coach would stumble over more: a maximum repeats to 2 to 4 % (Grgic et al. 2020, Sports Med Open 6:31). */
  it.each(variants)('$id is within 4 % of what straight bests foretell', (best) => {
    const ratio = best.setup.barKg / (foretoldKg(best) ?? 0);
    expect(ratio).toBeGreaterThan(0.96);
    expect(ratio).toBeLessThan(1.04);
  });
});
