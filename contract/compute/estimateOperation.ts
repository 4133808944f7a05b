import { z } from 'zod';
import { dayNumber } from '#contract/calendar/dayNumber.ts';
import { earliestDate, latestDate } from '#contract/records/dateRange.ts';
import { lift } from '#contract/records/lift.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { askedBelief } from '#core/strength/askDraws.ts';
import { type Belief, beliefOf, beliefOfMixture } from '#core/strength/belief.ts';
import { drawsOf } from '#core/strength/drawsOf.ts';
import { estimateStrength } from '#core/strength/estimateStrength.ts';
import { asTold } from '#core/strength/modelError.ts';
import { type EquipmentName, equipmentParameter, populationPrior } from '#core/strength/parameters.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import { range as rangeShape } from './capabilityShape.ts';
import { estimateFindings, findingShape, refuseOtherDays, refuseOtherHeights } from './estimateFindings.ts';
import { fields } from './fields.ts';
import { InputError } from './InputError.ts';
import { load, toLoad } from './loadShape.ts';
import { operation } from './Operation.ts';

const reps = z.int().min(0).max(50);

const day = z.iso
  .date()
  .refine(
    (date) => date >= earliestDate && date <= latestDate,
    `it must be from ${earliestDate} to ${latestDate}`,
  );

const loggedSet = fields({
  date: day,
  load,
  start: z.enum(['free', 'deadStop', 'box', 'paused']).default('free'),
  reps: reps.min(1).describe('Planned'),
  made: reps,
  stoppedAt: z
    .number()
    .min(-1)
    .max(2)
    .optional()
    .describe("Where the miss stopped, as a share of the lifter's range"),
  meanSpeed_mps: z
    .array(z.number().positive().max(10))
    .max(50)
    .default([])
    .describe('One a rep made, or one for the fastest'),
  repsInReserve: z.number().min(0).max(50).optional(),
  equipment: z.string().default('raw'),
  platform: z.boolean().default(false).describe('True at a meet'),
  barChecked: z
    .boolean()
    .default(false)
    .describe('True: somebody looked at the bar and it is right; it is never taken for a slip of unit'),
}).superRefine(({ reps, made }, context) => {
  if (made <= reps) return;
  context.addIssue({ code: 'custom', path: ['made'], message: `it must not be more than reps (${reps})` });
});

const number = z.number();
const interval80 = { median: number, low80: number, high80: number };

/** Day-to-day and week-to-week spreads are learned as logarithms; outside they are named by what they are. */
const DRAWS = 800;

export const estimateOperation = operation({
  name: 'estimate',
  summary:
    'What a lifter can do on a day, learned from logged sets: the straight maximum from a free start on an average, rested day.',
  inputSchema: fields({
    lift,
    bodyMass_kg: z.number().min(20).max(400),
    range: rangeShape,
    on: day,
    equipment: z.string().default('raw').describe('For which max_kg is asked'),
    sets: z.array(loggedSet),
  })
    .superRefine(refuseOtherDays)
    .superRefine(refuseOtherHeights),
  outputSchema: z.object({
    max_kg: z.object({ ...interval80, low95: number, high95: number }),
    parameters: z.record(z.string(), z.object(interval80)),
    sets: z.array(z.object({ surprise: number })),
    findings: z.array(findingShape).optional().describe('Sets that say nothing here, or count for little'),
  }),
  run({ lift, bodyMass_kg, range: { from_m, to_m }, on, equipment, sets }) {
    if (sets.length === 0) {
      throw new InputError({
        field: 'sets',
        message: 'sets is empty; an estimate needs at least one logged set.',
      });
    }
    const range = { fromM: from_m, toM: to_m };
    const movedBodyKg = populationShape(lift).movedBodyShare * bodyMass_kg;
    const riggings = new Map<string, Rigging>();
    const evidence = sets.map((set, i): SetEvidence => {
      const { barKg, ...bare } = toLoad(set.load);
      const start = set.start === 'deadStop' ? ('pins' as const) : set.start;
      const key = JSON.stringify([start, { ...set.load, bar_kg: 0 }]);
      const rigging = riggings.get(key) ?? { load: bare, start, range };
      riggings.set(key, rigging);
      if (barKg + movedBodyKg <= 0) {
        throw new InputError({
          field: `sets[${i}].load.bar_kg`,
          message: `sets[${i}].load.bar_kg is 0; a logged set needs a bar.`,
        });
      }
      return {
        day: dayNumber(set.date),
        rigging,
        barKg,
        barChecked: set.barChecked,
        movedBodyKg,
        equipment: equipmentName(set.equipment),
        platform: set.platform,
        reps: set.reps,
        made: set.made,
        stoppedAtS: set.stoppedAt ?? null,
        meanSpeedsMps: set.meanSpeed_mps,
        peakSpeedsMps: [],
        repsInReserve: set.repsInReserve ?? null,
        restS: null,
      };
    });
    const onDay = dayNumber(on);
    const readAt = evidence.flatMap(({ day }, i) => (day <= onDay ? [i] : []));
    const posterior = estimateStrength({
      lift,
      reference: {
        load: {
          bands: [],
          hungBands: [],
          chains: [],
          bottomM: from_m,
          lockoutM: to_m,
          gravityMps2: sets[0]!.load.gravity_mps2 ?? STANDARD_GRAVITY_MPS2,
          path: [],
        },
        start: 'free',
        range,
      },
      bodyMassKg: bodyMass_kg,
      sets: readAt.map((i) => evidence[i]!),
      onDay,
      prior: populationPrior(lift),
    });
    const barKg = (lnTotal: number) => Math.max(0, Math.exp(lnTotal) - movedBodyKg);
    const told = asTold(posterior);
    const draws = drawsOf(told, DRAWS);
    const asked = equipmentName(equipment);
    const surprises = new Map(posterior.surprises.map(({ set, surprise }) => [readAt[set]!, surprise]));
    return {
      max_kg:
        equipmentParameter[asked] === null ? beliefOfMixture(told, barKg) : askedBelief(draws, asked, barKg),
      parameters: Object.fromEntries(
        posterior.active.map((name) => [name, narrow(beliefOf(draws.map((draw) => draw[name])))]),
      ),
      sets: evidence.map((_, i) => ({ surprise: surprises.get(i) ?? 0 })),
      findings: estimateFindings(sets, {
        on,
        surprises,
        unexplained: posterior.leftOut.map((i) => readAt[i]!),
        slips: posterior.slips.map((slip) => ({ ...slip, sets: slip.sets.map((i) => readAt[i]!) })),
      }),
    };
  },
});

function narrow({ median, low80, high80 }: Belief) {
  return { median, low80, high80 };
}

function equipmentName(label: string): EquipmentName {
  return label in equipmentParameter ? (label as EquipmentName) : 'other';
}
