import { z } from 'zod';
import type { SpeedAim } from '#core/day/Aim.ts';
import type { RackGear } from '#core/day/Gear.ts';
import type { LifterTask } from '#core/day/misfit.ts';
import type { PrescribedSetup } from '#core/day/PrescribedSetup.ts';
import { zoneOutlook } from '#core/day/zoneOutlook.ts';
import { tiringOf } from '#core/effort/Tiring.ts';
import { capability, toCapability } from './capabilityShape.ts';
import { fields, finite, mass, notNegative, pace, paceOrNone, positive } from './fields.ts';
import { checkTravel, toTravel, travelFields } from './travelShape.ts';
import { refuseWeakerThanBody } from './weakerThanBody.ts';

const share = z.number().positive().max(2);
const basis = z.enum(['bar', 'bottom', 'lockout', 'mean']);

/** A whole set instead of its first rep, and how its reps tire the lifter. */
const set = fields({
  reps: z.int().min(2).max(30),
  tiring_per_s: notNegative
    .max(1)
    .describe('ln strength lost by each second of full effort; a squat: about 0.01'),
  tiring_bend: z
    .number()
    .min(-1)
    .max(1)
    .default(0)
    .describe(
      'Above 0 each further rep of a set costs more than those before it: rep k (k / 3.38)^bend times',
    ),
  lowering_s: paceOrNone.max(60).default(1.2).describe('Time that the way down takes'),
});

const aim = z.discriminatedUnion('by', [
  fields({ by: z.literal('percent'), targets: z.array(fields({ basis, share })).min(1).max(4) }),
  fields({ by: z.literal('capability'), bottomShare: share, lockoutShare: share }),
  fields({
    by: z.literal('speed'),
    from_mps: pace,
    to_mps: pace,
    set: set.optional().describe('Mean speed of all reps of a rested set; left out: of the first rep'),
  }),
]);

const difference = finite.min(-10).max(10);

/** What a lifter's measured speeds are beyond the model's. */
const speedCorrection = fields({
  offset_mps: difference.default(0),
  perSurplus_mps: difference
    .default(0)
    .describe('The same for each unit of surplus, ln of strength over that which just makes the load'),
  upTo: positive.max(10).default(1.69).describe('The largest surplus that counts'),
  sd_mps: notNegative.max(10).default(0).describe("What is not known of this lifter's speeds"),
});

/** One lifter, one lift: what the lifter can, from where to where, and what the load should be. */
export const taskFields = {
  capability,
  ...travelFields,
  speedCorrection: speedCorrection
    .optional()
    .describe("This lifter's own speeds; left out: those of the capability alone"),
  reference_kg: mass.describe('The maximum that percentages refer to'),
  aim: aim.describe(
    'Shares are fractions: 0.6 is 60 %. Speeds are mean speeds of the first rep, or of a set',
  ),
};

type TaskDocument = z.output<z.ZodObject<typeof taskFields>>;

export function checkTask(task: TaskDocument, context: z.core.$RefinementCtx): void {
  checkTravel(task, context);
  refuseWeakerThanBody(task.capability, task, context);
  if (task.aim.by !== 'speed' || task.aim.to_mps >= task.aim.from_mps) return;
  const message = `it must be at least from_mps (${task.aim.from_mps})`;
  context.addIssue({ code: 'custom', path: ['aim', 'to_mps'], message });
}

export function toTask({
  capability,
  reference_kg,
  aim,
  speedCorrection,
  ...travelDocument
}: TaskDocument): LifterTask {
  const travel = toTravel(travelDocument);
  return {
    capability: toCapability(capability, travel),
    travel,
    referenceKg: reference_kg,
    aim: aim.by === 'speed' ? toSpeedAim(aim) : aim,
    ...(speedCorrection && {
      speedCorrection: {
        offsetMps: speedCorrection.offset_mps,
        perSurplusMps: speedCorrection.perSurplus_mps,
        upToLn: speedCorrection.upTo,
      },
    }),
  };
}

function toSpeedAim({
  from_mps: fromMps,
  to_mps: toMps,
  set,
}: Extract<z.output<typeof aim>, { by: 'speed' }>): SpeedAim {
  const zone = { by: 'speed' as const, fromMps, toMps };
  if (set === undefined) return zone;
  // Within a set nothing comes back: how strength returns in rest is not asked.
  const tiring = {
    ...tiringOf('squat'),
    perSecond: set.tiring_per_s,
    bend: set.tiring_bend,
    loweringS: set.lowering_s,
  };
  return { ...zone, over: { reps: set.reps, tiring } };
}

/** What a bar is to be expected to do where the aim is a speed. */
export const zone = z
  .object({ mean_mps: z.number(), chance: z.number() })
  .optional()
  .describe(
    'Where the aim is a speed: the one expected, and the chance that a measured set lies in the zone',
  );

export function fromOutlook(
  input: TaskDocument,
  task: LifterTask,
  rack: RackGear,
  { set, barKg }: Pick<PrescribedSetup, 'set' | 'barKg'>,
): z.input<typeof zone> {
  const outlook = zoneOutlook(task, rack, set, barKg, input.speedCorrection?.sd_mps ?? 0);
  return outlook === null ? undefined : { mean_mps: outlook.mps, chance: outlook.chance };
}
