import type { Capability } from '../Capability.ts';

/** A made-up lifter for closed forms: as strong at every height, no body to move, nothing stored, all force at once. */
export const evenCapability: Capability = {
  strengthN: 2000,
  slope: 0,
  curvature: 0,
  dip: { depth: 0, at: 0.4, width: 0.2 },
  maxSpeedMps: 1.6,
  rebound: 0,
  reboundTimeS: 0.7,
  strainAfterS: 2.5,
  strainTimeS: 6,
  buildUpTimeS: 0,
  builtShare: 0,
  easing: 0,
  movedBodyKg: 0,
  range: { fromM: 0.5, toM: 1 },
};

/** A made-up lifter of some 300 kg whose strength changes over the range as in a squat (the plain rep of docs/model.md). */
export const squatCapability: Capability = {
  ...evenCapability,
  strengthN: 3600,
  slope: 1.2,
  curvature: -0.5,
  dip: { depth: 0.2, at: 0.4, width: 0.2 },
  rebound: 0.35,
  movedBodyKg: 88,
  range: { fromM: 0.9, toM: 1.5 },
};
