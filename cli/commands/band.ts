import { Command } from 'commander';
import type { z } from 'zod';
import { counted } from '#contract/words/counted.ts';
import { curveName } from '#contract/words/curveName.ts';
import type { BandCurve, BandCurves, BandReading } from '#core/band/BandCurve.ts';
import { toSi, type Unit } from '#core/units/units.ts';
import { CliError } from '../CliError.ts';
import { readInputText } from '../readInputText.ts';

interface BandOptions {
  rest: string;
  width?: string;
}

/** `band`: fits the readings of one loop and draws them. */
export function bandCommand(): Command {
  return new Command('band')
    .summary("fit and draw a band's readings")
    .description(
      'Fits a curve to the readings of one loop (length end to end under a force) and draws it with its 95 % interval.',
    )
    .argument('[readings]', 'CSV file; without it, or with -, standard input')
    .requiredOption('--rest <length>', 'relaxed length of the loop, end to end: 1.04, "104 cm", "41 in"')
    .option(
      '--width <width>',
      'width of the band in mm; needed where there are readings at fewer than two lengths',
    )
    .addHelpText(
      'after',
      `
The first line of the CSV names the columns and their units:
  length_cm,force_kg,direction
  130,18.2,loading
  160,31.5,loading
Lengths in m, cm, mm or in; forces in N, kg or lb as a hanging scale shows them; direction (loading or unloading)
may be left out.

A stretched band stores energy and can snap back: stand aside, wear eye protection, and stop at the maker's length.`,
    )
    .action(fitAndDraw);
}

async function fitAndDraw(file: string | undefined, options: BandOptions): Promise<void> {
  const { fallingForces } = await import('#core/band/fallingForces.ts');
  const { fallingSentence } = await import('#contract/words/fallingSentence.ts');
  const { fitBand } = await import('#core/band/fitBand.ts');
  const { readReadings } = await import('../readReadings.ts');
  const limits = await import('#contract/records/gear.ts');
  const restLengthM = await quantity(options.rest, 'm', limits.restLengthM, '--rest');
  const widthM =
    options.width === undefined
      ? undefined
      : await quantity(options.width, 'mm', limits.bandWidthMm, '--width');
  const { readings, lengthUnit, forceUnit } = readReadings(await readInputText(file), restLengthM);
  let curves: BandCurves;
  try {
    curves = fitBand({ restLengthM, widthMm: widthM === undefined ? undefined : widthM * 1000, readings });
  } catch (error) {
    if (error instanceof RangeError) throw new CliError(error.message, 2);
    throw error;
  }
  const branches =
    curves.unloading.direction === 'unloading' ? [curves.loading, curves.unloading] : [curves.loading];
  for (const curve of branches) {
    const own = readings.filter(({ direction }) => direction === curve.direction);
    process.stdout.write(`${await describe(curve, own, lengthUnit, forceUnit)}\n`);
  }
  for (const fall of fallingForces(readings)) {
    process.stdout.write(`${fallingSentence(fall, restLengthM)}\n`);
  }
}

async function describe(
  curve: BandCurve,
  readings: BandReading[],
  lengthUnit: Unit,
  forceUnit: Unit,
): Promise<string> {
  const { bandTensionInterval } = await import('#core/band/bandTension.ts');
  const { fromSi } = await import('#core/units/units.ts');
  const { drawBand, forceName } = await import('../drawBand.ts');
  const { table } = await import('../table.ts');
  const force = (forceN: number) =>
    fromSi(forceN, forceUnit)
      .toFixed(1)
      .replace(/^-(0\.0)$/, '$1');
  const rows = readings
    .toSorted((a, b) => a.lengthM - b.lengthM)
    .map(({ lengthM, forceN }) => {
      const { tensionN, low95N, high95N } = bandTensionInterval(curve, lengthM);
      const length = fromSi(lengthM, lengthUnit).toFixed(lengthUnit === 'm' ? 3 : 1);
      return [
        length,
        force(forceN),
        force(tensionN),
        force(forceN - tensionN),
        force(low95N),
        force(high95N),
      ];
    });
  const unit = forceName(forceUnit);
  const known =
    curve.known === 'measured'
      ? `${curve.direction}: ${counted(readings.length, 'reading')}, fitted as ${curveName(curve.model)}`
      : 'not measured: estimated from the width alone, with a wide interval; hang it from a scale';
  const head = [`length ${lengthUnit}`, `read ${unit}`, `curve ${unit}`, 'off by', 'low 95 %', 'high 95 %'];
  return [
    known,
    '',
    ...(rows.length > 0 ? [table(head, rows), ''] : []),
    drawBand({ curve, readings, lengthUnit, forceUnit }),
    '',
  ].join('\n');
}

/** `limit` counts in the unit: it is the one that the club's own bands have. */
async function quantity(typed: string, unit: Unit, limit: z.ZodNumber, option: string): Promise<number> {
  const { parseQuantity } = await import('#core/units/parseQuantity.ts');
  const { formatQuantity } = await import('#core/units/formatQuantity.ts');
  const parsed = parseQuantity(typed, unit);
  if (!parsed.ok) throw new CliError(`${option}: ${parsed.message}`, 2);
  const [minSi, maxSi] = [toSi(limit.minValue ?? 0, unit), toSi(limit.maxValue ?? Infinity, unit)];
  if (parsed.valueSi >= minSi && parsed.valueSi <= maxSi) return parsed.valueSi;
  const [given, least, most] = [parsed.valueSi, minSi, maxSi].map((si) => formatQuantity(si, unit));
  throw new CliError(
    `${option} is ${given}; it must be ${least} to ${most}. A unit may be typed with it.`,
    2,
  );
}
