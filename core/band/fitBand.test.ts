import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BandReading, Direction } from './BandCurve.ts';
import type { BandForm } from './BandForm.ts';
import { bandForm } from './bandForms.ts';
import { bandTension, bandTensionInterval } from './bandTension.ts';
import { fitBand } from './fitBand.ts';

const REST_M = 1.04;

function readingsOf(
  force: (lambda: number) => number,
  stretches: readonly number[],
  direction: Direction = 'loading',
): BandReading[] {
  return stretches.map((lambda) => ({ lengthM: lambda * REST_M, forceN: force(lambda), direction }));
}

/** Loops such as a gym owns: some 30 to 900 N at twice their length, every form. */
const loop: fc.Arbitrary<{ name: BandForm['name']; parameters: number[] }> = fc
  .record({
    level: fc.double({ min: 50, max: 1000, noNaN: true }),
    a: fc.double({ min: 0, max: 1, noNaN: true }),
    b: fc.double({ min: 0, max: 1, noNaN: true }),
    name: fc.constantFrom<BandForm['name']>('neoHookean', 'mooneyRivlin', 'ogden1', 'yeoh', 'ogden2'),
  })
  .map(({ level, a, b, name }) => {
    const parameters = {
      neoHookean: [level / 2],
      mooneyRivlin: [level / 4, (level / 4) * a],
      ogden1: [level, 1.1 + a],
      yeoh: [level / 4, -level * 0.01 * a, level * 0.0008 * (0.5 + b)],
      ogden2: [level * 0.8, 1.2 + 0.4 * a, -level * 0.05 * b, -2 - a],
    }[name];
    return { name, parameters };
  });

const stretches = fc
  .uniqueArray(fc.integer({ min: 0, max: 24 }), { minLength: 5, maxLength: 8 })
  .filter((steps) => Math.max(...steps) - Math.min(...steps) >= 14)
  .map((steps) => steps.map((step) => 1.1 + step * 0.05));

/** Anything that a scale may show, sound or not. */
const anyReadings = fc.array(
  fc.record({
    // Anywhere, and often at a length that was read before.
    lengthM: fc.oneof(
      fc.double({ min: REST_M * 1.01, max: REST_M * 3, noNaN: true }),
      fc.constantFrom(1.3, 1.7, 2.1),
    ),
    forceN: fc.double({ min: 1, max: 2000, noNaN: true }),
    direction: fc.constantFrom<Direction>('loading', 'unloading'),
  }),
  { maxLength: 8 },
);

describe('fitBand', () => {
  it('gives back the curve that made the readings, whatever its form', () => {
    fc.assert(
      fc.property(loop, stretches, fc.double({ min: 0, max: 1, noNaN: true }), (made, at, share) => {
        const force = bandForm(made.name).force(made.parameters);
        const { loading } = fitBand({ restLengthM: REST_M, readings: readingsOf(force, at) });
        const lambda = Math.min(...at) + share * (Math.max(...at) - Math.min(...at));
        const error = bandTension(loading, lambda * REST_M) - force(lambda);
        // Within what a scale could show: 1.5 % and 2 N.
        expect(Math.abs(error)).toBeLessThan(0.015 * force(lambda) + 2);
        expect(loading.known).toBe('measured');
      }),
      { numRuns: 200 },
    );
  });

  it('names the form and its parameters where the readings leave no doubt', () => {
    const truths: [BandForm['name'], number[]][] = [
      ['neoHookean', [200]],
      ['mooneyRivlin', [80, 40]],
      // Exact readings tell it from a neo-Hookean loop though the two differ by a sixth of what a scale errs.
      ['mooneyRivlin', [98.8, 2]],
      ['ogden1', [300, 1.4]],
      ['yeoh', [110, -3, 0.3]],
    ];
    for (const [name, parameters] of truths) {
      const readings = readingsOf(bandForm(name).force(parameters), [1.1, 1.3, 1.6, 1.9, 2.1, 2.3]);
      const { loading } = fitBand({ restLengthM: REST_M, readings });
      expect(loading.model).toBe(name);
      loading.parameters.forEach((value, k) => expect(value / parameters[k]!).toBeCloseTo(1, 5));
    }
  });

  it('pulls k times as hard where every reading is k times as hard', () => {
    fc.assert(
      fc.property(loop, stretches, fc.double({ min: 0.5, max: 3, noNaN: true }), (made, at, k) => {
        const force = bandForm(made.name).force(made.parameters);
        const once = fitBand({ restLengthM: REST_M, readings: readingsOf(force, at) }).loading;
        const more = fitBand({ restLengthM: REST_M, readings: readingsOf((x) => k * force(x), at) }).loading;
        const middleM = REST_M * 1.7;
        const expected = k * bandTension(once, middleM);
        expect(Math.abs(bandTension(more, middleM) - expected)).toBeLessThan(0.02 * expected + 2 * (1 + k));
      }),
    );
  });

  it('does not care in which order the readings were taken', () => {
    fc.assert(
      fc.property(
        anyReadings.chain((list) =>
          fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
        ),
        ([list, shuffled]) => {
          const band = { restLengthM: REST_M, widthMm: 40 };
          expect(fitBand({ ...band, readings: shuffled })).toEqual(fitBand({ ...band, readings: list }));
        },
      ),
    );
  });

  it('never pushes, never pulls when slack, never falls as it is stretched, and keeps within its interval', () => {
    fc.assert(
      fc.property(anyReadings, fc.double({ min: 0.2, max: 2.9, noNaN: true }), (readings, lambda) => {
        const { loading, unloading } = fitBand({ restLengthM: REST_M, widthMm: 40, readings });
        for (const curve of [loading, unloading]) {
          const lengthM = lambda * REST_M;
          const { tensionN, low95N, high95N, sdN } = bandTensionInterval(curve, lengthM);
          expect(tensionN).toBe(bandTension(curve, lengthM));
          expect(tensionN).toBeGreaterThanOrEqual(0);
          if (lambda <= 1) expect([tensionN, low95N, high95N, sdN]).toEqual([0, 0, 0, 0]);
          else {
            expect(low95N).toBeGreaterThanOrEqual(0);
            expect(low95N).toBeLessThanOrEqual(tensionN);
            expect(high95N).toBeGreaterThan(tensionN);
            expect(bandTension(curve, lengthM * 1.01)).toBeGreaterThanOrEqual(tensionN);
          }
          expect(bandTension(curve, REST_M)).toBe(0);
          expect(bandTension(curve, REST_M * (1 + 1e-9))).toBeLessThan(1e-3);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('needs one length more than parameters, so three lengths never give a form of three', () => {
    fc.assert(
      fc.property(loop, (made) => {
        const readings = readingsOf(bandForm(made.name).force(made.parameters), [1.2, 1.7, 2.2, 2.2]);
        expect(fitBand({ restLengthM: REST_M, readings }).loading.parameters.length).toBeLessThan(3);
      }),
    );
  });

  it('knows a fitted stiffness as weighted least squares does, readings scattering by what they show and what is assumed', () => {
    const stretches = [1.2, 1.4, 1.6, 1.8, 2];
    const readings = stretches.map((lambda, i): BandReading => {
      const forceN = 150 * (lambda - lambda ** -2) * (1 + 0.03 * (-1) ** i);
      return { lengthM: lambda * REST_M, forceN, direction: 'loading' };
    });
    const { loading } = fitBand({ restLengthM: REST_M, readings });
    // mu = sum(w x F) / sum(w x^2), its variance 1 / sum(w x^2), with x = lambda - lambda^-2 and w = 1 / ((0.015 F)^2 + 2^2); beside
    // it s^2 = (2 + chi^2) / (2 + n - 1).
    const rows = readings.map(({ lengthM, forceN }) => ({
      x: lengthM / REST_M - (lengthM / REST_M) ** -2,
      forceN,
      w: 1 / ((0.015 * forceN) ** 2 + 4),
    }));
    const sum = (of: (row: (typeof rows)[number]) => number) =>
      rows.reduce((total, row) => total + of(row), 0);
    const muN = sum(({ w, x, forceN }) => w * x * forceN) / sum(({ w, x }) => w * x * x);
    const chiSquare = sum(({ w, x, forceN }) => w * (forceN - muN * x) ** 2);
    expect([loading.model, loading.degreesOfFreedom]).toEqual(['neoHookean', 6]);
    expect(loading.parameters[0]).toBeCloseTo(muN, 6);
    expect(loading.residualScale ** 2).toBeCloseTo((2 + chiSquare) / 6, 6);
    const variance = (2 + chiSquare) / 6 / sum(({ w, x }) => w * x * x);
    expect(loading.covariance[0]![0]! / variance).toBeCloseTo(1, 4);
  });

  it('says beyond which length nothing was read', () => {
    const readings = readingsOf(bandForm('neoHookean').force([200]), [1.2, 1.5, 1.8, 2.1]);
    const { loading } = fitBand({ restLengthM: REST_M, readings });
    expect(loading.measuredToM).toBe(2.1 * REST_M);
    expect(bandTensionInterval(loading, 2.1 * REST_M).extrapolated).toBe(false);
    expect(bandTensionInterval(loading, 2.11 * REST_M).extrapolated).toBe(true);
  });

  it('fits loading and unloading apart, and lends the one branch that was measured to the other', () => {
    const up = readingsOf(bandForm('neoHookean').force([200]), [1.2, 1.5, 1.8, 2.1]);
    const down = readingsOf(bandForm('neoHookean').force([180]), [1.2, 1.5, 1.8, 2.1], 'unloading');
    const both = fitBand({ restLengthM: REST_M, readings: [...up, ...down] });
    expect(both.loading.parameters[0]).toBeCloseTo(200, 6);
    expect(both.unloading.parameters[0]).toBeCloseTo(180, 6);
    const lent = fitBand({ restLengthM: REST_M, readings: [...up, down[0]!] });
    expect(lent.unloading.direction).toBe('loading');
    expect(lent.unloading).toEqual(lent.loading);
    const other = fitBand({ restLengthM: REST_M, readings: down });
    expect(other.loading.direction).toBe('unloading');
  });

  it('falls back on the width with one reading, which narrows nothing', () => {
    const none = fitBand({ restLengthM: REST_M, widthMm: 40, readings: [] });
    const one = fitBand({ restLengthM: REST_M, widthMm: 40, readings: readingsOf(() => 150, [1.8]) });
    const twice = fitBand({ restLengthM: REST_M, widthMm: 40, readings: readingsOf(() => 150, [1.8, 1.8]) });
    expect(one).toEqual(none);
    expect(twice).toEqual(none);
    expect(none.loading.known).toBe('notMeasured');
    // Kawabata 1981 as Yeoh's form (docs/model.md, "band") at twice its length, J = 2, on 2 x 40 x 4.5 mm2.
    const stressPa = 2 * (2 - 1 / 4) * (0.19096 - 2 * 0.0052289 * 2 + 3 * 0.00022074 * 4) * 1e6;
    expect(bandTension(none.loading, 2 * REST_M)).toBeCloseTo(stressPa * 360e-6, 6);
    expect(() => fitBand({ restLengthM: REST_M, readings: [] })).toThrow(/needs its width in mm/);
  });

  it('refuses a reading that pulls at or below the rest length, by its number', () => {
    const readings = [
      ...readingsOf(() => 100, [1.5]),
      { lengthM: 1, forceN: 20, direction: 'loading' as const },
    ];
    expect(() => fitBand({ restLengthM: REST_M, readings })).toThrow(
      /^Reading 2: .* 1 m .* rest length of 1\.04 m/,
    );
  });

  it('takes a slack look at the scale, 0 N at the rest length, as no news', () => {
    const readings = readingsOf(bandForm('neoHookean').force([200]), [1, 1.2, 1.5, 1.8]);
    expect(fitBand({ restLengthM: REST_M, readings })).toEqual(
      fitBand({ restLengthM: REST_M, readings: readings.slice(1) }),
    );
  });

  it('takes readings a tenth of a millimetre apart for many lengths, not for one', () => {
    const readings = Array.from({ length: 2000 }, (_, i) => {
      const lengthM = 1.2 + i * 1e-4;
      return { lengthM, forceN: 150 * (lengthM - lengthM ** -2), direction: 'loading' as const };
    });
    // A neo-Hookean loop of 150 N: 150 (1.3 - 1 / 1.69) = 106.24 N at 1.3 m.
    expect(bandTension(fitBand({ restLengthM: 1, readings }).loading, 1.3)).toBeCloseTo(106.24, 1);
  });
});
