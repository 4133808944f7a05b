/** The body of every answer that is not a success. */
export const errorSchema = {
  type: 'object',
  required: ['error'],
  properties: {
    error: {
      type: 'object',
      required: ['field', 'message'],
      properties: {
        field: { type: 'string', description: 'The field that is meant; empty: the whole' },
        message: { type: 'string', description: 'One sentence with the value and what is allowed' },
      },
    },
  },
};

export const seqSchema = { type: 'integer', description: 'Number of the last change' };

export function answer(description: string, schema: unknown, type = 'application/json') {
  return { description, content: { [type]: { schema } } };
}

export function refusal(description: string) {
  return answer(description, { $ref: '#/components/schemas/Error' });
}

export function body(schema: unknown, type = 'application/json') {
  return { required: true, content: { [type]: { schema } } };
}

/** An object with exactly these properties, all of them there. */
export function object(properties: Record<string, unknown>) {
  return { type: 'object', required: Object.keys(properties), properties, additionalProperties: false };
}

export function inPath(name: string, type: 'string' | 'integer') {
  return { name, in: 'path', required: true, schema: { type } };
}

export function inQuery(name: string, description: string) {
  return { name, in: 'query', schema: { const: '1' }, description };
}
