import type { Aim } from '#contract/records/day.ts';

/** Shares keep to the thousandth, so that 0.5 and 0.05 make 0.55. */
const THOUSANDTHS = 1000;

/** The same aim with every share so much higher (0.05: from 50 to 55 %); a zone of speed stays as it is. */
export function raisedAim(aim: Aim, more: number): Aim {
  const plus = (share: number) => Math.round((share + more) * THOUSANDTHS) / THOUSANDTHS;
  switch (aim.by) {
    case 'percent':
      return { ...aim, targets: aim.targets.map((target) => ({ ...target, share: plus(target.share) })) };
    case 'capability':
      return { ...aim, bottomShare: plus(aim.bottomShare), lockoutShare: plus(aim.lockoutShare) };
    case 'speed':
      return aim;
  }
}

/** "5 points more", "2.5 points less"; of what is named after it. */
export function pointsWords(more: number): string {
  const points = Number(Math.abs(100 * more).toFixed(1));
  return `${points} ${points === 1 ? 'point' : 'points'} ${more > 0 ? 'more' : 'less'}`;
}
