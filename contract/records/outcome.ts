import { z } from 'zod';

/** What a comparison of two ways looks at: the estimate of strength, hard lifts at one exact gym setup, or lifts at meets. */
export const outcome = z.enum(['strength', 'setup', 'platform']);
export type Outcome = z.infer<typeof outcome>;

/** A test so many days before the start still counts as one at the start (judgement: meets are few). */
export const baselineDays: Record<Outcome, number> = { strength: 14, setup: 28, platform: 183 };
