import { z } from 'zod';
import { heightM, kind, localDate, note, recordId } from './kind.ts';
import { equipment, lift, setup, start } from './lift.ts';

export const lifter = kind('lifter', 'lifter', {
  name: z.string().trim().min(1).max(80),
  bornOn: localDate.nullable().default(null),
  category: z.enum(['women', 'men', 'other']),
  statureM: z.number().min(1).max(2.5).nullable().default(null),
  equipment: equipment.default('raw'),
  leftOn: localDate.nullable().default(null),
  note,
});
export type Lifter = z.infer<typeof lifter.shape>;

export const bodyMass = kind('bodyMass', 'body mass', {
  lifterId: recordId,
  takenOn: localDate,
  massKg: z.number().min(20).max(300),
});
export type BodyMass = z.infer<typeof bodyMass.shape>;

/** Bar heights of one lifter: the full competition range (`free`), or the bottom on a box, boards and so on. */
export const liftHeights = kind('liftHeights', 'measured heights', {
  lifterId: recordId,
  lift,
  start,
  bottomM: heightM,
  lockoutM: heightM,
  /** Where the bar is at the bottom, in front of (+) or behind (-) its place at lockout; null: not measured. */
  bottomForwardM: z.number().min(-0.4).max(0.4).nullable().default(null),
  measuredOn: localDate,
});
export type LiftHeights = z.infer<typeof liftHeights.shape>;

/** A maximum that was made, with everything that was on the bar. */
export const best = kind('best', 'best', {
  lifterId: recordId,
  lift,
  doneOn: localDate,
  place: z.string().max(80).default(''),
  /** True at a meet. */
  platform: z.boolean().default(false),
  equipment: equipment.default('raw'),
  setup,
  note,
});
export type Best = z.infer<typeof best.shape>;
