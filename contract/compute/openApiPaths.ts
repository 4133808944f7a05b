import type { Operation } from './Operation.ts';
import { operationSchema } from './operationSchema.ts';

const errorSchema = {
  type: 'object',
  required: ['error'],
  properties: {
    error: {
      type: 'object',
      required: ['field', 'message'],
      properties: {
        field: {
          type: 'string',
          description: 'For example bands[0].readings[1].force_N; empty: the whole document',
        },
        message: { type: 'string', description: 'One sentence with the value and what is allowed' },
      },
    },
  },
};

/** The calculations as path items of an OpenAPI 3.1 document. */
export function computePaths(operations: readonly Operation[]) {
  return Object.fromEntries(
    operations.map((operation) => {
      const { summary, input, output } = operationSchema(operation);
      const item = {
        post: {
          operationId: operation.name,
          summary,
          tags: ['compute'],
          requestBody: { required: true, content: { 'application/json': { schema: input } } },
          responses: {
            200: { description: 'The answer', content: { 'application/json': { schema: output } } },
            400: {
              description: 'The document cannot be answered',
              content: { 'application/json': { schema: errorSchema } },
            },
          },
        },
      };
      return [`/api/compute/${operation.name}`, item];
    }),
  );
}
