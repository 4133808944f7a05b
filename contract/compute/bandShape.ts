import { z } from 'zod';
import type { BandCurves, BandReading } from '#core/band/BandCurve.ts';
import { fitBand } from '#core/band/fitBand.ts';
import type { RiggedBand } from '#core/rig/Rig.ts';
import { count, fields, force, length, lengthOrNone, place, positive } from './fields.ts';
import { InputError } from './InputError.ts';

export const direction = z.enum(['loading', 'unloading']);

const reading = fields({
  length_m: length.describe('End-to-end length of the loop under the force'),
  force_N: force,
  direction: direction.default('loading'),
});

/** What is known of one loop, wherever it hangs. */
export const loopFields = {
  restLength_m: length.describe('Relaxed loop, end to end'),
  readings: z.array(reading).default([]),
  width_mm: positive
    .max(1000)
    .optional()
    .describe('Needed where no direction has readings at two lengths or more'),
  spent_m: lengthOrNone
    .optional()
    .describe('Length of the loop that a choke uses up; counts for "choked" only'),
};

const anchor = fields({ x_m: place, y_m: place, z_m: place });

export const band = fields({
  ...loopFields,
  hookup: z.enum(['single', 'doubled', 'choked']),
  anchor,
  count,
}).superRefine((value, context) => {
  checkLoop(value, context);
  const { hookup, spent_m, restLength_m } = value;
  if (hookup !== 'choked') return;
  if (spent_m === undefined || spent_m >= restLength_m) {
    const message = `it must be given for a choked band and be less than restLength_m (${restLength_m})`;
    context.addIssue({ code: 'custom', path: ['spent_m'], message });
  }
});

type Loop = z.output<z.ZodObject<typeof loopFields>>;

/** A loop reads longer than at rest, and tells its stretch by two readings or by its width. */
export function checkLoop({ restLength_m, readings, width_mm }: Loop, context: z.core.$RefinementCtx): void {
  readings.forEach(({ length_m }, index) => {
    if (length_m > restLength_m) return;
    const message = `it must be longer than restLength_m (${restLength_m}), where the band is slack`;
    context.addIssue({ code: 'custom', path: ['readings', index, 'length_m'], message });
  });
  const lengths = (way: string) =>
    new Set(readings.filter((r) => r.direction === way).map((r) => r.length_m));
  const measured = ['loading', 'unloading'].some((way) => lengths(way).size >= 2);
  if (measured || width_mm !== undefined) return;
  const message = 'it must be given where no direction has readings at two lengths or more';
  context.addIssue({ code: 'custom', path: ['width_mm'], message });
}

export function toReadings({ readings }: Pick<Loop, 'readings'>): BandReading[] {
  return readings.map(({ length_m, force_N, direction }) => ({
    lengthM: length_m,
    forceN: force_N,
    direction,
  }));
}

/** Fits both branches of the loop that stands at `field` of the document. */
export function toBandCurves({ restLength_m, readings, width_mm }: Loop, field: string): BandCurves {
  const band = {
    restLengthM: restLength_m,
    ...(width_mm === undefined ? {} : { widthMm: width_mm }),
    readings: toReadings({ readings }),
  };
  try {
    return fitBand(band);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new InputError({ field, message: `${field} cannot be fitted: ${error.message}` });
  }
}

/** Fits a loop that several places of a document list once: racks share their stock. */
export function fittedOnce(): typeof toBandCurves {
  const fits = new Map<string, BandCurves>();
  return ({ restLength_m, readings, width_mm }, field) => {
    const key = JSON.stringify([restLength_m, readings, width_mm]);
    const curves = fits.get(key) ?? toBandCurves({ restLength_m, readings, width_mm }, field);
    fits.set(key, curves);
    return curves;
  };
}

export function toRiggedBand(
  document: z.output<typeof band>,
  field: string,
  toCurves = toBandCurves,
): RiggedBand {
  const { hookup, spent_m = 0, anchor, count } = document;
  return {
    curves: toCurves(document, `${field}.readings`),
    hookup: hookup === 'choked' ? { way: hookup, spentM: spent_m } : { way: hookup },
    anchor: { xM: anchor.x_m, yM: anchor.y_m, zM: anchor.z_m },
    count,
  };
}
