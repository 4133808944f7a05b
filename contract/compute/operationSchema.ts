import { z } from 'zod';
import type { Operation } from './Operation.ts';

/** JSON Schema (2020-12) of what an operation takes and gives; refinements across fields live in its messages. */
export function operationSchema({ name, summary, inputSchema, outputSchema }: Operation) {
  return {
    operation: name,
    summary,
    input: z.toJSONSchema(inputSchema, { io: 'input' }),
    output: z.toJSONSchema(outputSchema, { io: 'output' }),
  };
}
