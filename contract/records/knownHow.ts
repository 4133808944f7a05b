import { z } from 'zod';

/** How a number is known, best first; shown wherever the number is. */
export const knownHow = z.enum(['measured', 'estimated', 'assumed', 'notMeasured']);
export type KnownHow = z.infer<typeof knownHow>;
