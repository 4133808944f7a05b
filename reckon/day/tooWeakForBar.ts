import { heightAt, rangeThatMatters } from '#core/day/gearPull.ts';
import type { LifterTask } from '#core/day/misfit.ts';
import { heldForceN } from '#core/rep/strengthCurve.ts';

/** Less than this share of the empty bar held, or as a maximum, is no strength to prescribe by; judgement. */
const LEAST_OF_BAR = 0.5;

/**
 * Why nothing can be worked out for a lifter whose known strength hardly carries the body, so that every share of it is
 * endless; null where it carries the empty bar well enough. A light best beside a heavy body does that: what is missing
 * is a best that was hard.
 */
export function tooWeakForBar(
  { capability, travel, referenceKg }: Omit<LifterTask, 'aim'>,
  emptyBarKg: number,
  bodyMassKg: number,
  goesBy: 'log' | 'best' | 'bodyMass',
): string | null {
  const heldKg = rangeThatMatters.map(
    (s) => heldForceN(capability, heightAt(travel, s)) / travel.gravityMps2 - capability.movedBodyKg,
  );
  const leastKg = Math.min(...heldKg);
  if (Math.min(leastKg, referenceKg) >= LEAST_OF_BAR * emptyBarKg) return null;
  const what =
    leastKg < LEAST_OF_BAR * emptyBarKg
      ? `can hold ${Math.max(0, leastKg).toFixed(1)} kg still at the hardest height beside a body of ${bodyMassKg} kg`
      : `has a maximum of ${referenceKg.toFixed(1)} kg`;
  return `By ${bySource[goesBy]} this lifter ${what}, too little to work out anything for a bar of ${emptyBarKg} kg: check body mass and heights, and enter a best or log a set that was hard.`;
}

const bySource = { log: 'the log', best: 'the best that is known', bodyMass: 'body mass alone' };
