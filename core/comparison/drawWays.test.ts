import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawWays } from './drawWays.ts';
import { type Alike, pairAlike } from './pairAlike.ts';

const trait = fc.option(fc.double({ min: -3, max: 3, noNaN: true }));
const crews = fc.uniqueArray(
  fc.record({
    lifterId: fc.string({ minLength: 1, maxLength: 4 }),
    block: fc.constantFrom('women raw', 'men raw', 'men equipped'),
    traits: fc.tuple(trait, trait, trait),
  }),
  { selector: ({ lifterId }) => lifterId, maxLength: 14 },
);
const seeds = fc.nat();
const draw = (crew: readonly Alike[], seed: number) => drawWays(pairAlike(crew), seed);

// A share of one half of 2000 scatters by 0.011 (binomial): four of those are allowed.
const isHalf = (value: number) => expect(Math.abs(value - 0.5)).toBeLessThan(0.045);

const twoTraits = (scale: number) =>
  [0, 1.3, 5, 9, 10.4, null].map((value, i) => ({
    lifterId: `l${i}`,
    block: 'all',
    // The second trait, in grams, would decide alone if units counted.
    traits: [value === null ? null : scale * value + 70, 1000 * (i % 2)],
  }));

describe('pairing alike lifters and drawing', () => {
  it('draws everybody once, of a pair one each way, and both ways as many, or one more', () => {
    fc.assert(
      fc.property(crews, seeds, (crew, seed) => {
        const { pairs, alone } = pairAlike(crew);
        const drawn = drawWays({ pairs, alone }, seed);
        expect([...drawn.keys()].sort()).toEqual(crew.map(({ lifterId }) => lifterId).sort());
        for (const { lifterIds } of pairs) expect(drawn.get(lifterIds[0])).not.toBe(drawn.get(lifterIds[1]));
        const second = [...drawn.values()].filter((way) => way === 1).length;
        expect(Math.abs(crew.length - 2 * second)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('pairs within a block alone, and leaves one over only of an odd block', () => {
    fc.assert(
      fc.property(crews, (crew) => {
        const blockOf = new Map(crew.map(({ lifterId, block }) => [lifterId, block]));
        const { pairs, alone } = pairAlike(crew);
        for (const { lifterIds } of pairs) expect(blockOf.get(lifterIds[0])).toBe(blockOf.get(lifterIds[1]));
        const odd = [...new Set(blockOf.values())].filter(
          (block) => crew.filter((one) => one.block === block).length % 2 === 1,
        );
        expect(new Set(alone.map((id) => blockOf.get(id)))).toEqual(new Set(odd));
        expect(alone).toHaveLength(odd.length);
      }),
    );
  });

  it('goes by the seed and not by the order in which lifters are named', () => {
    fc.assert(
      fc.property(crews, seeds, (crew, seed) => {
        expect([...draw(crew.toReversed(), seed)]).toEqual([...draw(crew, seed)]);
      }),
    );
  });

  it('leaves over whose pairing would cost most', () => {
    const crew = [1, 1.1, 9, 2, 2.1].map((value, i) => ({
      lifterId: `l${i}`,
      block: 'all',
      traits: [value, null],
    }));
    expect(pairAlike(crew)).toMatchObject({
      pairs: [{ lifterIds: ['l0', 'l1'] }, { lifterIds: ['l3', 'l4'] }],
      alone: ['l2'],
    });
  });

  it('goes by how far apart lifters are among the others, whatever the unit, and takes who is not known for the middle', () => {
    const ids = (scale: number) =>
      pairAlike(twoTraits(scale)).pairs.map(({ lifterIds }) => lifterIds.join(' '));
    const alone = twoTraits(1).map((one) => ({ ...one, traits: one.traits.slice(0, 1) }));
    expect(pairAlike(alone).pairs.map(({ lifterIds }) => lifterIds.join(' '))).toEqual([
      'l0 l1',
      'l2 l5',
      'l3 l4',
    ]);
    expect(ids(1000)).toEqual(ids(1));
    // Standard deviations of 0 and 10 are 5 each way from the middle: one apart is two.
    const two = [0, 10].map((value, i) => ({ lifterId: `l${i}`, block: 'all', traits: [value] }));
    expect(pairAlike(two).pairs[0]!.distance).toBeCloseTo(2, 12);
  });

  it('is a fair coin over neighbouring seeds, and each pair has one of its own', () => {
    const crew = Array.from({ length: 8 }, (_, i) => ({ lifterId: `l${i}`, block: 'all', traits: [i] }));
    const draws = Array.from({ length: 2000 }, (_, seed) => draw(crew, seed));
    const share = (of: (drawn: Map<string, number>, i: number) => boolean) =>
      draws.filter((drawn, i) => of(drawn, i)).length / draws.length;
    isHalf(share((drawn) => drawn.get('l0') === 1));
    isHalf(share((drawn) => drawn.get('l0') === drawn.get('l2')));
    isHalf(share((drawn, i) => i > 0 && drawn.get('l0') === draws[i - 1]!.get('l0')));
  });
});
