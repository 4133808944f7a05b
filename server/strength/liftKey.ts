import type { LiftOnDay } from '#contract/estimate/estimateLift.ts';

/** One lift of one lifter, whatever the day. */
export function liftKey({ lifterId, lift }: Omit<LiftOnDay, 'on'>): string {
  return `${lifterId} ${lift}`;
}
