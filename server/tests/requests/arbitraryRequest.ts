import * as fc from 'fast-check';
import { fromSchema, type Pools, type Schema } from './fromSchema.ts';
import { malformed, spoilt } from './spoilt.ts';

/** A request as it goes over the line. */
export interface AnyRequest {
  method: string;
  /** With its query, escaped as an address is. */
  path: string;
  headers: Record<string, string>;
  body: string | null;
}

interface Parameter {
  name: string;
  in: string;
  required?: boolean;
  schema: Schema;
}

interface Operation {
  parameters?: Parameter[];
  requestBody?: { content: Record<string, { schema: Schema }> };
}

/**
 * Requests to every address that the description names: valid ones, nearly valid ones and malformed ones. `examples`: whole documents
 * that an address takes, which are changed in places too. `isSlow`: addresses that are asked a tenth as often.
 */
export function arbitraryRequest(
  paths: Record<string, object>,
  pools: Pools,
  examples: Record<string, unknown[]>,
  isSlow: (path: string) => boolean,
): fc.Arbitrary<AnyRequest> {
  const every = Object.entries(paths).flatMap(([path, item]) => {
    const { parameters = [], ...methods } = item as { parameters?: Parameter[] };
    return Object.entries(methods as Record<string, Operation>).map(([method, operation]) => ({
      weight: isSlow(path) ? 1 : 10,
      arbitrary: requestTo(
        method.toUpperCase(),
        path,
        [...parameters, ...(operation.parameters ?? [])],
        operation.requestBody,
        pools,
        examples[path] ?? [],
      ),
    }));
  });
  return fc.oneof(...every);
}

function requestTo(
  method: string,
  path: string,
  parameters: Parameter[],
  requestBody: Operation['requestBody'],
  pools: Pools,
  examples: unknown[],
): fc.Arbitrary<AnyRequest> {
  const [content] = Object.entries(requestBody?.content ?? {});
  const [type, { schema }] = content ?? ['application/json', { schema: {} }];
  const bodies = content === undefined ? fc.constant(null) : bodyOf(type, schema, pools, examples);
  return fc
    .record({
      method: mostly(fc.constant(method), fc.constantFrom('PATCH', 'PUT', 'DELETE', 'POST', 'GET')),
      path: pathOf(path, parameters, pools),
      query: queryOf(parameters, pools),
      headers: mostly(fc.constant({ 'content-type': type }), oddHeaders),
      body: mostly(bodies, fc.constantFrom(null, '', '{}')),
    })
    .map(({ path, query, ...rest }) => ({ ...rest, path: `${path}${query === '' ? '' : `?${query}`}` }));
}

function bodyOf(type: string, schema: Schema, pools: Pools, examples: unknown[]): fc.Arbitrary<string> {
  if (type !== 'application/json') return tables;
  const drawn = fromSchema(schema, pools);
  const documents = examples.length === 0 ? drawn : fc.oneof(drawn, fc.constantFrom(...examples));
  return fc.oneof(
    { weight: 2, arbitrary: documents.map((document) => JSON.stringify(document)) },
    { weight: 6, arbitrary: spoilt(documents) },
    { weight: 1, arbitrary: malformed(documents) },
  );
}

/** Text that may be a spreadsheet: headers that are known somewhere, cells that may be anything. */
const cells = fc.oneof(
  fc.constantFrom(
    'id',
    'label',
    'mass_kg',
    'name',
    'note',
    'date',
    'lifter',
    'bar kg',
    '1',
    '2026-11-25',
    '"',
  ),
  fc.string({ maxLength: 8 }),
);
const tables = fc
  .tuple(fc.constantFrom(',', ';', '\t'), fc.constantFrom('\n', '\r\n'))
  .chain(([comma, newline]) =>
    fc
      .array(
        fc.array(cells, { maxLength: 5 }).map((row) => row.join(comma)),
        { maxLength: 5 },
      )
      .map((lines) => lines.join(newline)),
  );

function pathOf(path: string, parameters: Parameter[], pools: Pools): fc.Arbitrary<string> {
  const names = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!);
  const values = names.map((name) => {
    const schema = parameters.find((one) => one.name === name)?.schema ?? {};
    const valid = fromSchema(schema, pools, name).map((value) => encodeURIComponent(asSent(value)));
    return mostly(valid, oddInAddress);
  });
  return fc
    .tuple(...values)
    .map((given) => names.reduce((text, name, i) => text.replace(`{${name}}`, () => given[i]!), path));
}

function queryOf(parameters: Parameter[], pools: Pools): fc.Arbitrary<string> {
  const known = parameters
    .filter((one) => one.in === 'query')
    .map(({ name, schema, required = false }) => {
      const valid = fromSchema(schema, pools, name).map((value) => encodeURIComponent(asSent(value)));
      const part = mostly(valid, oddInAddress).map((value) => `${name}=${value}`);
      return required ? mostly(part, fc.constant('')) : fc.oneof(part, fc.constant(''));
    });
  const more = fc.oneof(
    ...known,
    oddInAddress,
    oddInAddress.map((value) => `unforeseen=${value}`),
  );
  return fc
    .tuple(fc.tuple(...known), mostly(fc.constant(''), more))
    .map(([parts, other]) => [...parts, other].filter((part) => part !== '').join('&'));
}

/** A text as it is typed into an address. */
function asSent(value: unknown): string {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? '');
  return half.test(text) ? 'half' : text;
}

/** Half of a pair of signs, which no address can spell. */
const half = /\p{Cs}/u;

const oddInAddress = fc.oneof(
  fc.constantFrom('', '%', '%00', '%0A', '%E0%A4%A', '%ff', '..%2f..', '__proto__', 'constructor', '-1', '0'),
  fc.constantFrom(
    '1e9',
    '99999999999999999999',
    '%F0%9F%8F%8B',
    'a'.repeat(3000),
    '2026-02-30',
    'null',
    '+',
    '&&',
  ),
  fc.string().map((text) => encodeURIComponent(text)),
);

const oddHeaders = fc.oneof(
  fc.constantFrom<Record<string, string>>(
    {},
    { 'content-type': '' },
    { 'content-type': 'text/plain' },
    { 'content-type': ';;;' },
    { 'content-type': 'application/json; charset=utf-16' },
    { 'content-type': 'multipart/form-data' },
    { 'content-type': 'application/json', 'content-length': '-1' },
    { 'content-type': 'application/json', 'content-encoding': 'gzip' },
    { 'content-type': 'application/json', 'transfer-encoding': 'chunked' },
    { 'content-type': 'application/json', host: 'example.org' },
    { 'content-type': 'application/json', host: '' },
    { 'content-type': 'application/json', origin: 'null' },
    { 'content-type': 'application/json', origin: 'http://example.org' },
    { 'content-type': 'application/json', 'sec-fetch-site': 'cross-site' },
    { 'content-type': 'application/json', 'if-none-match': '*' },
    { 'content-type': 'application/json', 'last-event-id': '-1' },
    { 'content-type': 'application/json', 'last-event-id': '9'.repeat(400) },
    { 'content-type': 'application/json', accept: '\u00ff', range: 'bytes=5-2', expect: '100-continue' },
  ),
);

function mostly<T, U>(usual: fc.Arbitrary<T>, odd: fc.Arbitrary<U>): fc.Arbitrary<T | U> {
  return fc.oneof({ weight: 9, arbitrary: usual }, { weight: 1, arbitrary: odd });
}
