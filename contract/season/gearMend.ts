import { z } from 'zod';

/** What would give everybody of an hour the bands that a plan asks for. */
export const gearMend = z.discriminatedUnion('by', [
  /** Those who are left without train at another hour. */
  z.strictObject({ by: z.literal('anotherHour') }),
  /** Every rack gets the hookups of the others. */
  z.strictObject({ by: z.literal('hookups') }),
  z.strictObject({ by: z.literal('onePairMore'), widthMm: z.number() }),
]);
export type GearMend = z.infer<typeof gearMend>;
