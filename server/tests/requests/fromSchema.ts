import * as fc from 'fast-check';

/** As much of JSON Schema as the server's description uses. */
export interface Schema {
  type?: string | string[];
  const?: unknown;
  enum?: unknown[];
  anyOf?: Schema[];
  oneOf?: Schema[];
  properties?: Record<string, Schema>;
  required?: string[];
  additionalProperties?: boolean | Schema;
  propertyNames?: Schema;
  items?: Schema;
  minItems?: number;
  maxItems?: number;
  minLength?: number;
  maxLength?: number;
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
  exclusiveMaximum?: number;
  multipleOf?: number;
  format?: string;
}

/** What fields of some names are drawn from, whatever their schema allows beside: ids that the club has, limits that are soon reached. */
export type Pools = (field: string) => fc.Arbitrary<unknown> | null;

/** Values that a schema allows, most of them small; `field` is the name under which the value stands. */
export function fromSchema(schema: Schema, pools: Pools, field = ''): fc.Arbitrary<unknown> {
  if ('const' in schema) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  const either = schema.anyOf ?? schema.oneOf;
  if (either) return fc.oneof(...either.map((one) => fromSchema(one, pools, field)));
  if (Array.isArray(schema.type))
    return fc.oneof(...schema.type.map((type) => fromSchema({ ...schema, type }, pools, field)));
  switch (schema.type) {
    case 'object':
      return objectOf(schema, pools);
    case 'array':
      return listOf(schema, pools, field);
    case 'string':
      return pools(field) ?? textOf(schema);
    case 'number':
    case 'integer':
      return pools(field) ?? numberOf(schema);
    case 'boolean':
      return fc.boolean();
    case 'null':
      return fc.constant(null);
    default:
      return fc.jsonValue({ maxDepth: 2 });
  }
}

function objectOf({ properties = {}, required = [], ...rest }: Schema, pools: Pools): fc.Arbitrary<unknown> {
  const fields = Object.entries(properties).map(([name, schema]) => [name, fromSchema(schema, pools, name)]);
  const { additionalProperties: others, propertyNames: names = { type: 'string' } } = rest;
  const named = fc.record<Record<string, unknown>>(Object.fromEntries(fields), { requiredKeys: required });
  if (typeof others !== 'object') return named;
  const more = fc.dictionary(fromSchema(names, pools) as fc.Arbitrary<string>, fromSchema(others, pools), {
    maxKeys: 2,
  });
  return fc.tuple(more, named).map(([other, own]) => ({ ...other, ...own }));
}

function listOf({ items = {}, minItems = 0, maxItems }: Schema, pools: Pools, field: string) {
  const maxLength = Math.min(maxItems ?? Number.POSITIVE_INFINITY, minItems + fewMore);
  return fc.array(fromSchema(items, pools, field), { minLength: minItems, maxLength });
}

function textOf({ format, minLength = 0, maxLength = 300 }: Schema): fc.Arbitrary<string> {
  if (format === 'date') return dateText.map((text) => text.slice(0, 10));
  if (format === 'date-time') return dateText;
  if (format === 'time-zone') return fc.constantFrom('UTC', 'Europe/Dublin', 'Pacific/Kiritimati');
  return fc.string({ minLength, maxLength: Math.min(maxLength, minLength + 12), unit: 'grapheme' });
}

const dateText = fc
  .date({ min: new Date('2015-01-01'), max: new Date('2035-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString());

function numberOf(schema: Schema): fc.Arbitrary<number> {
  const { minimum, exclusiveMinimum = minimum, maximum, exclusiveMaximum = maximum } = schema;
  const [from, to] = [exclusiveMinimum ?? -widest, exclusiveMaximum ?? widest];
  const step = schema.type === 'integer' ? 1 : schema.multipleOf;
  const inStep = (value: number) => (step === undefined ? value : Math.round(value / step) * step);
  const shares = fc.double({ min: 0, max: 1, noNaN: true });
  const ends = fc.constantFrom(0, 1e-9, 0.01, 0.5, 1 - 1e-9, 1);
  const usual = fc.constantFrom(0, 0.5, 1, 2, 20, 100).filter((value) => value >= from && value <= to);
  return fc.oneof(
    ...[shares, ends].map((share) => share.map((part) => inStep(from + part * (to - from)))),
    from <= 0 && to >= 0 ? usual : shares.map((part) => inStep(from + part * (to - from))),
  );
}

const fewMore = 2;
const widest = 1e4;
