import { type ParameterName, parameterNames } from './parameters.ts';
import type { LiftModel } from './readGroup.ts';
import type { Session } from './sessions.ts';

/** Parameters of which the sets can tell anything; the others stay as the prior has them. */
export function activeParameters(
  sessions: readonly Session[],
  { reference, shape }: LiftModel,
): ParameterName[] {
  const groups = sessions.flatMap((session) => session.groups);
  const speeds = groups.some(({ fastestMps, peakMps }) => fastestMps.count + peakMps.count > 0);
  const bands = groups.some(({ model }) => model.bandShare !== 0);
  const ofSeveral = groups.some(
    ({ made, missed, reserve }) => made + Number(missed) > 1 || reserve.count > 0,
  );
  const starts = new Set([reference.start, ...groups.map(({ model }) => model.start)]);
  const held = ['box', 'boards', 'paused'] as const;
  const tells: Record<ParameterName, boolean> = {
    lnMaxSpeed: speeds,
    slope: starts.size > 1 || bands || groups.some(({ stopped }) => stopped.count > 0),
    lnRebound: shape.rebound > 0 && (starts.size > 1 || speeds),
    heldRebound: shape.rebound > 0 && held.some((start) => starts.has(start)),
    lnTiring: ofSeveral,
    tiringBend: ofSeveral,
    bandError: bands,
    startError: starts.size > 1,
    speedOffset: speeds,
    speedSlope: speeds,
    wraps: groups.some(({ equipment }) => equipment === 'wraps'),
    singlePly: groups.some(({ equipment }) => equipment === 'singlePly'),
    multiPly: groups.some(({ equipment }) => equipment === 'multiPly'),
    otherGear: groups.some(({ equipment }) => equipment === 'otherGear'),
    platform: groups.some(({ platform }) => platform),
    weekGain: sessions.length > 1,
    lnDaySd: sessions.length > 1,
    lnWeekSd: sessions.length > 1,
  };
  return parameterNames.filter((name) => tells[name]);
}
