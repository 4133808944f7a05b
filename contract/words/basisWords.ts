import type { z } from 'zod';
import type { basis } from '#contract/records/day.ts';

type Basis = z.infer<typeof basis>;

/** What a percentage counts, as it stands behind the figure. */
export const basisWords = [
  { value: 'bar', word: 'the bar alone' },
  { value: 'bottom', word: 'everything, at the bottom' },
  { value: 'lockout', word: 'everything, at lockout' },
  { value: 'mean', word: 'everything, mean of the range' },
] as const satisfies readonly { value: Basis; word: string }[];
