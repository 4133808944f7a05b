import { describe, expect, it } from 'vitest';
import { InputError } from './InputError.ts';
import { operations } from './operations.ts';
import { runOperation } from './runOperation.ts';

async function run(name: string, document: unknown): Promise<Record<string, unknown>> {
  const operation = operations.find((known) => known.name === name);
  if (!operation) throw new Error(`no operation ${name}`);
  const output = await runOperation(operation, document);
  return operation.outputSchema.parse(output) as Record<string, unknown>;
}

/** 10 m/s2 and 0.6 m of range keep the sums below short. */
const straight = { bar_kg: 100, bottom_m: 0.4, lockout_m: 1, gravity_mps2: 10 };
/** Pushes the same force at every height, speed and time. */
const constant = {
  strength_N: 1500,
  slope: 0,
  curvature: 0,
  maxSpeed_mps: 1e9,
  rebound: 0,
  reboundTime_s: 1,
  strainAfter_s: 1e9,
  strainTime_s: 1,
  movedBody_kg: 0,
};
/** Two readings, so a line between them: 100 N at 1.5 m, 200 N at 2 m. */
const lineBand = {
  restLength_m: 1,
  readings: [
    { length_m: 1.5, force_N: 100 },
    { length_m: 2, force_N: 200 },
  ],
};
const below = { x_m: 0, y_m: 0, z_m: 0 };

describe('band-curve', () => {
  it('meets a neo-Hookean loop between its readings', async () => {
    // Tension of a neo-Hookean loop: F = G (lambda - lambda^-2), here G = 150 N and 1 m at rest.
    // 1.5: 150 (1.5 - 1/2.25) = 158.333; 2: 150 (2 - 1/4) = 262.5; 2.5: 150 (2.5 - 1/6.25) = 351
    // 1.75: 150 (1.75 - 1/3.0625) = 213.520; 2.25: 150 (2.25 - 1/5.0625) = 307.870
    const lengths = [1.25, 1.5, 2, 2.5, 2.75];
    const output = await run('band-curve', {
      restLength_m: 1,
      readings: lengths.map((length_m) => ({ length_m, force_N: 150 * (length_m - length_m ** -2) })),
      at_m: [0.9, 1.75, 2.25, 3],
    });
    const forces = output.forces as {
      force_N: number;
      low95_N: number;
      high95_N: number;
      extrapolated: boolean;
    }[];
    expect(forces.map(({ extrapolated }) => extrapolated)).toEqual([false, false, false, true]);
    expect(forces[0]?.force_N).toBe(0);
    expect(forces[1]?.force_N).toBeCloseTo(213.52, 0);
    expect(forces[2]?.force_N).toBeCloseTo(307.87, 0);
    for (const { force_N, low95_N, high95_N } of forces.slice(1)) {
      expect(low95_N).toBeLessThan(force_N);
      expect(high95_N).toBeGreaterThan(force_N);
    }
    expect(output.measuredTo_m).toBe(2.75);
  });

  it('questions readings whose force falls with the length, and answers all the same', async () => {
    const readings = [
      { length_m: 1.5, force_N: 200 },
      { length_m: 2, force_N: 100 },
    ];
    const { warnings, forces } = await run('band-curve', { restLength_m: 1, readings, at_m: [1.5] });
    // 100 N are 50 % less than 200 N.
    expect(warnings).toEqual([
      { code: 'fallingForce', message: expect.stringMatching(/50 % less .* 2\.00 times .* 1\.50 times/) },
    ]);
    expect(forces).toHaveLength(1);
    expect(await run('band-curve', { ...lineBand, at_m: [1.5] })).not.toHaveProperty('warnings');
  });

  it('says prior, measured to nowhere, for a band known by its width alone', async () => {
    const output = await run('band-curve', { restLength_m: 1, readings: [], width_mm: 30, at_m: [1.5] });
    expect(output).toMatchObject({ model: 'prior', measuredTo_m: 1, forces: [{ extrapolated: true }] });
  });
});

describe('load-curve', () => {
  it('questions readings whose force falls with the length by their field, and answers all the same', async () => {
    const fallen = {
      ...lineBand,
      readings: lineBand.readings.map((r) => ({ ...r, force_N: 300 - r.force_N })),
    };
    const bands = [lineBand, { ...fallen, readings: [...fallen.readings].reverse() }].map((band) => ({
      ...band,
      hookup: 'single',
      anchor: below,
      count: 1,
    }));
    const output = await run('load-curve', { load: { ...straight, bands }, points: 2 });
    // 100 N at 2 m are 50 % less than 200 N at 1.5 m.
    expect(output.warnings).toEqual([
      {
        code: 'fallingForce',
        message: expect.stringMatching(/50 % less/),
        field: 'load.bands[1].readings',
      },
    ]);
    expect(output.points).toHaveLength(2);
  });

  it('is mass times gravity with bar alone', async () => {
    const output = await run('load-curve', { load: straight, points: 3 });
    // 100 kg x 10 m/s2 over 0.6 m
    expect(output).toMatchObject({ bottom_N: 1000, lockout_N: 1000, slackBelow_m: null });
    expect(output.mean_N).toBeCloseTo(1000, 9);
    expect(output.work_J).toBeCloseTo(600, 9);
    expect(output.points).toHaveLength(3);
  });

  it('takes standard gravity where none is given', async () => {
    const { gravity_mps2: _, ...load } = straight;
    // 9.80665 m/s2: CGPM 1901
    expect((await run('load-curve', { load, points: 2 })).bottom_N).toBeCloseTo(980.665, 9);
  });

  it.each([
    // one loop from floor to bar: 100 N at 1.5 m, 200 N at 2 m
    { hookup: 'single', bottom_m: 1.5, lockout_m: 2, bottom_N: 100, lockout_N: 200 },
    // two folds, each as stretched as a loop of twice the path: 2 x 100 N at 0.75 m, 2 x 200 N at 1 m
    { hookup: 'doubled', bottom_m: 0.75, lockout_m: 1, bottom_N: 200, lockout_N: 400 },
  ])('adds both bands of a $hookup pair at the heights they hang at', async (expected) => {
    const { hookup, bottom_m, lockout_m } = expected;
    const bands = [{ ...lineBand, hookup, anchor: below, count: 2 }];
    const output = await run('load-curve', {
      load: { ...straight, bar_kg: 0, bands, bottom_m, lockout_m },
      points: 2,
    });
    expect(output.bottom_N).toBeCloseTo(2 * expected.bottom_N, 6);
    expect(output.lockout_N).toBeCloseTo(2 * expected.lockout_N, 6);
    // linear between: the mean is halfway
    expect(output.mean_N).toBeCloseTo(expected.bottom_N + expected.lockout_N, 6);
  });

  it('splits a slanted pull 3-4-5 into down and forward', async () => {
    // anchor 0.9 m in front, bar 1.2 m up: 1.5 m of path carry 100 N; 100 x 1.2/1.5 down, 100 x 0.9/1.5 forward
    const bands = [{ ...lineBand, hookup: 'single', anchor: { ...below, x_m: 0.9 }, count: 1 }];
    const load = { ...straight, bar_kg: 0, bands, bottom_m: 1.2, lockout_m: 1.4 };
    const [first] = (await run('load-curve', { load, points: 2 })).points as {
      band_N: number;
      foreAft_N: number;
    }[];
    expect(first?.band_N).toBeCloseTo(80, 6);
    expect(first?.foreAft_N).toBeCloseTo(60, 6);
  });

  it('lifts the chain that hangs, and no more of it', async () => {
    // two chains of 2 kg/m and 0.8 m: 0.4 m each off the floor at 0.4 m (16 N), all 0.8 m at 1 m (32 N)
    const chains = [{ massPerMetre_kg: 2, length_m: 0.8, attachBelowBar_m: 0, count: 2 }];
    const output = await run('load-curve', { load: { ...straight, bar_kg: 0, chains }, points: 2 });
    expect(output.bottom_N).toBeCloseTo(16, 9);
    expect(output.lockout_N).toBeCloseTo(32, 9);
  });

  it('runs straight between and beyond two scale readings, in whatever order they come', async () => {
    // 400 N/m for each of two: 100 N at 0.5 m gives 60 N at 0.4 m, 300 N at 1 m
    const verticalAt = [
      { z_m: 1, force_N: 300 },
      { z_m: 0.5, force_N: 100 },
    ];
    const load = { ...straight, bar_kg: 0, hungBands: [{ verticalAt, count: 2 }] };
    const output = await run('load-curve', { load, points: 2 });
    expect(output.bottom_N).toBeCloseTo(120, 9);
    expect(output.lockout_N).toBeCloseTo(600, 9);
    expect(output.work_J).toBeCloseTo(216, 9);
  });
});

describe('rep', () => {
  it('is a parabola under a constant force', async () => {
    // a = 1500/100 - 10 = 5 m/s2; t = sqrt(2 x 0.6 / 5), v = sqrt(2 x 5 x 0.6)
    const output = await run('rep', { load: straight, capability: constant });
    expect(output).toMatchObject({ made: true, stoppedAt: null });
    expect(output.duration_s).toBeCloseTo(Math.sqrt(0.24), 6);
    expect(output.peakSpeed_mps).toBeCloseTo(Math.sqrt(6), 6);
    expect(output.meanSpeed_mps).toBeCloseTo(0.6 / Math.sqrt(0.24), 6);
    expect(output).not.toHaveProperty('samples');
  });

  it('swings against a linear spring, and stops where the swing turns', async () => {
    // 1000 N/m from 0 at the bottom: y = (F/k)(1 - cos w t), w = sqrt(k/m) = sqrt(10)
    const spring = {
      verticalAt: [
        { z_m: 0.4, force_N: 0 },
        { z_m: 1, force_N: 600 },
      ],
      count: 1,
    };
    const load = { ...straight, hungBands: [spring] };
    // F = 500 N: 0.6 m at cos w t = -0.2; fastest (F/k) w
    const made = await run('rep', { load, capability: constant, samples: 5 });
    expect(made.duration_s).toBeCloseTo(Math.acos(-0.2) / Math.sqrt(10), 6);
    expect(made.peakSpeed_mps).toBeCloseTo(0.5 * Math.sqrt(10), 6);
    expect(made.samples).toHaveLength(5);
    // F = 200 N: turns at 2 F/k = 0.4 m of 0.6 m after half a swing
    const missed = await run('rep', { load, capability: { ...constant, strength_N: 1200 } });
    expect(missed.made).toBe(false);
    const stop = missed.stoppedAt as { s: number; t_s: number };
    expect(stop.s).toBeCloseTo(2 / 3, 5);
    expect(stop.t_s).toBeCloseTo(Math.PI / Math.sqrt(10), 5);
  });
});

describe('max-bar and fit-strength', () => {
  it('find the bar that a constant force just carries, and the force back', async () => {
    // 1500 N carry 150 kg at 10 m/s2, of which 20 kg are body
    const capability = { ...constant, movedBody_kg: 20 };
    const output = await run('max-bar', { load: straight, capability });
    expect(output.bar_kg as number).toBeGreaterThan(129.98);
    expect(output.bar_kg as number).toBeLessThan(130.01);
    const load = { ...straight, bar_kg: 130 };
    expect((await run('fit-strength', { load, capability })).strength_N).toBeCloseTo(1500, 1);
  });

  it('ignore what they look for', async () => {
    const { bar_kg: _, ...bare } = straight;
    expect(await run('max-bar', { load: bare, capability: constant })).toEqual(
      await run('max-bar', { load: { ...straight, bar_kg: -7 }, capability: constant }),
    );
    const { strength_N: __, ...weak } = constant;
    expect(await run('fit-strength', { load: straight, capability: weak })).toEqual(
      await run('fit-strength', { load: straight, capability: { ...constant, strength_N: 0 } }),
    );
  });
});

describe('population', () => {
  it('lets others fit a strength to a best and simulate: a paused bench press at 70 % runs at 0.62 m/s, to 0.1', async () => {
    // Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31:347, table (from memory).
    const range = { from_m: 0.7, to_m: 1.1 };
    const { capability } = await run('population', {
      lift: 'bench',
      start: 'paused',
      bodyMass_kg: 85,
      range,
    });
    const load = { bar_kg: 100, bottom_m: 0.7, lockout_m: 1.1 };
    const { strength_N } = await run('fit-strength', { load, capability });
    const fitted = { ...(capability as object), strength_N };
    const rep = await run('rep', { load: { ...load, bar_kg: 70 }, capability: fitted });
    expect(Math.abs((rep.meanSpeed_mps as number) - 0.62)).toBeLessThan(0.1);
  });
});

describe('plates', () => {
  it('loads the nearest mass with the fewest discs', async () => {
    // (102.5 - 20 - 5) / 2 = 38.75 kg a side: 20 + 15 + 2.5 + 1.25
    const discs = [25, 20, 15, 10, 5, 2.5, 1.25].map((mass_kg) => ({ mass_kg, pairs: 1 }));
    const output = await run('plates', { target_kg: 102.5, bar_kg: 20, collars_kg: 5, discs });
    expect(output.loaded_kg).toBeCloseTo(102.5, 9);
    // 25 + 10 + 2.5 + 1.25 has as many discs and the heavier inside
    expect(output.perSide).toEqual([25, 10, 2.5, 1.25].map((mass_kg) => ({ mass_kg, count: 1 })));
  });
});

describe('a document that cannot be answered', () => {
  const rigged = { ...lineBand, hookup: 'single', anchor: below, count: 2 };
  const withBand = (band: object) => ({ load: { ...straight, bands: [{ ...rigged, ...band }] }, points: 2 });
  const reading = (fields: object) =>
    withBand({ readings: [lineBand.readings[0], { length_m: 2, force_N: 200, ...fields }] });
  const hung = (heights: number[]) => ({
    load: { ...straight, hungBands: [{ verticalAt: heights.map((z_m) => ({ z_m, force_N: 1 })), count: 1 }] },
    points: 2,
  });

  it.each([
    ['load-curve', reading({ force_N: -3 }), 'load.bands[0].readings[1].force_N', '-3', 'more than 0'],
    ['load-curve', reading({ force_N: 'much' }), 'load.bands[0].readings[1].force_N', '"much"', 'a number'],
    ['load-curve', reading({ length_m: 1 }), 'load.bands[0].readings[1].length_m', '1', 'restLength_m (1)'],
    [
      'load-curve',
      reading({ direction: 'up' }),
      'load.bands[0].readings[1].direction',
      'up',
      'loading or unloading',
    ],
    ['load-curve', withBand({ count: 0 }), 'load.bands[0].count', '0', 'at least 1'],
    ['load-curve', withBand({ count: 1.5 }), 'load.bands[0].count', '1.5', 'whole number'],
    ['load-curve', withBand({ colour: 'x' }), 'load.bands[0].colour', 'colour', 'restLength_m, readings'],
    ['load-curve', withBand({ hookup: 'choked' }), 'load.bands[0].spent_m', 'missing', 'restLength_m (1)'],
    ['load-curve', withBand({ hookup: 'choked', spent_m: 1 }), 'load.bands[0].spent_m', '1', 'less than'],
    ['load-curve', withBand({ readings: [] }), 'load.bands[0].width_mm', 'missing', 'two lengths'],
    [
      'load-curve',
      { load: { ...straight, lockout_m: 0.4 }, points: 2 },
      'load.lockout_m',
      '0.4',
      'above bottom_m',
    ],
    ['load-curve', { load: straight, points: 1 }, 'points', '1', 'at least 2'],
    ['load-curve', { load: straight }, 'points', 'missing', 'number'],
    ['load-curve', hung([0.5]), 'load.hungBands[0].verticalAt', '', 'at least 2'],
    ['load-curve', hung([0.5, 0.5]), 'load.hungBands[0].verticalAt[1].z_m', '0.5', 'differ'],
    ['rep', { load: straight, capability: constant, samples: 1 }, 'samples', '1', 'at least 2'],
    ['rep', { load: { ...straight, bar_kg: 0 }, capability: constant }, 'load.bar_kg', '0', 'movedBody_kg'],
    [
      'rep',
      { load: straight, capability: { ...constant, range: { from_m: 1, to_m: 1 } } },
      'capability.range.to_m',
      '1',
      'above from_m',
    ],
    [
      'max-bar',
      { load: straight, capability: { ...constant, strength_N: 1 } },
      'load',
      'too heavy',
      'not even an empty bar',
    ],
    [
      'plates',
      { target_kg: 100, bar_kg: 20, collars_kg: 0, discs: [{ mass_kg: 20, pairs: -1 }] },
      'discs[0].pairs',
      '-1',
      'at least 0',
    ],
    ['plates', [], '', '[]', 'an object'],
  ])('%s names field, value and what is allowed: %#', async (name, document, field, value, allowed) => {
    let fault: unknown;
    try {
      await run(name, document);
    } catch (error) {
      fault = error;
    }
    expect(fault).toBeInstanceOf(InputError);
    expect((fault as InputError).field).toBe(field);
    expect((fault as InputError).message).toContain(value);
    expect((fault as InputError).message).toContain(allowed);
  });

  it('is refused by every operation for a field that it does not know', async () => {
    for (const operation of operations) {
      await expect(runOperation(operation, { sparkle: 1 }), operation.name).rejects.toThrow(InputError);
    }
  });
});
