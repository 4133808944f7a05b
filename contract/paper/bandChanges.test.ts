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
  expect(bandChanges(hang(['22-A', 'low']), hang(['22-A', 'rear']))).toBe('22-A re-hung');
  expect(bandChanges(hang(), hang())).toBe('');
});

const chained = (...kinds: [string, number][]) => ({
  bands: [],
  chains: kinds.map(([label, pairs]) => ({ chainPairId: label, label, pairs })),
});

test('chains are said beside the bands, and another number of pairs of them is re-hung', () => {
  expect(bandChanges(chained(['13 mm', 1]), chained(['13 mm', 2]))).toBe('chain 13 mm re-hung');
  expect(bandChanges(chained(['13 mm', 1]), chained(['13 mm', 1]))).toBe('same bands');
  expect(bandChanges(chained(['13 mm', 1]), chained(['16 mm', 1]))).toBe('chain 13 mm off, chain 16 mm on');
  expect(bandChanges(hang(), hang(['22-A', 'low'], ['13-A', 'low']))).toBe('22-A, 13-A on');
});

test('whoever lifts first hangs what nobody hung before, and hears of later rounds only where something changes', () => {
  expect(firstHanging(hang(['22-A', 'low'], ['13-A', 'low']), 'same bands')).toBe('hang 22-A and 13-A first');
  expect(firstHanging(hang(['22-A', 'low']), '64-A off')).toBe('hang 22-A first; from round 2: 64-A off');
  expect(firstHanging(hang(), '')).toBe('');
});
