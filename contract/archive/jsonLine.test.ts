import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonLine } from './jsonLine.ts';

test('a value is found on its own line, past strings that look like JSON', () => {
  const text = '{\n"a": "]},\\"{[",\n"b": [\n1, -2e3,\n{"c": [],\n"d": null}\n],\n"e":\ntrue\n}';
  expect(jsonLine(text, [])).toBe(1);
  expect(jsonLine(text, ['a'])).toBe(2);
  expect(jsonLine(text, ['b'])).toBe(3);
  expect(jsonLine(text, ['b', 1])).toBe(4);
  expect(jsonLine(text, ['b', 2, 'd'])).toBe(6);
  expect(jsonLine(text, ['e'])).toBe(9);
});

test('a path that leads nowhere ends at the last value on its way', () => {
  expect(jsonLine('{\n"a":\n[1]}', ['a', 3, 'b'])).toBe(3);
  expect(jsonLine('{\n"a":\n[1]}', ['b'])).toBe(1);
});

test('of any document written with an indent, the planted value is on the line that names it', () => {
  const mark = 'planted here';
  fc.assert(
    fc.property(fc.json({ maxDepth: 3 }), fc.nat({ max: 5 }), (json, index) => {
      const items: unknown[] = Array.from({ length: 6 }, () => JSON.parse(json));
      items[index] = { inner: items[index], mark };
      const text = JSON.stringify({ before: items[0], items, after: null }, null, 2);
      const line = jsonLine(text, ['items', index, 'mark']);
      expect(text.split('\n')[line - 1]).toContain(`"mark": "${mark}"`);
    }),
  );
});
