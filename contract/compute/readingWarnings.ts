import { z } from 'zod';
import { fallingSentence } from '#contract/words/fallingSentence.ts';
import { fallingForces } from '#core/band/fallingForces.ts';
import { toReadings } from './bandShape.ts';
import type { gear } from './gearShape.ts';

/** Warnings of an answer: readings that no band gives are used as they are, and named. */
export const readingWarnings = z
  .array(
    z.object({
      code: z.literal('fallingForce'),
      message: z.string(),
      field: z.string().optional().describe('Where the readings stand; left out where there is one place'),
    }),
  )
  .optional()
  .describe('Readings that no band gives; absent where there are none');
type ReadingWarnings = { warnings?: NonNullable<z.input<typeof readingWarnings>> };

type Loop = Parameters<typeof toReadings>[0] & { restLength_m: number };

/** What is odd about the readings of one loop, as a part of an answer; nothing where nothing is. */
export function warningsOfLoop(loop: Loop): ReadingWarnings {
  return partOf(fallsOf(loop));
}

/** The same for the bands of a load, each named by the field that its readings stand in. */
export function warningsOfBands(bands: readonly Loop[], field: string): ReadingWarnings {
  return partOf(bands.flatMap((band, i) => fallsOf(band, `${field}[${i}].readings`)));
}

/** The same for a rack's gear, or for several: a pair that may hang in many ways is named once. */
export function warningsOfGear(
  racks: readonly { gear: Pick<z.output<typeof gear>, 'hookups'>; field: string }[],
): ReadingWarnings {
  const found = new Map<string, ReturnType<typeof fallsOf>[number]>();
  for (const { gear, field } of racks)
    gear.hookups.forEach(({ bandPairId, bands }, h) => {
      bands.forEach((band, b) => {
        for (const warning of fallsOf(band, `${field}.hookups[${h}].bands[${b}].readings`)) {
          const key = JSON.stringify([bandPairId, b, warning.message]);
          if (!found.has(key)) found.set(key, warning);
        }
      });
    });
  return partOf([...found.values()]);
}

function fallsOf(loop: Loop, field?: string) {
  return fallingForces(toReadings(loop)).map((fall) => ({
    code: 'fallingForce' as const,
    message: fallingSentence(fall, loop.restLength_m),
    ...(field === undefined ? {} : { field }),
  }));
}

function partOf(warnings: ReturnType<typeof fallsOf>): ReadingWarnings {
  return warnings.length > 0 ? { warnings } : {};
}
