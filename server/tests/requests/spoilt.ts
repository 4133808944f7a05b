import * as fc from 'fast-check';

/** JSON text of a document in which one to three places are not as they should be: gone, another value, or a field too many. */
export function spoilt(documents: fc.Arbitrary<unknown>): fc.Arbitrary<string> {
  const faults = fc.array(
    fc.record({
      place: fc.nat(),
      how: fc.constantFrom('gone', 'other', 'other', 'other', 'more'),
      text: fc.oneof(fc.constantFrom(...unfit), fc.constantFrom(...magnitudes)),
    }),
    { minLength: 1, maxLength: 3 },
  );
  return fc.tuple(documents, faults).map(([document, faults]) => {
    const copy: unknown = structuredClone(document);
    faults.forEach(({ place, how }, number) => {
      const places = placesIn(copy);
      const { holder, key } = places[place % places.length] ?? { holder: {}, key: '' };
      if (how === 'gone') Reflect.deleteProperty(holder, key);
      else Reflect.set(holder, how === 'more' ? 'id' : key, marked(number));
    });
    // Brackets without end could not be written out: they come in as text.
    return faults.reduce(
      (text, fault, number) => text.replace(JSON.stringify(marked(number)), () => fault.text),
      JSON.stringify(copy),
    );
  });
}

/** Text that is no document: cut short, empty, another kind of value, brackets without end. */
export function malformed(documents: fc.Arbitrary<unknown>): fc.Arbitrary<string> {
  return fc.oneof(
    fc
      .tuple(documents, fc.double({ min: 0, max: 1, noNaN: true }))
      .map(([document, share]) => [JSON.stringify(document), share] as const)
      .map(([text, share]) => text.slice(0, Math.floor(share * text.length))),
    fc.string({ unit: 'binary' }),
    fc.constantFrom(...unfit, '', '\ufeff{}', '{"a":1', '{"a":NaN}', '{"a":1}{"a":2}', `${deep(2000)}]`),
  );
}

/** Brackets within brackets. */
export function deep(levels: number): string {
  return `${'['.repeat(levels)}${']'.repeat(levels)}`;
}

/** JSON values that hardly any field allows. */
const unfit = [
  'null',
  'true',
  '1e308',
  '-1e308',
  '1e999',
  '12345678901234567890',
  '""',
  '" "',
  '"x"',
  '"1"',
  '"\\u0000"',
  '"\\ud800"',
  '"2026-02-30"',
  '"__proto__"',
  '"constructor"',
  '{}',
  '[]',
  '[[]]',
  '[null]',
  '{"__proto__":{"a":1}}',
  '{"constructor":1}',
  '{"":{"":1}}',
  JSON.stringify('long '.repeat(2000)),
  deep(500),
  deep(20_000),
  `${'{"a":'.repeat(20_000)}1${'}'.repeat(20_000)}`,
  `[${'1,'.repeat(2999)}1]`,
];

/** Numbers at which a calculation may break, though a field may allow them. */
const magnitudes = [
  '0',
  '-0',
  '5e-324',
  '1e-9',
  '-1',
  '0.1',
  '0.5',
  '1',
  '1.5',
  '2',
  '3',
  '60',
  '1000',
  '1e9',
];

function marked(number: number): string {
  return `the place of fault ${number}`;
}

function placesIn(value: unknown): { holder: object; key: string }[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => [{ holder: value, key }, ...placesIn(inside)]);
}
