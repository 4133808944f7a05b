import { z } from 'zod';

/** Where telephones may read the calendar; whoever knows an address of these can read what it gives out. */
export const calendarAddresses = z.strictObject({
  /** Null: nowhere, the program was not started for it. Else the address without the secret part: http://192.168.1.5:4700 */
  at: z.string().nullable(),
  /** The whole club's, where `lifterId` is null, and each lifter's own; none where it is nowhere. */
  addresses: z.array(z.strictObject({ lifterId: z.string().nullable(), url: z.string() })),
});
export type CalendarAddresses = z.infer<typeof calendarAddresses>;
