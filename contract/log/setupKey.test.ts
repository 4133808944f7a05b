import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type KeyedSetup, setupKey } from './setupKey.ts';

const id = fc.constantFrom('a', 'b', 'c', 'a b', '["a"', 'a","b');
const start = fc.oneof(
  fc.record({ way: fc.constantFrom('free' as const, 'paused' as const), heightM: fc.constant(null) }),
  fc.record({
    way: fc.constantFrom('box' as const, 'pins' as const, 'boards' as const),
    heightM: fc.integer({ min: 0, max: 3000 }).map((mm) => mm / 1000),
  }),
);
const keyed: fc.Arbitrary<KeyedSetup> = fc.record({
  lift: fc.constantFrom('squat' as const, 'bench' as const, 'deadlift' as const),
  equipment: fc.constantFrom('raw' as const, 'wraps' as const, 'multi-ply' as const),
  setup: fc.record({
    start,
    bands: fc.array(fc.record({ bandPairId: id, hookupId: id }), { maxLength: 5 }),
    chains: fc.array(fc.record({ chainPairId: id, pairs: fc.integer({ min: 1, max: 3 }) }), {
      maxLength: 3,
    }),
  }),
});

test('the order in which bands and chains were written down does not matter', () => {
  fc.assert(
    fc.property(
      keyed.chain((one) =>
        fc.tuple(
          fc.constant(one),
          fc.shuffledSubarray(one.setup.bands, { minLength: one.setup.bands.length }),
          fc.shuffledSubarray(one.setup.chains, { minLength: one.setup.chains.length }),
        ),
      ),
      ([one, bands, chains]) => {
        expect(setupKey({ ...one, setup: { ...one.setup, bands, chains } })).toBe(setupKey(one));
      },
    ),
  );
});

test('a pair more, a pair fewer, another hookup, start, height, equipment or lift is another setup', () => {
  fc.assert(
    fc.property(keyed, id, id, (one, bandPairId, hookupId) => {
      const { setup } = one;
      const key = setupKey(one);
      const other = (change: Partial<KeyedSetup['setup']>) =>
        setupKey({ ...one, setup: { ...setup, ...change } });
      expect(other({ bands: [...setup.bands, { bandPairId, hookupId }] })).not.toBe(key);
      expect(other({ chains: [...setup.chains, { chainPairId: bandPairId, pairs: 1 }] })).not.toBe(key);
      const [first, ...rest] = setup.bands;
      if (first) {
        expect(other({ bands: rest })).not.toBe(key);
        if (first.hookupId !== hookupId)
          expect(other({ bands: [{ ...first, hookupId }, ...rest] })).not.toBe(key);
      }
      const { heightM } = setup.start;
      if (heightM !== null)
        expect(other({ start: { ...setup.start, heightM: heightM + 0.001 } })).not.toBe(key);
      expect(other({ start: { way: 'blocks', heightM: 0.1 } })).not.toBe(key);
      expect(setupKey({ ...one, equipment: 'single-ply' })).not.toBe(key);
      const lift = one.lift === 'bench' ? 'squat' : 'bench';
      expect(setupKey({ ...one, lift })).not.toBe(key);
    }),
  );
});

test('two setups have the same key only when nothing but order and rounding below a millimetre differs', () => {
  fc.assert(
    fc.property(keyed, keyed, (a, b) => {
      if (setupKey(a) !== setupKey(b)) return;
      expect([a.lift, a.equipment, counted(a)]).toEqual([b.lift, b.equipment, counted(b)]);
      expect(Math.abs((a.setup.start.heightM ?? 0) - (b.setup.start.heightM ?? 0))).toBeLessThan(0.001);
    }),
  );
});

test('two pairs of a chain are the same written as one line or as two', () => {
  expect(
    straightSquat([
      { chainPairId: 'a', pairs: 1 },
      { chainPairId: 'a', pairs: 1 },
    ]),
  ).toBe(straightSquat([{ chainPairId: 'a', pairs: 2 }]));
});

test('a box typed as 36 cm and one that came from inches to the same millimetre are one box', () => {
  // 14.17 in is 0.359918 m by the exact inch.
  expect(boxSquat(14.17 * 0.0254)).toBe(boxSquat(0.36));
  expect(boxSquat(0.361)).not.toBe(boxSquat(0.36));
});

/** What hangs on the bar, counted. */
function counted({ setup }: KeyedSetup) {
  const chains: Record<string, number> = {};
  for (const { chainPairId, pairs } of setup.chains) chains[chainPairId] = (chains[chainPairId] ?? 0) + pairs;
  const bands: Record<string, Record<string, number>> = {};
  for (const { bandPairId, hookupId } of setup.bands) {
    const hung = (bands[bandPairId] ??= {});
    hung[hookupId] = (hung[hookupId] ?? 0) + 1;
  }
  return { chains, bands, way: setup.start.way };
}

function straightSquat(chains: KeyedSetup['setup']['chains']): string {
  return setupKey({
    lift: 'squat',
    equipment: 'raw',
    setup: { start: { way: 'free', heightM: null }, bands: [], chains },
  });
}

function boxSquat(heightM: number): string {
  return setupKey({
    lift: 'squat',
    equipment: 'raw',
    setup: { start: { way: 'box', heightM }, bands: [], chains: [] },
  });
}
