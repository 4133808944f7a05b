import { z } from 'zod';
import type { LifterTask } from '#core/day/misfit.ts';
import { capability, toCapability } from './capabilityShape.ts';
import { fields, mass, pace } from './fields.ts';
import { checkTravel, toTravel, travelFields } from './travelShape.ts';
import { refuseWeakerThanBody } from './weakerThanBody.ts';

const share = z.number().positive().max(2);
const basis = z.enum(['bar', 'bottom', 'lockout', 'mean']);

const aim = z.discriminatedUnion('by', [
  fields({ by: z.literal('percent'), targets: z.array(fields({ basis, share })).min(1).max(4) }),
  fields({ by: z.literal('capability'), bottomShare: share, lockoutShare: share }),
  fields({ by: z.literal('speed'), from_mps: pace, to_mps: pace }),
]);

/** One lifter, one lift: what the lifter can, from where to where, and what the load should be. */
export const taskFields = {
  capability,
  ...travelFields,
  reference_kg: mass.describe('The maximum that percentages refer to'),
  aim: aim.describe('Shares are fractions: 0.6 is 60 %. Speeds are mean speeds of the first rep'),
};

type TaskDocument = z.output<z.ZodObject<typeof taskFields>>;

export function checkTask(task: TaskDocument, context: z.core.$RefinementCtx): void {
  checkTravel(task, context);
  refuseWeakerThanBody(task.capability, task, context);
  if (task.aim.by !== 'speed' || task.aim.to_mps >= task.aim.from_mps) return;
  const message = `it must be at least from_mps (${task.aim.from_mps})`;
  context.addIssue({ code: 'custom', path: ['aim', 'to_mps'], message });
}

export function toTask({ capability, reference_kg, aim, ...travelDocument }: TaskDocument): LifterTask {
  const travel = toTravel(travelDocument);
  return {
    capability: toCapability(capability, travel),
    travel,
    referenceKg: reference_kg,
    aim: aim.by === 'speed' ? { by: 'speed', fromMps: aim.from_mps, toMps: aim.to_mps } : aim,
  };
}
