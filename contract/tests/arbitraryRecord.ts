import * as fc from 'fast-check';
import { z } from 'zod';
import { allKinds, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { comparisonPlan } from '#contract/records/comparisonPlan.ts';
import { method } from '#contract/records/method.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';

/** Any record that a kind's shape lets through, made from the shape itself. */
export function arbitraryRecord<K extends KindName>(kind: K): fc.Arbitrary<RecordOf<K>> {
  const { shape } = allKinds[kind];
  return (
    arbitrary(schemaOf(shape))
      // Text of blanks alone passes the schema and is no label.
      .filter((value) => shape.safeParse(value).success)
      .map((value) => shape.parse(value) as RecordOf<K>)
  );
}

/** One that is shipped with other words and limits: what holds phases together nobody meets by chance. */
function anyMethod(): fc.Arbitrary<unknown> {
  const { title, forWhom, says, sources, zoneShift, limits } = method.shape;
  const words = arbitrary(schemaOf(z.strictObject({ title, forWhom, says, sources, zoneShift, limits })));
  return fc
    .tuple(fc.constantFrom(...shippedMethods), words)
    .map(([shipped, said]) => ({ ...shipped, ...Object(said) }));
}

/** One lifter of one way, after every day that is made up; other figures and notes. */
function anyComparison(): fc.Arbitrary<unknown> {
  const { scatter, foretold } = comparisonPlan.shape;
  return arbitrary(schemaOf(z.strictObject({ scatter, foretold }))).map((figures) => ({
    outcome: 'platform',
    ways: ['first', 'second'],
    startsOn: '2100-01-04',
    endsOn: '2100-02-01',
    weeks: 4,
    testOn: ['2100-01-04', '2100-02-01'],
    seed: 7,
    drawn: [{ lifterId: 'anybody', name: 'Anybody', way: 'first', pair: null }],
    notDrawn: [{ lifterId: 'other', name: 'Other', reason: 'minor' }],
    ...Object(figures),
  }));
}

/** Documents within a record of which the parts belong together. */
const wholeDocuments: Readonly<Record<string, () => fc.Arbitrary<unknown>>> = {
  methodDocument: anyMethod,
  planDocument: anyComparison,
};

function schemaOf(shape: z.ZodType): Schema {
  return z.toJSONSchema(shape, { io: 'output' }) as Schema;
}

interface Schema {
  type?: string | string[];
  const?: unknown;
  enum?: unknown[];
  anyOf?: Schema[];
  oneOf?: Schema[];
  properties?: Record<string, Schema>;
  items?: Schema;
  format?: string;
  pattern?: string;
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
  minLength?: number;
  minItems?: number;
  maxItems?: number;
}

function arbitrary(schema: Schema): fc.Arbitrary<unknown> {
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices) return fc.oneof(...choices.map(arbitrary));
  if (Array.isArray(schema.type))
    return fc.oneof(...schema.type.map((type) => arbitrary({ ...schema, type })));
  if (schema.enum) return fc.constantFrom(...schema.enum);
  if ('const' in schema) return fc.constant(schema.const);
  switch (schema.type) {
    case 'object':
      return fc.record(
        Object.fromEntries(
          Object.entries(schema.properties ?? {}).map(([name, inner]) => [
            name,
            wholeDocuments[name]?.() ?? arbitrary(inner),
          ]),
        ),
      );
    case 'array':
      return fc.array(arbitrary(schema.items ?? {}), {
        minLength: schema.minItems ?? 0,
        maxLength: Math.min(schema.maxItems ?? 3, 3),
      });
    case 'string':
      if (schema.format === 'time-zone')
        return fc.constantFrom('UTC', 'Europe/London', 'America/Argentina/Ushuaia');
      if (schema.format === 'time') return fc.constantFrom('00:00', '18:30', '23:59');
      if (schema.format === 'date') return date;
      return schema.pattern !== undefined
        ? fc.stringMatching(new RegExp(schema.pattern))
        : fc.string({ unit, minLength: schema.minLength ?? 0, maxLength: 8 });
    case 'integer':
      return fc.integer({ min: schema.minimum ?? 0, max: schema.maximum ?? 1_000_000 });
    case 'number':
      return number(schema);
    case 'boolean':
      return fc.boolean();
    case 'null':
      return fc.constant(null);
    default:
      throw new Error(`No way to make up a value for ${JSON.stringify(schema)}.`);
  }
}

/** Characters that files, spreadsheets and databases have stumbled over. */
const unit = fc.constantFrom(
  ...['a', 'b', '0', ' ', ',', ';', '\\', "'", '"', '=', '+', '-', '@', '|', '%'].concat([
    '\n',
    '\r',
    '\t',
    '\0',
    '\u00e9',
    '\u2028',
    '\u{1f3cb}',
  ]),
);

const date = fc
  .date({ min: new Date('1900-01-01'), max: new Date('2100-01-01'), noInvalidDate: true })
  .map((moment) => moment.toISOString().slice(0, 10));

function number({ minimum, exclusiveMinimum, maximum }: Schema): fc.Arbitrary<number> {
  return fc
    .double({
      min: minimum ?? exclusiveMinimum ?? -1e6,
      max: maximum ?? 1e6,
      minExcluded: exclusiveMinimum !== undefined,
      noNaN: true,
    })
    .map((value) => (value === 0 ? 0 : value));
}
