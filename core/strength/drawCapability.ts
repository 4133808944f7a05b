import { shapeFrom } from '../lifter/lifterCapability.ts';
import { type Lift, populationShape } from '../lifter/populationShape.ts';
import type { Capability } from '../rep/Capability.ts';
import { fitStrength } from '../rep/fitStrength.ts';
import { strengthIn } from './askDraws.ts';
import { beliefOf } from './belief.ts';
import type { Draw } from './Draw.ts';
import { reboundOf } from './nodeWeights.ts';
import { type EquipmentName, type Parameters, parameterNames } from './parameters.ts';
import type { Rigging } from './Rigging.ts';

/**
 * What a draw can push from a start on an average day: its own shape, and the strength with which its straight maximum is
 * just a maximum. `range` and `movedBodyKg` are those of the day.
 */
export function drawCapability(
  draw: Draw,
  lift: Lift,
  reference: Rigging,
  to: Pick<Rigging, 'start' | 'range'> & { movedBodyKg: number; equipment: EquipmentName },
): Capability {
  const { strengthN: _, ...straight } = shaped(draw, lift, reference.start, reference.range);
  // What another start is worth less to this lifter is missing from the strength there.
  const lostLn = to.start === reference.start ? 0 : draw.startError;
  const totalKg = Math.exp(strengthIn({ equipment: to.equipment, platform: false }, draw) - lostLn);
  return {
    ...shaped(draw, lift, to.start, to.range),
    strengthN: fitStrength({ ...reference.load, barKg: totalKg }, { ...straight, strengthN: 1 }),
    movedBodyKg: to.movedBodyKg,
  };
}

/** The answer in the middle of all: the median of each number by itself. */
export function centralDraw(draws: readonly Draw[]): Draw {
  const median = (value: (draw: Draw) => number) => beliefOf(draws.map(value)).median;
  const central: Partial<Parameters> = {};
  for (const name of parameterNames) central[name] = median((draw) => draw[name]);
  return { ...(central as Parameters), lnTotal: median((draw) => draw.lnTotal) };
}

/** Bar and moved body rise together, so that the body may as well be on the bar. */
function shaped(draw: Draw, lift: Lift, start: Rigging['start'], range: Capability['range']): Capability {
  const { movedBodyShare: _, ...shape } = shapeFrom(populationShape(lift), start);
  return {
    ...shape,
    maxSpeedMps: shape.maxSpeedMps * Math.exp(draw.lnMaxSpeed),
    slope: shape.slope + draw.slope,
    rebound: reboundOf(draw, populationShape(lift), start),
    strengthN: 1,
    movedBodyKg: 0,
    range,
  };
}
