import type { Lift } from '../lifter/populationShape.ts';
import type { LnRatio } from '../numeric/quantity.ts';
import { heldForceN } from '../rep/strengthCurve.ts';
import { strengthIn } from './askDraws.ts';
import type { Draw } from './Draw.ts';
import { drawCapability } from './drawCapability.ts';
import type { Rigging } from './Rigging.ts';

/**
 * ln of what a draw can just hold still at a place of the full range (0 bottom, 1 lockout), moved body included, over the total mass of its straight
 * maximum: its shape alone says so, whatever its strength. `reference`: the straight competition lift of that lifter.
 */
export function heldLn(draw: Draw, lift: Lift, reference: Rigging): (place: number) => LnRatio {
  const { start, range, load } = reference;
  const to = { start, range, movedBodyKg: 0, equipment: 'raw' } as const;
  const capability = drawCapability(draw, lift, reference, to);
  const totalLn = strengthIn({ equipment: 'raw', platform: false }, draw) + Math.log(load.gravityMps2);
  return (place) => {
    const heightM = range.fromM + place * (range.toM - range.fromM);
    return Math.log(heldForceN(capability, heightM)) - totalLn;
  };
}
