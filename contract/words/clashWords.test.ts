import { expect, test } from 'vitest';
import { clashWords } from './clashWords.ts';

const names: Record<string, string> = {
  bench: 'Bench, speed',
  'lifter-1': 'Ida Quill',
  'rack-2': 'By the door',
};
const called = (id: string) => names[id] ?? null;

test.each([
  [
    { path: ['barMassKg'], theirs: 15, yours: null },
    { field: 'bar mass (kg)', theirs: '15', yours: 'nothing' },
  ],
  [
    { path: ['groups', 'bench', 'places', 'lifter-1', 'rackId'], theirs: 'rack-2', yours: 'rack-3' },
    { field: 'Bench, speed, Ida Quill, rack', theirs: 'By the door', yours: 'rack-3' },
  ],
  [
    { path: ['groups', 'bench', 'places', 'lifter-1'], yours: { note: '' } },
    { field: 'Bench, speed, Ida Quill', theirs: 'taken away', yours: 'changed otherwise' },
  ],
  [
    { path: ['groups', 'bench', 'places', 'order'], theirs: ['lifter-1', 'x'], yours: [] },
    { field: 'Bench, speed, order', theirs: 'Ida Quill, x', yours: 'nothing' },
  ],
  [
    { path: ['weighed'], theirs: true, yours: false },
    { field: 'weighed', theirs: 'yes', yours: 'no' },
  ],
  [
    { path: ['retiredOn'], theirs: '2026-11-25', yours: '' },
    { field: 'retired on', theirs: '25 Nov 2026', yours: 'nothing' },
  ],
] as const)('%j is told in words', (clash, words) => {
  expect(clashWords({ ...clash, path: [...clash.path] }, called)).toEqual(words);
});
