import { z } from 'zod';
import { recordId } from './kind.ts';

/** So many values a plan may hold: forty lifters with a year of their own each have a third of them. */
export const mostTakenValues = 2_000_000;

/** The plan of a season as the coach took it. A later one is added; this one stays. */
export const takenPlan = z.strictObject({
  id: recordId,
  seasonId: recordId,
  /** Counts 1, 2, 3 ... within the season. */
  number: z.number().int().min(1),
  takenAt: z.iso.datetime(),
  /** The name of whoever took it, as the log of changes has it; null where that is not known. */
  takenBy: z.string().min(1).max(60).nullable(),
  /** The season as it was worked out then; kept as it is. */
  document: z.unknown(),
});
export type TakenPlan = z.infer<typeof takenPlan>;
