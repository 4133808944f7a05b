import { z } from 'zod';
import type { Load } from '#core/load/Load.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { band, toRiggedBand } from './bandShape.ts';
import { count, fields, finite, notNegative, positive } from './fields.ts';

const hungBand = fields({
  verticalAt: z
    .array(fields({ z_m: finite, force_N: finite }))
    .min(2)
    .describe('Vertical pull of one band read on a scale, at two bar heights or more; down is positive'),
  count,
}).superRefine(({ verticalAt }, context) => refuseTwice(verticalAt, ['verticalAt'], context));

const chain = fields({
  massPerMetre_kg: positive,
  length_m: positive,
  attachBelowBar_m: notNegative,
  count,
});

const loadFields = {
  bar_kg: notNegative.describe('Bar, discs and collars'),
  bands: z.array(band).default([]),
  hungBands: z.array(hungBand).default([]),
  chains: z.array(chain).default([]),
  bottom_m: notNegative.describe('Bar centre above the floor'),
  lockout_m: positive,
  gravity_mps2: positive.default(STANDARD_GRAVITY_MPS2),
  path: z
    .array(fields({ z_m: finite, x_m: finite }))
    .default([])
    .describe('Fore-aft bar position by height; linear between, constant outside'),
};

type Rise = Pick<z.output<z.ZodObject<typeof loadFields>>, 'bottom_m' | 'lockout_m' | 'path'>;

function checkRise({ bottom_m, lockout_m, path }: Rise, context: z.core.$RefinementCtx): void {
  if (lockout_m <= bottom_m) {
    const message = `it must be above bottom_m (${bottom_m})`;
    context.addIssue({ code: 'custom', path: ['lockout_m'], message });
  }
  refuseTwice(path, ['path'], context);
}

/** One value a height: the second at the same height is refused. */
function refuseTwice(points: { z_m: number }[], path: string[], context: z.core.$RefinementCtx): void {
  points.forEach(({ z_m }, index) => {
    if (points.findIndex((point) => point.z_m === z_m) === index) return;
    context.addIssue({
      code: 'custom',
      path: [...path, index, 'z_m'],
      message: 'it must differ from every other height',
    });
  });
}

export const load = fields(loadFields).superRefine(checkRise);

/** The same where the bar is what is looked for: a `bar_kg` that is given is ignored. */
export const loadWithoutBar = fields({ ...loadFields, bar_kg: finite.optional() }).superRefine(checkRise);

export function toLoad(document: z.output<typeof load>): Load {
  return {
    barKg: document.bar_kg,
    bands: document.bands.map(toRiggedBand),
    hungBands: document.hungBands.map(({ verticalAt, count }) => ({
      verticalAt: verticalAt.map(({ z_m, force_N }) => ({ zM: z_m, forceN: force_N })),
      count,
    })),
    chains: document.chains.map((chain) => ({
      massPerMetreKg: chain.massPerMetre_kg,
      lengthM: chain.length_m,
      attachBelowBarM: chain.attachBelowBar_m,
      count: chain.count,
    })),
    bottomM: document.bottom_m,
    lockoutM: document.lockout_m,
    gravityMps2: document.gravity_mps2,
    path: document.path.map(({ z_m, x_m }) => ({ zM: z_m, xM: x_m })).sort((a, b) => a.zM - b.zM),
  };
}
