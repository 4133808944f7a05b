import type { z } from 'zod';
import type { Tell } from '#contract/words/doing.ts';
import type { Clock } from '#core/day/timeSpent.ts';

/** One calculation of the core as documents: JSON in, JSON out, SI, the unit in the field name. */
export interface Operation<Input extends z.ZodType = z.ZodType, Output extends z.ZodType = z.ZodType> {
  /** As on the command line and in the address: `band-curve`. */
  name: string;
  /** One sentence for `--list` and the API description. */
  summary: string;
  inputSchema: Input;
  outputSchema: Output;
  /** `clock` ends a search that would take too long; `tell` hears how far a long one is. */
  run(input: z.output<Input>, clock: Clock, tell: Tell): z.input<Output> | Promise<z.input<Output>>;
}

/** Lets the compiler infer what `run` gets and must give from the two schemas. */
export function operation<Input extends z.ZodType, Output extends z.ZodType>(
  definition: Operation<Input, Output>,
): Operation<Input, Output> {
  return definition;
}
