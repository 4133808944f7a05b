import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { Explanation } from '#core/day/Explanation.ts';
import { explain } from '#core/day/explain.ts';
import type { GearSet, RackGear } from '#core/day/Gear.ts';
import type { Load } from '#core/load/Load.ts';
import type { Capability } from '#core/rep/Capability.ts';
import { bandLimitsOf } from '#reckon/day/assembleRackGear.ts';
import { placeCautions } from '#reckon/day/placeCautions.ts';
import { assembleHookup } from '#reckon/gear/assembleHookup.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import type { LifterHeights } from '#reckon/lifter/assembleHeights.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';
import type { HeightScene } from '#web/charts/HeightScene.ts';
import { sceneOf } from '#web/parts/setupScene.ts';
import type { Trial } from './Trial.ts';
import { type TrialStrength, trialStrength } from './trialStrength.ts';

/** All that a trial comes to: the picture, the explanation of its numbers, what to know. */
export interface TrialResult {
  load: Load;
  heights: LifterHeights;
  capability: Capability;
  strength: TrialStrength;
  explanation: Explanation;
  cautions: PlanCaution[];
  /** False where a band's pull is guessed from its width. */
  bandsMeasured: boolean;
  scene: HeightScene;
}

/**
 * Works a trial out, from the records to the picture, by the same functions as a solved day; fast enough for every frame
 * of a drag. Where something is missing: the sentence that says so.
 */
export function trialResult(
  club: ClubRecords,
  trial: Trial,
  title: string,
  today: string,
  estimates: readonly StrengthEstimate[] = [],
): TrialResult | string {
  try {
    return workOut(club, trial, title, today, estimates);
  } catch (error) {
    if (error instanceof CannotAssemble) return error.message;
    throw error;
  }
}

function workOut(
  club: ClubRecords,
  trial: Trial,
  title: string,
  today: string,
  estimates: readonly StrengthEstimate[],
): TrialResult {
  const { lifterId, lift } = trial;
  const { load, heights, bands } = assembleLoad(club, { lifterId, lift, setup: trial, on: today });
  const strength = trialStrength(club, trial, today, estimates);
  const capability = { ...strength.capability, range: heights.range };
  const { gear, set } = gearOf(club, trial, today);
  const { bottomM, lockoutM, gravityMps2, path } = load;
  const explanation = explain(
    {
      capability,
      speedCorrection: strength.speedCorrection,
      travel: { bottomM, lockoutM, gravityMps2, path },
      referenceKg: strength.reference.kg,
      heightSpread: heights,
    },
    gear,
    set,
    trial.barKg,
    bandLimitsOf(club),
  );
  const own = placeCautions(club, trial, { heights, strength }, { gear, barAssumedKg: null }, set, today);
  return {
    load,
    heights,
    capability,
    strength,
    explanation,
    cautions: [...explanation.cautions, ...own.filter(({ code }) => code !== 'minor')],
    bandsMeasured: bands.every(({ known }) => known === 'measured'),
    scene: sceneOf(club, { lift, setup: trial, title }, { load, heights }, { ...strength, capability }),
  };
}

/** The trial's own bands and chains as gear that is all hung on. */
function gearOf(club: ClubRecords, trial: Trial, today: string): { gear: RackGear; set: GearSet } {
  const hookups = trial.bands.map((band) => assembleHookup(club, band.bandPairId, band.hookupId, today));
  const chains = trial.chains.flatMap(({ chainPairId, pairs }) => {
    const kind = club.chainPair.find(({ id }) => id === chainPairId);
    return kind ? [{ chainPairId, pairs, chain: { ...kind, count: 2 } }] : [];
  });
  return {
    gear: { barKg: 0, collarsKg: 0, discs: [], hookups, chains },
    set: { hookups: hookups.map((_, i) => i), chainPairs: chains.map(({ pairs }) => pairs) },
  };
}
