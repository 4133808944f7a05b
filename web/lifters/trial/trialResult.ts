import type { ClubRecords } from '#contract/records/allKinds.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import type { Load } from '#core/load/Load.ts';
import { curveOf, type LoadCurve } from '#core/load/loadCurve.ts';
import { type Rep, repOf } from '#core/rep/simulateRep.ts';
import { heldForceN } from '#core/rep/strengthCurve.ts';
import type { HeightScene } from '#web/charts/HeightScene.ts';
import type { Trial } from './Trial.ts';
import { type TrialHeights, trialHeights } from './trialHeights.ts';
import { trialLoad } from './trialLoad.ts';
import { type TrialStrength, trialStrength } from './trialStrength.ts';

/** All that a trial comes to: the picture and the numbers beside it. */
export interface TrialResult {
  heights: TrialHeights;
  load: Load;
  curve: LoadCurve;
  strength: TrialStrength | null;
  rep: Rep | null;
  scene: HeightScene;
}

/** Heights of the curve: fine enough for the eye at any size. */
const points = 41;
const samples = 61;
/** Two-sided 95 % of the normal distribution. */
const normal95 = 1.959963984540054;

/** Works a trial out, from the records to the picture; fast enough for every frame of a drag. Null: no heights known. */
export function trialResult(
  club: ClubRecords,
  trial: Trial,
  title: string,
  today: string,
): TrialResult | null {
  const heights = trialHeights(club, trial.lifterId, trial.lift, trial.start);
  if (heights === null || heights.lockoutM - heights.bottomM < 0.02) return null;
  const load = trialLoad(club, trial, heights);
  const compiled = compileLoad(load);
  const curve = curveOf(compiled, points);
  const strength = trialStrength(club, trial, heights, today);
  const rep = strength && trial.barKg > 0 ? repOf(compiled, strength.capability, samples) : null;
  return {
    heights,
    load,
    curve,
    strength,
    rep,
    scene: scene(club, trial, title, { heights, load, curve, strength, rep }),
  };
}

function scene(
  club: ClubRecords,
  trial: Trial,
  title: string,
  { heights, load, curve, strength, rep }: Omit<TrialResult, 'scene'>,
): HeightScene {
  const rack = club.rack.find((candidate) => candidate.id === trial.rackId);
  return {
    title,
    bottomM: heights.bottomM,
    lockoutM: heights.lockoutM,
    rack: {
      anchors: club.anchor.filter((anchor) => anchor.rackId === trial.rackId),
      bands: trial.bands.flatMap(({ bandPairId, hookupId }) => {
        const pair = club.bandPair.find((candidate) => candidate.id === bandPairId);
        const hookup = club.hookup.find((candidate) => candidate.id === hookupId);
        const anchor = club.anchor.find((candidate) => candidate.id === hookup?.anchorId);
        if (!pair || !hookup || !anchor) return [];
        return [{ label: pair.label, way: hookup.way, widthMm: pair.widthMm, xM: anchor.xM, zM: anchor.zM }];
      }),
      path: load.path,
      boxHeightM: trial.start.way === 'box' ? trial.start.heightM : null,
      benchHeightM: trial.lift === 'bench' ? (rack?.benchHeightM ?? null) : null,
    },
    load: {
      points: curve.points,
      held: strength === null ? [] : curve.points.map(({ zM }) => held(strength, zM, load.gravityMps2)),
    },
    speed: rep && {
      samples: rep.samples,
      slowest: rep.slowest,
      made: rep.made,
      durationS: rep.durationS,
    },
  };
}

/** What could just be held still at the bar, with the spread of the lifter's strength. */
function held({ capability, strengthSdLn }: TrialStrength, zM: number, gravityMps2: number) {
  const ownN = capability.movedBodyKg * gravityMps2;
  const forceN = heldForceN(capability, zM);
  const spread = Math.exp(normal95 * strengthSdLn);
  return { zM, heldN: forceN - ownN, lowN: forceN / spread - ownN, highN: forceN * spread - ownN };
}
