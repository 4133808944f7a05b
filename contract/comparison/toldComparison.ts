import { z } from 'zod';
import { comparisonReport } from './comparisonReport.ts';

/** A comparison of the club as its records and its log stand: what could be seen of it as was told then, and what it shows by now. */
export const toldComparison = z.strictObject({
  comparisonId: z.string(),
  title: z.string(),
  /** What was told before anybody started. */
  foretold: z.array(z.string()),
  /** Null before its first day, and where the tests do not scatter, so that no range can be given. */
  report: comparisonReport.nullable(),
  sentences: z.array(z.string()),
  cautions: z.array(z.string()),
});
export type ToldComparison = z.infer<typeof toldComparison>;
