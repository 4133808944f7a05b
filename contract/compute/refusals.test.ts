import { describe, expect, it } from 'vitest';
import { InputError } from './InputError.ts';
import { operations } from './operations.ts';
import { runOperation } from './runOperation.ts';

const travel = { bottom_m: 0.7, lockout_m: 1.3, gravity_mps2: 10 };
const load = { bar_kg: 100, ...travel };
/** Strength the same at every height, and a tenth more for an instant at the bottom. */
const capability = {
  strength_N: 4000,
  slope: 0,
  curvature: 0,
  maxSpeed_mps: 1.6,
  rebound: 0.1,
  reboundTime_s: 0.7,
  strainAfter_s: 2.5,
  strainTime_s: 6,
  movedBody_kg: 80,
};
const gear = { bar_kg: 20, collars_kg: 0, discs: [] };
const task = { ...travel, reference_kg: 200, aim: { by: 'speed', from_mps: 0.4, to_mps: 0.5 } };

const documents = (changed: object) => {
  const weak = { ...capability, ...changed };
  return [
    ['rep', { load, capability: weak }, ''],
    ['max-bar', { load, capability: weak }, ''],
    ['prescribe', { gear, ...task, capability: weak }, ''],
    [
      'allocate',
      {
        racks: [{ rackId: 'r', gear }],
        lifters: [{ lifterId: 'l', rackId: 'r', ...task, capability: weak }],
      },
      'lifters[0].',
    ],
  ] as const;
};

async function refusal(name: string, document: unknown): Promise<{ field: string; message: string }> {
  const thrown: unknown = await Promise.resolve(runOperation(named(name), document)).catch((error) => error);
  expect(thrown).toBeInstanceOf(InputError);
  return (thrown as InputError).body.error;
}

describe('a lifter weaker than the own body', () => {
  // 80 kg of body at 10 m/s2 weigh 800 N; with a rebound of a tenth, 800 / 1.1 = 727.3 N push it off the bottom.
  it.each(documents({ strength_N: 700 }))(
    'is refused by %s, with the strength that is needed',
    async (name, document, at) => {
      const { field, message } = await refusal(name, document);
      expect(field).toBe(`${at}capability.strength_N`);
      expect(message).toContain('is 700; it must be more than');
      expect(message).toContain(at === '' && !('gear' in document) ? '727.3 N' : '800.0 N');
    },
  );

  it('still makes a rep that the rebound carries, or misses it', async () => {
    const [rep] = documents({ strength_N: 750 });
    expect(await runOperation(named('rep'), rep[1])).toMatchObject({ made: false });
  });
});

describe('a magnitude that no gym has', () => {
  it.each([
    ...documents({ strength_N: 1e308 }).map(([name, document, at]) => [
      name,
      document,
      `${at}capability.strength_N`,
    ]),
    ...documents({ slope: -1e308 }).map(([name, document, at]) => [name, document, `${at}capability.slope`]),
    ...[
      [{ weight: 1e300 }, {}, 'lifters[0].weight'],
      [{}, { bandChange_s: 1e300 }, 'bandChange_s'],
      [{}, { timeLimit_s: 1e300 }, 'timeLimit_s'],
    ].map(([lifter, whole, field]) => [
      'allocate',
      {
        racks: [{ rackId: 'r', gear }],
        lifters: [{ lifterId: 'l', rackId: 'r', ...task, capability, ...(lifter as object) }],
        ...(whole as object),
      },
      field,
    ]),
    ['prescribe', { gear, ...task, capability, safeStretchRatio: 1e300 }, 'safeStretchRatio'],
    ['prescribe', { gear, ...task, capability, pairMismatchShare: 1e300 }, 'pairMismatchShare'],
    ['rep', { load: { ...load, bar_kg: 1e300 }, capability }, 'load.bar_kg'],
    ['rep', { load: { ...load, lockout_m: 1e300 }, capability }, 'load.lockout_m'],
    ['load-curve', { load: { ...load, gravity_mps2: 1e300 }, points: 3 }, 'load.gravity_mps2'],
    ['band-curve', { restLength_m: 1, width_mm: 1e300, at_m: [1] }, 'width_mm'],
    ['band-curve', { restLength_m: 1, width_mm: 30, at_m: [1e300] }, 'at_m[0]'],
    ['plates', { target_kg: 100, ...gear, bar_kg: 1e300 }, 'bar_kg'],
  ] as [string, unknown, string][])('is refused by %s, by its name', async (name, document, field) => {
    const refused = await refusal(name, document);
    expect(refused.field).toBe(field);
    expect(refused.message).toMatch(/^[^.]*(\.[^.\s][^.]*)*; it must be at (most|least) -?\d+\.$/);
  });
});

it('a range so short that nothing can be said of it ends in a refusal, not in a search without an end', async () => {
  const short = { ...capability, slope: -9.8, range: { from_m: 0, to_m: 1e-321 } };
  const { field } = await refusal('fit-strength', { load, capability: short });
  expect(field).toBe('load');
});

function named(name: string) {
  return operations.find((known) => known.name === name)!;
}
