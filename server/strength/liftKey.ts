import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';

/** One lift of one lifter, whatever the day. */
export function liftKey({ lifterId, lift }: Omit<LiftOnDay, 'on'>): string {
  return `${lifterId} ${lift}`;
}
