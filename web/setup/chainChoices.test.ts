import { describe, expect, test } from 'vitest';
import { chainChoices, freeChains } from './chainChoices.ts';

const kind = (id: string, label: string, pairs: number) => ({
  id,
  label,
  massPerMetreKg: 3.8,
  lengthM: 1.8,
  attachBelowBarM: 0.25,
  pairs,
  note: '',
});
const club = { chainPair: [kind('thin', '10 mm', 2), kind('thick', '13 mm', 1), kind('lent', '16 mm', 0)] };

describe('chains on a bar', () => {
  test('are offered a kind once, and only as many pairs as the club has', () => {
    const hung = [{ chainPairId: 'thin', pairs: 1 }];
    expect(freeChains(club, hung).map(({ id }) => id)).toEqual(['thick']);
    expect(chainChoices(club, hung, hung[0]!).map(({ word }) => word)).toEqual([
      'a pair of 10 mm',
      '2 pairs of 10 mm',
      'a pair of 13 mm',
    ]);
  });

  test('of two kinds each keeps its own row: neither can become the other', () => {
    const hung = [
      { chainPairId: 'thin', pairs: 2 },
      { chainPairId: 'thick', pairs: 1 },
    ];
    expect(freeChains(club, hung)).toEqual([]);
    expect(chainChoices(club, hung, hung[1]!).map(({ chain }) => chain)).toEqual([hung[1]]);
  });

  test('that hung once are still named when the club has fewer, or none', () => {
    const more = { chainPairId: 'thick', pairs: 3 };
    expect(chainChoices(club, [more], more)[0]?.word).toBe('3 pairs of 13 mm');
    const gone = { chainPairId: 'sold', pairs: 1 };
    expect(chainChoices(club, [gone], gone)[0]?.word).toBe('a pair of chains no longer kept');
  });
});
