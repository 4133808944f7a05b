import { expect, test } from 'vitest';
import { bandChanges, firstHanging } from './bandChanges.ts';

const hang = (...pairs: [string, string][]) => ({
  bands: pairs.map(([pair, hookup]) => ({
    bandPairId: pair,
    hookupId: hookup,
    label: pair,
    hookupWords: hookup,
  })),
  chains: [],
});

test('what to take off and what to hang is said by label', () => {
  expect(bandChanges(hang(['22-A', 'low'], ['13-A', 'low']), hang(['13-A', 'low'], ['64-A', 'low']))).toBe(
    '22-A off, 64-A on',
  );
});

test('the same bands hung alike are no change, hung otherwise they are', () => {
  expect(bandChanges(hang(['22-A', 'low']), hang(['22-A', 'low']))).toBe('same bands');
  expect(bandChanges(hang(['22-A', 'low']), hang(['22-A', 'rear']))).toBe('22-A hung anew');
  expect(bandChanges(hang(), hang())).toBe('');
});

test('whoever lifts first hangs what nobody hung before, and hears of later rounds only where something changes', () => {
  expect(firstHanging(hang(['22-A', 'low'], ['13-A', 'low']), 'same bands')).toBe('hang 22-A and 13-A first');
  expect(firstHanging(hang(['22-A', 'low']), '64-A off')).toBe('hang 22-A first; from round 2: 64-A off');
  expect(firstHanging(hang(), '')).toBe('');
});
