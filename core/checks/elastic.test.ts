import { describe, expect, it } from 'vitest';
import type { BandForm } from '#core/band/BandForm.ts';
import { bandForm } from '#core/band/bandForms.ts';
import { bandPrior } from '#core/band/bandPrior.ts';
import { bandTension, bandTensionInterval } from '#core/band/bandTension.ts';
import { fitBand } from '#core/band/fitBand.ts';
import { localGravity, STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { chainMass } from '#core/rig/chainMass.ts';
import { toSi, units } from '#core/units/units.ts';
import world from './elastic.json' with { type: 'json' };
import { fitOneForm } from './fitOneForm.ts';

/** The world's figures, each with source, unit and tolerance in elastic.json. */

/** Two legs of a loop 41 mm wide and 4.5 mm thick (mm2): MPa times this is N. */
const SECTION_MM2 = 2 * 41 * 4.5;

const loaded = (rows: number[][], to: number) => rows.filter(([stretch]) => stretch! > 1 && stretch! <= to);
const rms = (values: number[]) => Math.hypot(...values) / Math.sqrt(values.length);

describe('the forms give the stress of their formulas', () => {
  const { stretch, forms } = world.exactPoints.values;
  it.each(forms)('$form', ({ form, parameters, stress }) => {
    const force = bandForm(form as BandForm['name']).force(parameters);
    stretch.forEach((lambda, i) => {
      expect(Math.abs(force(lambda) - stress[i]!)).toBeLessThan(world.exactPoints.tolerance);
    });
  });
});

describe("Ogden's 1972 constants on Treloar's 1944 data", () => {
  const { values, terms, tolerance, rmsAgainstTableMPa, rms11to41MPa, worst11to41 } =
    world.ogdenAgainstTreloar;
  const force = bandForm('ogden2').force(terms.flat());
  const misses = loaded(world.treloar1944.values, 8).map(([stretch, stress]) => ({
    stretch: stretch!,
    missMPa: force(stretch!) - stress!,
    share: force(stretch!) / stress! - 1,
  }));

  it('trace the curve worked out apart from this program', () => {
    for (const [stretch, curve] of values) expect(Math.abs(force(stretch!) - curve!)).toBeLessThan(tolerance);
  });

  it('miss the table as much as is known, and no more', () => {
    expect(rms(misses.map((m) => m.missMPa))).toBeCloseTo(rmsAgainstTableMPa, 3);
    const middle = misses.filter((m) => m.stretch > 1.1 && m.stretch < 4.1);
    expect(rms(middle.map((m) => m.missMPa))).toBeCloseTo(rms11to41MPa, 3);
    expect(Math.max(...middle.map((m) => Math.abs(m.share)))).toBeCloseTo(worst11to41, 3);
  });
});

describe('fits to rubber measured in laboratories', () => {
  it.each(Object.entries(world.fitsOfLeastRelativeError.values))(
    '%s of least relative error to Kawabata 1981',
    (name, { parameters, worst }) => {
      const form = bandForm(name as BandForm['name']);
      const points = world.kawabata1981.values;
      const fit = fitOneForm(form, points, (stress) => stress, 0.3);
      fit.parameters.forEach((value, k) => expect(value / parameters[k]! - 1).toBeCloseTo(0, 3));
      const force = form.force(fit.parameters);
      expect(Math.max(...points.map(([x, stress]) => Math.abs(force(x!) / stress! - 1)))).toBeCloseTo(
        worst,
        2,
      );
    },
  );

  it.each(Object.entries(world.fitsOfLeastErrorTo3.values))(
    '%s of least error to Treloar 1944 up to stretch 3',
    (name, parameters) => {
      const fit = fitOneForm(
        bandForm(name as BandForm['name']),
        loaded(world.treloar1944.values, 3.01),
        () => 0.015,
        0.3,
      );
      fit.parameters.forEach((value, k) => expect(value / parameters[k]! - 1).toBeCloseTo(0, 3));
    },
  );

  it('have a small-strain modulus in the range of unfilled rubber', () => {
    const [least, most] = world.smallStrainModulus.values;
    const fit = fitOneForm(bandForm('mooneyRivlin'), world.kawabata1981.values, (stress) => stress, 0.3);
    const modulus = 2 * (fit.parameters[0]! + fit.parameters[1]!);
    expect(modulus).toBeGreaterThan(least!);
    expect(modulus).toBeLessThan(most!);
  });

  const looksAt = [1.12, 1.3, 1.6, 1.9, 2.2];
  const readings = world.kawabata1981.values
    .filter(([stretch]) => looksAt.includes(stretch!))
    .map(([stretch, stress]) => ({
      lengthM: stretch!,
      forceN: stress! * SECTION_MM2,
      direction: 'loading' as const,
    }));

  it('foretell, from five looks up to stretch 2.2, every point that Kawabata measured from 1.1 to 2.8', () => {
    const { loading } = fitBand({ restLengthM: 1, readings });
    expect(readings).toHaveLength(looksAt.length);
    for (const [stretch, stress] of world.kawabata1981.values.filter(([x]) => x! >= 1.1 && x! <= 2.8)) {
      const { low95N, high95N, tensionN } = bandTensionInterval(loading, stretch!);
      expect(stress! * SECTION_MM2).toBeGreaterThan(low95N);
      expect(stress! * SECTION_MM2).toBeLessThan(high95N);
      expect(Math.abs(tensionN / (stress! * SECTION_MM2) - 1)).toBeLessThan(0.05);
    }
  });

  it.each([
    ['treloar1944', world.treloar1944],
    ['treloarSecondReading', world.treloarSecondReading],
  ])('%s lies within the spread between laboratories of a band with the prior of its shape', (_, data) => {
    // The level is free (compounds differ); the shape between stretch 1.2 and 3.7 may differ by the file's tolerance.
    const prior = bandPrior(1, 41, 'loading');
    const ratios = loaded(data.values, 3.7)
      .filter(([stretch]) => stretch! > 1.2)
      .map(([stretch, stress]) => (stress! * SECTION_MM2) / bandTension(prior, stretch!));
    const level = ratios.reduce((sum, r) => sum + r, 0) / ratios.length;
    for (const ratio of ratios) expect(Math.abs(ratio / level - 1)).toBeLessThan(data.tolerance);
  });
});

describe('a band known by its width alone', () => {
  const prior = bandPrior(1, 41, 'loading');

  it.each(world.perSection.values)('pulls at stretch %f what gum rubber pulls', (stretch, perMm2) => {
    const error = bandTension(prior, stretch) / (41 * 4.5) - perMm2;
    expect(Math.abs(error)).toBeLessThan(world.perSection.tolerance);
  });

  it('has an interval wide enough for bands of one nominal size, and for printed tensions that are wrong', () => {
    const { tensionN, low95N, high95N } = bandTensionInterval(prior, 2);
    const logSd = Math.log(high95N / low95N) / (2 * 1.96);
    // Two bands per size were compared, so the difference over sqrt 2 is the spread of one.
    const batchSd = world.nominallyEqualBands.values.meanTension[1]! / Math.SQRT2;
    const printed = world.againstPrintedTension.values[1]!;
    expect(logSd).toBeGreaterThan(batchSd);
    expect(logSd).toBeLessThan(2 * batchSd);
    expect(high95N / tensionN - 1).toBeGreaterThan(printed);
  });

  it.each(Object.entries(world.nominallyEqualBands.fromRestLengthAlone))(
    'at stretch %s feels a longer rest length as nominally equal bands do',
    (stretch, factors) => {
      world.nominallyEqualBands.values.restLength.forEach((longer, i) => {
        const factor =
          bandTension(prior, Number(stretch)) /
          bandTension(bandPrior(1 + longer, 41, 'loading'), Number(stretch));
        expect(Math.abs(factor - factors[i]!)).toBeLessThan(world.nominallyEqualBands.tolerance);
      });
    },
  );
});

describe('units are exact', () => {
  const { standardGravity, ...conversions } = world.unitsExact.values;
  it.each(Object.entries(conversions))('1 %s is %f in SI', (unit, si) => {
    expect(toSi(1, unit as keyof typeof units)).toBe(si);
  });
  it('and hang together', () => {
    expect(STANDARD_GRAVITY_MPS2).toBe(standardGravity);
    expect(units.lbf.si).toBeCloseTo(units.lb.si * STANDARD_GRAVITY_MPS2, 13);
    expect(units.ft.si).toBeCloseTo(12 * units.in.si, 15);
  });
});

describe('chain mass from the link', () => {
  const tables = { din766: world.din766, din763: world.din763, din764: world.din764, iso4565: world.iso4565 };
  for (const [name, { values, tolerance }] of Object.entries(tables)) {
    it.each(values)(`${name}: wire %f mm, pitch %f mm`, (wire, pitch, inside, massKg) => {
      const link = { wireM: wire / 1000, pitchM: pitch / 1000, insideWidthM: inside / 1000 };
      expect(Math.abs(chainMass(link) / massKg - 1)).toBeLessThan(tolerance);
    });
  }
});

describe('local gravity', () => {
  it.each(world.normalGravity.values)('at latitude %f on the ellipsoid', (latitude, wgs84, grs80) => {
    const { tolerance, betweenSystems } = world.normalGravity;
    for (const side of [latitude, -latitude]) {
      expect(Math.abs(localGravity(side, 0) - wgs84)).toBeLessThan(tolerance);
      expect(Math.abs(localGravity(side, 0) - grs80)).toBeLessThan(betweenSystems);
    }
  });

  it.each(world.gravityWithHeight.values)('at latitude %f and %f m', (latitude, heightM, gravity) => {
    expect(Math.abs(localGravity(latitude, heightM) - gravity)).toBeLessThan(
      world.gravityWithHeight.tolerance,
    );
  });
});
