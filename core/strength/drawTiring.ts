import { type Tiring, tiringOf } from '../effort/Tiring.ts';
import type { Lift } from '../lifter/populationShape.ts';
import type { Draw } from './Draw.ts';

/** How soon a draw tires: the lift's usual tiring, as much sooner or later as the lifter's own sets told. */
export function drawTiring({ lnTiring, tiringBend }: Draw, lift: Lift): Tiring {
  const usual = tiringOf(lift);
  return { ...usual, perSecond: usual.perSecond * Math.exp(lnTiring), bend: tiringBend };
}
