import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Setup } from '#contract/records/lift.ts';
import type { ForeAft } from '#contract/words/foreAftSentence.ts';
import { withHeightSpread } from '#core/day/heightSpread.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import { curveOf } from '#core/load/loadCurve.ts';
import { NORMAL_95 } from '#core/numeric/normal.ts';
import { expectedRep } from '#core/rep/expectedSpeed.ts';
import { heldForceFunction } from '#core/rep/strengthCurve.ts';
import { type AssembledCapability, assembleCapability } from '#reckon/lifter/assembleCapability.ts';
import { type AssembledLoad, assembleLoad } from '#reckon/lifter/assembleLoad.ts';
import type { HeightScene } from '#web/charts/HeightScene.ts';

/** Heights of the curve and moments of the rep: fine enough for the eye at any size. */
const points = 41;
const samples = 61;

/** What the lifter can push, how well it is known, and what measured speeds are beyond the model's. */
export type SceneStrength = Pick<AssembledCapability, 'capability' | 'strengthSdLn' | 'speedCorrection'> & {
  /** ln strength still missing from the steps before when the rep starts; left out: rested. */
  tiredLn?: number;
};

/** The picture, and what the bands do fore and aft; null where none hangs. */
export interface SetupScene extends HeightScene {
  foreAft: ForeAft | null;
}

/** The picture of one setup on one lifter on a day, from the club's records; fast enough for every frame of a drag. */
export function setupScene(
  club: ClubRecords,
  asked: {
    lifterId: string;
    lift: Lift;
    setup: Setup;
    on: string;
    title: string;
    /** What a plan of this start went by; left out: a best. */
    strength?: SceneStrength | null;
  },
): SetupScene {
  const { lifterId, lift, setup, on } = asked;
  const rack = club.rack.find((candidate) => candidate.id === setup.rackId);
  const strength: SceneStrength =
    asked.strength ?? assembleCapability(club, lifterId, lift, setup.start, on, rack?.benchHeightM ?? null);
  return sceneOf(club, asked, assembleLoad(club, { lifterId, lift, setup, on }), strength);
}

/** The same where load and heights were worked out before. Without anything on the bar nothing is sped up. */
export function sceneOf(
  club: ClubRecords,
  { lift, setup, title }: { lift: Lift; setup: Setup; title: string },
  { load, heights }: Pick<AssembledLoad, 'load' | 'heights'>,
  { capability, strengthSdLn, speedCorrection, tiredLn = 0 }: SceneStrength,
): SetupScene {
  const compiled = compileLoad(load);
  const curve = curveOf(compiled, points);
  const strengthN = capability.strengthN * Math.exp(-tiredLn);
  const rep =
    setup.barKg > 0 ? expectedRep(compiled, { ...capability, strengthN }, samples, speedCorrection) : null;
  const heldN = heldForceFunction(capability);
  const ownN = capability.movedBodyKg * load.gravityMps2;
  const spread = Math.exp(NORMAL_95 * strengthSdLn);
  const rack = club.rack.find(({ id }) => id === setup.rackId);
  return {
    title,
    foreAft:
      load.bands.length === 0
        ? null
        : {
            bottomN: compiled.foreAftN(load.bottomM),
            lockoutN: compiled.foreAftN(load.lockoutM),
            pathMeasured: heights.bottomForwardM !== null,
          },
    bottomM: load.bottomM,
    lockoutM: load.lockoutM,
    rack: {
      anchors: club.anchor.filter(({ rackId }) => rackId === setup.rackId),
      bands: setup.bands.flatMap((band) => hungBand(club, band)),
      path: load.path,
      boxHeightM: setup.start.way === 'box' ? setup.start.heightM : null,
      benchHeightM: lift === 'bench' ? (rack?.benchHeightM ?? null) : null,
    },
    load: {
      points: curve.points.map((point) => withHeightSpread(point, heights, (zM) => compiled.at(zM).totalN)),
      held: curve.points.map(({ zM }) => {
        const forceN = heldN(zM);
        return { zM, heldN: forceN - ownN, lowN: forceN / spread - ownN, highN: forceN * spread - ownN };
      }),
    },
    speed: rep && { samples: rep.samples, slowest: rep.slowest, made: rep.made, durationS: rep.durationS },
  };
}

function hungBand(club: ClubRecords, { bandPairId, hookupId }: Setup['bands'][number]) {
  const pair = club.bandPair.find((candidate) => candidate.id === bandPairId);
  const hookup = club.hookup.find((candidate) => candidate.id === hookupId);
  const anchor = club.anchor.find((candidate) => candidate.id === hookup?.anchorId);
  if (!pair || !hookup || !anchor) return [];
  return [{ label: pair.label, way: hookup.way, widthMm: pair.widthMm, xM: anchor.xM, zM: anchor.zM }];
}
