import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import { expectedRep } from '#core/rep/expectedSpeed.ts';
import { centralDraw, drawCapability } from '#core/strength/drawCapability.ts';
import { speedCorrectionOf } from '#core/strength/speedCorrectionOf.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';
import { drawsIn } from '#reckon/strength/estimatedCapability.ts';
import { competitionSetup, riggingOf } from '#reckon/strength/riggingOf.ts';

/**
 * The mean speed (m/s) that the whole log expects of a set's first rep by a rested lifter: the estimate's middle with the
 * strength that it believes of the set's week, at the body mass of today. 0: no lift. Null where gear or heights are no longer kept.
 */
export function expectedOfSet(
  records: ClubRecords,
  set: LoggedSet,
  estimate: Pick<StrengthEstimate, 'draws' | 'history' | 'maxKg' | 'bodyMassKg' | 'on'>,
): number | null {
  const { lifterId, lift, setup, equipment, doneOn } = set;
  return assembledOrNull(() => {
    const { load, heights } = assembleLoad(records, { lifterId, lift, setup, on: doneOn });
    const movedBodyKg = populationShape(lift).movedBodyShare * estimate.bodyMassKg;
    const now = centralDraw(drawsIn(estimate));
    const sinceLn = Math.log(
      (believedKg(estimate, doneOn) + movedBodyKg) / (estimate.maxKg.median + movedBodyKg),
    );
    const then = { ...now, lnTotal: now.lnTotal + sinceLn };
    const straight = riggingOf(records, lifterId, lift, competitionSetup(lift), estimate.on);
    const to = { start: setup.start.way, range: heights.range, movedBodyKg, equipment };
    const capability = drawCapability(then, lift, straight, to);
    const rep = expectedRep(compileLoad(load), capability, 0, speedCorrectionOf(then));
    return rep.made ? rep.meanSpeedMps : 0;
  });
}

/** The middle of what is believed of a day's maximum (kg): of the last point up to it, before all points of the first one. */
function believedKg({ history, maxKg }: Pick<StrengthEstimate, 'history' | 'maxKg'>, on: string): number {
  return (history.findLast((point) => point.on <= on) ?? history[0] ?? maxKg).median;
}
