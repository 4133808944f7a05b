import { expect, test } from 'vitest';
import type { KindName } from './allKinds.ts';
import { fieldsOf } from './fields.ts';

// As the shapes in this folder are written.
test.each<[KindName, string, object]>([
  ['bodyMass', 'massKg', { sort: 'number', least: 20, most: 300, isWhole: false, nullable: false }],
  ['collarPair', 'pairs', { sort: 'number', least: 0, most: 50, isWhole: true }],
  ['bar', 'massKg', { least: 0, most: 100 }],
  ['bandPair', 'label', { sort: 'text', least: 1, most: 60, isDate: false }],
  ['bandPair', 'retiredOn', { isDate: true, nullable: true, optional: true }],
  ['lifter', 'note', { least: null, most: 2000, optional: true }],
  ['rack', 'barId', { nullable: true, least: 1, most: 64 }],
  ['day', 'groups', { sort: 'nested', isDate: false }],
])('of %s the field %s is known with its limits', (kind, name, known) => {
  expect(fieldsOf(kind).find((field) => field.name === name)).toMatchObject(known);
});
