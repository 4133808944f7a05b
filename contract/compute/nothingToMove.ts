import type { z } from 'zod';

interface Moved {
  load: { bar_kg: number };
  capability: { movedBody_kg: number };
}

/** A rep needs something that has mass from the start: bar or body. */
export function refuseNothingToMove({ load, capability }: Moved, context: z.core.$RefinementCtx): void {
  if (load.bar_kg + capability.movedBody_kg > 0) return;
  const message = 'it must be above 0 where movedBody_kg is 0, since nothing else has mass';
  context.addIssue({ code: 'custom', path: ['load', 'bar_kg'], message });
}
