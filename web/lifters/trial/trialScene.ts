import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type HeightSpread, withHeightSpread } from '#core/day/heightSpread.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import type { Load } from '#core/load/Load.ts';
import { curveOf } from '#core/load/loadCurve.ts';
import type { Capability } from '#core/rep/Capability.ts';
import { expectedRep, type SpeedCorrection } from '#core/rep/expectedSpeed.ts';
import { heldForceN } from '#core/rep/strengthCurve.ts';
import type { HeightScene } from '#web/charts/HeightScene.ts';
import type { Trial } from './Trial.ts';

/** Heights of the curve and moments of the rep: fine enough for the eye at any size. */
const points = 41;
const samples = 61;
/** Two-sided 95 % of the normal distribution. */
const normal95 = 1.959963984540054;

/** The picture of a trial: its rack, its load over what the lifter can hold, its speed. */
export function trialScene(
  club: ClubRecords,
  trial: Trial,
  title: string,
  load: Load,
  {
    capability,
    strengthSdLn,
    speedCorrection,
    heights,
  }: {
    capability: Capability;
    strengthSdLn: number;
    speedCorrection?: SpeedCorrection;
    heights: HeightSpread;
  },
): HeightScene {
  const compiled = compileLoad(load);
  const curve = curveOf(compiled, points);
  const rep = trial.barKg > 0 ? expectedRep(compiled, capability, samples, speedCorrection) : null;
  const rack = club.rack.find(({ id }) => id === trial.rackId);
  const ownN = capability.movedBodyKg * load.gravityMps2;
  const spread = Math.exp(normal95 * strengthSdLn);
  return {
    title,
    bottomM: load.bottomM,
    lockoutM: load.lockoutM,
    rack: {
      anchors: club.anchor.filter(({ rackId }) => rackId === trial.rackId),
      bands: trial.bands.flatMap(({ bandPairId, hookupId }) => {
        const pair = club.bandPair.find(({ id }) => id === bandPairId);
        const hookup = club.hookup.find(({ id }) => id === hookupId);
        const anchor = club.anchor.find(({ id }) => id === hookup?.anchorId);
        if (!pair || !hookup || !anchor) return [];
        return [{ label: pair.label, way: hookup.way, widthMm: pair.widthMm, xM: anchor.xM, zM: anchor.zM }];
      }),
      path: load.path,
      boxHeightM: trial.start.way === 'box' ? trial.start.heightM : null,
      benchHeightM: trial.lift === 'bench' ? (rack?.benchHeightM ?? null) : null,
    },
    load: {
      points: curve.points.map((point) => withHeightSpread(point, heights, (zM) => compiled.at(zM).totalN)),
      held: curve.points.map(({ zM }) => {
        const forceN = heldForceN(capability, zM);
        return { zM, heldN: forceN - ownN, lowN: forceN / spread - ownN, highN: forceN * spread - ownN };
      }),
    },
    speed: rep && { samples: rep.samples, slowest: rep.slowest, made: rep.made, durationS: rep.durationS },
  };
}
