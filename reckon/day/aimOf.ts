import type { Group } from '#contract/records/day.ts';
import type { Aim } from '#core/day/Aim.ts';
import type { Tiring } from '#core/effort/Tiring.ts';

/** What a group asks of one lifter, as the core searches it: a speed of whole sets is that of the heaviest step's. */
export function aimOf({ aim, blocks }: Pick<Group, 'aim' | 'blocks'>, tiring: Tiring): Aim {
  if (aim.by !== 'speed') return aim;
  const { by, fromMps, toMps } = aim;
  const { reps } = blocks.reduce((main, block) => (block.shareOfAim >= main.shareOfAim ? block : main));
  return aim.of === 'set' && reps > 1
    ? { by, fromMps, toMps, over: { reps, tiring } }
    : { by, fromMps, toMps };
}
