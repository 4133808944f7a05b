import type { LnKg } from '../numeric/quantity.ts';
import type { Parameters } from './parameters.ts';

/**
 * One of many equally likely answers to 'what can this lifter do on an average rested day': strength and parameters at
 * once. Any question about the lifter is answered by asking every draw.
 */
export interface Draw extends Parameters {
  /** ln of the greatest total mass (bar and moved body, kg) from the reference start, straight weight, raw. */
  lnTotal: LnKg;
}
