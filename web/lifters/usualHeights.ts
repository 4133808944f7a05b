import type { Lift, Start } from '#contract/records/lift.ts';
import { hasHeight } from '#contract/words/liftWords.ts';
import type { Usual } from '#contract/words/usualQuestion.ts';

/** Where the bar is in each lift, of lifters from 140 to 210 cm with room to spare (m). Common practice, no source. */
const usualM: Record<Lift, { bottom: Usual; lockout: Usual }> = {
  squat: { bottom: [0.4, 1.4], lockout: [0.9, 2] },
  bench: { bottom: [0.4, 1.2], lockout: [0.7, 1.6] },
  deadlift: { bottom: [0.1, 0.4], lockout: [0.4, 1.2] },
};

/** What is usual of one end of a lift from this start; boards, pins and blocks begin wherever one likes below lockout. */
export function usualHeight(lift: Lift, start: Start, end: 'bottom' | 'lockout'): Usual {
  const { bottom, lockout } = usualM[lift];
  if (end === 'lockout') return lockout;
  return hasHeight(start.way) ? [0.1, lockout[1]] : bottom;
}

/** How far in front of its place at lockout the bar is at the bottom (m). Common practice, no source. */
export const usualForwardM: Usual = [-0.15, 0.2];

/** Of those who lift, youths among them (m). Common practice, no source. */
export const usualStatureM: Usual = [1.3, 2.15];
