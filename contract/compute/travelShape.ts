import { z } from 'zod';
import type { Travel } from '#core/day/gearPull.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { fields, length, lengthOrNone, place, positive } from './fields.ts';

/** From where to where the bar goes, and on which way. */
export const travelFields = {
  bottom_m: lengthOrNone.describe('Bar centre above the floor'),
  lockout_m: length,
  gravity_mps2: positive.max(100).default(STANDARD_GRAVITY_MPS2),
  path: z
    .array(fields({ z_m: place, x_m: place }))
    .default([])
    .describe('Fore-aft bar position by height; linear between, constant outside; none: straight up at 0'),
};

type TravelDocument = z.output<z.ZodObject<typeof travelFields>>;

export function checkTravel(
  { bottom_m, lockout_m, path }: Pick<TravelDocument, 'bottom_m' | 'lockout_m' | 'path'>,
  context: z.core.$RefinementCtx,
): void {
  if (lockout_m <= bottom_m) {
    const message = `it must be above bottom_m (${bottom_m})`;
    context.addIssue({ code: 'custom', path: ['lockout_m'], message });
  }
  refuseSameHeight(path, 'path', context);
}

/** One value a height: the second at the same height is refused. */
export function refuseSameHeight(
  points: { z_m: number }[],
  field: string,
  context: z.core.$RefinementCtx,
): void {
  const seen = new Set<number>();
  points.forEach(({ z_m }, index) => {
    const message = 'it must differ from every other height';
    if (seen.has(z_m)) context.addIssue({ code: 'custom', path: [field, index, 'z_m'], message });
    seen.add(z_m);
  });
}

export function toTravel({ bottom_m, lockout_m, gravity_mps2, path }: TravelDocument): Travel {
  return {
    bottomM: bottom_m,
    lockoutM: lockout_m,
    gravityMps2: gravity_mps2,
    path: path.map(({ z_m, x_m }) => ({ zM: z_m, xM: x_m })).sort((a, b) => a.zM - b.zM),
  };
}
