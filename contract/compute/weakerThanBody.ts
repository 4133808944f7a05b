import type { z } from 'zod';
import { strengthCurve } from '#core/rep/strengthCurve.ts';
import { type capability, toCapability } from './capabilityShape.ts';
import type { load } from './loadShape.ts';

type CapabilityDocument = z.output<typeof capability>;
type Travel = Pick<z.output<typeof load>, 'bottom_m' | 'lockout_m' | 'gravity_mps2'>;

/** Even places at which a lifter is asked to hold up the own body. */
const PLACES = 21;

/** A lifter who cannot hold up the own body all the way has no share of capability: it would be infinite. */
export function refuseWeakerThanBody(
  capability: CapabilityDocument,
  travel: Travel,
  context: z.core.$RefinementCtx,
): void {
  const rangeM = travel.lockout_m - travel.bottom_m;
  const heights = Array.from({ length: PLACES }, (_, i) => travel.bottom_m + (rangeM * i) / (PLACES - 1));
  refuseBelow(capability, travel, heights, 1, 'all the way from bottom_m to lockout_m', context);
}

/** A lifter who cannot even lift the own body off the bottom, stretch and all, makes no rep of any bar. */
export function refuseTooWeakToStart(
  { load, capability }: { load: Travel; capability: CapabilityDocument },
  context: z.core.$RefinementCtx,
): void {
  refuseBelow(capability, load, [load.bottom_m], 1 + capability.rebound, 'at bottom_m', context);
}

function refuseBelow(
  document: CapabilityDocument,
  { bottom_m, lockout_m, gravity_mps2 }: Travel,
  heights: readonly number[],
  pushed: number,
  where: string,
  context: z.core.$RefinementCtx,
): void {
  const curve = strengthCurve(toCapability(document, { bottomM: bottom_m, lockoutM: lockout_m }));
  const bodyN = document.movedBody_kg * gravity_mps2;
  const neededN = bodyN / (pushed * Math.min(...heights.map(curve)));
  if (document.movedBody_kg === 0 || document.strength_N > neededN) return;
  const message = `it must be more than ${neededN.toFixed(1)} N, or the lifter cannot hold up the own body (movedBody_kg ${document.movedBody_kg}) ${where}`;
  context.addIssue({ code: 'custom', path: ['capability', 'strength_N'], message });
}
